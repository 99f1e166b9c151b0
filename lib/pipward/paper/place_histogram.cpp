// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/place_histogram.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "pipward/paper/chart_marks.h"
#include "pipward/paper/text.h"

namespace pipward::paper::detail {
namespace {

constexpr double bar_width = 13;
constexpr double plot_tall = 84;
constexpr double head = 18;
constexpr double foot = 20;
constexpr double side = 8;
constexpr double panel_wide = bloom::histogram_bins * bar_width + 2 * side;
constexpr double panel_tall = head + plot_tall + foot;
constexpr double tenth = 1.0 / bloom::histogram_bins;
constexpr double band_deviations = 1.2816;  // of a normal distribution: 80 % lie within
constexpr double least_top = 0.3;           // share at the upper edge

double share_of(const bloom::ForwardScore& score, int bin) {
    return static_cast<double>(score.places[bin]) / score.n;
}

double greatest_share(std::span<const bloom::ForwardScore> scores) {
    double greatest = least_top;
    for (const auto& score : scores) {
        for (int bin = 0; bin < bloom::histogram_bins; ++bin) {
            greatest = std::max(greatest, share_of(score, bin));
        }
    }
    return greatest;
}

std::string_view colour(Ink ink) {
    return colour_of(ink, chart_inks(false));
}

struct Panel {
    double x = 0;
    double top_share = 1;

    double y_of(double share) const { return head + plot_tall * (1 - std::min(1.0, share / top_share)); }
    double bottom() const { return head + plot_tall; }
    double right() const { return x + panel_wide - 2 * side; }
};

std::string text_in(double x, double y, std::string_view anchor, Ink ink, std::string_view text) {
    return fmt::format(R"(<text x="{:.1f}" y="{:.1f}" text-anchor="{}" fill="{}" font-size="12">{}</text>)",
                       x, y, anchor, colour(ink), escape_markup(text)) +
           "\n";
}

std::string chance_band(const Panel& panel, const bloom::ForwardScore& score) {
    const double room = band_deviations * std::sqrt(tenth * (1 - tenth) / std::max(1, score.springs));
    const double above = panel.y_of(tenth + room);
    const double below = panel.y_of(std::max(0.0, tenth - room));
    return fmt::format(R"(<rect x="{:.1f}" y="{:.1f}" width="{:.1f}" height="{:.1f}" fill="{}"/>)", panel.x,
                       above, panel.right() - panel.x, below - above, colour(Ink::grid)) +
           "\n";
}

std::string bars(const Panel& panel, const bloom::ForwardScore& score) {
    std::string svg;
    for (int bin = 0; bin < bloom::histogram_bins; ++bin) {
        const double y = panel.y_of(share_of(score, bin));
        svg += fmt::format(
                   R"(<rect x="{:.1f}" y="{:.1f}" width="{:.1f}" height="{:.1f}" fill="{}" stroke="{}"/>)",
                   panel.x + bin * bar_width + 1, y, bar_width - 2, panel.bottom() - y, colour(Ink::petal),
                   colour(Ink::stem)) +
               "\n";
    }
    return svg;
}

std::string even_line(const Panel& panel) {
    return fmt::format(
               R"(<line x1="{:.1f}" y1="{:.1f}" x2="{:.1f}" y2="{:.1f}" stroke="{}" stroke-dasharray="4 3"/>)",
               panel.x, panel.y_of(tenth), panel.right(), panel.y_of(tenth), colour(Ink::ink)) +
           "\n";
}

std::string panel_svg(const Panel& panel, const bloom::ForwardScore& score, const Speech& speech) {
    const auto issued = fmt::format("{:02}-{:02}", score.issued.month, score.issued.day);
    return text_in(panel.x, head - 6, "start", Ink::ink, issued) + chance_band(panel, score) +
           bars(panel, score) + even_line(panel) +
           text_in(panel.x, panel_tall - 6, "start", Ink::quiet, speech.text(say("earlier"))) +
           text_in(panel.right(), panel_tall - 6, "end", Ink::quiet, speech.text(say("later")));
}

}  // namespace

std::string place_histograms_svg(std::span<const bloom::ForwardScore> scores, const Speech& speech) {
    if (scores.empty()) {
        return {};
    }
    const double top = greatest_share(scores);
    std::string panels;
    double x = side;
    for (const auto& score : scores) {
        panels += panel_svg({x, top}, score, speech);
        x += panel_wide;
    }
    const auto ground =
        fmt::format(R"(<rect width="{:.0f}" height="{:.0f}" fill="{}"/>)", x, panel_tall, colour(Ink::paper));
    return fmt::format(R"(<svg viewBox="0 0 {0:.0f} {1:.0f}" style="max-width:{0:.0f}px" role="img">)", x,
                       panel_tall) +
           "\n" + ground + "\n" + panels + "</svg>\n";
}

}  // namespace pipward::paper::detail
