// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/book/new_rows.h"
#include "pipward/book/records.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/declare/detail/sheet_parameters.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/place/detail/row_tables.h"
#include "pipward/operation/seed/detail/planting_tables.h"
#include "pipward/paper/planting_sheet.h"
#include "pipward/place/planting_walk.h"
#include "pipward/record/name_index.h"
#include "pipward/seed/planting.h"
#include "pipward/seed/planting_back.h"
#include "pipward/seed/waiting_families.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {

namespace {

struct Request {
    BookName book;
    Day as_of;
    std::string block;
    std::string row;
    std::string crosses;
    seed::PlantingOrder order = seed::PlantingOrder::together;
    Metres apart{0};
    int plot = 5;
    int blocks = 4;
    int check_every = 0;
    std::string check;
    int chance = 1;
    std::string planting;
    int tray_across = 6;
    int tray_down = 9;
    bool undo = false;
    bool write = false;
};

std::vector<place::RowPosition> places_for(const Request& request, const Orchard& orchard,
                                           Findings& findings) {
    auto positions = place::row_positions(orchard, request.as_of, findings);
    std::erase_if(positions, [&](const place::RowPosition& p) {
        return p.block != request.block || (!request.row.empty() && p.row != request.row);
    });
    return place::in_planting_order(place::keep_apart(std::move(positions), orchard.rows, request.apart));
}

Finding too_few_places(const Request& request, std::size_t needed, std::size_t there) {
    return about_parameter("block", request.block,
                           say("{} positions are needed and {} are vacant.", needed, there),
                           say("Lay more rows with row-lay, or name fewer seedlings in crosses."));
}

void expect_check_is_known(const Request& request, const Orchard& orchard, Findings& findings) {
    if (request.check_every > 0 &&
        first_named(orchard.accessions, &Accession::name, request.check) == nullptr) {
        findings.push_back(about_parameter("check", request.check, say("The book has no such accession."),
                                           say("Name the accession of the check trees.")));
    }
}

std::vector<seed::Planted> plan(const Request& request, const std::vector<seed::Waiting>& families,
                                const std::vector<place::RowPosition>& places, const Orchard& orchard) {
    const seed::PlantingWish wish{request.order, request.plot, request.blocks, request.check_every,
                                  static_cast<std::uint32_t>(request.chance)};
    return seed::planted_seedlings(families, places, wish, request.check, orchard);
}

std::string remark_of(const Request& request) {
    return seed::planting_remark(request.planting.empty() ? to_iso(request.as_of) : request.planting);
}

Sentence seedlings_words(const std::vector<seed::Planted>& planted, std::size_t families) {
    const auto checks = std::ranges::count(planted, nullptr, &seed::Planted::goal);
    const auto seedlings = static_cast<std::ptrdiff_t>(planted.size()) - checks;
    const auto of_crosses = seedlings == 1  ? say("1 seedling")
                            : families == 1 ? say("{} seedlings of 1 cross", seedlings)
                                            : say("{} seedlings of {} crosses", seedlings, families);
    if (checks == 0) {
        return of_crosses;
    }
    return checks == 1 ? say("{} and 1 check tree", of_crosses)
                       : say("{} and {} check trees", of_crosses, checks);
}

Sentence summary_of(const Request& request, const std::vector<seed::Planted>& planted, std::size_t families) {
    const auto seedlings = seedlings_words(planted, families);
    return request.write ? say("In block {} these have their positions: {}. Print their labels with "
                               "label-sheet and the map with field-map; undo removes them as a whole.",
                               request.block, seedlings)
                         : say("In block {} these would have positions: {}; nothing was written.",
                               request.block, seedlings);
}

paper::PlantingSheet sheet_of(const Request& request, const std::vector<seed::Planted>& planted) {
    paper::PlantingSheet sheet;
    sheet.orchard_name = orchard_name({}, request.book);
    sheet.block = request.block;
    sheet.day = request.as_of;
    sheet.tray = {request.tray_across, request.tray_down};
    sheet.places = paper::planting_places(planted);
    return sheet;
}

Outcome take_out(const Request& request, const Orchard& orchard) {
    const auto rows = seed::planting_to_take_back(orchard, remark_of(request));
    book::BookChange change;
    for (const auto* tree : rows.trees) {
        change.removed.push_back(book::removal_of(*tree));
    }
    for (const auto* accession : rows.accessions) {
        change.removed.push_back(book::removal_of(*accession));
    }
    for (const auto* withdrawal : rows.withdrawals) {
        change.removed.push_back(book::removal_of(*withdrawal));
    }
    if (!request.write) {
        return Outcome(say("{} rows of {} would be removed; nothing was written.", change.removed.size(),
                           remark_of(request)));
    }
    book::apply_change(request.book, change);
    return Outcome(
        say("Undid {}: {} rows were removed from the book.", remark_of(request), change.removed.size()));
}

void keep(const Request& request, const std::vector<seed::Planted>& planted, const Orchard& orchard) {
    const auto records = seed::planted_records(planted, orchard, {request.as_of, remark_of(request)});
    book::BookChange change;
    change.added = {book::rows_to_append(records.accessions), book::rows_to_append(records.trees)};
    if (!records.withdrawals.empty()) {
        change.added.push_back(book::rows_to_append(records.withdrawals));
    }
    book::apply_change(request.book, change);
}

Outcome assign(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the book"));
    const auto reading = read_checked_without_weather(request.book, request.as_of, lent);
    if (request.undo) {
        return take_out(request, reading.orchard);
    }
    Outcome outcome;
    outcome.findings = reading.findings;
    const auto families =
        seed::waiting_families(request.crosses, reading.orchard, request.as_of, outcome.findings);
    const auto places = places_for(request, reading.orchard, outcome.findings);
    expect_check_is_known(request, reading.orchard, outcome.findings);
    int seedlings = 0;
    for (const auto& family : families) {
        seedlings += family.seedlings;
    }
    if (const auto needed = seed::places_needed(seedlings, request.check_every); needed > places.size()) {
        outcome.findings.push_back(too_few_places(request, needed, places.size()));
    }
    expect_no_errors(outcome.findings);
    const auto planted = plan(request, families, places, reading.orchard);
    outcome.tables = {planting_table.of(planted)};
    outcome.files = {{"planting-sheet.html", "text/html",
                      paper::planting_sheet_html(sheet_of(request, planted), lent.wording)}};
    outcome.crs = reading.orchard.crs;
    if (request.write && !planted.empty()) {
        keep(request, planted, reading.orchard);
    }
    outcome.summary = summary_of(request, planted, families.size());
    return outcome;
}

Outcome run(const Request& request, const Run& lent) {
    return in_one_change_if(request.write, request, lent, assign);
}

Findings check(const Request& request) {
    Findings findings;
    if (!seed::is_wish_of_crosses(request.crosses)) {
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
             {"row-assign", "Planting plan for seedlings", "Trees",
              "Assigns germinated seedlings to the vacant positions of a block: family by family, or "
              "mixed in random order with check trees between, none left out, row by row in walking "
              "order. With write, makes their accessions, with both parents, and their trees, and withdraws "
              "their seed from its lots; the whole planting can be undone."},
         .parameters =
             {book_parameter(&Request::book),
              parameter(&Request::block, "block", "Block", "The block to plant in.").required(),
              parameter(&Request::row, "row", "Row",
                        "Only this row of the block; all its rows where none is named."),
              parameter(&Request::crosses, "crosses", "Crosses",
                        "Crosses, with the number of seedlings of each, as in 24-01=12; 24-02=8. All "
                        "germinated seedlings without a position where none is named."),
              parameter(&Request::order, "families", "Families", "Arrangement of the families."),
              parameter(&Request::apart, "apart-m", "Least distance",
                        "Least distance between two trees of a row, where its positions are closer; 0 for "
                        "every vacant position.")
                  .in("m")
                  .between(0.0, 50.0),
              parameter(&Request::plot, "plot", "Plot size",
                        "Number of seedlings of a family side by side, where mixed.")
                  .between(1, 1000),
              parameter(&Request::blocks, "parts", "Parts",
                        "Number of parts into which the rows are divided, each with its share of every "
                        "family, where mixed.")
                  .between(1, 100),
              parameter(&Request::check_every, "check-every", "Check tree every",
                        "A check tree at every nth position; 0 for none.")
                  .between(0, 1000),
              parameter(&Request::check, "check", "Check tree", "The accession of the check trees."),
              parameter(&Request::chance, "random-seed", "Random seed",
                        "Any number; the same number gives the same random order.")
                  .between(0, 1000000)
                  .advanced(),
              parameter(&Request::tray_across, "tray-across", "Tray across",
                        "Cells of a tray from left to right, for the map of trays; 0 for no trays.")
                  .between(0, 50)
                  .advanced(),
              parameter(&Request::tray_down, "tray-down", "Tray down", "Cells of a tray from top to bottom.")
                  .between(1, 50)
                  .advanced(),
              parameter(&Request::planting, "planting", "Planting",
                        "The planting's name, kept with each tree; the date where none is given."),
              parameter(&Request::undo, "undo", "Undo",
                        "Remove the planting of that name from the book again, as a whole."),
              parameter(&Request::write, "write", "Write to the book",
                        "Whether the result is written to the book; without it the book stays as it is."),
              as_of_parameter(&Request::as_of)},
         .results = {planting_table.shape()},
         .examples = {{"What would stand where in block Upper.",
                       {{"book", "BOOK"},
                        {"block", "Upper"},
                        {"crosses", "24-01=2; 24-02=1"},
                        {"as-of", "2026-03-20"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
