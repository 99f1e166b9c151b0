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
    std::string_view what;  ///< for people
    std::set<std::string> Names::*names;
};

constexpr std::array<Named, 5> named_things{{{"tree", "tree", &Names::trees},
                                             {"accession", "accession", &Names::accessions},
                                             {"cross_goal", "cross", &Names::crosses},
                                             {"pollen_lot", "pollen lot", &Names::pollen_lots},
                                             {"seed_lot", "seed lot", &Names::seed_lots}}};
constexpr Named tag_thing{"pollination", "pollination tag", &Names::tags};

const Named& thing_of(std::string_view table) {
    const auto* const found = std::ranges::find(named_things, table, &Named::table);
    return found == named_things.end() ? tag_thing : *found;
}

bool is_unread(const BookReading& book, std::string_view table) {
    return std::ranges::any_of(book.findings, [&](const Finding& finding) {
        return finding.level == Level::error && finding.table == table;
    });
}

std::string remedy_for(const std::string& name, const Named& thing, const std::set<std::string>& known,
                       const BookReading& book) {
    if (is_unread(book, thing.table)) {
        return fmt::format("Perhaps it is a row of {} that could not be read: mend those first.",
                           thing.table);
    }
    const auto few = nearest_few(name, {known.begin(), known.end()});
    if (few.empty()) {
        return fmt::format("Add the {} to the book or correct the name.", thing.what);
    }
    return few.size() == 1 ? fmt::format("Did you mean \"{}\"?", few.front())
                           : fmt::format("The nearest are: {}.", fmt::join(few, ", "));
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
                                               fmt::format("The book has no {} of this name.", thing.what),
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
        judgement.findings.push_back(error(place,
                                           fmt::format("The book has a {} of this name already.", thing.what),
                                           "Give it another name: each must be one row's alone."));
    } else if (const auto like = std::ranges::find(known, folded(place.value), folded); like != known.end()) {
        judgement.findings.push_back(
            warning(place, fmt::format("It differs from \"{}\" only by capitals or spaces.", *like),
                    "Make them more different."));
    }
}

}  // namespace pipward
