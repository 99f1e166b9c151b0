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
inline constexpr int pear_years = 7;
inline constexpr int fewest_years = years_from_sowing_to_flower;
inline constexpr int most_years = 10;
/// A dwarfing stock takes one to three years off. Common practice, no source.
inline constexpr int years_off_on_dwarfing_stock = 2;

enum class FruitState {
    bloomed,   ///< stage 60 or later was noted at it, or its fruit was scored
    young,     ///< not before `from`
    possible,  ///< from `from` on, before `expected`
    due,       ///< in the expected year
    waiting,   ///< after the expected year
    overdue,   ///< after `to`
};

std::span<const Word<FruitState>> words(FruitState);

enum class SownBy { lot_counts, cross, planting };

/// One seedling that stands, and the years in which it should first fruit.
struct FirstFruit {
    const Tree* tree = nullptr;
    const Accession* accession = nullptr;
    std::string cross;  ///< code; empty where the book does not know it
    int sown = 0;       ///< year
    SownBy sown_by = SownBy::planting;
    bool pear = false;
    bool dwarfed = false;
    int expected = 0;
    int from = 0;
    int to = 0;
    std::optional<int> seen;  ///< year of the first bloom or score noted
    FruitState state = FruitState::young;
};

/// Of every standing tree with the purpose of a seedling whose year of sowing can be told, in the order of
/// the book. `year` is the one asked about. Trees that were sown in nobody knows which year are counted in
/// `unknown`.
struct FirstFruits {
    std::vector<FirstFruit> seedlings;
    int unknown = 0;
};
FirstFruits first_fruits(const Orchard& orchard, int year, Day as_of);

/// What the years of a seedling are reckoned from, in sentences.
Sentence fruit_reason(const FirstFruit& fruit);

}  // namespace pipward::seed
