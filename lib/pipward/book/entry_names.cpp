// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <set>

#include "pipward/book/entry_judgement.h"
#include "pipward/value/nearest.h"

namespace pipward {
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

Sentence remedy_for(const std::string& name, const Named& thing, const std::set<std::string>& known,
                    const BookReading& book) {
    if (is_unread(book, thing.table)) {
        return say("Perhaps it is a row of {} that could not be read: mend those first.", thing.table);
    }
    const auto few = nearest_few(name, {known.begin(), known.end()});
    if (few.empty()) {
        return say("Add the {} to the book or correct the name.", thing.what);
    }
    return few.size() == 1 ? say("Did you mean \"{}\"?", few.front())
                           : say("The nearest are: {}.", fmt::format("{}", fmt::join(few, ", ")));
}

}  // namespace

void judge_names(Judgement& judgement, const Names& names) {
    for (const auto& column : judgement.table.columns) {
        const auto value = value_of(judgement.entry, column.name);
        const auto* name = std::get_if<std::string>(&value);
        if (name == nullptr || name->empty() || column.references.empty()) {
            continue;
        }
        const auto& thing = thing_of(column.references.front().table);
        const auto& known = names.*thing.names;
        if (!known.contains(*name)) {
            judgement.findings.push_back(error(judgement.at(column.name),
                                               say("The book has no {} of this name.", thing.what),
                                               remedy_for(*name, thing, known, judgement.book)));
        }
    }
}

void judge_key(Judgement& judgement, const Names& names) {
    if (judgement.table.key.empty()) {
        return;
    }
    const auto& thing = thing_of(judgement.table.name);
    const auto& known = names.*thing.names;
    const auto place = judgement.at(judgement.table.key.front());
    if (known.contains(place.value)) {
        judgement.findings.push_back(error(place, say("The book has a {} of this name already.", thing.what),
                                           say("Give it another name: each must be one row's alone.")));
    } else if (const auto like = std::ranges::find(known, folded(place.value), folded); like != known.end()) {
        judgement.findings.push_back(warning(place,
                                             say("It differs from \"{}\" only by capitals or spaces.", *like),
                                             say("Make them more different.")));
    }
}

}  // namespace pipward
