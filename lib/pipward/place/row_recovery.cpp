// SPDX-License-Identifier: MIT
#include "pipward/place/row_recovery.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <numbers>

#include "pipward/math/quantile.h"
#include "pipward/place/detail/near_trees.h"
#include "pipward/place/detail/numbering.h"
#include "pipward/place/detail/row_break.h"
#include "pipward/place/detail/row_contest.h"
#include "pipward/place/detail/row_direction.h"
#include "pipward/place/detail/row_edge.h"
#include "pipward/place/detail/row_gaps.h"
#include "pipward/place/detail/row_noise.h"
#include "pipward/place/detail/row_phase.h"
#include "pipward/place/detail/row_spacing.h"
#include "pipward/place/detail/row_trace.h"

namespace pipward::place {
namespace {

using std::numbers::pi;
constexpr std::size_t fewest = 3;
constexpr std::size_t enough_points = 3000;
constexpr std::size_t short_segment = 16;  // trees of a row that are held against one spacing
constexpr std::size_t long_segment = 1000;

Finding told(Level level, Sentence message, Sentence remedy) {
    return {level, "tree", {}, {}, {}, std::move(message), std::move(remedy)};
}

/// What one answer would be, and the rule with it.
struct Variant {
    RecoveryRule rule{};
    Sentence words{};
    std::string option{};
    std::string value{};
};

struct Question {
    Sentence words{};
    std::vector<Variant> variants{};
};

/// What was recovered, and what to ask.
struct Found {
    Recovery recovery{};
    std::optional<Question> question{};
};

Found all_open(std::size_t trees, const Sentence& why, const Sentence& remedy,
               std::optional<Question> question = {}) {
    Found found{{}, std::move(question)};
    found.recovery.trees.resize(trees);
    for (auto& tree : found.recovery.trees) {
        tree.doubt = say("no rows could be detected");
    }
    found.recovery.findings.push_back(told(Level::warning, why, remedy));
    return found;
}

Question which_bearing(const RecoveryRule& rule, double one, double other) {
    Question question{say("Which way do the rows run?"), {}};
    for (const double bearing : {one, other}) {
        auto variant = rule;
        variant.bearing_deg = std::round(std::fmod(bearing + 360, 360.0));
        question.variants.push_back({variant, say("They run at {:.0f} degrees.", *variant.bearing_deg),
                                     "bearing", fmt::format("{:.0f}", *variant.bearing_deg)});
    }
    return question;
}

Question which_spacing(const RecoveryRule& rule, double one, double other) {
    Question question{say("How far apart are the positions in a row?"), {}};
    for (const double spacing : {other, one}) {
        auto variant = rule;
        variant.spacing = Metres{spacing};
        question.variants.push_back({variant,
                                     spacing > one
                                         ? say("{:.2f} m, with other trees between them.", spacing)
                                         : say("{:.2f} m, most of every second one empty.", spacing),
                                     "spacing", fmt::format("{:.2f}", spacing)});
    }
    return question;
}

Question which_beginning(const RecoveryRule& rule) {
    Question question{say("Some rows begin later than others: are trees missing there?"), {}};
    auto bent = rule;
    bent.begin = RowBegin::bent_edge;
    question.variants.push_back({bent, say("No, the edge turns: they begin there."), "begin", "bent_edge"});
    auto edge = rule;
    edge.begin = RowBegin::edge;
    question.variants.push_back({edge, say("Yes, all rows count from one edge."), "begin", "edge"});
    return question;
}

Question which_rows(const RecoveryRule& rule) {
    Question question{say("There is room for a row without trees: does it have a number?"), {}};
    auto skip = rule;
    skip.empty_rows = EmptyRows::skip;
    question.variants.push_back({skip, say("No, it is an alley."), "empty-rows", "skip"});
    auto count = rule;
    count.empty_rows = EmptyRows::count;
    question.variants.push_back({count, say("Yes, it is a row."), "empty-rows", "count"});
    return question;
}

/// Rows that were followed, and positions along them.
struct Rows {
    detail::RowTrace trace{};
    std::vector<detail::RowPhase> phases{};  // of each row
    std::vector<double> spacings{};          // metres, of each row
    std::vector<Sentence> doubts{};          // why no tree of the row can be numbered; empty where some can
    double spacing = 0;                      // metres, of most
    detail::RowNoise noise{};
    double along_noise = 0;  // positions
    bool uneven = false;     // spacings wander, and noise hides how
    bool merged = false;     // two rows seem to have been taken for one
    double wander = 0;       // positions: by how much rows deviate from even spacing, piece by piece
};

std::vector<double> alongs_of(const detail::TracedRow& row, std::span<const math::PlanePoint> plane) {
    std::vector<double> along;
    for (const auto tree : row.trees) {
        along.push_back(row.curve.foot(plane[tree]).along);
    }
    return along;
}

std::vector<std::vector<double>> segments_of(const std::vector<std::vector<double>>& rows,
                                             std::size_t segment = short_segment) {
    std::vector<std::vector<double>> segments;
    std::size_t points = 0;
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < row.size() && points < enough_points; i += segment) {
            const auto end = std::min(i + segment, row.size());
            segments.emplace_back(row.begin() + static_cast<std::ptrdiff_t>(i),
                                  row.begin() + static_cast<std::ptrdiff_t>(end));
            points += end - i;
        }
    }
    return segments;
}

