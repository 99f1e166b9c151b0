// SPDX-License-Identifier: MIT
#include "pipward/book/book.h"
#include "pipward/operation/book/style_book.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/detail/list.h"

namespace pipward::operation::detail {
namespace {

constexpr double style_begins = 0.7;

struct Request {
    NewBookName book;
    std::string crs;
};

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Making the book"));
    book::create_book(request.book.path, request.crs);
    if (can_be_styled(request.book.path)) {
        lent.progress(style_begins, say("Styling its layers").in(lent.wording));  // too late for a stop
        style_book(request.book.path, lent.wording);
    }
    Outcome outcome;
    outcome.summary =
        say("Made the empty book {} in {}. Fill in its trees, accessions, station and bloom observations in "
            "any GIS, then import the weather.",
            book::shown_location(request.book.path), request.crs);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> book_new() {
    return declare<Request>(
        {.about = {"book-new", "New book", "Book",
                   "Makes an empty orchard book: a GeoPackage with every table, its value lists, aliases and "
                   "descriptions, ready to be filled in with any GIS. It is styled at once: its layers have "
                   "symbols, labels and forms, and a map of them is stored in it."},
         .parameters = {parameter(&Request::book, "book", "New book",
                                  "The path of the GeoPackage to make; nothing may be there yet.")
                            .required(),
                        parameter(
                            &Request::crs, "crs", "Coordinate system",
                            "The coordinate system of its layers, such as EPSG:25832: one in metres for your "
                            "region is best.")
                            .required()},
         .results = {},
         .examples = {{"An empty book for an orchard in UTM zone 32.",
                       {{"book", "NEW"}, {"crs", "EPSG:25832"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
