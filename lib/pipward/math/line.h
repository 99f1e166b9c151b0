// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <span>
#include <vector>

#include "pipward/math/plane_point.h"

/// Lines on the plane and what lies beside them, by GEOS. Coordinates that are no finite numbers throw
/// std::logic_error.
namespace pipward::math {

/// Where a line comes nearest to a point.
struct Foot {
    PlanePoint at;           ///< on the line
    double along = 0;        ///< metres of line before it
    double off = 0;          ///< metres from the point
    PlanePoint ahead{1, 0};  ///< the direction of the line there, of length 1; east where it has none
};

/// A line from point to point; one of a single point is that point. Not for two threads at once.
class Line {
  public:
    /// At least one point, all finite.
    explicit Line(std::vector<PlanePoint> points);
    ~Line();
    Line(Line&&) noexcept;
    Line& operator=(Line&&) noexcept;

    const std::vector<PlanePoint>& points() const;  ///< as given, at least one
    double length() const;                          ///< metres
    /// Metres between the nearest places of both; 0 where they touch or cross.
    double distance(PlanePoint point) const;
    /// The same to another line.
    double distance(const Line& other) const;
    /// The nearest place; the first of several along the line.
    Foot foot(PlanePoint point) const;

  private:
    friend class LineTree;
    struct Shape;
    std::unique_ptr<const Shape> shape_;
};

/// The line without those points that lie no farther than `metres` from it afterwards (Douglas & Peucker
/// 1973, Cartographica 10:112). Both ends stay.
std::vector<PlanePoint> simplified(std::span<const PlanePoint> line, double metres);

/// The line with both of its ends drawn straight on by `metres`. It has a length.
std::vector<PlanePoint> extended(std::span<const PlanePoint> line, double metres);

/// The parts of a line that lie in a box, each of at least two points, in the direction of the line. At least
/// two points.
std::vector<std::vector<PlanePoint>> parts_within(std::span<const PlanePoint> line, const Box& box);

/// The corners of the strip that reaches `metres` to both sides of a line and beyond both of its ends; bends
/// keep their corners, up to five times `metres` long. Round its outside, then round each hole that a
/// line around something leaves. The line has a length.
std::vector<PlanePoint> corners_around(std::span<const PlanePoint> line, double metres);

}  // namespace pipward::math
