// SPDX-License-Identifier: MIT
#include "pipward/paper/season_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "pipward/paper/day_axis.h"

namespace pipward {
namespace {

template <class Enum, std::size_t size>
std::string_view word_at(const std::array<std::string_view, size>& words, Enum value) {
    return words.at(static_cast<std::size_t>(value));
}

}  // namespace

std::string_view way_words(PollenWay way) {
    static constexpr std::array<std::string_view, 4> words{
        "gather and use fresh, the same day", "gather this spring, dry and keep",
        "pollen kept from last year", "force a cut branch indoors"};
    return word_at(words, way);
}

std::string_view verdict_words(Verdict verdict) {
    static constexpr std::array<std::string_view, 5> words{"good", "fair", "doubtful", "unlikely",
                                                           "impossible"};
    return word_at(words, verdict);
}

std::string_view s_match_words(SMatch match) {
    static constexpr std::array<std::string_view, 4> words{
        "full: all its pollen can grow", "half: part of its pollen can grow", "none: its pollen is refused",
        "not known: S-alleles missing"};
    return word_at(words, match);
}

std::string_view urgency_words(Urgency urgency) {
    static constexpr std::array<std::string_view, 4> words{"today", "this week", "later", "too late"};
    return word_at(words, urgency);
}

std::string_view source_words(NeedSource source) {
    static constexpr std::array<std::string_view, 4> words{"own notes", "borrowed from both parents",
                                                           "borrowed from one parent and the orchard",
                                                           "borrowed from the orchard's mean"};
    return word_at(words, source);
}

std::string_view store_words(Store store) {
    static constexpr std::array<std::string_view, 4> words{"room", "refrigerator", "freezer", "deep freezer"};
    return word_at(words, store);
}

std::string_view method_words(BloomMethod method) {
    static constexpr std::array<std::string_view, 4> words{
        "average of many chill-and-heat clocks", "long-run mean day", "degree-days from a fixed day",
        "chill first, then heat"};
    return word_at(words, method);
}

std::string chance_words(Share chance) {
    const double p = chance.value;
    if (std::isnan(p)) {
        return "not known";
    }
    if (p <= 0) {
        return "no chance";
    }
    if (p < 0.05) {
        return "under 1 in 20";
    }
    return p > 0.95 ? "over 19 in 20" : fmt::format("{} in 10", std::clamp(chance_tenths(chance), 1, 9));
}

int chance_tenths(Share chance) {
    return std::isnan(chance.value) ? 0
                                    : static_cast<int>(std::lround(std::clamp(chance.value, 0.0, 1.0) * 10));
}

std::string of_hundred(double share) {
    return fmt::format("{:.0f} of 100", share * 100);
}

std::string kinship_words(const std::optional<double>& kinship) {
    if (!kinship) {
        return "kinship not known";
    }
    return *kinship > 0 ? fmt::format("kinship {:.3f}", *kinship) : "no kinship in the pedigree";
}

std::string milligram_words(Milligrams mass) {
    if (!(mass.value > 0)) {
        return "";
    }
    return mass.value < 10 ? fmt::format("{:.1f} mg", mass.value) : fmt::format("{:.0f} mg", mass.value);
}

std::string counted(int number, std::string_view one, std::string_view many) {
    return fmt::format("{} {}", number, number == 1 ? one : many);
}

std::string long_day(Day day) {
    static constexpr std::array names{"January", "February", "March",     "April",   "May",      "June",
                                      "July",    "August",   "September", "October", "November", "December"};
    const auto parts = parts_of(day);
    return fmt::format("{} {} {}", parts.day, names[static_cast<std::size_t>(parts.month - 1)], parts.year);
}

std::string work_day(Day day) {
    return weekday_name(day) + " " + to_short_text(day);
}

}  // namespace pipward
