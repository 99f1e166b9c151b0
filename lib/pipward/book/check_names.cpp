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

// Every row's `member` must be a known name. Where nothing of the other table could be read, that is told
// already.
template <class Row, class Member>
void check_column(const std::vector<Row>& rows, Member member, std::string_view table, std::string_view field,
                  const Named& named, const Names& names, Findings& findings) {
    const bool unread = names.unread.contains(std::string(named.table));
    if (unread && named.known->empty()) {
        return;
    }
    for (const auto& row : rows) {
        const auto text = text_of(row.*member);
        if (text && !named.known->contains(*text)) {
            findings.push_back(error({table, name_of(row), field, *text},
                                     fmt::format("The book has no {} of this name.", named.what),
                                     remedy_for(*text, named, unread)));
        }
    }
}

// Doubles, and names that people would take for the same.
void check_doubles(std::string_view table, std::string_view field, const std::vector<std::string>& names,
                   Findings& findings) {
    std::map<std::string, std::map<std::string, int>> seen;
    for (const auto& name : names) {
        ++seen[folded(name)][name];
    }
    for (const auto& [fold, spellings] : seen) {
        for (const auto& [name, count] : spellings) {
            if (count > 1) {
                findings.push_back(
                    error({table, name, field, name},
                          fmt::format("{} rows have this name; it must be one row's alone.", count),
                          "Rename or remove all but one."));
            }
        }
        if (spellings.size() > 1) {
            findings.push_back(
                warning({table, spellings.begin()->first, field, spellings.rbegin()->first},
                        "Two names differ only by capitals or spaces.",
                        "If they mean the same, write both alike; else make them more different."));
        }
    }
}

// A station has thousands of days: its name is reported once.
void check_stations_of_days(const Orchard& orchard, const Names& names, Findings& findings) {
    if (names.unread.contains("station")) {
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

template <class Rows, class Member>
std::vector<std::string> texts(const Rows& rows, Member member) {
    std::vector<std::string> found;
    found.reserve(rows.size());
    for (const auto& row : rows) {
        found.push_back(row.*member);
    }
    return found;
}

}  // namespace

void check_emptiness(const Orchard& orchard, const Names& names, Findings& findings) {
    const auto lacks = [&](const auto& rows, const char* table) {
        return rows.empty() && !names.unread.contains(table);
    };
    if (lacks(orchard.trees, "tree")) {
        findings.push_back(
            error({"tree"}, "The book has no trees.",
                  "Digitise the trees in a GIS, or copy a layer that you have into the table."));
    }
    if (lacks(orchard.bloom_notes, "bloom_note")) {
        findings.push_back(warning({"bloom_note"}, "The book has no bloom notes.",
                                   "Write down the stages you see; without any, bloom cannot be foreseen."));
    }
    if (lacks(orchard.stations, "station")) {
        findings.push_back(error({"station"}, "The book has no weather station.",
                                 "Add a station with its place and elevation."));
    } else if (lacks(orchard.weather, "weather_day")) {
        findings.push_back(error({"weather_day"}, "The book has no weather.",
                                 "Import daily temperatures with weather-import."));
    }
}

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
    const auto check = [&](const auto& rows, auto member, std::string_view table, std::string_view field,
                           const Named& named) {
        check_column(rows, member, table, field, named, names, findings);
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
}

void check_keys(const Orchard& orchard, Findings& findings) {
    const auto& o = orchard;
    check_doubles("block", "name", texts(o.blocks, &Block::name), findings);
    check_doubles("station", "name", texts(o.stations, &Station::name), findings);
    check_doubles("accession", "name", texts(o.accessions, &Accession::name), findings);
    check_doubles("tree", "label", texts(o.trees, &Tree::label), findings);
    check_doubles("cross_goal", "code", texts(o.goals, &CrossGoal::code), findings);
    check_doubles("pollen_lot", "code", texts(o.pollen_lots, &PollenLot::code), findings);
    check_doubles("pollination", "tag", texts(o.pollinations, &Pollination::tag), findings);
    check_doubles("seed_lot", "code", texts(o.seed_lots, &SeedLot::code), findings);
    std::vector<std::string> rows;
    for (const auto& row : o.rows) {
        rows.push_back(row.block + " / " + row.name);
    }
    check_doubles("tree_row", "name", rows, findings);
}

}  // namespace pipward
