// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/book/entry.h"
#include "pipward/operation/common_parameters.h"
#include "pipward/operation/complaint.h"
#include "pipward/operation/list.h"

namespace pipward {
namespace {

struct Request {
    BookName book;
    std::string entry;
};

std::string names_of(const std::vector<AddedRow>& rows) {
    constexpr std::size_t enough = 5;
    std::string names;
    for (std::size_t i = 0; i < std::min(rows.size(), enough); ++i) {
        names += (i == 0 ? "" : ", ") + name_of(rows[i]);
    }
    return names;
}

const AddedRow& named(const std::vector<AddedRow>& rows, const std::string& name) {
    const auto found = std::ranges::find_if(rows, [&](const AddedRow& row) { return name_of(row) == name; });
    if (found == rows.end()) {
        throw Error(Trouble::input,
                    about_parameter("entry", name, say("The book remembers no such entry."),
                                    rows.empty() ? say("It remembers none.")
                                                 : say("The latest are: {}.", names_of(rows))));
    }
    return *found;
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the book"));
    const auto rows = remembered_entries(request.book.location);
    if (rows.empty() && request.entry.empty()) {
        return {.tables = {},
                .files = {},
                .findings = {},
                .summary = say("The book remembers no entry: nothing was taken back.")};
    }
    const auto& row = request.entry.empty() ? rows.front() : named(rows, request.entry);
    lent.step(0.5, say("Taking it back"));
    take_back(request.book.location, row);
    return {.tables = {},
            .files = {},
            .findings = {},
            .summary = say("Took back {} from {}: {}.", name_of(row), shown_location(request.book.location),
                           in_words(row))};
}

}  // namespace

std::unique_ptr<const Operation> note_undo() {
    return declare<Request>(
        {.about = {"note-undo", "Take back a note", "Notes",
                   "Takes back the last entry that was noted in the book, or the one that is named, if "
                   "nobody changed it since and nothing refers to it. Run again, it takes back the one "
                   "before."},
         .parameters = {book_parameter(&Request::book),
                        parameter(&Request::entry, "entry", "Entry",
                                  "Which one to take back, by the name told when it was noted, such as "
                                  "bloom_note/412; the last where none is named.")},
         .results = {},
         .examples = {{"The last entry.", {{"book", "BOOK"}}}},
         .run = run});
}

}  // namespace pipward
