// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/record_entry.h"

namespace pipward::operation::detail {
namespace {

struct Request : RecordRequest {
    std::string seed_lot;
    int germinated = 0;
};

Outcome run(const Request& request, const Run& lent) {
    return recorded(request,
                    {"germination_count",
                     {{"lot", text_cell(request.seed_lot)},
                      {"counted_on", request.day()},
                      {"germinated", whole_cell(request.germinated)}}},
                    lent);
}

}  // namespace

std::unique_ptr<const Operation> record_germination() {
    return declare<Request>(
        {.about =
             {"record-germination", "Record germination", "Records",
              "Records how many seeds of a lot have germinated so far, those withdrawn included. It is "
              "checked against the book first: the count of a lot only grows, and never beyond its seeds."},
         .parameters = {record_book_parameter(), seed_lot_parameter(&Request::seed_lot).required(),
                        count_parameter(&Request::germinated, "germinated", "Germinated",
                                        "Cumulative number of germinated seeds.")
                            .required(),
                        on_parameter("counted-on", "Counted on"), record_as_of_parameter()},
         .results = {},
         .examples =
             {{"A count some days after the last.",
               {{"book", "BOOK"}, {"lot", "S-25-03"}, {"germinated", "68"}, {"as-of", "2026-03-23"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
