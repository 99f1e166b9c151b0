// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/math/shares.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/seed/detail/named_crosses.h"
#include "pipward/paper/germination_chart.h"
#include "pipward/seed/trial.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request {
    BookName book;
    Day as_of;
    std::string crosses;
};

struct ArmRow {
    const seed::Trial* trial = nullptr;
    const seed::TrialArm* arm = nullptr;
};

struct PairRow {
    const seed::Trial* trial = nullptr;
    const seed::TrialPair* pair = nullptr;
};

Cell share_cell(double share) {
    return number_cell(share, 3);
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
        {{"treatment", text, "", "Treatment", "Treatment; unknown where none."},
         [](const ArmRow& r) { return text_cell(r.arm->treatment); }},
        {{"medium", text, "", "Medium", "Medium."}, [](const ArmRow& r) { return text_cell(r.arm->medium); }},
        {{"lots", text, "", "Lots", "The seed lots that had it."},
         [](const ArmRow& r) { return text_cell(lots_of(*r.arm)); }},
        {{"seeds", whole, "", "Seeds", "Seeds in them."},
         [](const ArmRow& r) { return whole_cell(r.arm->seeds); }},
        {{"germinated", whole, "", "Germinated", "By the last count."},
         [](const ArmRow& r) { return whole_cell(r.arm->germinated); }},
        {{"share", number, "0 to 1", "Share", "Share of the seeds that germinated."},
         [](const ArmRow& r) {
             return share_cell(math::HitsOf{r.arm->germinated, r.arm->seeds}.share());
         }},
        {{"share_low", number, "0 to 1", "At least",
          "Lower limit of the 95 % confidence interval of the share (Wilson)."},
         [](const ArmRow& r) { return share_cell(r.arm->interval.low); }},
        {{"share_high", number, "0 to 1", "At most", "Upper limit of the interval."},
         [](const ArmRow& r) { return share_cell(r.arm->interval.high); }},
        {{"t50_days", number, "d", "Half germinated after",
          "Days until half of the germinated seeds had germinated (Farooq et al. 2005)."},
         [](const ArmRow& r) { return number_cell(r.arm->half_farooq, 1); }},
        {{"mean_days", number, "d", "Mean germination time", "Mean germination time."},
         [](const ArmRow& r) { return number_cell(r.arm->mean_days, 1); }},
    };
    return columns;
}

constexpr TableOf<ArmRow> arm_table{
    "seed_trial", "Seed treatments", "Germination by treatment and medium, cross by cross.", arm_columns, [] {
        return TableView{.first = {"treatment", "medium", "seeds", "germinated", "share", "share_low",
                                   "share_high", "t50_days", "mean_days", "lots"},
                         .once = {"cross"}};
    }};

const std::vector<ColumnOf<PairRow>>& pair_columns() {
    static const std::vector<ColumnOf<PairRow>> columns{
        {{"cross", text, "", "Cross", "Code of the cross."},
         [](const PairRow& r) { return text_cell(r.trial->cross); }},
        {{"one", text, "", "One", "The one that did better, where one did."},
         [](const PairRow& r) { return Cell{seed::arm_words(r.trial->arms[r.pair->a])}; }},
        {{"other", text, "", "Other", "The other."},
         [](const PairRow& r) { return Cell{seed::arm_words(r.trial->arms[r.pair->b])}; }},
        {{"verdict", text, "", "Verdict", "Result in words."},
         [](const PairRow& r) { return Cell{r.pair->words}; }},
        {{"p_share", number, "0 to 1", "P value, shares",
          "Difference of the shares: p value of Fisher's exact test, adjusted for multiple comparisons "
          "(Holm)."},
         [](const PairRow& r) { return significant_cell(r.pair->p_share, 3); }},
        {{"p_time", number, "0 to 1", "P value, time course",
          "Difference of the time courses: p value of the log-rank test; only where both were counted on the "
          "same days."},
         [](const PairRow& r) { return r.pair->p_time ? significant_cell(*r.pair->p_time, 3) : Cell{}; }},
        {{"seeds_needed", whole, "", "Seeds needed",
          "Seeds per treatment to show a difference of this size with a power of 80 %."},
         [](const PairRow& r) { return whole_cell(r.pair->seeds_to_settle); }},
    };
    return columns;
}

constexpr TableOf<PairRow> pair_table{
    "seed_trial_pair", "Comparison of treatments",
    "Every pair of treatments of a cross, and their difference.", pair_columns, [] {
        return TableView{.first = {"one", "other", "p_share", "p_time", "seeds_needed"},
                         .below = {"verdict"},
                         .once = {"cross"}};
    }};

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
        Level::notice, "germination_count",
        say("The time courses of {} and {} of cross {} are not compared: they were counted on different "
            "days, or too few seeds germinated.",
            seed::arm_words(trial.arms[pair.a]), seed::arm_words(trial.arms[pair.b]), trial.cross),
        say("Count lots of one trial on the same days."));
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the book"));
    const auto reading = read_checked_without_weather(request.book, request.as_of, lent);
    auto trials = seed::trials_of(reading.orchard, request.as_of);
    const auto named = named_crosses(request.crosses, reading.orchard);
    std::erase_if(trials, [&](const seed::Trial& trial) { return !is_named(named, trial.cross); });
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
        outcome.files = {
            {"seed-trial.svg", "image/svg+xml", paper::germination_chart_svg(trials, lent.wording)}};
    }
    outcome.summary = summary_of(trials);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> seed_trial() {
    return declare<Request>(
        {.about = {"seed-trial", "Compare seed treatments", "Seed",
                   "Compares treatments of the seed of one cross as a germination trial: final germination, "
                   "its time course, confidence intervals, and whether there are enough seeds for a "
                   "conclusion. Draws the germination curves."},
         .parameters = {book_parameter(&Request::book),
                        parameter(&Request::crosses, "crosses", "Crosses",
                                  "Only these crosses, separated by commas; all where none is named."),
                        as_of_parameter(&Request::as_of)},
         .results = {arm_table.shape(), pair_table.shape()},
         .examples = {{"Every trial of the book.", {{"book", "BOOK"}, {"as-of", "2026-04-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
