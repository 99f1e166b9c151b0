// SPDX-License-Identifier: MIT
#include "pipward/paper/text.h"

#include <algorithm>
#include <span>

#include "pipward/paper/detail/code_points.h"

namespace pipward::paper {
namespace {

constexpr std::string_view ellipsis = "…";
constexpr double ellipsis_em = 1.05;

char32_t cleaned(char32_t c) {
    if (c == '\t' || c == '\n' || c == '\r') {
        return ' ';
    }
    return detail::is_markup_character(c) && !turns_direction(c) ? c : replacement_character;
}

std::string_view reference_for(char c) {
    switch (c) {
        case '&':
            return "&amp;";
        case '<':
            return "&lt;";
        case '>':
            return "&gt;";
        case '"':
            return "&quot;";
        case '\'':
            return "&#39;";
        default:
            return {};
    }
}

bool is_space(const detail::Cluster& cluster) {
    return cluster.code_points == U" ";
}

std::size_t clusters_that_fit(std::span<const detail::Cluster> rest, double max_em) {
    double em = 0;
    for (std::size_t i = 0; i < rest.size(); ++i) {
        em += rest[i].em;
        if (em > max_em) {
            return i;
        }
    }
    return rest.size();
}

// Where to end a line that does not hold everything: after the last space in it, else where it is full.
std::size_t line_end(std::span<const detail::Cluster> rest, std::size_t fitting) {
    for (std::size_t end = fitting; end > 0; --end) {
        if (end < rest.size() && (is_space(rest[end]) || is_space(rest[end - 1]))) {
            return end;
        }
    }
    return fitting;
}

std::string text_of(std::span<const detail::Cluster> clusters) {
    std::string text;
    for (const auto& cluster : clusters) {
        text += to_utf8(cluster.code_points);
    }
    text.erase(text.find_last_not_of(' ') + 1);
    return text;
}

std::span<const detail::Cluster> without_leading_spaces(std::span<const detail::Cluster> rest) {
    while (!rest.empty() && is_space(rest.front())) {
        rest = rest.subspan(1);
    }
    return rest;
}

}  // namespace

std::string clean_text(std::string_view text) {
    auto code_points = code_points_of(text);
    for (auto& c : code_points) {
        c = cleaned(c);
    }
    return to_utf8(code_points);
}

std::string escape_markup(std::string_view text) {
    std::string escaped;
    for (const char c : clean_text(text)) {
        const auto reference = reference_for(c);
        reference.empty() ? escaped += c : escaped += reference;
    }
    return escaped;
}

double estimated_width(std::string_view text) {
    double em = 0;
    for (const auto& cluster : detail::clusters_of(text)) {
        em += cluster.em;
    }
    return em;
}

std::vector<std::string> wrap_lines(std::string_view text, double max_em, int max_lines) {
    const auto clusters = detail::clusters_of(clean_text(text));
    std::vector<std::string> lines;
    auto rest = without_leading_spaces(clusters);
    while (!rest.empty()) {
        const auto fitting = clusters_that_fit(rest, max_em);
        if (fitting == rest.size()) {
            lines.push_back(text_of(rest));
            break;
        }
        if (static_cast<int>(lines.size()) + 1 >= max_lines) {
            const auto kept = clusters_that_fit(rest, max_em - ellipsis_em);
            lines.push_back(text_of(rest.first(kept)) + std::string(ellipsis));
            break;
        }
        const auto end = std::max<std::size_t>(1, line_end(rest, fitting));
        lines.push_back(text_of(rest.first(end)));
        rest = without_leading_spaces(rest.subspan(end));
    }
    return lines.empty() ? std::vector<std::string>{""} : lines;
}

}  // namespace pipward::paper
