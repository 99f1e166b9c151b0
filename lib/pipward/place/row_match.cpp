// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "pipward/math/distributions.h"
#include "pipward/math/line.h"
#include "pipward/math/quantile.h"
#include "pipward/place/detail/numbering.h"
#include "pipward/place/detail/row_noise.h"
#include "pipward/place/row_recovery.h"

namespace pipward::place {
namespace {

/// The density, in 1 / m across, of trees that belong to no row at all: common practice, no source.
constexpr double per_metre_astray = 0.0002;

// Metres: a row's ends go straight on; no orchard is as long.
constexpr double straight_on = 10'000;

/// The rows as lines in the plane of the trees.
struct Ground {
    std::vector<math::PlanePoint> trees;
    std::vector<math::Line> lines;  // longer than the rows at both ends
    std::vector<std::array<math::PlanePoint, 2>> ends;
};

Ground ground_of(std::span<const LonLat> trees, std::span<const KnownRow> rows) {
    std::vector<LonLat> all(trees.begin(), trees.end());
    for (const auto& row : rows) {
        for (const auto& corner : row.line) {
            all.push_back(corner.at);
        }
    }
    const auto plane = detail::to_plane(all, detail::middle_of(all));
    Ground ground{{plane.begin(), plane.begin() + static_cast<std::ptrdiff_t>(trees.size())}, {}, {}};
    auto next = plane.begin() + static_cast<std::ptrdiff_t>(trees.size());
    for (const auto& row : rows) {
        const std::span<const math::PlanePoint> line(next, row.line.size());
        ground.lines.emplace_back(math::extended(line, straight_on));
        ground.ends.push_back({line.front(), line.back()});
        next += std::ssize(line);
    }
    return ground;
}

/// Up to three quarters of a spacing beyond the first and the last position.
bool is_within(const math::Foot& foot, const KnownRow& row) {
    const double slack = 0.75 * row.spacing.value;
    return foot.along > -slack && foot.along < (row.positions - 1) * row.spacing.value + slack;
}

struct Nearest {
    int row = -1;  // into the rows; -1 where none is near
    math::Foot foot{{}, 0, std::numeric_limits<double>::infinity(), {}};
    double second = std::numeric_limits<double>::infinity();  // metres off the next nearest row
};

Nearest nearest_of(math::PlanePoint tree, const Ground& ground, std::span<const KnownRow> rows) {
    Nearest nearest;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        auto foot = ground.lines[i].foot(tree);
        foot.along -= straight_on;
        if (!is_within(foot, rows[i])) {
            continue;
        }
        if (foot.off < nearest.foot.off) {
            nearest.second = nearest.foot.off;
            nearest.foot = foot;
            nearest.row = static_cast<int>(i);
        } else {
            nearest.second = std::min(nearest.second, foot.off);
        }
    }
    return nearest;
}

/// Standard deviation in metres, 2 cm at the least.
double across_noise(std::span<const Nearest> nearest) {
    std::vector<double> offs;
    for (const auto& one : nearest) {
        if (one.row >= 0) {
            offs.push_back(one.foot.off);
        }
    }
    return std::max(detail::median_noise(offs), 0.02);
}

/// The same along, by each row's own scale, for rows may differ; in metres of the widest.
double along_noise(std::span<const Nearest> nearest, std::span<const KnownRow> rows) {
    double largest = 0;
    std::vector<double> offs;
    double spacing = 0;
    for (const auto& one : nearest) {
        if (one.row >= 0) {
            const double step = rows[static_cast<std::size_t>(one.row)].spacing.value;
            offs.push_back(std::remainder(one.foot.along, step) / step);
            spacing = std::max(spacing, step);
        }
    }
    largest = offs.empty() ? 0 : detail::folded_noise(offs, 1.0) * spacing;
    return std::max(largest, 0.02);
}

/// Bayes' theorem over the two nearest rows and none at all, 0..1.
double row_certainty(const Nearest& nearest, double noise) {
    const double own = math::normal_density(nearest.foot.off, noise);
    return own / (own + math::normal_density(nearest.second, noise) + per_metre_astray);
}

constexpr int farthest_shift = 2;  // positions, and rows, that a whole survey may be off

/// By how much all points lie off the rows together.
struct CommonOffset {
    math::PlanePoint way{};
    double positions = 0;  // along
    int rows = 0;          // across, in the order of the rows
    bool clear = true;     // else another one does nearly as well
};

struct Block {
    math::PlanePoint ahead{};
    math::PlanePoint next{};  // from a row to the next; no length for a single one
    double spacing = 1;       // the median
};

Block block_of(const Ground& ground, std::span<const KnownRow> rows) {
    Block block;
    std::vector<double> spacings;
    std::vector<double> across;
    math::PlanePoint sum{};
    std::vector<math::PlanePoint> middles;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto [from, to] = ground.ends[i];
        sum = sum + math::unit(to - from);
        middles.push_back((from + to) * 0.5);
        spacings.push_back(rows[i].spacing.value);
    }
    block.ahead = math::unit(sum);
    block.spacing = math::median(spacings);
    for (std::size_t i = 1; i < middles.size(); ++i) {
        across.push_back(dot(middles[i] - middles[i - 1], left_of(block.ahead)));
    }
    block.next = across.empty() ? math::PlanePoint{} : left_of(block.ahead) * math::median(across);
    return block;
}

