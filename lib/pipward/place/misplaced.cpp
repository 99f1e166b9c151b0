// SPDX-License-Identifier: MIT
#include "pipward/place/misplaced.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <vector>

#include "pipward/place/detail/sites.h"
#include "pipward/place/earth.h"

namespace pipward::place {
namespace {

constexpr std::size_t few = 3;

/// One thing that is wrong with several records of a table.
struct Oddity {
    std::string table{};
    std::string field{};
    std::vector<std::string> names{};
    std::vector<std::string> values{};
    Sentence of_one{};
    std::function<Sentence(std::size_t)> of_many{};
    Sentence remedy{};
};

void tell(const Oddity& odd, Findings& findings) {
    if (odd.names.size() > few) {
        findings.push_back({Level::warning, odd.table, fmt::format("{} ...", odd.names.front()), odd.field,
                            odd.values.front(), odd.of_many(odd.names.size()), odd.remedy});
        return;
    }
    for (std::size_t i = 0; i < odd.names.size(); ++i) {
        findings.push_back(
            {Level::warning, odd.table, odd.names[i], odd.field, odd.values[i], odd.of_one, odd.remedy});
    }
}

bool is_origin(const MapPoint& point) {
    return point.x == 0 && point.y == 0;
}

/// In a system that counts metres. Rows of an invented plane near its origin are no degrees: those are not of
/// the earth, and are not looked at.
bool looks_like_degrees(const MapPoint& point) {
    return std::abs(point.x) <= 180 && std::abs(point.y) <= 90 && !is_origin(point);
}

Sentence check_remedy() {
    return say("Check its coordinates and their coordinate system: east (longitude, x) first, then north.");
}

class PlaceCheck {
  public:
    PlaceCheck(const Orchard& orchard, Findings& findings)
        : orchard_(orchard), findings_(findings), to_earth_(orchard.crs) {}

    void check() {
        if (!to_earth_.is_known()) {
            return;
        }
        check_rows();
        check_points("station", stations());
        const auto sound = check_points("tree", trees());
        if (!sound.empty()) {
            check_crowds(sound);
            check_heights(sound);
            check_sites(sound);
        }
    }

  private:
    struct Place {
        std::string name;
        MapPoint at;
        const Tree* tree = nullptr;
    };

    std::vector<Place> stations() const {
        std::vector<Place> places;
        for (const auto& station : orchard_.stations) {
            if (station.at) {
                places.push_back({station.name, *station.at, nullptr});
            }
        }
        return places;
    }

    std::vector<Place> trees() const {
        std::vector<Place> places;
        for (const auto& tree : orchard_.trees) {
            if (tree.at) {
                places.push_back({tree.label, *tree.at, &tree});
            }
        }
        return places;
    }

    /// Returns those of which nothing is told.
    std::vector<Place> check_points(const std::string& table, std::vector<Place> places) {
        Oddity origin{table,
                      "geom",
                      {},
                      {},
                      say("It lies at 0, 0: the coordinates were probably missing."),
                      [](std::size_t count) {
                          return say("{} lie at 0, 0: the coordinates were probably missing.", count);
                      },
                      say("Put it on the map where it stands.")};
        Oddity degrees{table,
                       "geom",
                       {},
                       {},
                       say("These numbers look like degrees, but {} counts metres.", orchard_.crs),
                       [&](std::size_t count) {
                           return say("The numbers of {} look like degrees, but {} counts metres.", count,
                                      orchard_.crs);
                       },
                       say("Import them again with layer-crs EPSG:4326, or move them through a GIS.")};
        std::vector<Place> sound;
        for (auto& place : places) {
            auto* odd = is_origin(place.at)                                         ? &origin
                        : !to_earth_.from_degrees() && looks_like_degrees(place.at) ? &degrees
                                                                                    : nullptr;
            if (odd == nullptr) {
                sound.push_back(std::move(place));
            } else {
                odd->names.push_back(place.name);
                odd->values.push_back(coordinates_text(place.at));
            }
        }
        tell(origin, findings_);
        tell(degrees, findings_);
        return sound;
    }

    void check_rows() {
        Oddity without{"tree_row",
                       "geom",
                       {},
                       {},
                       say("The line of the row has no length."),
                       [](std::size_t count) { return say("The lines of {} rows have no length.", count); },
                       say("Draw it from its first position to its last.")};
        Oddity endless{"tree_row",
                       "geom",
                       {},
                       {},
                       say("The line of the row is longer than {:.0f} km.", longest_row_metres / 1000),
                       [](std::size_t count) {
                           return say("The lines of {} rows are longer than {:.0f} km.", count,
                                      longest_row_metres / 1000);
                       },
                       say("Draw it from its first position to its last.")};
        for (const auto& row : orchard_.rows) {
            const auto metres = row.line.size() < 2 ? std::nullopt : length_of(row.line);
            auto* odd = !metres                        ? nullptr
                        : *metres == 0                 ? &without
                        : *metres > longest_row_metres ? &endless
                                                       : nullptr;
            if (odd != nullptr) {
                odd->names.push_back(fmt::format("{} {}", row.block, row.name));
                odd->values.push_back(fmt::format("{:.0f} m", *metres));
            }
        }
        tell(without, findings_);
        tell(endless, findings_);
    }

