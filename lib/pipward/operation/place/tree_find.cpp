// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/book/part_reading.h"
#include "pipward/lineage/pedigree_text.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/place/address.h"
#include "pipward/place/geo_uri.h"
#include "pipward/place/part_of_book.h"
#include "pipward/place/place_text.h"
#include "pipward/place/tree_index.h"
#include "pipward/place/tree_story.h"
#include "pipward/value/complaint.h"
#include "pipward/value/plain_text.h"

namespace pipward::operation::detail {
namespace {

struct Request {
    BookName book;
    std::string query;
    std::string at;
    int limit = 20;
    Day as_of;
};

struct FoundRow {
    int rank = 0;
    double score = 0;
    const Tree* tree = nullptr;
    Sentence address{};
    Sentence status{};
    std::string lineage{};
    Sentence matched{};
    std::optional<place::LonLat> place{};
    std::optional<place::WayTo> way{};
};

using enum CellType;

const std::vector<ColumnOf<FoundRow>>& found_columns() {
    static const std::vector<ColumnOf<FoundRow>> columns{
        {{"rank", whole, "", "Rank", "1 for the best match."},
         [](const FoundRow& r) { return whole_cell(r.rank); }},
        {{"score", number, "0 to 1", "Score", "Quality of the match; 1 for a tree's own label."},
         [](const FoundRow& r) { return number_cell(r.score, 3); }},
        {{"tree", text, "", "Tree", "The tree's label."},
         [](const FoundRow& r) { return text_cell(r.tree->label); }},
        {{"matched", text, "", "Matched", "Which part of its record matches, and how many letters differ."},
         [](const FoundRow& r) { return text_cell(r.matched); }},
        {{"accession", text, "", "Accession", "What the tree is."},
         [](const FoundRow& r) { return cell(r.tree->accession); }},
        {{"lineage", text, "", "Pedigree",
          "Seed parent × pollen parent, with their own parents where known."},
         [](const FoundRow& r) { return text_cell(r.lineage); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const FoundRow& r) { return text_cell(r.address); }},
        {{"status", text, "", "Status", "Standing, or removed when and why."},
         [](const FoundRow& r) { return text_cell(r.status); }},
        {{"distance_m", number, "m", "Distance", "From your position, horizontal."},
         [](const FoundRow& r) { return r.way ? number_cell(r.way->distance.value, 1) : Cell{}; }},
        {{"bearing_deg", number, "°", "Bearing", "From your position, clockwise from true north."},
         [](const FoundRow& r) { return r.way ? number_cell(r.way->bearing_deg, 0) : Cell{}; }},
        {{"geo_uri", text, "", "Location as a link",
          "A geo: URI, which opens on a telephone's map (RFC 5870)."},
         [](const FoundRow& r) {
             return r.place ? text_cell(place::geo_uri(*r.place, r.tree->accuracy)) : Cell{};
         }},
        {{"block", text, "", "Block", "The part of the orchard."},
         [](const FoundRow& r) { return cell(r.tree->block); }},
        {{"row", text, "", "Tree row", "The row within the block."},
         [](const FoundRow& r) { return cell(r.tree->row); }},
        {{"position", whole, "", "Position", "Position in the row."},
         [](const FoundRow& r) { return whole_cell(r.tree->position); }},
        {{"lon", number, "°", "Longitude", "East of Greenwich, WGS 84."},
         [](const FoundRow& r) { return r.place ? number_cell(r.place->lon, 7) : Cell{}; }},
        {{"lat", number, "°", "Latitude", "North of the equator, WGS 84."},
         [](const FoundRow& r) { return r.place ? number_cell(r.place->lat, 7) : Cell{}; }},
    };
    return columns;
}

constexpr TableOf<FoundRow> found_table{
    "found",
    "Trees found",
    "The trees that match, best first.",
    found_columns,
    [] {
        return TableView{.first = {"rank", "tree", "accession", "address", "status", "score", "matched",
                                   "distance_m", "bearing_deg"}};
    },
    [](const FoundRow& r) { return r.tree->at; }};

Findings check(const Request& request) {
    Findings findings;
    if (is_blank(request.query) && is_blank(request.at)) {
        findings.push_back(
            about_parameter("search", request.query, say("There is nothing to search for."),
                            say("Give a part of the tree's record with search, or a position with at.")));
    }
    if (!is_blank(request.at) && !place::parse_place(request.at)) {
        findings.push_back(
            about_parameter("at", request.at, say("This is no location on the earth."),
                            say("Give latitude and longitude in degrees, as in 48.1340,9.3010.")));
    }
    return findings;
}

/// Rows of the table from what was found; needs the index to live on.
std::vector<FoundRow> rows_of(const place::TreeIndex& index, const std::vector<place::FoundTree>& found,
                              const std::optional<place::LonLat>& from, Day as_of) {
    const auto& orchard = index.orchard();
    const lineage::PedigreeText lineages(orchard.accessions, orchard.blend_members);
    const place::ToEarth to_earth(orchard.crs);
    std::vector<FoundRow> rows;
    for (const auto& one : found) {
        const auto& tree = orchard.trees[one.tree];
        FoundRow row{static_cast<int>(rows.size()) + 1, one.score, &tree};
        row.address = place::address_of(tree, orchard.rows);
        row.status = place::standing_of(tree, as_of);
        row.lineage = lineages.of(tree.accession.value_or(""));
        row.matched = place::to_text(one.match);
        row.place = tree.at ? to_earth(*tree.at) : std::nullopt;
        if (from && row.place) {
            row.way = place::way_between(*from, *row.place);
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

Finding not_found(const std::vector<std::string>& names, const std::string& query) {
    return {Level::notice,
            "",
            "",
            "search",
            query,
            say("Nothing in the book matches \"{}\".", query),
            names.empty() ? say("The book has no trees yet.")
                          : say("The nearest names are: {}.", fmt::format("{}", fmt::join(names, ", ")))};
}

Sentence summary_of(const std::vector<FoundRow>& rows, const Request& request) {
    if (rows.empty()) {
        return is_blank(request.query) ? say("The book has no tree with a location on the map.")
                                       : say("Nothing was found.");
    }
    const auto& best = *rows.front().tree;
    const auto where = rows.front().address.empty() ? verbatim(best.label)
                                                    : verbatim(best.label + ", ") + rows.front().address;
    if (rows.size() == 1) {
        return say("1 tree found: {}.", where);
    }
    return is_blank(request.query) ? say("{} trees found; the nearest: {}.", rows.size(), where)
                                   : say("{} trees found; the best: {}.", rows.size(), where);
}

std::optional<place::OwnPosition> standpoint_of(const place::TreeIndex& index,
                                                const std::optional<place::LonLat>& from,
                                                Findings& findings) {
    const auto stand = from ? place::own_position(*from, index.orchard().crs) : std::nullopt;
    if (from && !stand) {
        findings.push_back(
            about_table(Level::warning, "tree",
                        say("Distances are unknown: the trees have no coordinate system of the earth."),
                        say("Give the layer its coordinate system.")));
    }
    return stand;
}

std::optional<place::LonLat> place_of(const Request& request) {
    const auto place = place::parse_place(request.at);
    return place ? std::optional{place->at} : std::nullopt;
}

/// The trees that the answer is among, and the names that are most like the search text where there are none.
struct Searched {
    book::BookReading reading;
    std::optional<std::vector<std::string>> names{};
};

// Nothing where a part of the book cannot hold the answer.
std::optional<Searched> search_part(const Request& request) {
    Searched searched;
    auto part = book::read_part(request.book, [&](OrchardShelf& shelf) {
        const auto limit = static_cast<std::size_t>(request.limit);
        const auto from = place_of(request);
        const auto stand = from ? place::own_position(*from, shelf.taken().crs) : std::nullopt;
        if (is_blank(request.query)) {
            return stand && place::take_nearest(*stand, limit, shelf);
        }
        if (!place::take_for({request.query, limit, stand, request.as_of}, shelf)) {
            return false;
        }
        if (place::TreeIndex(shelf.taken()).find(request.query, 1, stand, request.as_of).empty()) {
            searched.names = place::names_like(request.query, shelf);
        }
        return true;
    });
    if (!part) {
        return std::nullopt;
    }
    searched.reading = std::move(*part);
    book::tell_as_warnings(searched.reading.findings);
    return searched;
}

Searched search(const Request& request) {
    auto part = search_part(request);
    return part ? std::move(*part) : Searched{book::read_trees(request.book)};
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    auto searched = search(request);
    lent.step(0.6, say("Collecting names"));
    const place::TreeIndex index(std::move(searched.reading.orchard));
    lent.step(0.9, say("Searching"));
    Outcome outcome;
    outcome.findings = std::move(searched.reading.findings);
    const auto from = place_of(request);
    const auto stand = standpoint_of(index, from, outcome.findings);
    const auto limit = static_cast<std::size_t>(request.limit);
    const bool by_place = is_blank(request.query);
    const auto found = !by_place ? index.find(request.query, limit, stand, request.as_of)
                       : stand   ? index.nearest(*stand, limit)
                                 : std::vector<place::FoundTree>{};
    const auto rows = rows_of(index, found, from, request.as_of);
    if (rows.empty() && !by_place) {
        outcome.findings.push_back(
            not_found(searched.names ? *searched.names : index.names_like(request.query), request.query));
    }
    outcome.tables = {found_table.of(rows)};
    outcome.crs = index.orchard().crs;
    outcome.summary = summary_of(rows, request);
    lent.step(1.0, say("Done"));
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> tree_find() {
    return declare<Request>(
        {.about =
             {"tree-find", "Find a tree", "Trees",
              "Finds trees by any part of their record: a label or a part of it, a tag, the code of a "
              "cross or lot, \"A x B 17\" for the 17th seedling of a cross, the name of an accession even "
              "misspelt, block, row and position in words and in any order, rootstock and year of planting, "
              "a geo: link or coordinates, a word of a remark; also several of these together. Case, "
              "accents, blanks and dashes do not matter, and characters that look alike, such as O and 0, "
              "are taken for each other. Removed trees are found too. Nothing is written."},
         .parameters =
             {book_parameter(&Request::book),
              parameter(
                  &Request::query, "search", "Search",
                  "Any part of the tree's record; left out, the trees nearest to your position are shown."),
              parameter(&Request::at, "at", "Your position",
                        "Latitude and longitude of your position, as in 48.1340,9.3010: distances and "
                        "bearings are given from there, and nearer trees come first among equal matches."),
              parameter(&Request::limit, "limit", "Maximum number of trees",
                        "Maximum number of trees to show.")
                  .between(1, 1000),
              as_of_parameter(&Request::as_of)},
         .results = {found_table.shape()},
         .examples =
             {{"The fourth seedling of a cross.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"search", "Tansy Lane x Wrenlea no. 4"}}},
              {"Row and position.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"search", "Upper 3 12"}}},
              {"The same in words.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"search", "tree 12 of row 3, Upper"}}},
              {"An accession in a block.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"search", "Wrenlea in Upper"}}},
              {"A misspelt name, the nearest tree first.",
               {{"book", "BOOK"},
                {"as-of", "2026-03-20"},
                {"search", "Wernlea"},
                {"at", "48.1340,9.3010"},
                {"limit", "5"}}},
              {"Trees removed because of a disease.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"search", "scab"}}},
              {"The three trees nearest to a position.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"at", "48.1340,9.3010"}, {"limit", "3"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
