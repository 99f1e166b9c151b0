// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/book/entry.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {
namespace {

struct Request {
    BookName book;
    std::string entry;
};

using Batches = std::vector<std::vector<book::AddedRow>>;

std::string names_of(const Batches& batches) {
    constexpr std::size_t enough = 5;
    std::string names;
    for (std::size_t i = 0; i < std::min(batches.size(), enough); ++i) {
        names += (i == 0 ? "" : ", ") + book::name_of(batches[i].back());
    }
    return names;
}

// A row that came with others may be taken back alone by its name.
std::vector<book::AddedRow> named(const Batches& batches, const std::string& name) {
    for (const auto& batch : batches) {
        const auto found = std::ranges::find_if(
            batch, [&](const book::AddedRow& row) { return book::name_of(row) == name; });
        if (found != batch.end()) {
            return {*found};
        }
    }
    throw Error(Trouble::input,
                about_parameter(
                    "entry", name, say("The book has no such record to undo."),
                    batches.empty() ? say("It has none.") : say("The latest are: {}.", names_of(batches))));
}

Sentence taken_back(const std::vector<book::AddedRow>& rows, const std::string& book) {
    return rows.size() == 1
               ? say("Undid {} in {}: {}.", book::name_of(rows.front()), book, book::in_words(rows.front()))
               : say("Undid {} records of one import in {}: {} to {}.", rows.size(), book,
                     book::name_of(rows.front()), book::name_of(rows.back()));
}

// What stands last is asked before the lock is waited for: who undoes at the same time as somebody else means
// the record that both saw, not the one before it.
std::string name_of_last(const BookName& book) {
    const auto batches = book::remembered_batches(book);
    return batches.empty() ? std::string{} : book::name_of(batches.front().back());
}

Finding another_is_last(const std::string& seen, const Batches& batches) {
    return about_parameter(
        "entry", "",
        say("The last record was {} and is another one by now: somebody else has undone or "
            "written one meanwhile.",
            seen),
        batches.empty()
            ? say("Nothing was undone.")
            : say("Nothing was undone. Run it again to undo {}.", book::name_of(batches.front().back())));
}

Outcome undo(const Request& request, const std::string& last, const Run& lent) {
    const auto batches = book::remembered_batches(request.book);
    if (request.entry.empty() &&
        (batches.empty() ? !last.empty() : book::name_of(batches.front().back()) != last)) {
        throw Error(Trouble::input, another_is_last(last, batches));
    }
    const auto rows = request.entry.empty() ? batches.front() : named(batches, request.entry);
    lent.step(0.5, say("Undoing the record"));
    book::take_back(request.book, rows);
    return Outcome(taken_back(rows, book::shown_location(request.book.location)));
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the book"));
    const auto last = name_of_last(request.book);
    if (last.empty() && request.entry.empty()) {
        return Outcome(say("The book has no record to undo: nothing was changed."));
    }
    return in_one_change(request.book, lent, [&](const BookName& held) {
        auto own = request;
        own.book = held;
        return undo(own, last, lent);
    });
}

}  // namespace

std::unique_ptr<const Operation> record_undo() {
    return declare<Request>(
        {.about = {"record-undo", "Undo a record", "Records",
                   "Undoes the last record written to the book, or the one that is named, if it was not "
                   "changed since and nothing refers to it. The rows of one import belong together. Run "
                   "again, it undoes the one before."},
         .parameters = {book_parameter(&Request::book),
                        parameter(&Request::entry, "entry", "Entry",
                                  "Record to undo, by the name shown when it was written, such as "
                                  "bloom_observation/412; the last one where none is named.")},
         .results = {},
         .examples = {{"The last entry.", {{"book", "BOOK"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
