// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/record_entry.h"

namespace pipward::operation::detail {
namespace {

struct Request : RecordRequest {
    std::string tree;
    std::string trait;
    double score = 0;
};

Outcome run(const Request& request, const Run& lent) {
    return recorded(request,
                    {"trait_score",
                     {{"tree", text_cell(request.tree)},
                      {"scored_on", request.day()},
                      {"trait", text_cell(request.trait)},
                      {"score", request.score},
                      {"remark", text_cell(request.remark)}}},
                    lent);
}

}  // namespace

std::unique_ptr<const Operation> record_score() {
    return declare<Request>(
        {.about = {"record-score", "Record trait score", "Records",
                   "Records a score given to a tree for one trait: taste, size, scab. It is checked against "
                   "the book first: the tree must be known and standing on that day."},
         .parameters = {record_book_parameter(), tree_parameter(&Request::tree).required(),
                        trait_parameter(&Request::trait).required(),
                        parameter(&Request::score, "score", "Score", "The score, in the trait's own unit.")
                            .in("points")
                            .between(-1e9, 1e9)
                            .required(),
                        on_parameter("scored-on", "Scored on"), remark_parameter(), record_as_of_parameter()},
         .results = {},
         .examples = {{"The taste of a seedling's fruit.",
                       {{"book", "BOOK"},
                        {"tree", "UP-05-12"},
                        {"trait", "taste"},
                        {"score", "8"},
                        {"as-of", "2025-09-25"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
