// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <map>

#include "pipward/book/change.h"
#include "pipward/operation/column_of.h"
#include "pipward/operation/common_parameters.h"
#include "pipward/operation/complaint.h"
#include "pipward/operation/dress_book.h"
#include "pipward/operation/list.h"
#include "pipward/operation/planting_names.h"
#include "pipward/operation/read_checked.h"
#include "pipward/operation/row_tables.h"
#include "pipward/operation/take_out_planting.h"
#include "pipward/place/planting_walk.h"
#include "pipward/seed/cold_need.h"
#include "pipward/seed/cross_tally.h"
#include "pipward/seed/planting.h"

namespace pipward {

std::span<const Word<PlantingOrder>> words(PlantingOrder) {
    static constexpr std::array table{
        Word<PlantingOrder>{PlantingOrder::together, "together", "each family in one run"},
        Word<PlantingOrder>{PlantingOrder::mixed, "mixed",
                            "families in short plots, in chance order, alike in "
                            "every part of the rows"}};
    return table;
}

namespace {

using enum CellType;

struct Request {
    BookName book;
    Day as_of;
    std::string block;
    std::string row;
    std::string crosses;
    PlantingOrder order = PlantingOrder::together;
    int plot = 5;
    int blocks = 4;
    int check_every = 0;
    std::string check;
    int chance = 1;
    std::string planting;
    bool undo = false;
    bool write = false;
};

struct Planted {
    int order = 0;
    std::string label;
    std::string accession;
    const CrossGoal* goal = nullptr;  ///< null for a check
    const RowPosition* place = nullptr;
    Sentence address{};
};

const std::vector<ColumnOf<Planted>>& planted_columns() {
    static const std::vector<ColumnOf<Planted>> columns{
        {{"planting_order", whole, "", "Order", "In which one plants, and sets up the trays."},
         [](const Planted& p) { return whole_cell(p.order); }},
        {{"label", text, "", "Label", "Of the tree."}, [](const Planted& p) { return text_cell(p.label); }},
        {{"accession", text, "", "Accession", "What it is."},
         [](const Planted& p) { return text_cell(p.accession); }},
        {{"cross", text, "", "Cross", "Unknown for a check tree."},
         [](const Planted& p) { return p.goal == nullptr ? Cell{} : text_cell(p.goal->code); }},
        {{"parents", text, "", "Parents", "Seed parent first."},
         [](const Planted& p) {
             return p.goal == nullptr ? Cell{}
                                      : text_cell(p.goal->seed_parent + " × " + p.goal->pollen_parent);
         }},
        {{"block", text, "", "Block", "Where it stands."},
         [](const Planted& p) { return text_cell(p.place->block); }},
        {{"row", text, "", "Tree row", "Within the block."},
         [](const Planted& p) { return text_cell(p.place->row); }},
        {{"position", whole, "", "Position", "In the row."},
         [](const Planted& p) { return whole_cell(p.place->position); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const Planted& p) { return Cell{p.address}; }},
    };
    return columns;
}

TableShape planted_shape() {
    return shape_of<Planted>({"planting",
                              "Planting list",
                              "Every seedling with its number and its place, in the order of planting.",
                              true,
                              {}},
                             planted_columns());
}

struct Waiting {
    const CrossGoal* goal = nullptr;
    int seedlings = 0;
};

/// "24-01=12; 24-02": so many of each, or all that sprouted and have no place.
std::optional<std::map<std::string, std::optional<int>>> parse_crosses(std::string_view text) {
    std::map<std::string, std::optional<int>> wanted;
    while (!text.empty()) {
        const auto end = std::min(text.find(';'), text.size());
        auto part = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        const auto first = part.find_first_not_of(' ');
        if (first == part.npos) {
            continue;
        }
        part = part.substr(first, part.find_last_not_of(' ') - first + 1);
        const auto sign = part.find('=');
        std::optional<int> number;
        if (sign != part.npos) {
            const auto digits = std::string(part.substr(sign + 1));
            if (digits.empty() || digits.size() > 6 ||
                digits.find_first_not_of("0123456789") != digits.npos) {
                return std::nullopt;
            }
            number = std::stoi(digits);
        }
        wanted.emplace(part.substr(0, sign), number);
    }
    return wanted;
}

int without_place(const CrossTally& tally) {
    return std::max(0, tally.sprouted.count.value_or(0) - tally.planted.count.value_or(0));
}

Finding more_than_sprouted(const CrossTally& tally, int wanted) {
    return about_parameter("crosses", fmt::format("{}={}", tally.goal->code, wanted),
                           say("Only {} seeds of cross {} sprouted and have no place yet.",
                               without_place(tally), tally.goal->code),
                           say("Ask for fewer, or note the sprouts first."));
}

std::vector<Waiting> waiting_families(const Request& request, const Orchard& orchard, Findings& findings) {
    auto wanted = *parse_crosses(request.crosses);
    const bool all = wanted.empty();
    std::vector<Waiting> families;
    for (const auto& tally : tally_crosses(orchard, request.as_of)) {
        const auto found = wanted.find(tally.goal->code);
        if (found == wanted.end() && !all) {
            continue;
        }
        const auto asked = all ? std::nullopt : found->second;
        if (asked && *asked > without_place(tally)) {
            findings.push_back(more_than_sprouted(tally, *asked));
        }
        if (const int seedlings = asked.value_or(without_place(tally)); seedlings > 0) {
            families.push_back({tally.goal, seedlings});
        }
        wanted.erase(tally.goal->code);
    }
    for (const auto& [code, number] : wanted) {
        findings.push_back(about_parameter("crosses", code, say("The book has no cross {}.", code),
                                           say("Name crosses as they stand in the table of crosses.")));
    }
    return families;
}

std::vector<RowPosition> places_for(const Request& request, const Orchard& orchard, Findings& findings) {
    auto positions = row_positions(orchard, request.as_of, findings);
    std::erase_if(positions, [&](const RowPosition& p) {
        return p.block != request.block || (!request.row.empty() && p.row != request.row);
    });
    return in_planting_order(std::move(positions));
}

Finding too_few_places(const Request& request, std::size_t needed, std::size_t there) {
    return about_parameter("plant-in", request.block,
                           say("{} places are needed and {} are vacant.", needed, there),
                           say("Lay more rows with row-lay, or name fewer seedlings in crosses."));
}

void expect_check_is_known(const Request& request, const Orchard& orchard, Findings& findings) {
    if (request.check_every > 0 &&
        std::ranges::find(orchard.accessions, request.check, &Accession::name) == orchard.accessions.end()) {
        findings.push_back(about_parameter("check", request.check, say("The book has no such accession."),
                                           say("Name the accession that check trees are of.")));
    }
}

Planted planted_at(const PlantedPlace& planned, const std::vector<Waiting>& families,
                   const std::vector<RowPosition>& places, std::vector<SeedlingNumbers>& numbers,
                   const Request& request) {
    Planted planted;
    planted.order = static_cast<int>(planned.place) + 1;
    planted.place = &places[planned.place];
    if (planned.is_check) {
        planted.accession = request.check;
        planted.label =
            fmt::format("check-{}-{}-{}", planted.place->block, planted.place->row, planted.place->position);
    } else {
        planted.goal = families[planned.family].goal;
        planted.accession = numbers[planned.family].next();
        planted.label = planted.accession;
    }
    return planted;
}

std::vector<Planted> plan(const Request& request, const std::vector<Waiting>& waiting,
                          const std::vector<RowPosition>& places, const Orchard& orchard) {
    std::vector<Family> families;
    std::vector<SeedlingNumbers> numbers;
    for (const auto& family : waiting) {
        families.push_back({family.goal->code, family.seedlings});
        numbers.emplace_back(orchard, family.goal->code);
    }
    const PlantingWish wish{request.order, request.plot, request.blocks, request.check_every,
                            static_cast<std::uint32_t>(request.chance)};
    std::vector<Planted> planted;
    for (const auto& planned : plan_planting(families, places.size(), wish)) {
        planted.push_back(planted_at(planned, waiting, places, numbers, request));
        planted.back().address = address_of_position(*planted.back().place, orchard.rows);
    }
    return planted;
}

std::string note_of(const Request& request) {
    return planting_note(request.planting.empty() ? to_iso(request.as_of) : request.planting);
}

Table new_accessions(const std::vector<Planted>& planted, const Orchard& orchard, const std::string& note) {
    Table table;
    table.shape.name = "accession";
    for (const auto* name : {"name", "kind", "species", "seed_parent", "pollen_parent", "note"}) {
        table.shape.columns.push_back({name, text, "", "", ""});
    }
    for (const auto& tree : planted) {
        if (tree.goal != nullptr) {
            table.rows.push_back({{tree.accession, std::string("seedling"),
                                   cell(species_of_seed(orchard, tree.goal->seed_parent)),
                                   tree.goal->seed_parent, tree.goal->pollen_parent, note}});
        }
    }
    return table;
}

Table new_trees(const std::vector<Planted>& planted, Day as_of, const std::string& note) {
    Table table;
    table.shape.name = "tree";
    table.shape.has_points = true;
    for (const auto* name : {"label", "accession", "block", "row", "purpose", "placed_by", "note"}) {
        table.shape.columns.push_back({name, text, "", "", ""});
    }
    table.shape.columns.push_back({"position", whole, "", "", ""});
    table.shape.columns.push_back({"planted_on", day, "", "", ""});
    for (const auto& tree : planted) {
        Row row;
        row.cells = {tree.label,
                     tree.accession,
                     tree.place->block,
                     tree.place->row,
                     std::string(tree.goal == nullptr ? "other" : "seedling"),
                     std::string("computed"),
                     note,
                     std::int64_t{tree.place->position},
                     as_of};
        row.at = tree.place->at;
        table.rows.push_back(std::move(row));
    }
    return table;
}

Table planting_table(const std::vector<Planted>& planted) {
    auto table = table_of<Planted>(planted_shape(), planted, planted_columns());
    for (std::size_t i = 0; i < planted.size(); ++i) {
        table.rows[i].at = planted[i].place->at;
    }
    return table;
}

Sentence summary_of(const Request& request, const std::vector<Planted>& planted, std::size_t families) {
    const auto checks = std::ranges::count(planted, nullptr, &Planted::goal);
    const auto seedlings = static_cast<std::ptrdiff_t>(planted.size()) - checks;
    return request.write
               ? say("{} seedlings of {} crosses and {} check trees have their places in block {}. Print "
                     "their "
                     "labels with label-sheet and the map with field-map; undo takes them back as a whole.",
                     seedlings, families, checks, request.block)
               : say("{} seedlings of {} crosses and {} check trees would have places in block {}; nothing "
                     "was "
                     "written.",
                     seedlings, families, checks, request.block);
}

Outcome take_out(const Request& request, const Orchard& orchard) {
    const auto change = planting_taken_out(orchard, note_of(request));
    apply_change(request.book.location, change);
    return {.tables = {},
            .files = {},
            .findings = {},
            .summary = say("Took back {}: {} rows are gone from the book.", note_of(request),
                           change.removed.size())};
}

void keep(const Request& request, const std::vector<Planted>& planted, const Orchard& orchard,
          Outcome& outcome, const Run& lent) {
    BookChange change;
    change.added = {new_accessions(planted, orchard, note_of(request)),
                    new_trees(planted, request.as_of, note_of(request))};
    apply_change(request.book.location, change);
    const auto dress = refresh_dress(request.book.location, lent.wording);
    outcome.findings.insert(outcome.findings.end(), dress.begin(), dress.end());
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the book"));
    const auto reading = read_checked(request.book, request.as_of, lent);
    if (request.undo) {
        return take_out(request, reading.orchard);
    }
    Outcome outcome;
    outcome.findings = reading.findings;
    const auto families = waiting_families(request, reading.orchard, outcome.findings);
    const auto places = places_for(request, reading.orchard, outcome.findings);
    expect_check_is_known(request, reading.orchard, outcome.findings);
    int seedlings = 0;
    for (const auto& family : families) {
        seedlings += family.seedlings;
    }
    if (const auto needed = places_needed(seedlings, request.check_every); needed > places.size()) {
        outcome.findings.push_back(too_few_places(request, needed, places.size()));
    }
    if (has_errors(outcome.findings)) {
        throw Error(Trouble::input, outcome.findings);
    }
    const auto planted = plan(request, families, places, reading.orchard);
    outcome.tables = {planting_table(planted)};
    outcome.crs = reading.orchard.crs;
    if (request.write && !planted.empty()) {
        keep(request, planted, reading.orchard, outcome, lent);
    }
    outcome.summary = summary_of(request, planted, families.size());
    return outcome;
}

Findings check(const Request& request) {
    Findings findings;
    if (!parse_crosses(request.crosses)) {
        findings.push_back(about_parameter("crosses", request.crosses,
                                           say("A number of seedlings cannot be read."),
                                           say("Write them as 24-01=12; 24-02=8, or 24-01 for all.")));
    }
    if (request.check_every > 0 && request.check.empty()) {
        findings.push_back(about_parameter("check", "", say("Check trees are wanted but not named."),
                                           say("Name their accession.")));
    }
    return findings;
}

}  // namespace

std::unique_ptr<const Operation> row_assign() {
    return declare<Request>(
        {.about =
             {"row-assign", "Places for seedlings", "Rows",
              "Gives sprouted seedlings numbered places in the vacant positions of a block: family by family "
              "or "
              "mixed in chance order with check trees between, none left out, row by row as one walks. Makes "
              "their accessions, with both parents, and their trees; the whole planting "
              "can be taken back."},
         .parameters =
             {book_parameter(&Request::book),
              parameter(&Request::block, "plant-in", "Plant in", "The block to plant in.").required(),
              parameter(&Request::row, "plant-row", "Row",
                        "Only this row of it; all its rows where none is named."),
              parameter(&Request::crosses, "crosses", "Crosses",
                        "Which, and how many of each, as in 24-01=12; 24-02=8. All seedlings that sprouted "
                        "and have "
                        "no place where none is named."),
              parameter(&Request::order, "families", "Families", "How families stand."),
              parameter(&Request::plot, "plot", "Plot", "Seedlings of a family side by side, where mixed.")
                  .between(1, 1000),
              parameter(
                  &Request::blocks, "parts", "Parts",
                  "Into so many parts the rows are cut, each with its share of every family, where mixed.")
                  .between(1, 100),
              parameter(&Request::check_every, "check-every", "Check every",
                        "A check tree at every so-manieth place; 0 for none.")
                  .between(0, 1000),
              parameter(&Request::check, "check", "Check", "The accession of the check trees."),
              parameter(&Request::chance, "chance", "Chance",
                        "Any number; the same one gives the same order again.")
                  .between(0, 1000000)
                  .advanced(),
              parameter(&Request::planting, "planting", "Planting",
                        "The planting's name, kept with each tree; the day where none is given."),
              parameter(&Request::undo, "undo", "Take back",
                        "Take the planting of that name out of the book again, as a whole."),
              parameter(&Request::write, "plant", "Plant",
                        "Whether trees and accessions are made; otherwise the plan is only shown."),
              as_of_parameter(&Request::as_of)},
         .results = {planted_shape()},
         .examples = {{"What would stand where in block Upper.",
                       {{"book", "BOOK"},
                        {"plant-in", "Upper"},
                        {"crosses", "24-01=2; 24-02=1"},
                        {"as-of", "2026-03-20"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward
