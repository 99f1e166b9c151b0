// SPDX-License-Identifier: MIT
#include "pipward/paper/bloom_chart_marks.h"

#include <fmt/format.h>

#include "pipward/paper/text.h"

namespace pipward::paper {
namespace {

constexpr double cap_half = 4;
constexpr double tick_half = 11;

std::string life_line(const DayAxis& axis, const BloomBar& bar, double y) {
    const double x1 = axis.start_of(bar.first);
    const double x2 = axis.end_of(bar.end);
    return svg_line({x1, y}, {x2, y}, "life") + svg_line({x1, y - cap_half}, {x1, y + cap_half}, "life") +
           svg_line({x2, y - cap_half}, {x2, y + cap_half}, "life");
}

std::string band(const DayAxis& axis, const BloomBar& bar, double y) {
    const double x = axis.start_of(bar.full.p10);
    return fmt::format(R"(<rect class="{}" x="{:.1f}" y="{:.1f}" width="{:.1f}" height="{:.1f}" rx="2"/>)",
                       bar.source == bloom::NeedSource::own_notes ? "band" : "band lent", x, y - band_half,
                       axis.end_of(bar.full.p90) - x, 2 * band_half);
}

std::string median_tick(const DayAxis& axis, const BloomBar& bar, double y) {
    const double x = axis.middle_of(bar.full.p50);
    return svg_line({x, y - tick_half}, {x, y + tick_half}, "median");
}

std::string sign_of_bar(bloom::NeedSource source) {
    const DayAxis axis{{0}, {10}, 0, chart_sign_width};
    return bar_marks(axis, {{}, {1}, {{3}, {5}, {7}}, {9}, source}, chart_sign_height / 2.0);
}

std::string sign_of_as_of() {
    return svg_line({chart_sign_width / 2.0, 0}, {chart_sign_width / 2.0, chart_sign_height}, "as-of");
}

}  // namespace

std::string svg_text(Spot at, std::string_view kind, std::string_view anchor, std::string_view text) {
    return fmt::format(R"(<text class="{}" x="{:.1f}" y="{:.1f}" text-anchor="{}"{}>{}</text>)", kind, at.x,
                       at.y, anchor, kind.ends_with("over") ? R"( paint-order="stroke")" : "",
                       escape_markup(text));
}

std::string svg_line(Spot a, Spot b, std::string_view kind) {
    return fmt::format(R"(<line class="{}" x1="{:.1f}" y1="{:.1f}" x2="{:.1f}" y2="{:.1f}"/>)", kind, a.x,
                       a.y, b.x, b.y);
}

std::string bar_marks(const DayAxis& axis, const BloomBar& bar, double y) {
    return life_line(axis, bar, y) + band(axis, bar, y) + median_tick(axis, bar, y);
}

std::vector<ChartSign> bloom_chart_signs() {
    return {{sign_of_bar(bloom::NeedSource::own_notes),
             say("From its own notes. Box: full bloom falls in it 8 times in 10; tick: its median; thin "
                 "line: first bloom to end of bloom, medians.")},
            {sign_of_bar(bloom::NeedSource::orchard_mean),
             say("Dashed box: no notes of its own, borrowed from its parents or the orchard's mean.")},
            {sign_of_as_of(), say("The day this was reckoned; later weather is not known yet.")},
            {"", say("● own notes, and how many; ○\u00a0borrowed. Seed, pollen: its part in the wanted "
                     "crosses. Days on the axis are Mondays.")}};
}

}  // namespace pipward::paper
