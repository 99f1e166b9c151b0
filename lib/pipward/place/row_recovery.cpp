// SPDX-License-Identifier: MIT
#include "pipward/place/row_recovery.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>

#include "pipward/math/quantile.h"
#include "pipward/place/detail/near_trees.h"
#include "pipward/place/detail/numbering.h"
#include "pipward/place/detail/row_contest.h"
#include "pipward/place/detail/row_gaps.h"
#include "pipward/place/detail/row_noise.h"
#include "pipward/place/detail/row_question.h"
#include "pipward/place/detail/row_reading.h"
#include "pipward/place/detail/row_start.h"

namespace pipward::place {
namespace {

using detail::DecodedRow;
using detail::RowReading;
constexpr std::size_t fewest = 3;

Finding told(Level level, Sentence message, Sentence remedy) {
    return {level, "tree", {}, {}, {}, std::move(message), std::move(remedy)};
}

/// What was recovered, and what to ask.
struct Found {
    Recovery recovery{};
    std::optional<detail::Question> question{};
};

Found all_open(std::size_t trees, const detail::Refusal& refusal) {
    Found found{{}, refusal.question};
    found.recovery.trees.resize(trees);
    for (auto& tree : found.recovery.trees) {
        tree.doubt = say("no rows could be detected");
    }
    found.recovery.findings.push_back(told(Level::warning, refusal.words, refusal.remedy));
    return found;
}

/// The rows that a tree may belong to: that which it was traced in, or which stands nearest, and those
/// beside.
std::vector<std::vector<detail::RowChoice>> choices_of(std::span<const math::PlanePoint> plane,
                                                       const detail::NearTrees& near,
                                                       const RowReading& rows) {
    std::vector<std::vector<detail::RowChoice>> choices(plane.size());
    const auto count = static_cast<int>(rows.trace.rows.size());
    for (std::size_t i = 0; i < plane.size(); ++i) {
        int row = rows.trace.row_of[i];
        double nearest = 1e300;
        for (const auto other : near.of(i)) {
            const double far = math::length(plane[other] - plane[i]);
            if (rows.trace.row_of[i] < 0 && rows.trace.row_of[other] >= 0 && far < nearest) {
                nearest = far;
                row = rows.trace.row_of[other];
            }
        }
        for (int one = std::max(row - 1, 0); row >= 0 && one <= std::min(row + 1, count - 1); ++one) {
            const auto at = static_cast<std::size_t>(one);
            const auto foot = rows.trace.rows[at].curve.foot(plane[i]);
            const double slack = 3 * rows.spacing;
            if (one == row ||
                (foot.along > -slack && foot.along < rows.trace.rows[at].curve.length() + slack)) {
                choices[i].push_back({one, rows.phases[at].number_at(foot.along), foot.off});
            }
        }
    }
    return choices;
}

std::map<int, detail::RowMembers> members_of(std::span<const detail::RowOfPoint> points) {
    std::map<int, detail::RowMembers> rows;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (points[i].choice.row >= 0) {
            const auto& choice = points[i].choice;
            rows[choice.row].push_back({i, choice.number, choice.off, points[i].certainty});
        }
    }
    for (auto& [row, members] : rows) {
        std::ranges::sort(members, {}, &detail::RowMember::along);
    }
    std::erase_if(rows, [](const auto& row) { return detail::sure_members(row.second) < fewest; });
    return rows;
}

std::vector<detail::TakenRow> decoded_rows(const std::map<int, detail::RowMembers>& rows,
                                           const detail::PositionScale& scale) {
    std::vector<detail::TakenRow> taken;
    for (const auto& [row, members] : rows) {
        detail::TakenRow one{row, members, {}, scale};
        for (int turn = 0; turn < 3; ++turn) {
            one.points = detail::decode_members(members, one.scale);
            detail::refit(members, one.points, 1, one.scale);
        }
        one.points = detail::decode_members(members, one.scale);
        taken.push_back(std::move(one));
    }
    return taken;
}

std::vector<double> offs_along(std::span<const detail::TakenRow> rows) {
    std::vector<double> offs;
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < row.points.size(); ++i) {
            const double off =
                row.members[i].along - row.scale.origin - row.scale.step * row.points[i].number;
            if (row.points[i].stray < 0.5) {
                offs.push_back(off);
            }
        }
    }
    return offs;
}

double stray_share(std::span<const detail::TakenRow> rows) {
    double strays = 0;
    double all = 1;
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < row.points.size(); ++i) {
            if (row.members[i].certainty >= 0.5) {
                strays += row.points[i].stray;
                ++all;
            }
        }
    }
    return std::clamp(strays / all, 0.0005, 0.3);
}

bool beyond_break(const detail::RowPhase& phase, double number) {
    return std::ranges::any_of(phase.breaks, [&](double along) { return number > phase.number_at(along); });
}

