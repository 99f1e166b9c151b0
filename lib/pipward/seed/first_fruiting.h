// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/record/descent.h"
#include "pipward/record/orchard.h"
#include "pipward/record/words.h"
#include "pipward/value/season.h"
#include "pipward/value/sentence.h"

/// How long a seedling keeps its breeder waiting.
namespace pipward::seed {

/// Years from sowing to the first fruit that a planner counts with, and between which years it comes: apple
/// 5, pear 7, 3 to 10 (common practice, no source; juvenile periods of 4.2 years for apple and 6.0 for pear
/// over many progenies: Visser & de Vries, Euphytica).
inline constexpr int apple_years = 5;
inline constexpr int pear_years = 7;                              ///< likewise of a pear
inline constexpr int fewest_years = years_from_sowing_to_flower;  ///< no fruit before
inline constexpr int most_years = 10;                             ///< later is overdue
/// A dwarfing stock takes one to three years off. Common practice, no source.
inline constexpr int years_off_on_dwarfing_stock = 2;

/// Where a seedling stands in the year asked about; years are those of FirstFruit.
enum class FruitState {
    bloomed,   ///< stage 60 or later was observed at it, or its flowers or fruit were scored
    young,     ///< not before `from`
    possible,  ///< from `from` on, before `expected`
    due,       ///< in the expected year
    waiting,   ///< after the expected year
    overdue,   ///< after `to`
};

std::span<const Word<FruitState>> words(FruitState);

/// What tells the year of sowing, the surest first.
enum class SownBy {
    lot_counts,  ///< the first germinated seed counted of its cross
    cross,       ///< the year after the cross
    planting,    ///< the year of planting, where no cross of it is known
};

/// One seedling that stands, and the years in which it should first fruit.
struct FirstFruit {
    const Tree* tree = nullptr;            ///< never null
    const Accession* accession = nullptr;  ///< null where the tree names none that the book has
    std::string cross;                     ///< code; empty where the book does not know it
    int sown = 0;                          ///< year
    SownBy sown_by = SownBy::planting;     ///< what tells `sown`
    bool pear = false;                     ///< of the genus Pyrus; all else is calculated as an apple
    bool dwarfed = false;                  ///< is_dwarfing() says so of its rootstock
    int expected = 0;                      ///< year of the first fruit that a planner counts with
    int from = 0;                          ///< the first year in which it may fruit
    int to = 0;                            ///< the last year in which it is not overdue
    std::optional<int> seen;               ///< year of the first bloom, or score of flowers or fruit
    FruitState state = FruitState::young;  ///< in the year asked about
};

/// Of every standing tree with the purpose of a seedling whose year of sowing can be told, in the order of
/// the book. `year` is the one asked about. Trees that were sown in nobody knows which year are counted in
/// `unknown`.
struct FirstFruits {
    std::vector<FirstFruit> seedlings;  ///< those with a year of sowing
    int unknown = 0;                    ///< trees without one
};
/// What was noted after `as_of` has no say; `year` may lie ahead.
FirstFruits first_fruits(const Orchard& orchard, int year, Day as_of);

/// What the years of a seedling are calculated from, in sentences.
Sentence fruit_reason(const FirstFruit& fruit);

}  // namespace pipward::seed
