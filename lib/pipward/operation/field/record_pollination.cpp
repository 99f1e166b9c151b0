// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/record_entry.h"

namespace pipward::operation::detail {
namespace {

struct Request : RecordRequest {
    std::string tag;
    std::string cross;
    std::string tree;
    int flowers = 0;
    std::string pollen_lot;
    std::optional<int> pass;
};

Outcome run(const Request& request, const Run& lent) {
    return recorded(request,
                    {"pollination",
                     {{"tag", text_cell(request.tag)},
                      {"cross", text_cell(request.cross)},
                      {"tree", text_cell(request.tree)},
                      {"pollinated_on", request.day()},
                      {"flowers", whole_cell(request.flowers)},
                      {"lot", text_cell(request.pollen_lot)},
                      {"pass", whole_cell(request.pass)},
                      {"remark", text_cell(request.remark)}}},
                    lent);
}

}  // namespace

std::unique_ptr<const Operation> record_pollination() {
    return declare<Request>(
        {.about = {"record-pollination", "Record pollination", "Records",
                   "Records the flowers pollinated on a branch, under the tag that is put on it. It is "
                   "checked against the book first: the tree must be of the cross's seed parent, the tag "
                   "new, the pollen in stock on that day."},
         .parameters =
             {record_book_parameter(), tag_parameter(&Request::tag).required(),
              cross_parameter(&Request::cross).required(), tree_parameter(&Request::tree).required(),
              count_parameter(&Request::flowers, "flowers", "Flowers", "Number of flowers pollinated.")
                  .required(),
              pollen_lot_parameter(&Request::pollen_lot), on_parameter("pollinated-on", "Pollinated on"),
              parameter(&Request::pass, "pass", "Pass", "Number of the pollination on the same flowers.")
                  .between(1, 20),
              remark_parameter(), record_as_of_parameter()},
         .results = {},
         .examples = {{"Forty flowers pollinated with stored pollen.",
                       {{"book", "BOOK"},
                        {"tag", "26-04-a"},
                        {"cross", "26-04"},
                        {"tree", "LO-01-01"},
                        {"flowers", "40"},
                        {"lot", "P-25-02"},
                        {"as-of", "2026-05-08"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