    /// Nothing where a point of it lies nowhere.
    std::optional<double> length_of(const std::vector<MapPoint>& line) const {
        double metres = 0;
        auto before = to_earth_(line.front());
        for (const auto& point : line) {
            const auto here = to_earth_(point);
            if (!here || !before) {
                return std::nullopt;
            }
            metres += way_between(*before, *here).distance.value;
            before = here;
        }
        return metres;
    }

    void check_crowds(const std::vector<Place>& trees) {
        std::map<std::pair<double, double>, std::vector<const Place*>> points;
        for (const auto& tree : trees) {
            if (!tree.tree->removed_on) {
                points[{tree.at.x, tree.at.y}].push_back(&tree);
            }
        }
        for (const auto& [point, crowd] : points) {
            if (std::ssize(crowd) >= most_at_one_point) {
                findings_.push_back({Level::warning, "tree", crowd.front()->name + " ...", "geom",
                                     coordinates_text(crowd.front()->at),
                                     say("{} trees stand at one and the same point.", crowd.size()),
                                     say("Put them where they stand, or clear their locations until that is "
                                         "known.")});
            }
        }
    }

    /// Against the station that is nearest in height, for the book does not say which is whose.
    void check_heights(const std::vector<Place>& trees) {
        if (orchard_.stations.empty()) {
            return;
        }
        Oddity odd{
            "tree",
            "elevation_m",
            {},
            {},
            say("It stands more than {:.0f} m above or below every station, whose weather then says nothing "
                "of its bloom.",
                station_height_metres),
            [](std::size_t count) {
                return say(
                    "{} stand more than {:.0f} m above or below every station, whose weather then says "
                    "nothing of their bloom.",
                    count, station_height_metres);
            },
            say("Check the height: metres above sea level.")};
        for (const auto& tree : trees) {
            const auto height = tree.tree->elevation ? tree.tree->elevation : tree.at.height;
            const auto fits = [&](const Station& station) {
                return std::abs(station.elevation.value - height->value) <= station_height_metres;
            };
            if (height && std::ranges::none_of(orchard_.stations, fits)) {
                odd.names.push_back(tree.name);
                odd.values.push_back(fmt::format("{:g}", height->value));
            }
        }
        tell(odd, findings_);
    }

    void check_sites(const std::vector<Place>& trees) {
        std::vector<MapPoint> points;
        for (const auto& tree : trees) {
            points.push_back(tree.at);
        }
        const auto sites = detail::sites_of(points, to_earth_, site_metres);
        check_nowhere(trees, sites);
        if (sites.sites.empty()) {
            return;
        }
        check_blocks(trees, sites);
        check_lone(trees, sites);
        check_stations(sites);
    }

    void check_nowhere(const std::vector<Place>& trees, const detail::Sites& sites) {
        Oddity odd{"tree",
                   "geom",
                   {},
                   {},
                   say("This is no location on the earth in {}.", orchard_.crs),
                   [&](std::size_t count) {
                       return say("{} have no location on the earth in {}.", count, orchard_.crs);
                   },
                   check_remedy()};
        for (std::size_t i = 0; i < trees.size(); ++i) {
            if (sites.site_of[i] < 0) {
                odd.names.push_back(trees[i].name);
                odd.values.push_back(coordinates_text(trees[i].at));
            }
        }
        tell(odd, findings_);
    }

    /// The site in which most trees of each block stand.
    std::map<std::string, int> homes(const std::vector<Place>& trees, const detail::Sites& sites) const {
        std::map<std::string, std::map<int, int>> counts;
        for (std::size_t i = 0; i < trees.size(); ++i) {
            if (trees[i].tree->block && sites.site_of[i] >= 0) {
                ++counts[*trees[i].tree->block][sites.site_of[i]];
            }
        }
        std::map<std::string, int> homes;
        for (const auto& [block, count] : counts) {
            homes[block] =
                std::ranges::max_element(count, {}, [](const auto& entry) { return entry.second; })->first;
        }
        return homes;
    }

    Oddity away_from(Sentence of_one, std::function<Sentence(std::size_t)> of_many) const {
        return {"tree", "geom", {}, {}, std::move(of_one), std::move(of_many), check_remedy()};
    }

    bool lies_exchanged(const MapPoint& point, const LonLat& home) const {
        const auto turned = to_earth_({point.y, point.x, {}});
        return turned && way_between(*turned, home).distance.value <= lone_metres;
    }

