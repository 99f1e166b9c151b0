// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/operation/book/style_book.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/detail/list.h"

namespace pipward::operation::detail {
namespace {

struct Request {
    BookName book;
};

struct StyleStamp {
    std::string name;
    Sentence fate;
};

const std::vector<ColumnOf<StyleStamp>>& map_style_columns() {
    using enum CellType;
    static const std::vector<ColumnOf<StyleStamp>> columns{
        {{"name", text, "", "Layer or map",
          "The layer whose style it is, by its title, or the name of the map."},
         [](const StyleStamp& row) { return text_cell(row.name); }},
        {{"action", text, "", "What was done", "Written, unchanged, or your own: changed since and kept."},
         [](const StyleStamp& row) { return text_cell(row.fate); }},
    };
    return columns;
}

constexpr TableOf<StyleStamp> dress_table{"map_style", "Styles and map", "What was written for the desktop.",
                                          map_style_columns};

/// A layer by its title, as the desktop lists it.
std::string title_of(const std::string& name, const Wording& wording) {
    const auto style = find_style(name, std::nullopt, wording);
    return style ? style->title : name;
}

void add_rows(std::vector<StyleStamp>& rows, const std::vector<std::string>& names, const Sentence& fate,
              const Wording& wording) {
    for (const auto& name : names) {
        rows.push_back({title_of(name, wording), fate});
    }
}

std::vector<StyleStamp> rows_of(const book::StyleReport& report, const Wording& wording) {
    std::vector<StyleStamp> rows;
    add_rows(rows, report.written, say("written"), wording);
    add_rows(rows, report.unchanged, say("unchanged"), wording);
    add_rows(rows, report.changed_by_user, say("your own, kept"), wording);
    return rows;
}

Finding notice(const std::string& name, Sentence message, Sentence remedy) {
    return {Level::notice, name, {}, {}, {}, std::move(message), std::move(remedy)};
}

Findings notes_of(const book::StyleReport& report) {
    Findings notices;
    for (const auto& name : report.changed_by_user) {
        notices.push_back(notice(name,
                                 say("It was changed since it was written and counts as yours; it was kept."),
                                 say("To get the one of Pipward too, keep yours under another name, delete "
                                     "this one and run book-style again.")));
    }
    for (const auto& name : report.default_is_the_users) {
        notices.push_back(notice(name, say("A style of yours is the layer's default and stays the default."),
                                 say("To see the one of Pipward, choose it among the layer's styles.")));
    }
    return notices;
}

Sentence summary_of(const book::StyleReport& report) {
    const auto summary = say("{} written, {} unchanged, {} of your own kept.", report.written.size(),
                             report.unchanged.size(), report.changed_by_user.size());
    return report.written.empty() ? summary
                                  : say("{} Reload the layers that are open in a desktop.", summary);
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Writing the map style"));
    const auto report = style_book(request.book.location, lent.wording);
    Outcome outcome;
    outcome.tables = {dress_table.of(rows_of(report, lent.wording))};
    outcome.findings = notes_of(report);
    outcome.summary = summary_of(report);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> book_style() {
    return declare<Request>(
        {.about = {"book-style", "Map style", "Book",
                   "Writes the map style into the book: symbols, labels, forms and value lists for every "
                   "layer, and a map of them all, stored under the name Season map. Styles that were changed "
                   "since, and styles of your own, stay as they are.",
                   Role::style_book},
         .parameters = {book_parameter(&Request::book)},
         .results = {dress_table.shape()},
         .examples = {{"A book that opens well in any desktop.", {{"book", "BOOK"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