/// How many trees stand at the rows' positions, were they moved back by so much.
std::ptrdiff_t inside(const Ground& ground, std::span<const KnownRow> rows, math::PlanePoint way,
                      double farthest) {
    return std::ranges::count_if(ground.trees, [&](math::PlanePoint tree) {
        const auto nearest = nearest_of(tree - way, ground, rows);
        if (nearest.row < 0 || nearest.foot.off > farthest) {
            return false;
        }
        const auto& row = rows[static_cast<std::size_t>(nearest.row)];
        const double at = nearest.foot.along / row.spacing.value;
        return at > -0.5 && at < row.positions - 0.5;
    });
}

/// Where trees stand beyond the rows' ends, or beside the outermost row, on one side, and none on the other,
/// the survey lies off as a whole: the ends tell by how many positions and rows.
CommonOffset common_offset(const Ground& ground, std::span<const KnownRow> rows) {
    CommonOffset offset;
    const auto block = block_of(ground, rows);
    const double next = math::length(block.next);
    const double farthest = next > 0 ? next / 2 : block.spacing;
    const auto seen = inside(ground, rows, {}, farthest);
    const auto clearly = std::max<std::ptrdiff_t>(3, std::ssize(rows) / 2);
    auto most = seen;
    std::ptrdiff_t second = 0;
    const auto look = [&](math::PlanePoint way, int positions, int across) {
        const auto here = inside(ground, rows, way, farthest);
        if (here > most) {
            second = most;
            most = here;
            offset.way = way;
            offset.positions = positions;
            offset.rows = across;
        } else {
            second = std::max(second, here);
        }
    };
    for (int shift = -farthest_shift; shift <= farthest_shift; ++shift) {
        if (shift != 0) {
            look(block.ahead * (shift * block.spacing), shift, 0);
            if (next > 0) {
                look(block.next * shift, 0, shift);
            }
        }
    }
    if (most - seen < 3) {
        return {};
    }
    offset.clear = most - seen >= clearly && most - second >= 3;
    return offset;
}

Sentence row_offset_words(int rows) {
    if (rows > 0) {
        return rows == 1 ? say("All points seem to lie 1 row on.")
                         : say("All points seem to lie {} rows on.", rows);
    }
    return rows == -1 ? say("All points seem to lie 1 row back.")
                      : say("All points seem to lie {} rows back.", -rows);
}

Sentence position_offset_words(int positions) {
    if (positions > 0) {
        return positions == 1 ? say("All points seem to lie 1 position on.")
                              : say("All points seem to lie {} positions on.", positions);
    }
    return positions == -1 ? say("All points seem to lie 1 position back.")
                           : say("All points seem to lie {} positions back.", -positions);
}

Sentence offset_words(const CommonOffset& offset) {
    return offset.rows != 0 ? row_offset_words(static_cast<int>(offset.rows))
                            : position_offset_words(static_cast<int>(offset.positions));
}

Finding offset_finding(const CommonOffset& offset) {
    const auto remedy = offset.clear
                            ? say("They were numbered as if moved back. Check one tree in the field.")
                            : say("Check one tree in the field, and move the points or the rows.");
    return {Level::warning, "tree", {}, {}, {}, offset_words(offset), remedy};
}

}  // namespace

Recovery match_rows(std::span<const LonLat> trees, std::span<const KnownRow> rows, const RecoveryRule& rule) {
    Recovery recovery;
    recovery.trees.resize(trees.size());
    recovery.rows = static_cast<int>(rows.size());
    auto ground = ground_of(trees, rows);
    const auto offset = rows.empty() ? CommonOffset{} : common_offset(ground, rows);
    if (offset.positions != 0 || offset.rows != 0) {
        recovery.findings.push_back(offset_finding(offset));
        for (auto& tree : ground.trees) {
            tree = tree - offset.way;
        }
    }
    std::vector<Nearest> nearest;
    for (const auto& tree : ground.trees) {
        nearest.push_back(nearest_of(tree, ground, rows));
    }
    recovery.noise_across = Metres{across_noise(nearest)};
    recovery.noise_along = Metres{along_noise(nearest, rows)};
    const double noise = std::max(recovery.noise_across.value, recovery.noise_along.value);
    std::vector<detail::RowMembers> members(rows.size());
    for (std::size_t i = 0; i < trees.size(); ++i) {
        recovery.trees[i].doubt = say("no row is near");
        if (nearest[i].row >= 0) {
            members[static_cast<std::size_t>(nearest[i].row)].push_back(
                {i, nearest[i].foot.along, nearest[i].foot.off, row_certainty(nearest[i], noise)});
        }
    }
    for (std::size_t row = 0; row < rows.size(); ++row) {
        std::ranges::sort(members[row], {}, &detail::RowMember::along);
        detail::PositionScale scale{0, rows[row].spacing.value, noise};
        scale.lowest = 0;
        scale.highest = rows[row].positions - 1;
        const auto points = detail::decode_members(members[row], scale);
        const double wanted = detail::wanted_confidence(rule.confidence, noise / scale.step);
        for (std::size_t i = 0; i < points.size(); ++i) {
            const auto& member = members[row][i];
            auto& tree = recovery.trees[member.tree];
            tree.row = static_cast<int>(row);
            tree.position = std::clamp(points[i].number, scale.lowest, scale.highest);
            tree.placed = true;
            tree.off_row = member.off;
            tree.off_position = member.along - scale.step * points[i].number;
            tree.confidence = member.certainty * points[i].certainty;
            tree.doubt = detail::doubt_of(member, points[i], 1, tree.confidence, wanted);
            if (!offset.clear) {
                tree.confidence = 0;
                tree.doubt = say("the points lie off the rows as a whole");
            }
        }
    }
    return recovery;
}

}  // namespace pipward::place
