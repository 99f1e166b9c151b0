// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/book/detail/import_tables.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/input_file.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/place/detail/user_places.h"
#include "pipward/place/ground_layer.h"

namespace pipward::operation::detail {
namespace {

using intake::Adoption;
using intake::AdoptRow;
using intake::Fate;
using intake::MadeRow;

struct Request : intake::AdoptOptions {
    BookName book;
    InputFile file;
    std::optional<InputFile> file_of_fields;
    bool write = false;
};

book::BookReading read_book_for(const BookName& book) {
    auto reading = book::read_tables(book, {"block", "tree_row", "tree", "accession", "blend", "station"});
    book::tell_as_warnings(reading.findings);
    return reading;
}

Adoption adoption_of(Request request, const Orchard& orchard, const Run& lent) {
    lent.step(0.2, say("Reading the layer"));
    request.source = request.file.path;
    if (intake::is_sheet_name(request.source)) {
        request.bytes = read_input_file(request.source);
    }
    if (request.file_of_fields) {
        const auto& path = request.file_of_fields->path;
        request.map_file = intake::corrections_of_file(read_input_file(path), path);
    }
    lent.step(0.5, say("Comparing with the book"));
    return intake::adopt(request, orchard, place::known_places(orchard));
}

std::ptrdiff_t count(const Adoption& adoption, Fate fate) {
    return std::ranges::count(adoption.rows, fate, &AdoptRow::fate);
}

std::ptrdiff_t made(const Adoption& adoption, std::string_view table) {
    return std::ranges::count(adoption.made, table, &MadeRow::table);
}

Sentence counted_rows(const std::string& table, std::ptrdiff_t number) {
    if (table == "tree") {
        return number == 1 ? say("1 tree") : say("{} trees", number);
    }
    if (table == "accession") {
        return number == 1 ? say("1 accession") : say("{} accessions", number);
    }
    if (table == "tree_row") {
        return number == 1 ? say("1 tree row") : say("{} tree rows", number);
    }
    return number == 1 ? say("1 block") : say("{} blocks", number);
}

Sentence what_comes(const Adoption& adoption) {
    std::vector<Sentence> parts{counted_rows(adoption.table, count(adoption, Fate::added))};
    for (const auto* table : {"accession", "tree_row", "block"}) {
        if (const auto number = made(adoption, table); number > 0) {
            parts.push_back(counted_rows(table, number));
        }
    }
    return joined(parts, verbatim(", "));
}

Sentence summary_of(const Request& request, const Adoption& adoption) {
    const auto errors = std::ranges::count(adoption.findings, Level::error, &Finding::level);
    const auto others = say("In the book already: {}; left out: {}.", count(adoption, Fate::known),
                            count(adoption, Fate::left_out));
    if (errors > 0) {
        return (errors == 1 ? say("1 error prevents the import: nothing would be written.")
                            : say("{} errors prevent the import: nothing would be written.", errors)) +
               verbatim(" ") + others;
    }
    return (request.write
                ? say("Added: {}.", what_comes(adoption))
                : say("Nothing was written; with write these would be added: {}.", what_comes(adoption))) +
           verbatim(" ") + others;
}

void write(const Request& request, const Adoption& adoption) {
    book::BookChange change;
    change.added = intake::added_tables(adoption);
    change.remembered = true;
    if (!change.added.empty()) {
        book::apply_change(request.book, change);
    }
}

Outcome take_in(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    auto reading = read_book_for(request.book);
    auto adoption = adoption_of(request, reading.orchard, lent);
    Outcome outcome;
    outcome.findings = std::move(reading.findings);
    add_findings(outcome, adoption.findings);
    if (request.write) {
        expect_no_errors(outcome.findings);
        lent.step(0.8, say("Writing to the book"));
        write(request, adoption);
    }
    outcome.tables = {import_field_table(adoption), import_feature_table(adoption)};
    outcome.files = {{"mapping.csv", "text/csv", intake::mapping_file(adoption.mapping)}};
    outcome.crs = reading.orchard.crs;
    outcome.summary = summary_of(request, adoption);
    lent.step(1.0, say("Done"));
    return outcome;
}

Outcome run(const Request& request, const Run& lent) {
    return in_one_change_if(request.write, request, lent, take_in);
}

std::vector<Bound<Request>> parameters() {
    using R = Request;
    using O = intake::AdoptOptions;
    return {
        book_parameter(&R::book),
        layer_file_parameter(&R::file).required(),
        layer_parameter(&O::layer),
        parameter(&O::table, "holds", "Content",
                  "What the features of the layer are; recognised by geometry and fields where not given."),
        parameter(&O::map, "map", "Field mapping",
                  "Columns for fields that were not recognised correctly: \"FIELD=column; FIELD2=-\", with - "
                  "for none."),
        parameter(&R::file_of_fields, "map-file", "Field mapping file",
                  "The same as a file of two columns, like the mapping.csv that every run writes.")
            .named("*.csv"),
        parameter(
            &O::layer_crs, "layer-crs", "Coordinate system of the layer",
            "Of the layer, as in EPSG:25832, where the layer does not give it; book for the book's own, "
            "GNSS for degrees of a receiver."),
        parameter(&O::add_accessions, "add-accessions", "Add accessions",
                  "Whether accessions that trees name and the book does not have are added."),
        parameter(&O::accession_kind, "accession-kind", "Kind of the accessions",
                  "Kind of the accessions for which the layer does not give it."),
        parameter(&O::species, "species", "Species of the accessions",
                  "For accessions for which the layer does not give it: apple, pear or a botanical name."),
        parameter(&O::add_rows, "add-rows", "Add rows and blocks",
                  "Whether blocks and rows that trees name and the book does not have are added, drawn "
                  "through their trees."),
        parameter(&O::block, "block", "In block", "The block of rows or trees that do not name theirs."),
        parameter(&O::purpose, "tree-purpose", "Purpose of the trees",
                  "Purpose of the trees for which the layer does not give it; other where not given."),
        parameter(&O::date_format, "date-format", "Date format",
                  "Date format of the file; recognised from the file where not given.")
            .advanced(),
        parameter(&O::exchange_axes, "swap-axes", "Swap the coordinates",
                  "Whether the layer has its two coordinates swapped.")
            .advanced(),
        parameter(&O::same_place, "same-location", "Same location",
                  "Distance within which a tree of the same label counts as the same tree; the accuracy of "
                  "the transformation is added.")
            .in("m")
            .between(0.0, 100.0)
            .advanced(),
        as_of_parameter(&O::as_of),
        write_parameter(&R::write),
    };
}

}  // namespace

std::unique_ptr<const Operation> layer_import() {
    return declare<Request>(
        {.about =
             {"layer-import", "Import a layer", "Book",
              "Imports your own layer of trees, accessions, rows or blocks into the book. Its fields "
              "are recognised by their names and values and shown with what would happen to every "
              "feature; with write everything is added at once, or nothing if there is an error. "
              "Existing rows of the book are never changed, nor is your layer. record-undo undoes the whole "
              "import."},
         .parameters = parameters(),
         .results = {import_field_shape(), import_feature_shape()},
         .examples = {{"Trees from a receiver's file, shown only.",
                       {{"book", "BOOK"}, {"layer-file", "FILE"}, {"as-of", "2026-03-20"}},
                       "Tree No,Variety,Lon,Lat,Planted\nX-01,Wrenlea,9.30050,48.13640,14.03.2019\n"
                       "X-02,wrenlea,9.30055,48.13641,15.03.2019\n"},
                      {"Varieties from a spreadsheet, added.",
                       {{"book", "BOOK"},
                        {"layer-file", "FILE"},
                        {"holds", "accessions"},
                        {"accession-kind", "cultivar"},
                        {"species", "apple"},
                        {"write", "yes"},
                        {"as-of", "2026-03-20"}},
                       "Variety;S-alleles;Remarks\nHeron Down;S2 S7;Scab resistant.\nPloverfield;S3 S5;\n"}},
         .run = run});
}

}  // namespace pipward::operation::detail
