// SPDX-License-Identifier: MIT
#include "pipward/place/row_recovery.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

#include "pipward/place/detail/numbering.h"
#include "pipward/place/detail/row_contest.h"
#include "pipward/place/detail/row_lines.h"
#include "pipward/place/detail/row_pattern.h"
#include "pipward/place/detail/row_starts.h"

namespace pipward::place {
namespace {

using std::numbers::pi;
constexpr std::size_t fewest = 3;
constexpr std::size_t enough_points = 3000;

Finding told(Level level, Sentence message, Sentence remedy) {
    return {level, "tree", {}, {}, {}, std::move(message), std::move(remedy)};
}

Recovery all_open(std::size_t trees, const Sentence& why, const Sentence& remedy) {
    Recovery recovery;
    recovery.trees.resize(trees);
    for (auto& tree : recovery.trees) {
        tree.doubt = say("no rows could be detected");
    }
    recovery.findings.push_back(told(Level::warning, why, remedy));
    return recovery;
}

detail::FamilySearch search_of(const RecoveryRule& rule) {
    detail::FamilySearch search;
    if (rule.row_distance) {
        search.least = 0.85 * rule.row_distance->value;
        search.most = 1.15 * rule.row_distance->value;
    }
    search.bearing_deg = rule.bearing_deg;
    return search;
}

/// How the rows lie on the plane: along their numbering and to the right of it.
struct RowFrame {
    math::PlanePoint ahead;
    math::PlanePoint right;

