// SPDX-License-Identifier: MIT
#include "pipward/operation/note.h"

#include <fmt/format.h>

namespace pipward {

Outcome noted(const NoteRequest& request, const Entry& entry, const Run& lent) {
    lent.step(0, say("Reading the book"));
    auto added = add_entry(request.book.location, entry, request.as_of);
    Outcome outcome;
    outcome.findings = std::move(added.findings);
    outcome.summary = say("{}. Written to {} as {}; note-undo takes it back.", in_words(entry),
                          shown_location(request.book.location), name_of(added.row));
    return outcome;
}

}  // namespace pipward
