// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/operation/book/dress_book.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/detail/list.h"

namespace pipward::operation::detail {
namespace {

struct Request {
    BookName book;
};

struct DressRow {
    std::string name;
    Sentence fate;
};

const std::vector<ColumnOf<DressRow>>& dress_columns() {
    using enum CellType;
    static const std::vector<ColumnOf<DressRow>> columns{
        {{"name", text, "", "Layer or map",
          "The layer whose style it is, by its title, or the name of the map."},
         [](const DressRow& row) { return text_cell(row.name); }},
        {{"fate", text, "", "What was done",
          "Written, as it was, or yours: changed by somebody and left alone."},
         [](const DressRow& row) { return text_cell(row.fate); }},
    };
    return columns;
}

constexpr TableOf<DressRow> dress_table{"dressing", "Styles and map", "What was written for the desktop.",
                                        dress_columns};

/// A layer by its title, as the desktop lists it.
std::string title_of(const std::string& name, const Wording& wording) {
    const auto dress = find_dress(name, std::nullopt, wording);
    return dress ? dress->title : name;
}

void add_rows(std::vector<DressRow>& rows, const std::vector<std::string>& names, const Sentence& fate,
              const Wording& wording) {
    for (const auto& name : names) {
        rows.push_back({title_of(name, wording), fate});
    }
}

std::vector<DressRow> rows_of(const book::DressReport& report, const Wording& wording) {
    std::vector<DressRow> rows;
    add_rows(rows, report.written, say("written"), wording);
    add_rows(rows, report.unchanged, say("as it was"), wording);
    add_rows(rows, report.changed_by_user, say("yours, left alone"), wording);
    return rows;
}

Finding note(const std::string& name, Sentence message, Sentence remedy) {
    return {Level::note, name, {}, {}, {}, std::move(message), std::move(remedy)};
}

Findings notes_of(const book::DressReport& report) {
    Findings notes;
    for (const auto& name : report.changed_by_user) {
        notes.push_back(
            note(name, say("It was changed since it was written and is taken for yours; it was left alone."),
                 say("To get the one of Pipward too, keep yours under another name, delete this one and "
                     "dress again.")));
    }
    for (const auto& name : report.default_is_the_users) {
        notes.push_back(note(name, say("A style of yours is the layer's default and stays the default."),
                             say("To see the one of Pipward, choose it among the layer's styles.")));
    }
    return notes;
}

Sentence summary_of(const book::DressReport& report) {
    const auto summary = say("{} written, {} as they were, {} of yours left alone.", report.written.size(),
                             report.unchanged.size(), report.changed_by_user.size());
    return report.written.empty() ? summary
                                  : say("{} Reload the layers that are open in a desktop.", summary);
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Dressing the book"));
    const auto report = dress_book(request.book.location, lent.wording);
    Outcome outcome;
    outcome.tables = {dress_table.of(rows_of(report, lent.wording))};
    outcome.findings = notes_of(report);
    outcome.summary = summary_of(report);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> book_dress() {
    return declare<Request>(
        {.about = {"book-dress", "Dress book", "Book",
                   "Writes into the book how it looks in a desktop: symbols, labels, forms and pick lists "
                   "for every layer, and a map of them all, stored under the name Season map. What somebody "
                   "changed since, and styles of one's own, are left alone.",
                   Role::dress_book},
         .parameters = {book_parameter(&Request::book)},
         .results = {dress_table.shape()},
         .examples = {{"A book that opens well in any desktop.", {{"book", "BOOK"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