    detail::RowPoint of(math::PlanePoint point) const { return {dot(point, ahead), dot(point, right)}; }
    math::PlanePoint back(detail::RowPoint point) const { return ahead * point.along + right * point.across; }
};

/// Of the two senses of a line, the wanted one, or the one to the north.
RowFrame frame_of(double bearing_deg, const RecoveryRule& rule) {
    const bool against = std::abs(std::remainder(bearing_deg - rule.bearing_deg.value_or(0), 360)) > 90;
    const auto ahead = math::way_at(against ? bearing_deg + 180 : bearing_deg);
    return {ahead, left_of(ahead) * -1};
}

std::vector<detail::RowPoint> turned(std::span<const math::PlanePoint> plane, const RowFrame& frame) {
    std::vector<detail::RowPoint> result;
    for (const auto& point : plane) {
        result.push_back(frame.of(point));
    }
    return result;
}

/// The points of each row in the order in which they stand.
std::map<int, detail::RowMembers> members_of(std::span<const detail::RowPoint> points,
                                             std::span<const detail::RowOfPoint> fit) {
    std::map<int, detail::RowMembers> rows;
    for (std::size_t i = 0; i < points.size(); ++i) {
        rows[fit[i].row].push_back({i, points[i].along, fit[i].off, fit[i].certainty});
    }
    for (auto& [row, members] : rows) {
        std::ranges::sort(members, {}, &detail::RowMember::along);
    }
    std::erase_if(rows, [](const auto& row) { return detail::sure_members(row.second) < fewest; });
    return rows;
}

std::vector<std::vector<double>> sample_of(const std::map<int, detail::RowMembers>& rows) {
    std::vector<std::vector<double>> sample;
    std::size_t points = 0;
    for (const auto& [row, members] : rows) {
        if (points < enough_points) {
            sample.push_back(detail::sure_places(members));
            points += members.size();
        }
    }
    return sample;
}

struct DecodedRow {
    detail::TakenRow taken{};
    detail::RowStart start{};
};

int first_number(const detail::TakenRow& row) {
    for (const double sure : {0.8, 0.5, 0.0}) {
        for (const auto& point : row.points) {
            if (point.certainty >= sure) {
                return point.number;
            }
        }
    }
    return 0;
}

detail::TakenRow decoded(int row, const detail::RowMembers& members, double spacing, double noise) {
    detail::TakenRow taken{
        row, members, {}, {detail::origin_of(detail::sure_places(members), spacing), spacing, noise}};
    for (int turn = 0; turn < 3; ++turn) {
        taken.points = detail::decode_members(members, taken.scale);
        detail::refit(members, taken.points, spacing, taken.scale);
    }
    taken.points = detail::decode_members(members, taken.scale);
    return taken;
}

std::vector<detail::TakenRow> decoded_rows(const std::map<int, detail::RowMembers>& rows, double spacing,
                                           double noise) {
    std::vector<detail::TakenRow> taken;
    for (const auto& [row, members] : rows) {
        taken.push_back(decoded(row, members, spacing, noise));
    }
    return taken;
}

std::vector<DecodedRow> with_starts(std::vector<detail::TakenRow> taken, double distance) {
    std::vector<DecodedRow> rows;
    for (auto& row : taken) {
        const double doubt = row.scale.noise / std::sqrt(static_cast<double>(row.members.size()));
        const detail::RowStart start{row.row * distance, row.scale.origin, row.scale.step, first_number(row),
                                     doubt};
        rows.push_back({std::move(row), start});
    }
    return rows;
}

void count_from_first_trees(std::vector<DecodedRow>& rows) {
    for (auto& row : rows) {
        row.start.number = row.start.first;
        row.start.certainty = 1;
    }
}

void find_starts(std::vector<DecodedRow>& rows, const RecoveryRule& rule, Recovery& recovery) {
    if (rule.from_first_tree) {
        count_from_first_trees(rows);
        return;
    }
    std::vector<detail::RowStart> starts;
    for (const auto& row : rows) {
        starts.push_back(row.start);
    }
    if (detail::find_edge(starts)) {
        for (std::size_t i = 0; i < rows.size(); ++i) {
            rows[i].start = starts[i];
        }
        return;
    }
    for (auto& row : rows) {
        row.start.number = row.start.first;
        row.start.certainty = 0;
    }
    recovery.findings.push_back(told(Level::warning,
                                     say("The rows do not begin at a common edge, or are too few to show "
                                         "one: where first trees are missing the numbers cannot be known."),
                                     say("Count each row from its first tree with begin first_tree, or lay "
                                         "the rows with row-lay first.")));
}

NumberedTree numbered(const detail::RowMember& member, const detail::PlacedPoint& point,
                      const DecodedRow& row, int row_number, double confidence) {
    NumberedTree tree;
    tree.row = row_number;
    tree.position = point.number - row.start.number;
    tree.placed = tree.position >= 0;
    tree.off_row = std::abs(member.off);
    const auto& scale = row.taken.scale;
    tree.off_position = member.along - scale.origin - scale.step * point.number;
    tree.confidence = member.certainty * point.certainty * row.start.certainty;
    tree.doubt = detail::doubt_of(member, point, row.start.certainty, tree.confidence, confidence);
    return tree;
}

void put_together(const std::vector<DecodedRow>& rows, const RecoveryRule& rule, Recovery& recovery) {
    const int lowest = rows.front().taken.row;
    const int highest = rows.back().taken.row;
    for (const auto& row : rows) {
        const int number = rule.rows_to == Side::right ? row.taken.row - lowest : highest - row.taken.row;
        for (std::size_t i = 0; i < row.taken.points.size(); ++i) {
            const auto& member = row.taken.members[i];
            recovery.trees[member.tree] = numbered(member, row.taken.points[i], row, number, rule.confidence);
        }
    }
    recovery.rows = highest - lowest + 1;
}

int last_number(const DecodedRow& row, double confidence) {
    int last = row.start.number;
    for (std::size_t i = 0; i < row.taken.points.size(); ++i) {
        const bool sure = row.taken.members[i].certainty * row.taken.points[i].certainty >= confidence;
        last = sure ? std::max(last, row.taken.points[i].number) : last;
    }
    return last;
}

/// A corner every tenth position follows any bend that rows have.
RecoveredRow made_out(const DecodedRow& row, const detail::FittedRows& fit, const RowFrame& frame,
                      const LonLat& middle, double confidence) {
    const auto& scale = row.taken.scale;
    const int last = last_number(row, confidence);
    RecoveredRow made{{}, Metres{scale.step}, last - row.start.number + 1};
    const auto add = [&](double number) {
        const double along = scale.origin + scale.step * number;
        made.line.push_back(detail::from_plane(frame.back({along, fit.line(row.taken.row, along)}), middle));
    };
    // A row of one position still needs a line, too short to hold a second.
    const double end = std::max<double>(last, row.start.number + 0.5);
    for (int number = row.start.number; number < end; number += 10) {
        add(number);
    }
    add(end);
    return made;
}

std::optional<detail::FoundSpacing> spacing_of(const std::map<int, detail::RowMembers>& rows,
                                               const RecoveryRule& rule) {
    const double least = rule.spacing ? 0.85 * rule.spacing->value : 0.7;
    const double most = rule.spacing ? 1.15 * rule.spacing->value : 6.0;
    return detail::find_spacing(sample_of(rows), least, most);
}

}  // namespace

Recovery recover_rows(std::span<const LonLat> trees, const RecoveryRule& rule) {
    const auto middle = detail::middle_of(trees);
    const auto plane = detail::to_plane(trees, middle);
    const auto family = detail::find_lines(plane, search_of(rule));
    if (!family) {
        return all_open(
            trees.size(), say("No regular rows can be detected among the trees."),
            say("Give the row distance and the bearing, number one block at a time, or lay its rows with "
                "row-lay first."));
    }
    if (family->ambiguous && !rule.bearing_deg) {
        return all_open(
            trees.size(),
            say("The trees stand in regular lines both ways: it is not clear which are the rows."),
            say("Give the rough bearing of the rows."));
    }
    const auto frame = frame_of(family->rows.bearing_deg, rule);
    const auto points = turned(plane, frame);
    const auto fit = detail::fit_rows(points, family->rows.distance);
    const auto rows = members_of(points, fit.points);
    const auto spacing = rows.empty() ? std::nullopt : spacing_of(rows, rule);
    if (!spacing) {
        return all_open(
            trees.size(), say("No regular spacing can be detected along the rows."),
            say("Give the spacing, measure the trees more exactly, or lay the rows with row-lay first."));
    }
    Recovery recovery;
    recovery.row_distance = Metres{fit.distance};
    recovery.spacing = Metres{spacing->spacing};
    recovery.noise_across = Metres{fit.noise};
    recovery.noise_along =
        Metres{std::max(spacing->spacing / (2 * pi) * std::sqrt(-std::log(spacing->coherence)), 0.02)};
    recovery.trees.resize(trees.size());
    for (std::size_t i = 0; i < trees.size(); ++i) {
        recovery.trees[i].off_row = std::abs(fit.points[i].off);
        recovery.trees[i].doubt = say("its row has too few trees");
    }
    const double noise = std::max(recovery.noise_along.value, 0.9 * fit.noise);
    auto taken = decoded_rows(rows, spacing->spacing, noise);
    for (int turn = 0; turn < 2; ++turn) {
        const auto weighed = detail::weigh_rows(points, fit, taken);
        taken = decoded_rows(members_of(points, weighed), spacing->spacing, noise);
    }
    auto started = with_starts(std::move(taken), fit.distance);
    find_starts(started, rule, recovery);
    auto strict = rule;
    strict.confidence = detail::wanted_confidence(
        rule.confidence, std::max(noise / spacing->spacing, fit.noise / fit.distance));
    put_together(started, strict, recovery);
    recovery.made_out.resize(static_cast<std::size_t>(recovery.rows));
    for (const auto& row : started) {
        const int number = rule.rows_to == Side::right ? row.taken.row - started.front().taken.row
                                                       : started.back().taken.row - row.taken.row;
        recovery.made_out[static_cast<std::size_t>(number)] =
            made_out(row, fit, frame, middle, strict.confidence);
    }
    const auto& longest = *std::ranges::max_element(recovery.made_out, {}, &RecoveredRow::positions);
    recovery.bearing_deg = way_between(longest.line.front(), longest.line.back()).bearing_deg;
    return recovery;
}

}  // namespace pipward::place