std::optional<detail::FoundSpacing> spacing_of(const std::vector<std::vector<double>>& rows,
                                               const RecoveryRule& rule, std::size_t segment) {
    const double least = rule.spacing ? 0.85 * rule.spacing->value : 0.7;
    const double most = rule.spacing ? 1.15 * rule.spacing->value : 6.0;
    return detail::find_spacing(segments_of(rows, segment), least, most);
}

/// The rows that a tree may belong to: that which it was traced in, or which stands nearest, and those
/// beside.
std::vector<std::vector<detail::RowChoice>> choices_of(std::span<const math::PlanePoint> plane,
                                                       const detail::NearTrees& near, const Rows& rows) {
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

struct DecodedRow {
    detail::TakenRow taken{};
    int start = 0;         // number of the row's first position
    double certainty = 0;  // that it is the first
};

/// The first tree that rather has a position than none.
const detail::PlacedPoint& first_point(const detail::TakenRow& row) {
    const auto found =
        std::ranges::find_if(row.points, [](const auto& point) { return point.certainty >= 0.5; });
    return found == row.points.end() ? row.points.front() : *found;
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

double share_missing(std::span<const DecodedRow> rows) {
    std::vector<double> shares;
    for (const auto& row : rows) {
        shares.push_back(row.taken.scale.missing);
    }
    return math::median(shares);
}

/// A line across all rows, from the middle of the middle one on at right angles: where each row meets it,
/// metres along, and how far across that is.
std::vector<detail::RowFoot> middles_of(const Rows& found) {
    const auto& rows = found.trace.rows;
    const auto middle = rows.size() / 2;
    std::vector<detail::RowFoot> feet(rows.size());
    feet[middle].along = rows[middle].curve.length() / 2;
    for (std::size_t row = middle + 1; row < rows.size(); ++row) {
        const auto from = rows[row - 1].curve.at(feet[row - 1].along);
        feet[row] = {rows[row].curve.foot(from).along, feet[row - 1].off + found.trace.gaps[row - 1]};
    }
    for (std::size_t row = middle; row-- > 0;) {
        const auto from = rows[row + 1].curve.at(feet[row + 1].along);
        feet[row] = {rows[row].curve.foot(from).along, feet[row + 1].off - found.trace.gaps[row]};
    }
    return feet;
}

/// True where it should be asked.
bool find_beginnings(std::vector<DecodedRow>& rows, const Rows& found, const RecoveryRule& rule,
                     Recovery& recovery) {
    for (auto& row : rows) {
        const auto& first = first_point(row.taken);
        row.start = first.number;
        row.certainty = rule.begin == RowBegin::first_tree ? first.certainty : 0;
    }
    if (rule.begin == RowBegin::first_tree) {
        return false;
    }
    std::vector<detail::RowBeginning> beginnings;
    const auto middle = middles_of(found);
    for (const auto& row : rows) {
        const auto at = static_cast<std::size_t>(row.taken.row);
        const double spacing = found.spacings[at];
        const auto& scale = row.taken.scale;
        const auto trees = std::min<double>(static_cast<double>(row.taken.members.size()), 12);
        const double doubt = spacing * std::hypot(found.along_noise / std::sqrt(trees), found.wander);
        const double along = found.phases[at].along_of(scale.origin + scale.step * row.start);
        beginnings.push_back({middle[at].off, along - middle[at].along, spacing, doubt});
    }
    const auto edge = rule.begin == RowBegin::bent_edge
                          ? detail::find_bent_edge(beginnings, share_missing(rows))
                          : detail::find_edge(beginnings, share_missing(rows), rule.begin == RowBegin::edge);
    if (!edge.clear) {
        recovery.findings.push_back(
            told(Level::warning,
                 say("The rows do not begin at a common edge, or are too few to show "
                     "one: where first trees are missing the numbers cannot be known."),
                 say("Count each row from its first tree with begin first_tree, or lay "
                     "the rows with row-lay first.")));
        return rule.begin == RowBegin::detect;
    }
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rows[i].start -= std::max(beginnings[i].missing, 0);
        rows[i].certainty = beginnings[i].certainty;
    }
    return edge.late_rows;
}

bool beyond_break(const detail::RowPhase& phase, double number) {
    return std::ranges::any_of(phase.breaks, [&](double along) { return number > phase.number_at(along); });
}

NumberedTree numbered(const detail::RowMember& member, const detail::PlacedPoint& point,
                      const DecodedRow& row, const Rows& found, double confidence) {
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
RecoveredRow made_out(const DecodedRow& row, const Rows& found, const LonLat& middle, double confidence) {
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

/// Rows may have a spacing of their own; then their trees keep to it much better than to that of most.
void find_own_spacings(Rows& rows, const std::vector<std::vector<double>>& along, const RecoveryRule& rule) {
    double coherence = 0;
    double halves = 0;
    double trees = 0;
    for (std::size_t i = 0; i < along.size(); ++i) {
        const auto& row = along[i];
        const auto segments = segments_of({row});
        double spacing = rows.spacing;
        double common = detail::coherence_of(segments, rows.spacing);
        const auto own = spacing_of({row}, {}, short_segment);
        const double by_accident = 5 / std::sqrt(static_cast<double>(row.size() * short_segment));
        const double parts = own ? rows.spacing / own->spacing : 1;
        const bool is_part = parts > 1.5 && std::abs(parts - std::round(parts)) < 0.05;
        if (own && std::abs(parts - 1) > 0.03 && !is_part && row.size() >= 8 &&
            own->coherence > std::max(2.5 * common, common + by_accident)) {
            spacing = own->spacing;
            common = own->coherence;
            if (rule.spacing && std::abs(spacing / rule.spacing->value - 1) > 0.15) {
                rows.doubts[i] = say("the trees of its row stand {:.2f} m apart, not as told", spacing);
            }
        }
        rows.spacings.push_back(spacing);
        const auto count = static_cast<double>(row.size());
        coherence += count * common;
        halves += count * detail::coherence_of(segments, spacing / 2);
        trees += count;
    }
    coherence = std::clamp(coherence / trees, 0.01, 1.0);
    rows.along_noise = std::max(1 / (2 * pi) * std::sqrt(-std::log(coherence)), 0.02 / rows.spacing);
    // Trees between the positions make the others look less exact than they are, but not on half the spacing.
    halves /= trees;
    if (halves > 5 / std::sqrt(trees * short_segment)) {
        const double by_halves = 1 / (4 * pi) * std::sqrt(-std::log(std::min(halves, 0.999)));
        rows.along_noise = std::clamp(by_halves, 0.4 * rows.along_noise, rows.along_noise);
    }
}

/// Two rows that were taken for one: many of its trees stand far off its line.
void doubt_merged_rows(Rows& rows, std::span<const math::PlanePoint> plane) {
    for (std::size_t i = 0; i < rows.trace.rows.size(); ++i) {
        const auto& row = rows.trace.rows[i];
        const auto far = std::ranges::count_if(row.trees, [&](std::size_t tree) {
            return std::abs(row.curve.foot(plane[tree]).off) > 0.3 * rows.noise.distance;
        });
        if (8 * far > std::ssize(row.trees)) {
            rows.merged = true;
        }
    }
}

/// Breaks that several rows show cross the rows beside them as well.
void share_breaks(std::vector<std::vector<double>>& breaks, const Rows& rows) {
    constexpr int beside = 4;
    const auto broken = std::ranges::count_if(breaks, [](const auto& one) { return !one.empty(); });
    if (broken < 3) {
        return;
    }
    const auto own = breaks;
    const auto count = static_cast<int>(own.size());
    for (int row = 0; row < count; ++row) {
        const auto at = static_cast<std::size_t>(row);
        for (int other = std::max(row - beside, 0); other <= std::min(row + beside, count - 1); ++other) {
            for (const double one : own[static_cast<std::size_t>(other)]) {
                const auto place = rows.trace.rows[static_cast<std::size_t>(other)].curve.at(one);
                const double along = rows.trace.rows[at].curve.foot(place).along;
                const bool known = std::ranges::any_of(
                    own[at], [&](double mine) { return std::abs(mine - along) < 8 * rows.spacing; });
                if (!known) {
                    breaks[at].push_back(along);
                }
            }
        }
    }
}

void find_phases(Rows& rows, const std::vector<std::vector<double>>& along) {
    std::vector<double> uneven;
    std::vector<double> wander;
    const auto lay = [&](bool wandering) {
        rows.phases.clear();
        for (std::size_t i = 0; i < along.size(); ++i) {
            const double noise = rows.along_noise * rows.spacings[i];
            rows.phases.push_back(detail::phase_of(along[i], rows.spacings[i], noise, wandering));
        }
    };
    lay(false);
    std::vector<detail::SpacedRow> spaced;
    for (std::size_t i = 0; i < along.size(); ++i) {
        uneven.push_back(rows.phases[i].unevenness);
        wander.push_back(rows.phases[i].wander);
        spaced.push_back({along[i], rows.spacings[i], &rows.trace.rows[i].curve});
    }
    // Where noise hides the phase of a window it cannot be followed.
    const bool clear = rows.along_noise < 0.22;
    const bool wandering = clear && math::median(uneven) > 1.5;
    rows.uneven = !clear && math::median(uneven) > 2.2;
    auto breaks = detail::find_breaks(spaced, 0.2);
    share_breaks(breaks, rows);
    if (wandering) {
        rows.wander = math::median(wander);
        lay(true);
    }
    for (std::size_t i = 0; i < along.size(); ++i) {
        rows.phases[i].breaks = std::move(breaks[i]);
    }
}

double across_noise(std::span<const math::PlanePoint> plane, const detail::RowTrace& trace,
                    std::vector<double>& offs) {
    std::vector<double> sizes;
    for (const auto& row : trace.rows) {
        const auto n = static_cast<double>(row.trees.size());
        const double used = std::min(static_cast<double>(row.curve.coefficients()), n - 1);
        for (const auto tree : row.trees) {
            offs.push_back(row.curve.foot(plane[tree]).off / std::sqrt(1 - used / n));
        }
    }
    return std::max(detail::median_noise(offs), 0.01);
}

// Nearer to a square than that, nothing but its bearing tells a row from a line across.
constexpr double square_below = 1.2;

Sentence both_ways_words() {
    return say("The trees stand in regular lines both ways: it is not clear which are the rows.");
}

Sentence which_way_words() {
    return say("Give the rough bearing of the rows.");
}

/// What was found against what was told, and against what orchards are like.
struct Contradiction {
    Sentence words{};
    Sentence remedy{};
    std::optional<Question> question{};
};

std::optional<Contradiction> contradiction_of(const Rows& rows, const detail::FoundSpacing& spacing,
                                              const RecoveryRule& rule, double bearing) {
    const double distance = rows.noise.distance;
    if (spacing.longer > 0 && !rule.spacing) {
        return Contradiction{say("The trees stand {:.2f} m apart, or {:.2f} m with others between them.",
                                 rows.spacing, spacing.longer),
                             say("Give the spacing."), which_spacing(rule, rows.spacing, spacing.longer)};
    }
    if (rows.trace.gaps.empty()) {
        return std::nullopt;
    }
    if (rule.row_distance) {
        const double ratio = distance / rule.row_distance->value;
        if (ratio < 0.7 || ratio > 1.45) {
            return Contradiction{say("The rows were found {:.2f} m apart, not as told.", distance),
                                 say("Check the row distance and the bearing.")};
        }
    } else if (distance < 0.9 * rows.spacing) {
        return Contradiction{say("The rows would be {:.2f} m apart and their trees {:.2f} m: rather the rows "
                                 "run the other way.",
                                 distance, rows.spacing),
                             say("Check the bearing, or give the row distance as well.")};
    }
    const bool told_apart =
        rule.row_distance && rule.spacing && rule.row_distance->value > square_below * rule.spacing->value;
    if (!rule.bearing_deg && !told_apart && distance < square_below * rows.spacing) {
        return Contradiction{both_ways_words(), which_way_words(),
                             which_bearing(rule, bearing, bearing + 90)};
    }
    return std::nullopt;
}

/// The number of each traced row, from 0, counted to the side that is wanted; and from which number on it is
/// not sure because of a row without trees.
struct RowNumbers {
    std::vector<int> number{};
    int rows = 0;
    int sure = 0;  // numbers below it are sure
};

RowNumbers row_numbers(const Rows& rows, const detail::GapReading& gaps, const RecoveryRule& rule) {
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

Found recovered(std::span<const LonLat> trees, const RecoveryRule& rule) {
    const auto middle = detail::middle_of(trees);
    const auto plane = detail::to_plane(trees, middle);
    const auto no_rows = [&] {
        return all_open(
            trees.size(), say("No regular rows can be detected among the trees."),
            say("Give the row distance and the bearing, number one block at a time, or lay its rows with "
                "row-lay first."));
    };
    const double nearest = 1.1 * detail::usual_step(plane);
    if (plane.size() < 6 || !(nearest > 0.05)) {
        return no_rows();
    }
    // Noise makes neighbours look nearer than they are: where rows cannot be followed, with longer steps.
    double step = rule.spacing ? std::min(rule.spacing->value, 1.5 * nearest) : nearest;
    const detail::NearTrees near(plane, 9 * step);
    Rows rows;
    bool both_ways = false;
    double other_way = 0;
    double this_way = 0;
    bool west_or_east = false;
    for (int turn = 0; turn < 4; ++turn, step *= 1.2) {
        const auto directions = detail::find_directions(plane, near, step, rule.bearing_deg);
        if (!directions) {
            return no_rows();
        }
        both_ways = directions->rivalry > 0.65 && !rule.bearing_deg;
        this_way = math::bearing_deg(directions->ahead.front());
        other_way = directions->other_bearing_deg;
        // Northwards is no sense for rows that run from west to east.
        west_or_east = std::abs(directions->sense) < 0.03 && !rule.bearing_deg;
        if (!both_ways) {
            rows.trace = detail::trace_rows(plane, near, *directions, step);
            if (rows.trace.trouble == detail::TraceTrouble::none) {
                break;
            }
        }
    }
    if (both_ways) {
        return all_open(trees.size(), both_ways_words(), which_way_words(),
                        which_bearing(rule, this_way, other_way));
    }
    if (west_or_east) {
        return all_open(trees.size(),
                        say("The rows run from west to east: it is not clear where they begin."),
                        say("Give the bearing in which positions count."), which_bearing(rule, 90, 270));
    }
    const auto in_rows = std::ranges::count_if(rows.trace.row_of, [](int row) { return row >= 0; });
    if (rows.trace.trouble != detail::TraceTrouble::none || 10 * in_rows < 8 * std::ssize(plane)) {
        return no_rows();
    }
    std::vector<std::vector<double>> along;
    for (const auto& row : rows.trace.rows) {
        along.push_back(alongs_of(row, plane));
    }
    // Uneven rows keep to a spacing in pieces; where noise is great only whole rows show it.
    auto spacing = spacing_of(along, rule, short_segment);
    if (!spacing) {
        spacing = spacing_of(along, rule, long_segment);
    }
    if (!spacing || spacing->coherence < 0.02) {
        return all_open(
            trees.size(), say("No regular spacing can be detected along the rows."),
            say("Give the spacing, measure the trees more exactly, or lay the rows with row-lay first."));
    }
    rows.spacing = spacing->spacing;
    rows.doubts.resize(along.size());
    find_own_spacings(rows, along, rule);
    std::vector<double> offs;
    rows.noise.across = across_noise(plane, rows.trace, offs);
    rows.noise.distance = rows.trace.gaps.empty() ? 4 * rows.spacing : math::median(rows.trace.gaps);
    rows.noise.tails = detail::heavy_tails(offs, rows.noise.across);
    find_phases(rows, along);
    doubt_merged_rows(rows, plane);
    if (rows.merged) {
        return all_open(trees.size(),
                        say("Rows run into one another: the points are too rough to tell them apart."),
                        say("Measure the trees more exactly, or lay the rows with row-lay first."));
    }
    if (rows.uneven) {
        return all_open(trees.size(),
                        say("Spacings change along the rows, and the points are too rough to tell how."),
                        say("Measure the trees more exactly, or lay the rows with row-lay first."));
    }
    if (auto contradiction = contradiction_of(rows, *spacing, rule, this_way)) {
        return all_open(trees.size(), contradiction->words, contradiction->remedy,
                        std::move(contradiction->question));
    }
    const auto gaps = detail::read_gaps(rows.trace.gaps);
    const auto numbers = row_numbers(rows, gaps, rule);
    Recovery recovery;
    recovery.row_distance = Metres{usual_gap(rows.trace.gaps)};
    recovery.spacing = Metres{rows.spacing};
    recovery.noise_across = Metres{rows.noise.across};
    recovery.noise_along = Metres{rows.along_noise * rows.spacing};
    recovery.trees.resize(trees.size());
    for (auto& tree : recovery.trees) {
        tree.doubt = say("its row has too few trees");
    }
    const auto choices = choices_of(plane, near, rows);
    detail::PositionScale scale;
    scale.noise = std::max(rows.along_noise, 0.9 * rows.noise.across / rows.spacing);
    scale.tails = rows.noise.tails;
    auto taken = decoded_rows(members_of(detail::weigh_rows(choices, rows.noise, {})), scale);
    for (int turn = 0; turn < 2; ++turn) {
        scale.stray = stray_share(taken);
        // Trees between the positions make the others look less exact than they are.
        const double seen = detail::median_noise(offs_along(taken));
        scale.noise =
            scale.stray > 0.02 ? std::max(0.5 * scale.noise, std::min(scale.noise, seen)) : scale.noise;
        const auto weighed = detail::weigh_rows(choices, rows.noise, taken);
        taken = decoded_rows(members_of(weighed), scale);
    }
    std::vector<DecodedRow> decoded;
    for (auto& row : taken) {
        decoded.push_back({std::move(row)});
    }
    if (decoded.empty()) {
        return no_rows();
    }
    std::optional<Question> question;
    if (find_beginnings(decoded, rows, rule, recovery)) {
        question = which_beginning(rule);
    }
    if (numbers.sure < numbers.rows) {
        question = which_rows(rule);
    }
    const double strict = detail::wanted_confidence(
        rule.confidence, std::max(scale.noise, rows.noise.across / rows.noise.distance));
    recovery.rows = numbers.rows;
    recovery.made_out.resize(static_cast<std::size_t>(numbers.rows));
    for (const auto& row : decoded) {
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
        recovery.made_out[static_cast<std::size_t>(number)] = made_out(row, rows, middle, strict);
    }
    const auto& longest = *std::ranges::max_element(recovery.made_out, {}, &RecoveredRow::positions);
    if (longest.line.size() >= 2) {
        recovery.bearing_deg = way_between(longest.line.front(), longest.line.back()).bearing_deg;
    }
    return {std::move(recovery), std::move(question)};
}

std::ptrdiff_t decided(std::span<const NumberedTree> trees) {
    return std::ranges::count_if(trees, [](const auto& tree) { return tree.doubt.empty(); });
}

/// The first tree that both answers number, and not alike.
std::optional<std::size_t> differing(const RowAnswer& one, const RowAnswer& other) {
    for (std::size_t i = 0; i < one.trees.size(); ++i) {
        const auto& a = one.trees[i];
        const auto& b = other.trees[i];
        if (a.doubt.empty() && b.doubt.empty() && (a.row != b.row || a.position != b.position)) {
            return i;
        }
    }
    return std::nullopt;
}

/// Nothing where neither answer would give a number.
std::optional<RowQuestion> asked(std::span<const LonLat> trees, const Question& question) {
    RowQuestion result{question.words, {}, {}};
    std::ptrdiff_t most = 0;
    for (const auto& variant : question.variants) {
        auto numbers = recovered(trees, variant.rule).recovery.trees;
        most = std::max(most, decided(numbers));
        result.answers.push_back({variant.words, variant.option, variant.value, std::move(numbers)});
    }
    if (most == 0) {
        return std::nullopt;
    }
    std::ranges::stable_sort(result.answers, std::greater<>{},
                             [](const auto& answer) { return decided(answer.trees) > 0; });
    result.tree = differing(result.answers.front(), result.answers.back());
    return result;
}

}  // namespace

Recovery recover_rows(std::span<const LonLat> trees, const RecoveryRule& rule) {
    auto found = recovered(trees, rule);
    if (found.question) {
        found.recovery.question = asked(trees, *found.question);
    }
    return std::move(found.recovery);
}

}  // namespace pipward::place
