// SPDX-License-Identifier: MIT
#include "pipward/operation/field/detail/record_entry.h"

#include <fmt/format.h>

namespace pipward::operation::detail {

Outcome recorded(const RecordRequest& request, const book::Entry& entry, const Run& lent) {
    lent.step(0, say("Reading the book"));
    auto added = book::add_entry(request.book, entry, request.as_of);
    Outcome outcome;
    outcome.findings = std::move(added.findings);
    outcome.summary = say("{}. Written to {} as {}; record-undo reverts it.", book::in_words(entry),
                          book::shown_location(request.book.location), book::name_of(added.row));
    return outcome;
}

}  // namespace pipward::operation::detail
