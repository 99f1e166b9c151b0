// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/math/shares.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/paper/sprout_chart.h"
#include "pipward/seed/trial.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request {
    BookName book;
    Day as_of;
    std::string cross;
};

struct ArmRow {
    const seed::Trial* trial = nullptr;
    const seed::TrialArm* arm = nullptr;
};

struct PairRow {
    const seed::Trial* trial = nullptr;
    const seed::TrialPair* pair = nullptr;
};

Cell percent_cell(double share) {
    return number_cell(100 * share, 1);
}

std::string lots_of(const seed::TrialArm& arm) {
    std::string lots;
    for (const auto* lot : arm.lots) {
        lots += (lots.empty() ? "" : " ") + lot->code;
    }
    return lots;
}

const std::vector<ColumnOf<ArmRow>>& arm_columns() {
    static const std::vector<ColumnOf<ArmRow>> columns{
        {{"cross", text, "", "Cross", "Code of the cross."},
         [](const ArmRow& r) { return text_cell(r.trial->cross); }},
        {{"treatment", text, "", "Treatment", "What was done to the seed; unknown for nothing."},
         [](const ArmRow& r) { return text_cell(r.arm->treatment); }},
        {{"medium", text, "", "Medium", "What the seed lay in."},
         [](const ArmRow& r) { return text_cell(r.arm->medium); }},
        {{"lots", text, "", "Lots", "The seed lots that had it."},
         [](const ArmRow& r) { return text_cell(lots_of(*r.arm)); }},
        {{"seeds", whole, "", "Seeds", "Seeds in them."},
         [](const ArmRow& r) { return whole_cell(r.arm->seeds); }},
        {{"sprouted", whole, "", "Sprouted", "By the last count."},
         [](const ArmRow& r) { return whole_cell(r.arm->sprouted); }},
        {{"share", number, "%", "Share", "Of the seeds that sprouted."},
         [](const ArmRow& r) {
             return percent_cell(math::HitsOf{r.arm->sprouted, r.arm->seeds}.share());
         }},
        {{"share_low", number, "%", "At least", "Lower end of the share's 95 % interval (Wilson)."},
         [](const ArmRow& r) { return percent_cell(r.arm->interval.low); }},
        {{"share_high", number, "%", "At most", "Upper end of it."},
         [](const ArmRow& r) { return percent_cell(r.arm->interval.high); }},
        {{"t50_coolbear", number, "d", "Half after, Coolbear",
          "Days until half of those that sprouted had: the (N + 1) / 2 th."},
         [](const ArmRow& r) { return number_cell(r.arm->half_coolbear, 1); }},
        {{"t50_farooq", number, "d", "Half after, Farooq", "The same: the N / 2 th."},
         [](const ArmRow& r) { return number_cell(r.arm->half_farooq, 1); }},
        {{"mean_days", number, "d", "Mean days", "Mean days to sprouting."},
         [](const ArmRow& r) { return number_cell(r.arm->mean_days, 1); }},
    };
    return columns;
}

constexpr TableOf<ArmRow> arm_table{"seed_trial", "Seed treatments",
                                    "How each treatment and medium sprouted, cross by cross.", arm_columns};

