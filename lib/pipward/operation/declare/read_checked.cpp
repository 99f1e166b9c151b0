// SPDX-License-Identifier: MIT
#include "pipward/operation/declare/detail/read_checked.h"

#include <algorithm>
#include <iterator>

#include "pipward/operation/book/style_book.h"
#include "pipward/operation/declare/detail/likely_mistakes.h"
#include "pipward/record/reader_days.h"

namespace pipward::operation::detail {
namespace {

/// The share of the whole work at which the results are written.
constexpr double write_begins = 0.97;

}  // namespace

book::ReadingStep step_of(const Run& lent) {
    return [&lent](double share, const Sentence& doing) { lent.step(share, doing); };
}

book::BookReading read_checked(const BookName& book, Day as_of, const Run& lent) {
    auto reading = book::read_checked(book, as_of, step_of(lent));
    std::ranges::move(likely_mistakes(reading.orchard), std::back_inserter(reading.findings));
    return reading;
}

book::BookReading read_checked_without_weather(const BookName& book, Day as_of, const Run& lent) {
    return book::read_checked_without_weather(book, as_of, step_of(lent));
}

book::BookReading read_checked_without_ground(const BookName& book, Day as_of, const Run& lent) {
    return book::read_checked_without_ground(book, as_of, step_of(lent));
}

void expect_no_errors(const Findings& findings) {
    if (has_errors(findings)) {
        throw Error(Trouble::input, findings);
    }
}

void add_findings(Outcome& outcome, const Findings& more) {
    outcome.findings.insert(outcome.findings.end(), more.begin(), more.end());
}

void write_results(const BookName& book, std::span<const Table> results, const Run& lent) {
    std::vector<Table> kept;
    for (const auto& table : results) {
        kept.push_back(spoken(table, with_stored_days(lent.wording)));
    }
    try {
        // The wait for another writer may be long: whoever stops it meanwhile wants nothing written.
        book::in_one_change(book, [&](const book::BookAt& held) {
            lent.step(write_begins, say("Writing the results"));
            book::replace_results(held, kept);
        });
    } catch (const Error& error) {
        auto findings = error.findings();
        if (error.trouble() == Trouble::access) {
            auto& remedy = findings.back().remedy;
            remedy += verbatim(remedy.empty() ? "" : " ");
            remedy += say("To see the results without keeping them, set keep to no.");
        }
        throw Error(error.trouble(), std::move(findings));
    }
}

void keep_results(const BookName& book, bool write, Outcome& outcome, const Run& lent) {
    if (write) {
        write_results(book, outcome.tables, lent);
        add_findings(outcome, refresh_style(book.location, lent.wording));
    }
}

Outcome in_one_change(const BookName& book, const Run& lent,
                      const std::function<Outcome(const BookName&)>& work) {
    Outcome outcome;
    if (book::in_one_change(book, [&](const book::BookAt& held) { outcome = work(BookName{held}); })) {
        add_findings(outcome, refresh_style(book.location, lent.wording));
    }
    return outcome;
}

}  // namespace pipward::operation::detail
