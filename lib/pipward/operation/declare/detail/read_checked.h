// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <span>

#include "pipward/book/change.h"
#include "pipward/book/checked_reading.h"
#include "pipward/operation/declare/detail/request_field.h"
#include "pipward/operation/operation.h"

/// The way of a run from the book and back to it.
namespace pipward::operation::detail {

/// The run as work is told of its steps. The run must outlive it.
book::ReadingStep step_of(const Run& lent);

/// As the book's room reads it; the run is told.
book::BookReading read_checked(const BookName& book, Day as_of, const Run& lent);
book::BookReading read_checked_without_weather(const BookName& book, Day as_of, const Run& lent);
book::BookReading read_checked_without_ground(const BookName& book, Day as_of, const Run& lent);

/// Throws Error (input) with all of them where any is an error.
void expect_no_errors(const Findings& findings);

void add_findings(Outcome& outcome, const Findings& more);

/// Replaces result tables in one transaction, their sentences in the words of a host; a book that cannot be
/// written says how to look without writing. A stop before they stand leaves the old ones.
void write_results(const BookName& book, std::span<const Table> results, const Run& lent = {});

/// Writes the outcome's tables to the book where the user wants it. A styled book is styled again, so that a
/// desktop shows them; where that does not work the results are kept all the same and a warning tells it.
void keep_results(const BookName& book, bool write, Outcome& outcome, const Run& lent);

/// Work that changes the users' tables: the book is read, judged, written and told under one lock. A stop
/// before the end leaves nothing written; once it is written there is no stop any more. A styled book is
/// styled again in the same way as above.
Outcome in_one_change(const BookName& book, const Run& lent,
                      const std::function<Outcome(const BookName& held)>& work);

/// The same for work that is given its whole request; where it does not write, the work alone.
template <class Request>
Outcome in_one_change_if(bool writes, const Request& request, const Run& lent,
                         Outcome (*work)(const Request&, const Run&)) {
    if (!writes) {
        return work(request, lent);
    }
    return in_one_change(request.book, lent, [&](const BookName& held) {
        auto own = request;
        own.book = held;
        return work(own, lent);
    });
}

}  // namespace pipward::operation::detail