NumberedTree numbered(const detail::RowMember& member, const detail::PlacedPoint& point,
                      const DecodedRow& row, const RowReading& found, double confidence) {
    NumberedTree tree;
    tree.row = row.taken.row;
    tree.position = point.number - row.start;
    tree.placed = tree.position >= 0;
    tree.off_row = std::abs(member.off);
    const auto& scale = row.taken.scale;
    tree.off_position = found.spacings[static_cast<std::size_t>(tree.row)] *
                        (member.along - scale.origin - scale.step * point.number);
    tree.confidence = member.certainty * point.certainty * row.certainty;
    tree.doubt = detail::doubt_of(member, point, row.certainty, tree.confidence, confidence);
    if (const auto& doubt = found.doubts[static_cast<std::size_t>(row.taken.row)]; !doubt.empty()) {
        tree.confidence = 0;
        tree.doubt = doubt;
    }
    if (tree.doubt.empty() &&
        beyond_break(found.phases[static_cast<std::size_t>(row.taken.row)], member.along)) {
        tree.confidence = 0;
        tree.doubt = say("the spacing changes before it: how many positions lie between is not clear");
    }
    return tree;
}

int last_number(const DecodedRow& row, double confidence) {
    int last = row.start;
    for (std::size_t i = 0; i < row.taken.points.size(); ++i) {
        const bool sure = row.taken.members[i].certainty * row.taken.points[i].certainty >= confidence;
        last = sure ? std::max(last, row.taken.points[i].number) : last;
    }
    return last;
}

/// A corner every fifth position follows any bend that rows have.
RecoveredRow made_out(const DecodedRow& row, const RowReading& found, const LonLat& middle,
                      double confidence) {
    const auto at = static_cast<std::size_t>(row.taken.row);
    const auto& scale = row.taken.scale;
    const auto& phase = found.phases[at];
    const int last = last_number(row, confidence);
    const auto along = [&](double number) { return phase.along_of(scale.origin + scale.step * number); };
    const double positions = std::max(last - row.start, 1);
    RecoveredRow made{{}, Metres{(along(last) - along(row.start)) / positions}, last - row.start + 1};
    if (last == row.start) {
        made.spacing = Metres{found.spacings[at]};
    }
    const auto add = [&](double number) {
        made.line.push_back(detail::from_plane(found.trace.rows[at].curve.at(along(number)), middle));
    };
    // A row of one position still needs a line, too short to hold a second.
    const double end = std::max<double>(last, row.start + 0.5);
    for (int number = row.start; number < end; number += 5) {
        add(number);
    }
    add(end);
    return made;
}

/// The number of each traced row, from 0, counted to the side that is wanted; and from which number on it is
/// not sure because of a row without trees.
struct RowNumbers {
    std::vector<int> number{};
    int rows = 0;
    int sure = 0;  // numbers below it are sure
};

RowNumbers row_numbers(const RowReading& rows, const detail::GapReading& gaps, const RecoveryRule& rule) {
    const auto count = rows.trace.rows.size();
    const bool right = rule.rows_to == Side::right;
    const bool asked = rule.empty_rows == EmptyRows::ask && !gaps.alleys;
    const bool counted = rule.empty_rows == EmptyRows::count || asked;
    RowNumbers numbers{std::vector<int>(count, 0), 0, 1'000'000};
    int next = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const auto row = right ? i : count - 1 - i;
        if (i > 0) {
            const int skipped = gaps.skipped[right ? row - 1 : row];
            next += 1 + (counted ? skipped : 0);
            if (skipped > 0 && asked) {
                numbers.sure = std::min(numbers.sure, next);
            }
        }
        numbers.number[row] = next;
    }
    numbers.rows = next + 1;
    return numbers;
}

/// Metres: the mean of those that are about as wide as most; 0 for none.
double usual_gap(std::span<const double> gaps) {
    const double most = math::median({gaps.begin(), gaps.end()});
    std::vector<double> like;
    std::ranges::copy_if(gaps, std::back_inserter(like),
                         [most](double gap) { return std::abs(gap - most) < 0.12 * most; });
    return like.empty() ? most : math::mean(like);
}

using Choices = std::vector<std::vector<detail::RowChoice>>;

/// Rows with their trees at positions: first by the rows alone, then by which positions are taken. `scale`
/// is left as it was taken to be in the end.
std::vector<detail::TakenRow> taken_rows(const Choices& choices, const RowReading& rows,
                                         detail::PositionScale& scale) {
    scale.noise = std::max(rows.along_noise, 0.9 * rows.noise.across / rows.spacing);
    scale.tails = rows.noise.tails;
    auto taken = decoded_rows(members_of(detail::weigh_rows(choices, rows.noise, {})), scale);
    for (int turn = 0; turn < 2; ++turn) {
        scale.stray = stray_share(taken);
        // Trees between the positions make the others look less exact than they are.
        const double seen = detail::median_noise(offs_along(taken));
        scale.noise =
            scale.stray > 0.02 ? std::max(0.5 * scale.noise, std::min(scale.noise, seen)) : scale.noise;
        taken = decoded_rows(members_of(detail::weigh_rows(choices, rows.noise, taken)), scale);
    }
    return taken;
}

