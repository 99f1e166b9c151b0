// SPDX-License-Identifier: MIT
#include "pipward/paper/field_plan.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

#include "pipward/math/point_tree.h"
#include "pipward/math/quantile.h"

#include "pipward/value/complaint.h"

namespace pipward::paper {
namespace {

constexpr std::array scales{100, 200, 250, 500, 1000, 2000, 2500, 5000, 10000, 20000, 25000, 50000, 100000};
constexpr Millimetres legible_distance{3};
constexpr Millimetres page_edge{10};
constexpr Millimetres head{14};
constexpr Millimetres foot{30};
constexpr Millimetres rim{11};  // room for the names at the ends of rows
constexpr std::size_t most_pages = 200;

struct Extent {
    double left = std::numeric_limits<double>::infinity();
    double right = -std::numeric_limits<double>::infinity();
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();

    void take(PageGround spot) {
        left = std::min(left, spot.right);
        right = std::max(right, spot.right);
        low = std::min(low, spot.up);
        high = std::max(high, spot.up);
    }
    PageGround middle() const { return {(left + right) / 2, (low + high) / 2}; }
};

// What is planned by itself: a block, or the whole map.
struct Part {
    std::string block{};
    std::vector<MapTree> trees{};
    Extent extent{};
};

Part whole_of(const FieldMap& map) {
    Part part{{}, map.trees, {}};
    for (const auto& tree : map.trees) {
        part.extent.take(on_page(tree.at, map.turned_deg));
    }
    for (const auto& row : map.rows) {
        for (const auto& spot : row.line) {
            part.extent.take(on_page(spot, map.turned_deg));
        }
    }
    return part;
}

// In the order of their first trees.
std::vector<Part> blocks_of(const FieldMap& map) {
    std::vector<Part> parts;
    const auto part_of = [&](const std::string& block) {
        return std::ranges::find(parts, block, &Part::block);
    };
    for (const auto& tree : map.trees) {
        if (part_of(tree.block) == parts.end()) {
            parts.push_back({tree.block, {}, {}});
        }
        part_of(tree.block)->trees.push_back(tree);
        part_of(tree.block)->extent.take(on_page(tree.at, map.turned_deg));
    }
    for (const auto& row : map.rows) {
        const auto part = part_of(row.block);
        for (const auto& spot : part == parts.end() ? std::vector<math::PlanePoint>{} : row.line) {
            part->extent.take(on_page(spot, map.turned_deg));
        }
    }
    return parts;
}

double metres_on(Millimetres paper, int denominator) {
    return paper.value * denominator / 1000;
}

bool fits(const Extent& extent, const PageSize& page, int denominator) {
    const auto core = map_core(page);
    return extent.right - extent.left <= metres_on(core.width, denominator) &&
           extent.high - extent.low <= metres_on(core.height, denominator);
}

std::optional<int> one_page_scale(const Extent& extent, const PageSize& page) {
    const auto found = std::ranges::find_if(scales, [&](int scale) { return fits(extent, page, scale); });
    return found == scales.end() ? std::nullopt : std::optional{*found};
}

// The smallest scale at which neighbours keep apart; the largest of all where none does.
int legible_scale(double spacing) {
    int best = scales.front();
    for (const int scale : scales) {
        if (spacing >= metres_on(legible_distance, scale)) {
            best = scale;
        }
    }
    return best;
}

std::size_t pages_along(double metres, double page) {
    return static_cast<std::size_t>(std::max(1.0, std::ceil(metres / page - 1e-9)));
}

struct Tiling {
    PageSize page;
    double width = 0;  // of a core, in metres
    double height = 0;
    std::size_t columns = 1;
    std::size_t rows = 1;
};

Tiling tiling_of(const Extent& extent, const PageSize& page, int scale) {
    const auto core = map_core(page);
    Tiling tiling{page, metres_on(core.width, scale), metres_on(core.height, scale), 1, 1};
    tiling.columns = pages_along(extent.right - extent.left, tiling.width);
    tiling.rows = pages_along(extent.high - extent.low, tiling.height);
    return tiling;
}

bool has_tree(const Part& part, double turned_deg, PageGround middle, const Tiling& tiling) {
    return std::ranges::any_of(part.trees, [&](const MapTree& tree) {
        const auto at = on_page(tree.at, turned_deg);
        return std::abs(at.right - middle.right) <= tiling.width / 2 + 1e-6 &&
               std::abs(at.up - middle.up) <= tiling.height / 2 + 1e-6;
    });
}

std::vector<MapWindow> windows_of(const Part& part, double turned_deg, const Tiling& tiling, int scale) {
    std::vector<MapWindow> windows;
    const auto middle = part.extent.middle();
    for (std::size_t row = 0; row < tiling.rows; ++row) {
        for (std::size_t column = 0; column < tiling.columns; ++column) {
            const double right = static_cast<double>(column) - static_cast<double>(tiling.columns - 1) / 2;
            const double down = static_cast<double>(row) - static_cast<double>(tiling.rows - 1) / 2;
            const PageGround at{middle.right + right * tiling.width, middle.up - down * tiling.height};
            if (has_tree(part, turned_deg, at, tiling)) {
                windows.push_back({tiling.page, scale, at, part.block});
            }
        }
    }
    return windows;
}

using Windows = std::vector<MapWindow>;

// Upright or on its side: whichever needs fewer pages; of equally many, the side that is shaped like the
// part.
std::optional<Windows> tiled(const Part& part, double turned_deg, const PageSize& paper, int scale) {
    std::optional<Windows> best;
    const auto& extent = part.extent;
    const bool is_broad = extent.right - extent.left > extent.high - extent.low;
    for (const auto& page : is_broad ? std::array{turned(paper), paper} : std::array{paper, turned(paper)}) {
        const auto tiling = tiling_of(extent, page, scale);
        if (tiling.columns * tiling.rows > 100 * most_pages) {
            continue;
        }
        auto windows = windows_of(part, turned_deg, tiling, scale);
        if (!best || windows.size() < best->size()) {
            best = std::move(windows);
        }
    }
    return best;
}

// On paper of either side.
std::optional<int> one_page_scale_of(const Extent& extent, const PageSize& paper) {
    const auto upright = one_page_scale(extent, paper);
    const auto aside = one_page_scale(extent, turned(paper));
    return upright && aside ? std::min(*upright, *aside) : upright ? upright : aside;
}

int chosen_scale(const Part& part, const PageSize& paper) {
    const int legible = legible_scale(usual_spacing(part.trees));
    return std::min(legible, one_page_scale_of(part.extent, paper).value_or(legible));
}

bool is_legible(const Part& part, int scale) {
    return usual_spacing(part.trees) >= metres_on(legible_distance, scale);
}

struct Planner {
    const FieldMap& map;
    PageSize paper;
    std::optional<int> scale;

