// SPDX-License-Identifier: MIT
#include <map>
#include <optional>
#include <vector>

#include "pipward/book/detail/check.h"
#include "pipward/book/detail/missing_names.h"

namespace pipward::book::detail {
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
        findings.push_back(error({"weather_day", name, "station", name},
                                 say("The book has no station of this name, but {} days of weather.", days),
                                 meant.empty() ? say("Add the station or correct the name.")
                                               : say("Did you mean \"{}\"?", meant)));
    }
}

// A pollen parent is an accession or a blend; without accessions there is nothing that it could be.
Named donor_of(const Names& names, const Named& accession) {
    Named donor{&names.donors, say("accession or blend"), accession.table, accession.nothing_there,
                accession.unread};
    if (!accession.unread && names.unread.contains("blend")) {
        donor.table = "blend";
        donor.unread = true;
    }
    return donor;
}

}  // namespace

void check_references(const Orchard& orchard, const Names& names, Findings& findings) {
    const auto& o = orchard;
    const auto named = [&](const std::set<std::string>& known, const Sentence& what, std::string_view table) {
        return Named{&known, what, table, known.empty(), names.unread.contains(std::string(table))};
    };
    const auto block = named(names.blocks, say("block"), "block");
    const auto accession = named(names.accessions, say("accession"), "accession");
    const auto tree = named(names.trees, say("tree"), "tree");
    const auto cross = named(names.crosses, say("cross"), "cross_goal");
    const auto pollen_lot = named(names.pollen_lots, say("pollen lot"), "pollen_lot");
    const auto tag = named(names.tags, say("pollination tag"), "pollination");
    const auto seed_lot = named(names.seed_lots, say("seed lot"), "seed_lot");
    const auto donor = donor_of(names, accession);
    UnansweredTables unanswered;
    const auto check = [&](const auto& rows, auto member, std::string_view table, std::string_view field,
                           const Named& to) {
        tell(missing_in(rows, member, to), table, field, to, unanswered, findings);
    };
    check(o.rows, &TreeRow::block, "tree_row", "block", block);
    check(o.trees, &Tree::accession, "tree", "accession", accession);
    check(o.trees, &Tree::block, "tree", "block", block);
    check(o.accessions, &Accession::seed_parent, "accession", "seed_parent", accession);
    check(o.accessions, &Accession::pollen_parent, "accession", "pollen_parent", donor);
    check(o.accessions, &Accession::sport_of, "accession", "sport_of", accession);
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

}  // namespace pipward::book::detail
