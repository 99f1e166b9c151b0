// SPDX-License-Identifier: MIT
#include "pipward/operation/season/detail/season_request.h"

#include "pipward/operation/book/dress_book.h"
#include "pipward/operation/declare/detail/read_checked.h"

namespace pipward::operation::detail {
namespace {

/// The share of the whole work at which the results are written.
constexpr double write_begins = 0.97;

}  // namespace

season::Place read_place(const SeasonRequest& request, const Run& lent) {
    auto reading = read_checked(request.book, request.as_of, lent);
    return season::place_of(std::move(reading.orchard), {request.as_of, request.station},
                            std::move(reading.findings));
}

season::Step step_of(const Run& lent) {
    return [&lent](double share, const Sentence& doing) { lent.step(share, doing); };
}

void keep_results(const BookName& book, bool write, Outcome& outcome, const Run& lent) {
    if (write) {
        lent.step(write_begins, say("Writing the results"));
        write_results(book, outcome.tables, lent.wording);
        const auto dress = refresh_dress(book.location, lent.wording);
        outcome.findings.insert(outcome.findings.end(), dress.begin(), dress.end());
    }
}

}  // namespace pipward::operation::detail
