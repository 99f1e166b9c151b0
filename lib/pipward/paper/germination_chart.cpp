// SPDX-License-Identifier: MIT
#include "pipward/paper/germination_chart.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "pipward/paper/text.h"

namespace pipward::paper {
namespace {

constexpr double width = 860;
constexpr double left = 64;
constexpr double right = 520;
constexpr double above = 54;
constexpr double plot_height = 250;
constexpr double axis_height = 56;
constexpr double label_step = 56;
constexpr double line_height = 16;
constexpr int ticks_of_share = 4;

struct Line {
    std::string_view colour;
    std::string_view dash;
};

// Dark, middle and light tones that stay apart for every common kind of colour blindness; dashes and marks
// tell the lines apart without any.
constexpr std::array lines{Line{"#34102d", ""}, Line{"#8a5000", "9 4"}, Line{"#1f6f8b", "2 4"},
                           Line{"#7a7a7a", "12 3 2 3"}};

struct Frame {
    double top = 0;
    double last_day = 1;

    double x_of(double day) const { return left + (right - left) * day / last_day; }
    double y_of(double share) const { return top + plot_height * (1 - share); }
    double bottom() const { return top + plot_height; }
};

std::string text_at(double x, double y, std::string_view kind, std::string_view anchor,
                    std::string_view text) {
    return fmt::format(R"(<text class="{}" text-anchor="{}" x="{:.1f}" y="{:.1f}">{}</text>)", kind, anchor,
                       x, y, escape_markup(text)) +
           "\n";
}

std::string line_at(double x, double y, double to_x, double to_y, std::string_view kind) {
    return fmt::format(R"(<line class="{}" x1="{:.1f}" y1="{:.1f}" x2="{:.1f}" y2="{:.1f}"/>)", kind, x, y,
                       to_x, to_y) +
           "\n";
}

/// A circle, a square, a triangle or a diamond about a place.
std::string mark_at(double x, double y, std::size_t which) {
    constexpr double r = 4.5;
    const auto colour = lines[which % lines.size()].colour;
    switch (which % lines.size()) {
        case 0:
            return fmt::format(R"(<circle cx="{:.1f}" cy="{:.1f}" r="{}" fill="{}"/>)", x, y, r, colour);
        case 1:
            return fmt::format(R"(<rect x="{:.1f}" y="{:.1f}" width="{}" height="{}" fill="{}"/>)", x - r,
                               y - r, 2 * r, 2 * r, colour);
        case 2:
            return fmt::format(R"(<path d="M{:.1f} {:.1f}l{} {}h-{}z" fill="{}"/>)", x, y - r - 1, r + 1,
                               2 * r + 1, 2 * r + 2, colour);
        default:
            return fmt::format(R"(<path d="M{:.1f} {:.1f}l{} {}l-{} {}l-{} -{}z" fill="{}"/>)", x, y - r - 1,
                               r + 1, r + 1, r + 1, r + 1, r + 1, r + 1, colour);
    }
}

std::string stroke_of(std::size_t which) {
    const auto& line = lines[which % lines.size()];
    const auto dash = line.dash.empty() ? std::string{} : fmt::format(R"( stroke-dasharray="{}")", line.dash);
    return fmt::format(R"(fill="none" stroke="{}" stroke-width="2.2"{})", line.colour, dash);
}

double last_day_of(const seed::Trial& trial) {
    double last = 0;
    for (const auto& arm : trial.arms) {
        last = std::max(last, arm.points.empty() ? 0 : arm.points.back().day);
    }
    return last > 0 ? last : 1;
}

double day_step(double last_day) {
    for (const double step : {1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0}) {
        if (last_day / step <= 8) {
            return step;
        }
    }
    return 200;
}

std::string axes(const Frame& frame, const Wording& wording) {
    std::string svg;
    for (int i = 0; i <= ticks_of_share; ++i) {
        const double share = static_cast<double>(i) / ticks_of_share;
        svg += line_at(left, frame.y_of(share), right, frame.y_of(share), "grid");
        svg += text_at(left - 8, frame.y_of(share) + 5, "quiet", "end", fmt::format("{:.0f} %", 100 * share));
    }
    for (double day = 0; day <= frame.last_day; day += day_step(frame.last_day)) {
        svg += text_at(frame.x_of(day), frame.bottom() + 20, "quiet", "middle", fmt::format("{:.0f}", day));
    }
    return svg + text_at((left + right) / 2, frame.bottom() + 42, "quiet", "middle",
                         say("days since stratification began, else since washing").in(wording));
}

std::string course(const seed::TrialArm& arm, std::size_t which, const Frame& frame) {
    if (arm.points.empty()) {
        return {};
    }
    std::string path = fmt::format("M{:.1f} {:.1f}", frame.x_of(0), frame.y_of(0));
    std::string marks;
    for (const auto& point : arm.points) {
        const double x = frame.x_of(point.day);
        const double y = frame.y_of(std::min(1.0, static_cast<double>(point.germinated) / arm.seeds));
        path += fmt::format("H{:.1f}V{:.1f}", x, y);
        marks += mark_at(x, y, which);
    }
    return fmt::format(R"(<path d="{}" {}/>)", path, stroke_of(which)) + marks + "\n";
}

std::string interval(const seed::TrialArm& arm, std::size_t which, const Frame& frame) {
    const double x = right + 14 + 12 * static_cast<double>(which);
    return fmt::format(R"(<path d="M{:.1f} {:.1f}V{:.1f}" {}/>)", x, frame.y_of(arm.interval.high),
                       frame.y_of(arm.interval.low), stroke_of(which)) +
           mark_at(x, frame.y_of(std::min(1.0, static_cast<double>(arm.germinated) / arm.seeds)), which) +
           "\n";
}

std::string label(const seed::TrialArm& arm, std::size_t which, double y, double x, const Wording& wording) {
    auto svg = mark_at(x, y - 5, which);
    for (const auto& line : wrap_lines(seed::arm_words(arm).in(wording), 16, 2)) {
        svg += text_at(x + 12, y, "name", "start", line);
        y += line_height;
    }
    const auto counts = say("{} of {} germinated, {:.0f} to {:.0f} %", arm.germinated, arm.seeds,
                            100 * arm.interval.low, 100 * arm.interval.high);
    return svg + text_at(x + 12, y, "quiet", "start", counts.in(wording));
}

double height_of(const seed::Trial& trial) {
    return above + std::max(plot_height, label_step * static_cast<double>(trial.arms.size())) + axis_height;
}

std::string panel(const seed::Trial& trial, double top, const Wording& wording) {
    const Frame frame{top + above, last_day_of(trial)};
    auto svg = text_at(left, top + 32, "title", "start", say("Cross {}", trial.cross).in(wording));
    svg += axes(frame, wording);
    const double labels = right + 14 + 12 * static_cast<double>(trial.arms.size()) + 14;
    for (std::size_t i = 0; i < trial.arms.size(); ++i) {
        svg += course(trial.arms[i], i, frame) + interval(trial.arms[i], i, frame) +
               label(trial.arms[i], i, frame.top + 14 + label_step * static_cast<double>(i), labels, wording);
    }
    return svg;
}

constexpr std::string_view chart_style = R"(<style>text{font:14px system-ui,sans-serif;fill:#1d2320}
.title{font-size:17px;font-weight:600}.name{font-weight:600}.quiet{fill:#505b55}
.grid{stroke:#d5dbd7}</style>
)";

}  // namespace

std::string germination_chart_svg(const std::vector<seed::Trial>& trials, const Wording& wording) {
    if (trials.empty()) {
        return {};
    }
    std::string panels;
    double height = 0;
    for (const auto& trial : trials) {
        panels += panel(trial, height, wording);
        height += height_of(trial);
    }
    return fmt::format(
               R"(<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {0} {1}" width="{0}" height="{1}">)",
               width, height) +
           "\n<title>" + escape_markup(say("Compare seed treatments").in(wording)) + "</title>\n" +
           std::string(chart_style) +
           fmt::format(R"(<rect width="{}" height="{}" fill="#fff"/>)", width, height) + "\n" + panels +
           "</svg>\n";
}

}  // namespace pipward::paper