std::vector<NumberedTree> all_with_few(std::size_t trees) {
    std::vector<NumberedTree> open(trees);
    for (auto& tree : open) {
        tree.doubt = say("its row has too few trees");
    }
    return open;
}

Recovery measured(const RowReading& rows) {
    Recovery recovery;
    recovery.row_distance = Metres{usual_gap(rows.trace.gaps)};
    recovery.spacing = Metres{rows.spacing};
    recovery.noise_across = Metres{rows.noise.across};
    recovery.noise_along = Metres{rows.along_noise * rows.spacing};
    return recovery;
}

void number_row(const DecodedRow& row, const RowReading& rows, const RowNumbers& numbers, double strict,
                Recovery& recovery) {
    const int number = numbers.number[static_cast<std::size_t>(row.taken.row)];
    for (std::size_t i = 0; i < row.taken.points.size(); ++i) {
        const auto& member = row.taken.members[i];
        auto& tree = recovery.trees[member.tree];
        tree = numbered(member, row.taken.points[i], row, rows, strict);
        tree.row = number;
        if (number >= numbers.sure) {
            tree.confidence = 0;
            tree.doubt = say("a row without trees may lie before its row");
        }
    }
}

double bearing_of(const Recovery& recovery) {
    const auto& longest = *std::ranges::max_element(recovery.made_out, {}, &RecoveredRow::positions);
    return longest.line.size() >= 2 ? way_between(longest.line.front(), longest.line.back()).bearing_deg : 0;
}

Finding no_common_edge() {
    return told(Level::warning,
                say("The rows do not begin at a common edge, or are too few to show one: where first trees "
                    "are missing the numbers cannot be known."),
                say("Count each row from its first tree with begin first_tree, or lay the rows with row-lay "
                    "first."));
}

Found recovered(std::span<const LonLat> trees, const RecoveryRule& rule) {
    const auto middle = detail::middle_of(trees);
    const auto plane = detail::to_plane(trees, middle);
    const double nearest = 1.1 * detail::usual_step(plane);
    if (plane.size() < 6 || !(nearest > 0.05)) {
        return all_open(trees.size(), detail::no_rows());
    }
    const double step = rule.spacing ? std::min(rule.spacing->value, 1.5 * nearest) : nearest;
    const detail::NearTrees near(plane, 9 * step);
    RowReading rows;
    if (const auto refusal = detail::read_rows(plane, near, step, rule, rows)) {
        return all_open(trees.size(), *refusal);
    }
    detail::PositionScale scale;
    std::vector<DecodedRow> decoded;
    for (auto& row : taken_rows(choices_of(plane, near, rows), rows, scale)) {
        decoded.push_back({std::move(row)});
    }
    if (decoded.empty()) {
        return all_open(trees.size(), detail::no_rows());
    }
    Found found{measured(rows)};
    auto& recovery = found.recovery;
    const auto numbers = row_numbers(rows, detail::read_gaps(rows.trace.gaps), rule);
    const auto starts = detail::find_starts(decoded, rows, rule);
    if (!starts.clear) {
        recovery.findings.push_back(no_common_edge());
    }
    if (numbers.sure < numbers.rows) {
        found.question = detail::which_rows(rule);
    } else if (starts.ask) {
        found.question = detail::which_beginning(rule);
    }
    const double strict = detail::wanted_confidence(
        rule.confidence, std::max(scale.noise, rows.noise.across / rows.noise.distance));
    recovery.trees = all_with_few(trees.size());
    recovery.rows = numbers.rows;
    recovery.made_out.resize(static_cast<std::size_t>(numbers.rows));
    for (const auto& row : decoded) {
        number_row(row, rows, numbers, strict, recovery);
        const int number = numbers.number[static_cast<std::size_t>(row.taken.row)];
        recovery.made_out[static_cast<std::size_t>(number)] = made_out(row, rows, middle, strict);
    }
    recovery.bearing_deg = bearing_of(recovery);
    return found;
}

}  // namespace

Recovery recover_rows(std::span<const LonLat> trees, const RecoveryRule& rule) {
    auto found = recovered(trees, rule);
    if (found.question) {
        found.recovery.question = detail::asked(*found.question, [&](const RecoveryRule& answer) {
            return recovered(trees, answer).recovery.trees;
        });
    }
    return std::move(found.recovery);
}

}  // namespace pipward::place
