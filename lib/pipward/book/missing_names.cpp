// SPDX-License-Identifier: MIT
#include "pipward/book/detail/missing_names.h"

#include <fmt/format.h>

#include <algorithm>

namespace pipward::book::detail {
namespace {

Sentence remedy_for(const std::string& name, const Named& named) {
    if (named.unread) {
        return say("Perhaps it is a row of {} that could not be read: correct those first.", named.table);
    }
    const auto meant = likely_name(name, named.all());
    return meant.empty() ? say("Add the {}, or correct the name.", named.what)
                         : say("Did you mean \"{}\"?", meant);
}

constexpr std::size_t few_names = 3;

// What is told already: that nothing of the other table can be read.
bool is_told(const Named& named) {
    return named.nothing_there && named.unread;
}

Finding about_name(const std::string& name, const Missing& rows, const MissingInColumn& missing) {
    const auto& what = missing.named.what;
    const auto message =
        rows.rows > 1 ? say("The book has no {} of this name; {} rows of the table give it.", what, rows.rows)
                      : say("The book has no {} of this name.", what);
    return error({missing.table.name, rows.first_row, missing.column.name, name}, message,
                 remedy_for(name, missing.named));
}

// Names by the dozen that are missing where rows could not be read: most of them are such rows.
Finding about_unread(const MissingInColumn& missing) {
    const auto& [name, first] = *missing.names.begin();
    return error({missing.table.name, first.first_row, missing.column.name, name},
                 say("This and {} more names of the column answer to no {} of the book.",
                     missing.names.size() - 1, missing.named.what),
                 remedy_for(name, missing.named));
}

// A station has thousands of days: its name is the row. A book without stations hears that already.
void tell_of_series(const MissingInColumn& missing, Findings& findings) {
    if (missing.named.unread || missing.named.nothing_there) {
        return;
    }
    for (const auto& [name, days] : missing.names) {
        const auto meant = likely_name(name, missing.named.all());
        findings.push_back(
            error({missing.table.name, name, missing.column.name, name},
                  say("The book has no station of this name, but {} days of weather.", days.rows),
                  meant.empty() ? say("Add the station or correct the name.")
                                : say("Did you mean \"{}\"?", meant)));
    }
}

}  // namespace

bool Named::answers_to(const std::string& name) const {
    return std::ranges::any_of(lists, [&](const auto* list) { return list->contains(name); });
}

std::set<std::string> Named::all() const {
    std::set<std::string> names;
    for (const auto* list : lists) {
        names.insert(list->begin(), list->end());
    }
    return names;
}

Named named_by(const BookColumn& column, const Names& names, Schema schema) {
    const auto& first = column.references.front();
    Named named{column.refers_to, first.table};
    if (const auto* table = find_book_table(first.table, schema); named.what.empty() && table != nullptr) {
        named.what = table->row_words;
    }
    for (const auto& to : column.references) {
        named.lists.push_back(&names.of(to.table, to.column));
        if (!named.unread && names.unread.contains(to.table)) {
            named.table = to.table;
            named.unread = true;
        }
    }
    named.nothing_there = named.lists.front()->empty();
    return named;
}

void tell(const MissingInColumn& missing, UnansweredTables& unanswered, Findings& findings) {
    const auto& named = missing.named;
    if (missing.names.empty() || is_told(named)) {
        return;
    }
    if (missing.table.long_series) {
        tell_of_series(missing, findings);
        return;
    }
    if (named.unread && missing.names.size() > few_names) {
        findings.push_back(about_unread(missing));
        return;
    }
    auto& to = named.nothing_there ? unanswered[std::string(named.table)].one_by_one : findings;
    for (const auto& [name, rows] : missing.names) {
        to.push_back(about_name(name, rows, missing));
    }
    if (named.nothing_there) {
        unanswered[std::string(named.table)].tables.emplace(missing.table.name);
    }
}

void tell_of_empty_tables(const UnansweredTables& unanswered, Findings& findings) {
    for (const auto& [table, referring] : unanswered) {
        if (referring.one_by_one.size() <= few_names) {
            findings.insert(findings.end(), referring.one_by_one.begin(), referring.one_by_one.end());
        } else {
            findings.push_back(error({table},
                                     say("The table is empty, yet there are rows of {} that refer to it.",
                                         fmt::format("{}", fmt::join(referring.tables, ", "))),
                                     say("Fill it in, or restore its rows from a backup.")));
        }
    }
}

}  // namespace pipward::book::detail
