// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/style/detail/looks.h"
#include "pipward/style/detail/palette.h"
#include "pipward/style/detail/phrase.h"

namespace pipward::style {
namespace {

constexpr int week = 7;
// The palest colours of the scale are lost on white paper.
constexpr double palest = 0.9;

// 1 January 1970 was a Thursday.
Day monday_of(Day day) {
    const int since_monday = ((day.since_1970 + 3) % week + week) % week;
    return day - since_monday;
}

RuleLook ring(std::string words, std::string filter, const Ink& colour) {
    return {std::move(words), std::move(filter),
            MarkerLook{.shape = MarkerShape::circle,
                       .fill = ink::clear,
                       .edge = colour,
                       .size = {.metres = 3.0, .least_mm = 1.9, .most_mm = 4.6},
                       .edge_width = {.metres = 0.8, .least_mm = 0.6, .most_mm = 1.2}}};
}

RuleLook week_ring(Day monday, double share, const Wording& wording) {
    return ring(
        say("week of {}", to_short_text(monday)).in(wording),
        fmt::format("\"full_p50\" >= '{}' AND \"full_p50\" < '{}'", to_iso(monday), to_iso(monday + week)),
        ink::ordered(palest * share));
}

std::vector<RuleLook> weeks(const BloomSpan& span, const Wording& wording) {
    std::vector<RuleLook> rules;
    const Day first = monday_of(span.first_full);
    const Day last = monday_of(span.last_full);
    const double steps = std::max(1, (last - first) / week);
    for (Day monday = first; monday <= last; monday = monday + week) {
        rules.push_back(week_ring(monday, (monday - first) / week / steps, wording));
    }
    return rules;
}

// Which row of a table means the day of what kind, for reading a table by name.
const Day* day_in(const Table& table, const Row& row, std::string_view column) {
    const auto found = std::ranges::find(table.shape.columns, column, &Column::name);
    if (found == table.shape.columns.end()) {
        return nullptr;
    }
    return std::get_if<Day>(&row.cells.at(static_cast<std::size_t>(found - table.shape.columns.begin())));
}

Sentence bloom_tip(const Wording& wording) {
    const auto day = [&](std::string_view name, const Sentence& form) {
        return detail::tip(detail::day_words(name, form, wording));
    };
    return joined({verbatim("<b>"), detail::tip(detail::column("label")), verbatim("</b> "),
                   detail::tip(detail::column("accession")), verbatim("<br>"),
                   say("full bloom about {},", day("full_p50", say("d MMMM yyyy"))), verbatim("<br>"),
                   say("80 % prediction interval (8 springs in 10) {} to {}", day("full_p10", say("d MMMM")),
                       day("full_p90", say("d MMMM")))},
                  {});
}

}  // namespace

std::optional<BloomSpan> bloom_span(const Table& bloom_window) {
    std::optional<BloomSpan> span;
    for (const auto& row : bloom_window.rows) {
        const auto* first = day_in(bloom_window, row, "first_p50");
        const auto* full = day_in(bloom_window, row, "full_p50");
        const auto* end = day_in(bloom_window, row, "end_p50");
        if (first == nullptr || full == nullptr || end == nullptr) {
            continue;
        }
        if (!span) {
            span = BloomSpan{*first, *full, *full, *end};
        }
        span->first_bloom = std::min(span->first_bloom, *first);
        span->first_full = std::min(span->first_full, *full);
        span->last_full = std::max(span->last_full, *full);
        span->end_of_bloom = std::max(span->end_of_bloom, *end);
    }
    return span;
}

void detail::style_bloom(LayerStyle& layer, const std::optional<BloomSpan>& span, const Wording& wording) {
    layer.rules = span ? weeks(*span, wording)
                       : std::vector{ring(say("Full bloom").in(wording), "", ink::ordered(0.5))};
    layer.lasting = Lasting{"first_p50", "end_p50"};
    layer.map_tip = bloom_tip(wording).in(wording);
}

}  // namespace pipward::style
