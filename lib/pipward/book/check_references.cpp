// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <map>
#include <optional>
#include <vector>

#include "pipward/book/check.h"

namespace pipward {
namespace {

// The text of a required or of an optional column, or nothing.
std::optional<std::string> text_of(const std::string& text) {
    return text;
}
std::optional<std::string> text_of(const std::optional<std::string>& text) {
    return text;
}

template <class Row>
std::string name_of(const Row& row) {
    if constexpr (requires { row.label; }) {
        return row.label;
    } else if constexpr (requires { row.code; }) {
        return row.code;
    } else if constexpr (requires {
                             row.tag;
                             row.cross;
                         }) {
        return row.tag;
    } else if constexpr (requires {
                             row.name;
                             row.kind;
                         }) {
        return row.name;
    } else {
        return fid_name(row.fid);
    }
}

// What a column's names are names of: `what` for people, the rows of `table`.
struct Named {
    const std::set<std::string>* known;
    std::string_view what;
    std::string_view table;
};

std::string remedy_for(const std::string& name, const Named& named, bool partly_unread) {
    if (partly_unread) {
        return fmt::format("Perhaps it is a row of {} that could not be read: mend those first.",
                           named.table);
    }
    const auto meant = likely_name(name, *named.known);
    return meant.empty() ? fmt::format("Add the {} or correct the name.", named.what)
                         : fmt::format("Did you mean \"{}\"?", meant);
}

// A name that nothing answers to, and the rows that give it.
struct Missing {
    std::string first_row;
    int rows = 0;
};
using MissingNames = std::map<std::string, Missing>;

template <class Row, class Member>
MissingNames missing_in(const std::vector<Row>& rows, Member member, const Named& named) {
    MissingNames missing;
    for (const auto& row : rows) {
        const auto text = text_of(row.*member);
        if (text && !named.known->contains(*text)) {
            auto& entry = missing.try_emplace(*text, Missing{name_of(row), 0}).first->second;
            ++entry.rows;
        }
    }
    return missing;
}

// Where a whole table is empty, every name of its rows is missing: that is one trouble, not hundreds.
constexpr int few_rows = 3;
using Unanswered = std::map<std::string, std::set<std::string>>;  // tables that refer to it, by the empty one

int rows_of(const MissingNames& missing) {
    int rows = 0;
    for (const auto& [name, entry] : missing) {
        rows += entry.rows;
    }
    return rows;
}

// What is told already: that the book has no trees, that the other table cannot be read.
bool is_told(const Named& named, const Names& names) {
    return named.known->empty() && (named.table == "tree" || names.unread.contains(std::string(named.table)));
}

void tell(const MissingNames& missing, std::string_view table, std::string_view field, const Named& named,
          const Names& names, Unanswered& unanswered, Findings& findings) {
    if (missing.empty() || is_told(named, names)) {
        return;
    }
    if (named.known->empty() && rows_of(missing) > few_rows) {
        unanswered[std::string(named.table)].emplace(table);
        return;
    }
    const bool unread = names.unread.contains(std::string(named.table));
    for (const auto& [name, entry] : missing) {
        const auto others =
            entry.rows > 1 ? fmt::format("; {} rows of the table give it", entry.rows) : std::string{};
        findings.push_back(error({table, entry.first_row, field, name},
                                 fmt::format("The book has no {} of this name{}.", named.what, others),
                                 remedy_for(name, named, unread)));
    }
}

void tell_of_empty_tables(const Unanswered& unanswered, Findings& findings) {
    for (const auto& [table, referring] : unanswered) {
        findings.push_back(error({table},
                                 fmt::format("The table is empty, yet there are rows of {} that refer to it.",
                                             fmt::join(referring, ", ")),
                                 "Fill it in, or fetch its rows from a backup."));
    }
}

// A station has thousands of days: its name is reported once. A book without stations hears that already.
void check_stations_of_days(const Orchard& orchard, const Names& names, Findings& findings) {
    if (names.unread.contains("station") || names.stations.empty()) {
        return;
    }
    std::map<std::string, int> unknown;
    for (const auto& day : orchard.weather) {
        if (!names.stations.contains(day.station)) {
            ++unknown[day.station];
        }
    }
    for (const auto& [name, days] : unknown) {
        const auto meant = likely_name(name, names.stations);
        findings.push_back(
            error({"weather_day", name, "station", name},
                  fmt::format("The book has no station of this name, but {} days of weather.", days),
                  meant.empty() ? std::string("Add the station or correct the name.")
                                : fmt::format("Did you mean \"{}\"?", meant)));
    }
}

}  // namespace

void check_references(const Orchard& orchard, const Names& names, Findings& findings) {
    const auto& o = orchard;
    const Named block{&names.blocks, "block", "block"};
    const Named accession{&names.accessions, "accession", "accession"};
    const Named donor{&names.donors, "accession or blend",
                      names.unread.contains("blend") ? "blend" : "accession"};
    const Named tree{&names.trees, "tree", "tree"};
    const Named cross{&names.crosses, "cross", "cross_goal"};
    const Named pollen_lot{&names.pollen_lots, "pollen lot", "pollen_lot"};
    const Named tag{&names.tags, "pollination tag", "pollination"};
    const Named seed_lot{&names.seed_lots, "seed lot", "seed_lot"};
    Unanswered unanswered;
    const auto check = [&](const auto& rows, auto member, std::string_view table, std::string_view field,
                           const Named& named) {
        tell(missing_in(rows, member, named), table, field, named, names, unanswered, findings);
    };
    check(o.rows, &TreeRow::block, "tree_row", "block", block);
    check(o.trees, &Tree::accession, "tree", "accession", accession);
    check(o.trees, &Tree::block, "tree", "block", block);
    check(o.accessions, &Accession::seed_parent, "accession", "seed_parent", accession);
    check(o.accessions, &Accession::pollen_parent, "accession", "pollen_parent", donor);
    check(o.blend_members, &BlendMember::member, "blend", "member", accession);
    check(o.bloom_notes, &BloomNote::tree, "bloom_note", "tree", tree);
    check(o.bloom_notes, &BloomNote::accession, "bloom_note", "accession", accession);
    check_stations_of_days(o, names, findings);
    check(o.goals, &CrossGoal::seed_parent, "cross_goal", "seed_parent", accession);
    check(o.goals, &CrossGoal::pollen_parent, "cross_goal", "pollen_parent", donor);
    check(o.pollen_lots, &PollenLot::donor, "pollen_lot", "donor", donor);
    check(o.pollen_tests, &PollenTest::lot, "pollen_test", "lot", pollen_lot);
    check(o.pollinations, &Pollination::cross, "pollination", "cross", cross);
    check(o.pollinations, &Pollination::tree, "pollination", "tree", tree);
    check(o.pollinations, &Pollination::lot, "pollination", "lot", pollen_lot);
    check(o.fruits, &Fruit::tag, "fruit", "tag", tag);
    check(o.seed_lots, &SeedLot::cross, "seed_lot", "cross", cross);
    check(o.sprout_counts, &SproutCount::lot, "sprout_count", "lot", seed_lot);
    check(o.seeds_out, &SeedOut::lot, "seed_out", "lot", seed_lot);
    check(o.trait_scores, &TraitScore::tree, "trait_score", "tree", tree);
    tell_of_empty_tables(unanswered, findings);
}

}  // namespace pipward
