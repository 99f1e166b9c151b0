// SPDX-License-Identifier: MIT
// Records that their own kind lets in, but that contradict one another or common sense.
#include "pipward/book/detail/check_slips.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <tuple>

#include "pipward/book/detail/check.h"
#include "pipward/book/records.h"

namespace pipward::book::detail {
namespace {

/// What spreadsheets write for an empty day: their day 0 or 1, by the one count and the other.
constexpr std::array empty_days{YearMonthDay{1899, 12, 30}, YearMonthDay{1899, 12, 31},
                                YearMonthDay{1900, 1, 1}};

bool stands_for_nothing(const Cell& cell) {
    const auto* day = std::get_if<Day>(&cell);
    return day != nullptr && std::ranges::any_of(empty_days, [&](const YearMonthDay& parts) {
               return make_day(parts) == *day;
           });
}

// Weather was measured on such days; whatever else is written down here is younger.
void check_empty_days(const Orchard& orchard, Schema schema, Findings& findings) {
    for (const auto& table : schema) {
        for (const auto& column : table.columns) {
            if (column.type != CellType::day || table.name == "weather_day") {
                continue;
            }
            for (const auto* record : table.records.all(orchard)) {
                if (const auto cell = column.field.show(record); stands_for_nothing(cell)) {
                    findings.push_back(
                        warning({table.name, row_name(table, record), column.name, to_text(cell)},
                                say("This is the day that spreadsheets write for an empty cell."),
                                column.required ? say("Write the true day.")
                                                : say("Write the true day, or clear the cell.")));
                }
            }
        }
    }
}

// Two observers differ by a stage or two.
constexpr int stages_that_contradict = 3;
constexpr int days_of_a_bloom = 60;

Whereabouts at(const BloomObservation& observed) {
    return {"bloom_observation", fid_name(observed.fid), "bbch", std::to_string(observed.bbch.code)};
}

void compare(const BloomObservation& earlier, const BloomObservation& later, Findings& findings) {
    const int step = later.bbch.code - earlier.bbch.code;
    if (later.observed_on == earlier.observed_on) {
        if (step == 0 && later.open_percent == earlier.open_percent) {
            findings.push_back(warning(
                at(later), say("The observation is there twice, as {} as well.", fid_name(earlier.fid)),
                say("Remove one of them.")));
        } else if (std::abs(step) >= stages_that_contradict) {
            findings.push_back(warning(at(later),
                                       say("On the same day the same tree has stage {} as well ({}).",
                                           earlier.bbch.code, fid_name(earlier.fid)),
                                       say("Remove the wrong one.")));
        }
    } else if (later.observed_on - earlier.observed_on <= days_of_a_bloom &&
               -step >= stages_that_contradict) {
        findings.push_back(warning(at(later),
                                   say("The tree goes back: on {} it had stage {} already ({}).",
                                       to_iso(earlier.observed_on), earlier.bbch.code, fid_name(earlier.fid)),
                                   say("Correct a stage or a day.")));
    }
}

// Of single trees: of an accession as a whole one tree may well be later than another.
void check_course_of_bloom(const Orchard& orchard, Findings& findings) {
    std::map<std::string, std::vector<const BloomObservation*>> by_tree;
    for (const auto& observed : orchard.bloom_observations) {
        if (observed.tree) {
            by_tree[*observed.tree].push_back(&observed);
        }
    }
    for (auto& [tree, observations] : by_tree) {
        std::ranges::stable_sort(observations, {}, &BloomObservation::observed_on);
        for (std::size_t i = 1; i < observations.size(); ++i) {
            compare(*observations[i - 1], *observations[i], findings);
        }
    }
}

// Two who taste may differ, and may agree; the same line with the same remark was written twice.
void check_scores(const Orchard& orchard, Findings& findings) {
    using Line = std::tuple<std::string, std::string, Day, double, std::string>;
    std::map<Line, std::int64_t> first;
    for (const auto& score : orchard.trait_scores) {
        const Line line{score.tree, score.trait, score.scored_on, score.score, score.remark.value_or("")};
        if (const auto [known, is_new] = first.try_emplace(line, score.fid); !is_new) {
            findings.push_back(
                notice({"trait_score", fid_name(score.fid), "score", fmt::format("{:g}", score.score)},
                       say("The score is there twice, as {} as well.", fid_name(known->second)),
                       say("Remove one of them, unless two scored the tree alike.")));
        }
    }
}

// All that have germinated since the start: they can only become more.
void check_germination(const Orchard& orchard, Findings& findings) {
    std::map<std::string, std::vector<const GerminationCount*>> by_lot;
    for (const auto& count : orchard.germination_counts) {
        by_lot[count.lot].push_back(&count);
    }
    for (auto& [lot, counts] : by_lot) {
        std::ranges::stable_sort(counts, {}, &GerminationCount::counted_on);
        for (std::size_t i = 1; i < counts.size(); ++i) {
            if (counts[i]->germinated < counts[i - 1]->germinated) {
                findings.push_back(
                    warning({"germination_count", fid_name(counts[i]->fid), "germinated",
                             std::to_string(counts[i]->germinated)},
                            say("On {} {} had germinated already: counts are of all since the start.",
                                to_iso(counts[i - 1]->counted_on), counts[i - 1]->germinated),
                            say("Add those that were counted before, or correct one of the counts.")));
            }
        }
    }
}

// Seed is chilled moist, at 1 to 10 °C as a rule; dry seed alone bears hard frost. Common practice, no
// source.
constexpr Celsius coldest_stratification{-5};
constexpr Celsius warmest_stratification{25};

void check_cold(const Orchard& orchard, Findings& findings) {
    for (const auto& lot : orchard.seed_lots) {
        if (lot.cold && (*lot.cold < coldest_stratification || *lot.cold > warmest_stratification)) {
            findings.push_back(warning(
                {"seed_lot", lot.code, "stratification_c", fmt::format("{:g}", lot.cold->degrees)},
                say("No seed is stratified at this temperature."),
                say("Write the temperature of the place where it lies, in degrees Celsius: about 1 to 10.")));
        }
    }
}

}  // namespace

void check_slips(const Orchard& orchard, Schema schema, Findings& findings) {
    check_empty_days(orchard, schema, findings);
    check_course_of_bloom(orchard, findings);
    check_scores(orchard, findings);
    check_germination(orchard, findings);
    check_cold(orchard, findings);
}

}  // namespace pipward::book::detail
