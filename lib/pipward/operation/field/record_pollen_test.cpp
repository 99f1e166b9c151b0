// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/record_entry.h"

namespace pipward::operation::detail {
namespace {

struct Request : RecordRequest {
    std::string pollen_lot;
    int grains = 0;
    int germinated = 0;
};

Outcome run(const Request& request, const Run& lent) {
    return recorded(request,
                    {"pollen_test",
                     {{"lot", text_cell(request.pollen_lot)},
                      {"tested_on", request.day()},
                      {"grains", whole_cell(request.grains)},
                      {"germinated", whole_cell(request.germinated)}}},
                    lent);
}

}  // namespace

std::unique_ptr<const Operation> record_pollen_test() {
    return declare<Request>(
        {.about = {"record-pollen-test", "Record pollen test", "Records",
                   "Records a germination test of stored pollen: the viability of the lot is then estimated "
                   "from it instead of from published figures."},
         .parameters = {record_book_parameter(), pollen_lot_parameter(&Request::pollen_lot).required(),
                        count_parameter(&Request::grains, "grains", "Grains",
                                        "Number of pollen grains counted.")
                            .required(),
                        count_parameter(&Request::germinated, "germinated", "Germinated",
                                        "Number of them with a pollen tube.")
                            .required(),
                        on_parameter("tested-on", "Tested on"), record_as_of_parameter()},
         .results = {},
         .examples = {{"A lot that has kept well.",
                       {{"book", "BOOK"},
                        {"lot", "P-25-02"},
                        {"grains", "200"},
                        {"germinated", "130"},
                        {"as-of", "2026-03-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
