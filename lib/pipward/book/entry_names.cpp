// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <set>

#include "pipward/book/detail/entry_judgement.h"
#include "pipward/value/nearest.h"

namespace pipward::book::detail {
namespace {

struct Named {
    std::string_view table;
    Sentence what;
    std::set<std::string> Names::*names;
};

const Named& thing_of(std::string_view table) {
    static const std::array<Named, 6> things{{{"tree", say("tree"), &Names::trees},
                                              {"accession", say("accession"), &Names::accessions},
                                              {"cross_goal", say("cross"), &Names::crosses},
                                              {"pollen_lot", say("pollen lot"), &Names::pollen_lots},
                                              {"seed_lot", say("seed lot"), &Names::seed_lots},
                                              {"pollination", say("pollination tag"), &Names::tags}}};
    const auto* const found = std::ranges::find(things, table, &Named::table);
    return found == things.end() ? things.back() : *found;
}

bool is_unread(const BookReading& book, std::string_view table) {
    return std::ranges::any_of(book.findings, [&](const Finding& finding) {
        return finding.level == Level::error && finding.table == table;
    });
}

// Beyond this many unknown names the trouble is not a slip of the pen, and the search would take minutes in a
// large book.
constexpr std::size_t most_searches = 20;

Sentence nearest_names(const std::string& name, const Named& thing, const std::set<std::string>& known) {
    const auto few = nearest_few(name, {known.begin(), known.end()});
    if (few.empty()) {
        return say("Add the {} to the book or correct the name.", thing.what);
    }
    return few.size() == 1 ? say("Did you mean \"{}\"?", few.front())
                           : say("The nearest are: {}.", fmt::format("{}", fmt::join(few, ", ")));
}

Sentence remedy_for(const std::string& name, const Named& thing, KnownNames& known) {
    if (is_unread(known.book, thing.table)) {
        return say("Perhaps it is a row of {} that could not be read: mend those first.", thing.table);
    }
    const auto key = std::pair{std::string(thing.table), name};
    const auto told = known.remedies.find(key);
    if (told != known.remedies.end()) {
        return told->second;
    }
    const auto remedy = known.remedies.size() < most_searches
                            ? nearest_names(name, thing, known.names.*thing.names)
                            : say("Add the {} to the book or correct the name.", thing.what);
    known.remedies.emplace(key, remedy);
    return remedy;
}

Sentence taken(const std::string& name, const Named& thing, const KnownNames& known) {
    return known.earlier.contains(name) ? say("An earlier row has a {} of this name.", thing.what)
                                        : say("The book has a {} of this name already.", thing.what);
}

}  // namespace

void judge_names(Judgement& judgement, KnownNames& known) {
    for (const auto& column : judgement.table.columns) {
        const auto value = value_of(judgement.entry, column.name);
        const auto* name = std::get_if<std::string>(&value);
        if (name == nullptr || name->empty() || column.references.empty()) {
            continue;
        }
        const auto& thing = thing_of(column.references.front().table);
        if (!(known.names.*thing.names).contains(*name)) {
            judgement.findings.push_back(error(judgement.at(column.name),
                                               say("The book has no {} of this name.", thing.what),
                                               remedy_for(*name, thing, known)));
        }
    }
}

bool judge_key(Judgement& judgement, const KnownNames& known) {
    if (judgement.table.key.empty()) {
        return true;
    }
    const auto& thing = thing_of(judgement.table.name);
    const auto place = judgement.at(judgement.table.key.front());
    if ((known.names.*thing.names).contains(place.value)) {
        judgement.findings.push_back(error(place, taken(place.value, thing, known),
                                           say("Give it another name: each must be one row's alone.")));
        return false;
    }
    if (const auto like = known.folds.find(folded(place.value)); like != known.folds.end()) {
        judgement.findings.push_back(
            warning(place, say("It differs from \"{}\" only by capitals or spaces.", like->second),
                    say("Make them more different.")));
    }
    return true;
}

void add_key(const Judgement& judgement, KnownNames& known) {
    if (judgement.table.key.empty()) {
        return;
    }
    const auto name = to_text(value_of(judgement.entry, judgement.table.key.front()));
    if (!name.empty()) {
        (known.names.*thing_of(judgement.table.name).names).insert(name);
        known.folds.emplace(folded(name), name);
        known.earlier.insert(name);
    }
}

void fold_names(const BookTable& table, KnownNames& known) {
    if (table.key.empty()) {
        return;
    }
    for (const auto& name : known.names.*thing_of(table.name).names) {
        known.folds.emplace(folded(name), name);
    }
}

}  // namespace pipward::book::detail
