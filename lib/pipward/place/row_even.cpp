// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_even.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "pipward/math/quantile.h"
#include "pipward/place/detail/row_break.h"
#include "pipward/place/detail/row_rival.h"

namespace pipward::place::detail {
namespace {

using std::numbers::pi;
constexpr std::size_t enough_for_spacing = 3000;
constexpr std::size_t short_segment = 16;  // trees of a row that are held against one spacing
constexpr std::size_t long_segment = 1000;

std::vector<std::vector<double>> segments_of(const Alongs& rows, std::size_t segment = short_segment) {
    std::vector<std::vector<double>> segments;
    std::size_t points = 0;
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < row.size() && points < enough_for_spacing; i += segment) {
            const auto end = std::min(i + segment, row.size());
            segments.emplace_back(row.begin() + static_cast<std::ptrdiff_t>(i),
                                  row.begin() + static_cast<std::ptrdiff_t>(end));
            points += end - i;
        }
    }
    return segments;
}

std::optional<FoundSpacing> spacing_of(const Alongs& rows, const RecoveryRule& rule, std::size_t segment) {
    const double least = rule.spacing ? 0.85 * rule.spacing->value : 0.7;
    const double most = rule.spacing ? 1.15 * rule.spacing->value : 6.0;
    return find_spacing(segments_of(rows, segment), least, most);
}

/// Breaks that several rows show cross the rows beside them as well.
void share_breaks(std::vector<std::vector<double>>& breaks, const RowReading& rows) {
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

}  // namespace

std::optional<FoundSpacing> common_spacing(const Alongs& along, const RecoveryRule& rule) {
    // Uneven rows keep to a spacing in pieces; where noise is great only whole rows show it.
    auto spacing = spacing_of(along, rule, short_segment);
    if (!spacing) {
        spacing = spacing_of(along, rule, long_segment);
    }
    return spacing && spacing->coherence >= 0.02 ? spacing : std::nullopt;
}

namespace {

/// Metres: that which the trees of a row keep to much better than to that of most; else that of most.
double own_spacing(const std::vector<double>& row, double usual) {
    const double common = coherence_of(segments_of({row}), usual);
    const auto own = spacing_of({row}, {}, short_segment);
    const double by_accident = 5 / std::sqrt(static_cast<double>(row.size() * short_segment));
    const double parts = own ? usual / own->spacing : 1;
    const bool is_part = parts > 1.5 && std::abs(parts - std::round(parts)) < 0.05;
    const bool better = own && own->coherence > std::max(2.5 * common, common + by_accident);
    return better && std::abs(parts - 1) > 0.03 && !is_part && row.size() >= 8 ? own->spacing : usual;
}

Sentence spacing_doubt(const ChosenSpacing& chosen, const RecoveryRule& rule) {
    if (!chosen.is_sure) {
        return say("the trees of its row may stand {:.2f} m or {:.2f} m apart", chosen.spacing, chosen.other);
    }
    const bool as_told = !rule.spacing || std::abs(chosen.spacing / rule.spacing->value - 1) <= 0.15;
    return as_told ? Sentence{}
                   : say("the trees of its row stand {:.2f} m apart, not as told", chosen.spacing);
}

}  // namespace

void find_own_spacings(RowReading& rows, const Alongs& along, const RecoveryRule& rule) {
    std::vector<double> own;
    for (const auto& row : along) {
        own.push_back(own_spacing(row, rows.spacing));
    }
    for (const auto& chosen : choose_spacings(along, own, 0.7, 6.0)) {
        rows.spacings.push_back(chosen.spacing);
        rows.doubts.push_back(spacing_doubt(chosen, rule));
    }
}

void find_noise_along(RowReading& rows, const Alongs& along) {
    double coherence = 0;
    double halves = 0;
    double trees = 0;
    for (std::size_t i = 0; i < along.size(); ++i) {
        const auto segments = segments_of({along[i]});
        const auto count = static_cast<double>(along[i].size());
        coherence += count * coherence_of(segments, rows.spacings[i]);
        halves += count * coherence_of(segments, rows.spacings[i] / 2);
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

bool find_phases(RowReading& rows, const Alongs& along) {
    std::vector<double> uneven;
    std::vector<double> wander;
    const auto lay = [&](bool wandering) {
        rows.phases.clear();
        for (std::size_t i = 0; i < along.size(); ++i) {
            const double noise = rows.along_noise * rows.spacings[i];
            rows.phases.push_back(phase_of(along[i], rows.spacings[i], noise, wandering));
        }
    };
    lay(false);
    std::vector<SpacedRow> spaced;
    for (std::size_t i = 0; i < along.size(); ++i) {
        uneven.push_back(rows.phases[i].unevenness);
        wander.push_back(rows.phases[i].wander);
        spaced.push_back({along[i], rows.spacings[i], &rows.trace.rows[i].curve});
    }
    // Where noise hides the phase of a window it cannot be followed.
    const bool clear = rows.along_noise < 0.22;
    const bool wandering = clear && math::median(uneven) > 1.5;
    auto breaks = find_breaks(spaced, 0.2);
    share_breaks(breaks, rows);
    if (wandering) {
        rows.wander = math::median(wander);
        lay(true);
    }
    for (std::size_t i = 0; i < along.size(); ++i) {
        rows.phases[i].breaks = std::move(breaks[i]);
    }
    return clear || math::median(uneven) <= 2.2;
}

}  // namespace pipward::place::detail
