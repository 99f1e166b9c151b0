// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <span>

#include "pipward/paper/bloom_chart.h"
#include "pipward/paper/chart_marks.h"

namespace pipward::paper {
namespace {

constexpr std::array<std::string_view, 9> ink_names{"paper", "ink",  "quiet", "grid", "month",
                                                    "petal", "stem", "tick",  "now"};

// The colours from one to before another: "--paper:#fff;--ink:#1d2320".
std::string variables(const Inks& inks, std::size_t from, std::size_t to) {
    std::string text;
    for (std::size_t i = from; i < to; ++i) {
        text += fmt::format("{}--{}:{}", i > from ? ";" : "", ink_names.at(i), inks.at(i));
    }
    return text;
}

// What of a look the one that it goes on from has not got.
std::string rule(std::string_view selector, const ChartLook& look, const ChartLook& base = {}) {
    std::vector<std::string> said;
    if (look.fill != base.fill) {
        said.push_back(fmt::format("fill:var(--{})", colour_of(look.fill, ink_names)));
    }
    if (look.stroke != base.stroke) {
        said.push_back(fmt::format("stroke:var(--{})", colour_of(look.stroke, ink_names)));
    }
    if (look.width != base.width) {
        said.push_back(fmt::format("stroke-width:{}", look.width));
    }
    if (look.dashes != base.dashes) {
        said.push_back(fmt::format("stroke-dasharray:{}", fmt::join(look.dashes, " ")));
    }
    return fmt::format(".bloom-chart {}{{{}}}\n", selector, fmt::join(said, ";"));
}

std::string chart_css() {
    const auto& light = chart_inks(false);
    const auto& dark = chart_inks(true);
    auto line_of_as_of = chart_look(MarkRole::as_of);
    line_of_as_of.fill = Ink::none;
    return ".bloom-chart{" + variables(light, 0, 5) + ";\n" + variables(light, 5, light.size()) +
           R"(;
font:14px system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans",sans-serif;fill:var(--ink)}
.bloom-chart.stacked{font-size:16px}
.bloom-chart .paper{fill:var(--paper)}
.bloom-chart .name,.bloom-chart .days{font-weight:600}
.bloom-chart .quiet{fill:var(--quiet)}
.bloom-chart .over{stroke:var(--paper);stroke-width:4;stroke-linejoin:round}
)" + rule(".grid", chart_look(MarkRole::grid)) +
           rule(".month", chart_look(MarkRole::month)) + rule(".life", chart_look(MarkRole::life)) +
           rule(".band", chart_look(MarkRole::band)) +
           rule(".lent", chart_look(MarkRole::lent_band), chart_look(MarkRole::band)) +
           rule(".median", chart_look(MarkRole::median)) + rule("line.as-of", line_of_as_of) +
           ".bloom-chart text.as-of{fill:var(--now);font-weight:600}\n"
           "@media screen and (prefers-color-scheme:dark){.bloom-chart{" +
           variables(dark, 0, 3) + ";\n" + variables(dark, 3, dark.size()) + "}}\n";
}

}  // namespace

std::string_view bloom_chart_style() {
    static const std::string text = chart_css();
    return text;
}

}  // namespace pipward::paper
