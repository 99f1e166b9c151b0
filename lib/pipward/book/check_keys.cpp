// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <map>
#include <vector>

#include "pipward/book/detail/check.h"
#include "pipward/value/utf8.h"

namespace pipward::book::detail {
namespace {

// Nobody writes more on a tag. Common practice, no source.
constexpr std::size_t longest_name = 250;

using Spellings = std::map<std::string, int>;  // rows by the name as it is written

void check_double(std::string_view table, std::string_view field, const std::string& name, int rows,
                  Findings& findings) {
    if (rows > 1) {
        findings.push_back(error({table, name, field, name},
                                 say("{} rows have this name; it must be one row's alone.", rows),
                                 say("Rename or remove all but one.")));
    }
}

// Names that people would take for the same.
void check_likeness(std::string_view table, std::string_view field, const Spellings& spellings,
                    Findings& findings) {
    if (spellings.size() > 1) {
        findings.push_back(
            warning({table, spellings.begin()->first, field, spellings.rbegin()->first},
                    say("Two names differ only by capitals or spaces."),
                    say("If they mean the same, write both alike; else make them more different.")));
    }
}

void check_key(std::string_view table, std::string_view field, const std::vector<std::string>& names,
               Findings& findings) {
    std::map<std::string, Spellings> seen;
    for (const auto& name : names) {
        ++seen[folded(name)][name];
    }
    for (const auto& [fold, spellings] : seen) {
        for (const auto& [name, rows] : spellings) {
            check_writing(table, field, name, findings);
            check_double(table, field, name, rows, findings);
        }
        check_likeness(table, field, spellings, findings);
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

void check_writing(std::string_view table, std::string_view field, const std::string& name,
                   Findings& findings) {
    if (has_unseen_characters(name)) {
        findings.push_back(warning({table, name, field, name},
                                   say("The name holds characters that are not seen, a line end perhaps."),
                                   say("Type it anew: a name that looks the same will not be found.")));
    }
    if (code_points_of(name).size() > longest_name) {
        findings.push_back(error({table, one_line(name, 40), field, one_line(name, 40)},
                                 say("The name has more than {} characters.", longest_name),
                                 say("Shorten it, and keep the rest in a note.")));
    }
}

void check_keys(const Orchard& orchard, Findings& findings) {
    const auto& o = orchard;
    check_key("block", "name", texts(o.blocks, &Block::name), findings);
    check_key("station", "name", texts(o.stations, &Station::name), findings);
    check_key("accession", "name", texts(o.accessions, &Accession::name), findings);
    check_key("tree", "label", texts(o.trees, &Tree::label), findings);
    check_key("cross_goal", "code", texts(o.goals, &CrossGoal::code), findings);
    check_key("pollen_lot", "code", texts(o.pollen_lots, &PollenLot::code), findings);
    check_key("pollination", "tag", texts(o.pollinations, &Pollination::tag), findings);
    check_key("seed_lot", "code", texts(o.seed_lots, &SeedLot::code), findings);
    std::vector<std::string> rows;
    for (const auto& row : o.rows) {
        rows.push_back(row.block + " / " + row.name);
    }
    check_key("tree_row", "name", rows, findings);
}

}  // namespace pipward::book::detail