    void check_blocks(const std::vector<Place>& trees, const detail::Sites& sites) {
        const auto home = homes(trees, sites);
        auto exchanged = away_from(
            say("Its two coordinates are exchanged: the other way round it lies among the trees of its "
                "block."),
            [](std::size_t count) {
                return say(
                    "The coordinates of {} are exchanged: the other way round they lie among the trees of "
                    "their block.",
                    count);
            });
        std::map<std::string, Oddity> away;
        for (std::size_t i = 0; i < trees.size(); ++i) {
            const auto block = home.find(trees[i].tree->block.value_or(""));
            const int site = sites.site_of[i];
            if (block == home.end() || site < 0 || site == block->second) {
                continue;
            }
            told_.insert(i);
            const auto& centre = sites.sites[static_cast<std::size_t>(block->second)].centre;
            const double metres =
                way_between(centre, sites.sites[static_cast<std::size_t>(site)].centre).distance.value;
            auto& odd =
                lies_exchanged(trees[i].at, centre)
                    ? exchanged
                    : away.try_emplace(block->first, far_from_block(block->first, metres)).first->second;
            odd.names.push_back(trees[i].name);
            odd.values.push_back(coordinates_text(trees[i].at));
        }
        tell(exchanged, findings_);
        for (const auto& [block, odd] : away) {
            tell(odd, findings_);
        }
    }

    Oddity far_from_block(const std::string& block, double metres) const {
        const auto km = metres / 1000;
        return away_from(say("It lies {:.0f} km from the other trees of block {}.", km, block),
                         [block, km](std::size_t count) {
                             return say("{} lie up to {:.0f} km from the other trees of block {}.", count, km,
                                        block);
                         });
    }

    void check_lone(const std::vector<Place>& trees, const detail::Sites& sites) {
        constexpr int lone = 2;
        for (std::size_t i = 0; i < trees.size(); ++i) {
            const int own = sites.site_of[i];
            if (own < 0 || told_.contains(i) || sites.sites[static_cast<std::size_t>(own)].trees > lone) {
                continue;
            }
            const auto nearest = nearest_site(sites, own);
            if (nearest && nearest->metres > lone_metres) {
                findings_.push_back(
                    {Level::warning, "tree", trees[i].name, "geom", coordinates_text(trees[i].at),
                     lies_exchanged(trees[i].at, nearest->centre)
                         ? say("Its two coordinates are exchanged: the other way round it lies among the "
                               "other trees.")
                         : say("It lies {:.0f} km from every other tree.", nearest->metres / 1000),
                     check_remedy()});
            }
        }
    }

    struct Nearest {
        LonLat centre;
        double metres;
    };

    static std::optional<Nearest> nearest_site(const detail::Sites& sites, int own) {
        std::optional<Nearest> nearest;
        for (std::size_t other = 0; other < sites.sites.size(); ++other) {
            if (static_cast<int>(other) != own) {
                const auto& centre = sites.sites[other].centre;
                const double metres =
                    way_between(centre, sites.sites[static_cast<std::size_t>(own)].centre).distance.value;
                nearest = nearest && nearest->metres <= metres ? nearest : Nearest{centre, metres};
            }
        }
        return nearest;
    }

    /// One orchard may have the station of another, but no station near any of them is a mistake.
    void check_stations(const detail::Sites& sites) {
        std::optional<double> nearest;
        bool exchanged = false;
        for (const auto& station : orchard_.stations) {
            const auto place = station.at ? to_earth_(*station.at) : std::nullopt;
            for (const auto& site : sites.sites) {
                const auto metres =
                    place ? std::optional{way_between(*place, site.centre).distance.value} : std::nullopt;
                nearest = metres && (!nearest || *metres < *nearest) ? metres : nearest;
                exchanged = exchanged || (station.at && lies_exchanged(*station.at, site.centre));
            }
        }
        if (nearest && *nearest > station_metres) {
            findings_.push_back({Level::warning,
                                 "tree",
                                 {},
                                 "geom",
                                 fmt::format("{:.0f} km", *nearest / 1000),
                                 exchanged ? say("All trees lie far from every station; with its two "
                                                 "coordinates exchanged a station would lie among them.")
                                           : say("All trees lie {:.0f} km or more from every station, whose "
                                                 "weather then says nothing of their bloom.",
                                                 *nearest / 1000),
                                 say("Check the coordinates of the trees and of the stations, and their "
                                     "coordinate system.")});
        }
    }

    const Orchard& orchard_;
    Findings& findings_;
    ToEarth to_earth_;
    std::set<std::size_t> told_{};
};

}  // namespace

Findings check_places(const Orchard& orchard) {
    Findings findings;
    PlaceCheck(orchard, findings).check();
    return findings;
}

}  // namespace pipward::place
