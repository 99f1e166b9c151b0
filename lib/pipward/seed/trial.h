// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/math/shares.h"
#include "pipward/seed/lot_course.h"
#include "pipward/value/sentence.h"

/// Treatments and media of seed compared as the trials that they are.
namespace pipward::seed {

/// The seed of one cross that had one treatment in one medium.
struct TrialArm {
    std::vector<const SeedLot*> lots;      ///< at least one, all counted
    std::string treatment;                 ///< empty for none
    std::string medium;                    ///< empty where it was not written down
    int seeds = 0;                         ///< with which its lots began
    int germinated = 0;                    ///< by their last counts
    math::ShareInterval interval;          ///< Wilson, 95 %, of the share germinated
    std::vector<GerminationPoint> points;  ///< of its one lot; empty where it has several or no day 0
    GerminationTimes times;                ///< of all its lots, each from its own day 0
    std::optional<double> half_coolbear;   ///< days
    std::optional<double> half_farooq;     ///< likewise, by the other rule
    std::optional<double> mean_days;       ///< to germination; all three empty without points
};

/// What two arms show, at trial_alpha after Holm.
enum class TrialVerdict {
    more_germinate,  ///< the shares differ
    earlier,         ///< the shares cannot be distinguished, but one germinates earlier
    cannot_tell,     ///< the seeds do not show a difference
    too_few,         ///< no outcome of so few seeds could have shown one
};

/// Two arms of a trial; p values are made good for the number of pairs (Holm).
struct TrialPair {
    std::size_t a = 0;   ///< into Trial::arms; the better one where the verdict says so
    std::size_t b = 0;   ///< the other
    double p_share = 1;  ///< Fisher's exact test of the final shares
    /// Log-rank; only where both were counted on the same days and germinated enough.
    std::optional<double> p_time{};
    TrialVerdict verdict = TrialVerdict::cannot_tell;  ///< what may be concluded
    /// In each, for a difference as large as the one seen; unknown where none was.
    std::optional<int> seeds_to_settle{};
    Sentence words{};  ///< the verdict in a sentence, for people
};

/// The arms that one cross's seed was split into.
struct Trial {
    std::string cross;             ///< code of the goal
    std::vector<TrialArm> arms;    ///< at least two, the fullest first
    std::vector<TrialPair> pairs;  ///< every two
};

inline constexpr double trial_alpha = 0.05;  ///< an adjusted p below it shows a difference

/// Every cross of which lots with different treatments or media were counted by the day.
std::vector<Trial> trials_of(const Orchard& orchard, Day as_of);

/// "“water, 24 h” in moist sand", "no treatment": how people call it.
Sentence arm_words(const TrialArm& arm);

}  // namespace pipward::seed
