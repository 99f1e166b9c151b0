// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <set>

#include "pipward/book/detail/entry_judgement.h"
#include "pipward/book/detail/missing_names.h"
#include "pipward/value/nearest.h"

namespace pipward::book {
namespace {

// Beyond this many unknown names the trouble is not a slip of the pen, and the search would take minutes in a
// large book.
constexpr std::size_t most_searches = 20;

Sentence nearest_names(const std::string& name, const detail::Named& named) {
    const auto known = named.all();
    const auto few = nearest_few(name, {known.begin(), known.end()});
    if (few.empty()) {
        return say("Add the {} to the book or correct the name.", named.what);
    }
    return few.size() == 1 ? say("Did you mean \"{}\"?", few.front())
                           : say("The nearest are: {}.", fmt::format("{}", fmt::join(few, ", ")));
}

Sentence remedy_for(const std::string& name, const detail::Named& named, detail::KnownNames& known) {
    if (named.unread) {
        return say("Perhaps it is a row of {} that could not be read: correct those first.", named.table);
    }
    const auto key = std::pair{std::string(named.table), name};
    const auto told = known.remedies.find(key);
    if (told != known.remedies.end()) {
        return told->second;
    }
    const auto remedy = known.remedies.size() < most_searches
                            ? nearest_names(name, named)
                            : say("Add the {} to the book or correct the name.", named.what);
    known.remedies.emplace(key, remedy);
    return remedy;
}

Sentence taken(const std::string& name, const BookTable& table, const detail::KnownNames& known) {
    return known.earlier.contains(name) ? say("An earlier row has a {} of this name.", table.row_words)
                                        : say("The book has a {} of this name already.", table.row_words);
}

}  // namespace

detail::KnownNames::KnownNames(const BookReading& reading, Schema tables)
    : book(reading), schema(tables), names(detail::names_of(reading.orchard, tables)) {
    for (const auto& [table, rows] : unread_in(reading.findings)) {
        names.unread.insert(table);
    }
}

void detail::judge_names(detail::Judgement& judgement, detail::KnownNames& known) {
    for (const auto& column : judgement.table.columns) {
        const auto value = detail::value_of(judgement.entry, column.name);
        const auto* name = std::get_if<std::string>(&value);
        if (name == nullptr || name->empty() || column.references.empty()) {
            continue;
        }
        const auto named = detail::named_by(column, known.names, known.schema);
        if (!named.answers_to(*name)) {
            judgement.findings.push_back(detail::error(judgement.at(column.name),
                                                       say("The book has no {} of this name.", named.what),
                                                       remedy_for(*name, named, known)));
        }
    }
}

bool detail::judge_key(detail::Judgement& judgement, const detail::KnownNames& known) {
    const auto& table = judgement.table;
    const auto* key = naming_column(table);
    if (key == nullptr) {
        return true;
    }
    const auto place = judgement.at(key->name);
    const bool is_known = known.names.of(table.name, key->name).contains(place.value);
    // Rows of several days may share the name; whether they belong together is a rule of their own.
    if (is_known && key != key_column(table)) {
        return true;
    }
    if (is_known) {
        judgement.findings.push_back(
            detail::error(place, taken(place.value, table, known),
                          say("Give it another name: each must be one row's alone.")));
        return false;
    }
    if (const auto like = known.folds.find(detail::folded(place.value)); like != known.folds.end()) {
        judgement.findings.push_back(
            detail::warning(place, say("It differs from \"{}\" only by capitals or spaces.", like->second),
                            say("Make them more different.")));
    }
    return true;
}

void detail::add_key(const detail::Judgement& judgement, detail::KnownNames& known) {
    const auto* key = naming_column(judgement.table);
    const auto name = key == nullptr ? std::string{} : to_text(detail::value_of(judgement.entry, key->name));
    if (!name.empty()) {
        known.names.by_column[{judgement.table.name, key->name}].insert(name);
        known.folds.emplace(detail::folded(name), name);
        known.earlier.insert(name);
    }
}

void detail::fold_names(const BookTable& table, detail::KnownNames& known) {
    if (const auto* key = naming_column(table)) {
        for (const auto& name : known.names.of(table.name, key->name)) {
            known.folds.emplace(detail::folded(name), name);
        }
    }
}

}  // namespace pipward::book
