// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/result_tables.h"

namespace pipward::operation::detail {
namespace {

struct Request {
    BookName book;
    Day as_of;
};

Sentence warnings_in(const Findings& findings) {
    const auto number = std::ranges::count(findings, Level::warning, &Finding::level);
    return number == 1 ? say("1 warning") : say("{} warnings", number);
}

// Forms of their own: a bloom observation is another word in most languages.
Sentence notes_in(const Findings& findings) {
    const auto number = std::ranges::count(findings, Level::notice, &Finding::level);
    return number == 1 ? say("{0} notice", number) : say("{0} notices", number);
}

/// Of the file first, then of what stands in it, as far as it can be read.
Findings found_in(const Request& request, const Run& lent) {
    auto findings = book::check_file(request.book);
    const bool whole = !has_errors(findings);
    try {
        std::ranges::move(read_checked(request.book, request.as_of, lent).findings,
                          std::back_inserter(findings));
    } catch (const Error& error) {
        if (error.trouble() != Trouble::input && (whole || error.trouble() != Trouble::access)) {
            throw;
        }
        std::ranges::copy(error.findings(), std::back_inserter(findings));
    }
    expect_no_errors(findings);
    return findings;
}

Outcome run(const Request& request, const Run& lent) {
    auto findings = found_in(request, lent);
    Outcome outcome;
    outcome.tables = {finding_table.of(findings)};
    outcome.summary = findings.empty() ? say("Nothing is wrong with the book.")
                                       : say("No errors; {}, {}.", warnings_in(findings), notes_in(findings));
    outcome.findings = std::move(findings);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> book_check() {
    return declare<Request>(
        {.about = {"book-check", "Check book", "Book",
                   "Reads the whole book and reports everything that is wrong, doubtful or impossible in it: "
                   "where it is and what to do about it. Errors prevent results, warnings weaken them."},
         .parameters = {book_parameter(&Request::book), as_of_parameter(&Request::as_of)},
         .results = {finding_table.shape()},
         .examples = {{"Everything found in the book.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