const std::vector<ColumnOf<PairRow>>& pair_columns() {
    static const std::vector<ColumnOf<PairRow>> columns{
        {{"cross", text, "", "Cross", "Code of the cross."},
         [](const PairRow& r) { return text_cell(r.trial->cross); }},
        {{"one", text, "", "One", "The one that did better, where one did."},
         [](const PairRow& r) { return Cell{seed::arm_words(r.trial->arms[r.pair->a])}; }},
        {{"other", text, "", "Other", "The other."},
         [](const PairRow& r) { return Cell{seed::arm_words(r.trial->arms[r.pair->b])}; }},
        {{"verdict", text, "", "Verdict", "What the seeds show, in plain words."},
         [](const PairRow& r) { return Cell{r.pair->words}; }},
        {{"p_share", number, "of 1", "Chance p, shares",
          "How often chance alone would part the shares as far: Fisher's exact test, made good for the "
          "number of pairs (Holm)."},
         [](const PairRow& r) { return significant_cell(r.pair->p_share, 3); }},
        {{"p_time", number, "of 1", "Chance p, pace",
          "The same of the whole course: log-rank test; only where both were counted on the same days."},
         [](const PairRow& r) { return r.pair->p_time ? significant_cell(*r.pair->p_time, 3) : Cell{}; }},
        {{"seeds_to_settle", whole, "", "Seeds to settle",
          "Seeds in each that would show a difference as large as this one four times in five."},
         [](const PairRow& r) { return whole_cell(r.pair->seeds_to_settle); }},
    };
    return columns;
}

constexpr TableOf<PairRow> pair_table{"seed_trial_pair", "Treatments compared",
                                      "Every two treatments of a cross, and what can be said of them.",
                                      pair_columns};

std::vector<Table> tables_of(const std::vector<seed::Trial>& trials) {
    std::vector<ArmRow> arms;
    std::vector<PairRow> pairs;
    for (const auto& trial : trials) {
        for (const auto& arm : trial.arms) {
            arms.push_back({&trial, &arm});
        }
        for (const auto& pair : trial.pairs) {
            pairs.push_back({&trial, &pair});
        }
    }
    return {arm_table.of(arms), pair_table.of(pairs)};
}

Sentence summary_of(const std::vector<seed::Trial>& trials) {
    if (trials.empty()) {
        return say("Nothing to compare: no cross has counted lots of two treatments or media.");
    }
    std::vector<Sentence> verdicts;
    for (const auto& trial : trials) {
        for (const auto& pair : trial.pairs) {
            verdicts.push_back(say("{}: {}", trial.cross, pair.words));
        }
    }
    return joined(verdicts, verbatim("\n"));
}

Finding not_counted_alike(const seed::Trial& trial, const seed::TrialPair& pair) {
    return about_table(
        Level::note, "sprout_count",
        say("The courses of {} and {} of cross {} are not compared: they were counted on other days after "
            "their beginning, or too little sprouted.",
            seed::arm_words(trial.arms[pair.a]), seed::arm_words(trial.arms[pair.b]), trial.cross),
        say("Count lots of one trial on the same days."));
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the book"));
    const auto reading = read_checked_without_weather(request.book, request.as_of, lent);
    auto trials = seed::trials_of(reading.orchard, request.as_of);
    std::erase_if(trials, [&](const seed::Trial& trial) {
        return !request.cross.empty() && trial.cross != request.cross;
    });
    Outcome outcome;
    outcome.findings = reading.findings;
    outcome.tables = tables_of(trials);
    for (const auto& trial : trials) {
        for (const auto& pair : trial.pairs) {
            if (!pair.p_time) {
                outcome.findings.push_back(not_counted_alike(trial, pair));
            }
        }
    }
    if (!trials.empty()) {
        outcome.files = {{"seed-trial.svg", "image/svg+xml", paper::sprout_chart_svg(trials, lent.wording)}};
    }
    outcome.summary = summary_of(trials);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> seed_trial() {
    return declare<Request>(
        {.about = {"seed-trial", "Seed treatments compared", "Seed",
                   "Compares what was done to the seed of one cross as the trial that it is: how much "
                   "sprouted, how soon, how sure that is, and whether the seeds are enough to say anything. "
                   "Draws the courses."},
         .parameters = {book_parameter(&Request::book),
                        parameter(&Request::cross, "only-cross", "Cross",
                                  "Only this cross; all where none is named."),
                        as_of_parameter(&Request::as_of)},
         .results = {arm_table.shape(), pair_table.shape()},
         .examples = {{"Every trial of the book.", {{"book", "BOOK"}, {"as-of", "2026-04-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
