// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/place/detail/hits.h"

namespace pipward::place::detail {

/// Inside of the room: trees by where they stand.
class NearTable {
  public:
    /// `orchard` must outlive the table.
    explicit NearTable(const Orchard& orchard);

    /// Trees at a place that the search text names: a geo: link, latitude and longitude, or x and y of the
    /// book's own system. Nothing where the text is none of these, or no tree is near.
    void find(std::string_view query, Hits& hits) const;

    /// The nearest first; those without a place on the map are left out.
    std::vector<std::uint32_t> nearest(const OwnPosition& from, std::size_t limit) const;

  private:
    struct Spot {
        double x = 0;
        double y = 0;
        std::uint32_t tree = 0;
    };

    const Orchard& orchard_;
    std::vector<Spot> spots_;
};

/// A box of the map.
struct MapBox {
    MapPoint low;
    MapPoint high;
};
/// Around all trees that NearTable::find() would find in a book of this coordinate system; nothing where the
/// text names no place.
std::optional<MapBox> box_sought(std::string_view query, const std::string& crs);
/// Around a position, so far to each side, in units of y.
MapBox box_around(const OwnPosition& from, double distance);

/// Whether the search text can be nothing else: a geo: or other link to a place, two decimals, degrees.
bool is_surely_place(std::string_view query);

}  // namespace pipward::place::detail
