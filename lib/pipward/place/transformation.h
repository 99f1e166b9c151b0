// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <string>

#include "pipward/record/orchard.h"

/// From one coordinate system to another, and how true that is.
namespace pipward::place {

/// What is published of a transformation, as PROJ knows it.
struct TransformationFacts {
    std::string name;  ///< "DHDN to ETRS89 (8) + UTM zone 32N"; empty where the systems are the same
    std::optional<Metres> accuracy;  ///< 0 where both systems stand on the same datum; nothing if unknown
    bool ballpark = false;  ///< the difference of the datums is left out: some hundred metres perhaps
    std::optional<Metres> missed_accuracy{};  ///< of a better one that cannot be had here
    std::string missed_grid{};                ///< the file that it wants
};

/// Carries points from `from` to `to`, each AUTHORITY:CODE or well-known text, by the most accurate
/// transformation that PROJ can do where `around` lie: one for all of them. Heights are kept as they are.
/// Coordinates are east (longitude) first, whatever the systems say. Not for two threads at once.
class Transformation {
  public:
    /// Systems that PROJ does not know, or that have nothing to do with one another, throw nothing:
    /// is_possible() tells.
    Transformation(const std::string& from, const std::string& to, std::span<const MapPoint> around);
    ~Transformation();
    /// The one moved from may only be destroyed or assigned to.
    Transformation(Transformation&&) noexcept;
    Transformation& operator=(Transformation&&) noexcept;

    /// Nothing where the point cannot be carried.
    std::optional<MapPoint> operator()(const MapPoint& point) const;
    /// Whether there is a way from one system to the other.
    bool is_possible() const;
    /// Without a meaning where it is not possible.
    const TransformationFacts& facts() const;

  private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

/// A coordinate system for people: "ETRS89 / UTM zone 32N (EPSG:25832)". Empty where PROJ does not know it.
std::string system_name(const std::string& crs);

/// Whether heights in the system are counted from the ellipsoid, not from the sea: in most places they differ
/// by some ten metres.
bool has_ellipsoidal_heights(const std::string& crs);

}  // namespace pipward::place
