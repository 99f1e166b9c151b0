// SPDX-License-Identifier: MIT
#include "pipward/book/detail/missing_names.h"

#include <fmt/format.h>

#include "pipward/book/detail/check.h"

namespace pipward::book::detail {
namespace {

Sentence remedy_for(const std::string& name, const Named& named) {
    if (named.unread) {
        return say("Perhaps it is a row of {} that could not be read: mend those first.", named.table);
    }
    const auto meant = likely_name(name, *named.known);
    return meant.empty() ? say("Add the {}, or correct the name.", named.what)
                         : say("Did you mean \"{}\"?", meant);
}

constexpr std::size_t few_names = 3;

// What is told already: that nothing of the other table can be read.
bool is_told(const Named& named) {
    return named.nothing_there && named.unread;
}

Finding about_name(const std::string& name, const Missing& missing, std::string_view table,
                   std::string_view field, const Named& named) {
    const auto message =
        missing.rows > 1
            ? say("The book has no {} of this name; {} rows of the table give it.", named.what, missing.rows)
            : say("The book has no {} of this name.", named.what);
    return error({table, missing.first_row, field, name}, message, remedy_for(name, named));
}

// Names by the dozen that are missing where rows could not be read: most of them are such rows.
Finding about_unread(const MissingNames& missing, std::string_view table, std::string_view field,
                     const Named& named) {
    const auto& [name, first] = *missing.begin();
    return error({table, first.first_row, field, name},
                 say("This and {} more names of the column answer to no {} of the book.", missing.size() - 1,
                     named.what),
                 remedy_for(name, named));
}

}  // namespace

void tell(const MissingNames& missing, std::string_view table, std::string_view field, const Named& named,
          UnansweredTables& unanswered, Findings& findings) {
    if (missing.empty() || is_told(named)) {
        return;
    }
    if (named.unread && missing.size() > few_names) {
        findings.push_back(about_unread(missing, table, field, named));
        return;
    }
    auto& to = named.nothing_there ? unanswered[std::string(named.table)].one_by_one : findings;
    for (const auto& [name, entry] : missing) {
        to.push_back(about_name(name, entry, table, field, named));
    }
    if (named.nothing_there) {
        unanswered[std::string(named.table)].tables.emplace(table);
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
                                     say("Fill it in, or fetch its rows from a backup.")));
        }
    }
}

}  // namespace pipward::book::detail
