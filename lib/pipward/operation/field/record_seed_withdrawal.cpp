// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/record_entry.h"

namespace pipward::operation::detail {
namespace {

struct Request : RecordRequest {
    std::string seed_lot;
    int seeds = 0;
};

Outcome run(const Request& request, const Run& lent) {
    return recorded(request,
                    {"seed_withdrawal",
                     {{"lot", text_cell(request.seed_lot)},
                      {"withdrawn_on", request.day()},
                      {"seeds", whole_cell(request.seeds)},
                      {"remark", text_cell(request.remark)}}},
                    lent);
}

}  // namespace

std::unique_ptr<const Operation> record_seed_withdrawal() {
    return declare<Request>(
        {.about = {"record-seed-withdrawal", "Record seed withdrawal", "Records",
                   "Records seeds withdrawn from a lot: potted, given away, rotten. It is checked against "
                   "the book first: no more can be withdrawn from a lot than it had."},
         .parameters = {record_book_parameter(), seed_lot_parameter(&Request::seed_lot).required(),
                        count_parameter(&Request::seeds, "seeds", "Seeds", "The number of seeds.").required(),
                        on_parameter("withdrawn-on", "Withdrawn on"), remark_parameter(),
                        record_as_of_parameter()},
         .results = {},
         .examples = {{"Germinated seed potted.",
                       {{"book", "BOOK"},
                        {"lot", "S-25-03"},
                        {"seeds", "20"},
                        {"remark", "potted"},
                        {"as-of", "2026-03-23"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
