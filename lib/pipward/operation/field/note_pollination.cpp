// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/note.h"

namespace pipward::operation::detail {
namespace {

struct Request : NoteRequest {
    std::string tag;
    std::string cross;
    std::string tree;
    int flowers = 0;
    std::string pollen_lot;
    std::optional<int> pass;
};

Outcome run(const Request& request, const Run& lent) {
    return noted(request,
                 {"pollination",
                  {{"tag", text_cell(request.tag)},
                   {"cross", text_cell(request.cross)},
                   {"tree", text_cell(request.tree)},
                   {"worked_on", request.day()},
                   {"flowers", whole_cell(request.flowers)},
                   {"lot", text_cell(request.pollen_lot)},
                   {"pass", whole_cell(request.pass)},
                   {"note", text_cell(request.remark)}}},
                 lent);
}

}  // namespace

std::unique_ptr<const Operation> note_pollination() {
    return declare<Request>(
        {.about = {"note-pollination", "Note pollination", "Notes",
                   "Writes down the flowers worked on a branch, under the tag that is hung on it. Held "
                   "against the book first: the tree must be of the cross's seed parent, the tag new, the "
                   "pollen in hand by that day."},
         .parameters = {note_book_parameter(), tag_parameter(&Request::tag).required(),
                        cross_parameter(&Request::cross).required(),
                        tree_parameter(&Request::tree).required(),
                        count_parameter(&Request::flowers, "flowers", "Flowers",
                                        "The number of flowers worked.")
                            .required(),
                        pollen_lot_parameter(&Request::pollen_lot), on_parameter(),
                        parameter(&Request::pass, "pass", "Pass", "Which round on the same flowers it was.")
                            .between(1, 20),
                        remark_parameter(), note_as_of_parameter()},
         .results = {},
         .examples = {{"Forty flowers worked with stored pollen.",
                       {{"book", "BOOK"},
                        {"tag", "26-04-a"},
                        {"cross", "26-04"},
                        {"tree", "LO-01-01"},
                        {"flowers", "40"},
                        {"pollen-lot", "P-25-02"},
                        {"as-of", "2026-05-08"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