    std::optional<FieldPlan> plan_of(const Part& part) const {
        const int denominator = scale.value_or(chosen_scale(part, paper));
        auto windows = tiled(part, map.turned_deg, paper, denominator);
        if (!windows) {
            return std::nullopt;
        }
        return FieldPlan{std::move(*windows), {}, is_legible(part, denominator)};
    }
    std::optional<FieldPlan> by_block(const std::vector<Part>& parts) const {
        FieldPlan all;
        for (const auto& part : parts) {
            auto plan = plan_of(part);
            if (!plan) {
                return std::nullopt;
            }
            all.is_legible = all.is_legible && plan->is_legible;
            std::ranges::move(plan->windows, std::back_inserter(all.windows));
        }
        return all;
    }
    std::optional<MapWindow> overview(const Part& whole) const {
        const auto denominator = one_page_scale_of(whole.extent, paper);
        const auto windows = denominator ? tiled(whole, map.turned_deg, paper, *denominator) : std::nullopt;
        return windows && windows->size() == 1 ? std::optional{windows->front()} : std::nullopt;
    }
};

bool is_one_good_page(const std::optional<FieldPlan>& whole, const std::optional<FieldPlan>& by_block) {
    if (!whole || whole->windows.size() != 1 || !whole->is_legible || !by_block) {
        return whole && whole->windows.size() == 1;
    }
    const auto smallest = std::ranges::max_element(by_block->windows, {}, &MapWindow::denominator);
    return whole->windows.front().denominator * 2 <= smallest->denominator * 3;
}

}  // namespace

PageGround on_page(math::PlanePoint spot, double turned_deg) {
    const double angle = turned_deg * std::numbers::pi / 180;
    return {spot.east * std::cos(angle) + spot.north * std::sin(angle),
            spot.north * std::cos(angle) - spot.east * std::sin(angle)};
}

Box map_box(const PageSize& page) {
    return {page_edge, page_edge + head, page.width - page_edge * 2,
            page.height - page_edge * 2 - head - foot};
}

Box map_core(const PageSize& page) {
    return inset(map_box(page), rim);
}

double usual_spacing(std::span<const MapTree> trees) {
    std::vector<math::PlanePoint> spots;
    for (const auto& tree : trees) {
        if (!tree.removed) {
            spots.push_back(tree.at);
        }
    }
    const math::PointTree tree(spots);
    std::vector<double> nearest;
    for (std::uint32_t i = 0; i < spots.size(); ++i) {
        nearest.push_back(tree.nearest_other(i));
    }
    const auto tenth = nearest.size() / 10;
    return nearest.empty() ? std::numeric_limits<double>::infinity()
                           : math::in_place(std::move(nearest), tenth);
}

std::optional<FieldPlan> plan_map(const FieldMap& map, const PageSize& paper,
                                  std::optional<int> denominator) {
    if (map.trees.empty()) {
        return std::nullopt;
    }
    const Planner planner{map, paper, denominator};
    const auto whole = whole_of(map);
    const auto parts = blocks_of(map);
    auto plan = planner.plan_of(whole);
    if (parts.size() > 1) {
        auto by_block = planner.by_block(parts);
        plan = is_one_good_page(plan, by_block) ? plan : by_block;
    }
    if (!plan || plan->windows.size() > most_pages) {
        return std::nullopt;
    }
    if (plan->windows.size() > 1) {
        plan->overview = planner.overview(whole);
    }
    return plan;
}

FieldPlan planned_map(const FieldMap& map, const PageSize& paper, std::optional<int> denominator) {
    auto plan = plan_map(map, paper, denominator);
    if (!plan) {
        throw Error(
            Trouble::input,
            about_table(Level::error, "tree",
                        say("The trees lie too far apart for a map that shows them one by one: it would need "
                            "more than 200 pages."),
                        say("Choose a block, larger paper or a smaller scale; or check whether a tree is "
                            "misplaced on the map.")));
    }
    return *plan;
}

double turn_to_rows_deg(std::span<const MapRow> rows) {
    // Twice the angle: a row and its way back are one direction. Longer rows weigh more.
    double across = 0;
    double along = 0;
    for (const auto& row : rows) {
        const double east = row.line.back().east - row.line.front().east;
        const double north = row.line.back().north - row.line.front().north;
        along += east * east - north * north;
        across += 2 * east * north;
    }
    return rows.empty() ? 0.0 : std::atan2(across, along) / 2 * 180 / std::numbers::pi;
}

}  // namespace pipward::paper
