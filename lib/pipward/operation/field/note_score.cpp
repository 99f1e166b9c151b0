// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/note.h"

namespace pipward::operation::detail {
namespace {

struct Request : NoteRequest {
    std::string tree;
    std::string trait;
    double score = 0;
};

Outcome run(const Request& request, const Run& lent) {
    return noted(request,
                 {"trait_score",
                  {{"tree", text_cell(request.tree)},
                   {"scored_on", request.day()},
                   {"trait", text_cell(request.trait)},
                   {"score", request.score},
                   {"note", text_cell(request.remark)}}},
                 lent);
}

}  // namespace

std::unique_ptr<const Operation> note_score() {
    return declare<Request>(
        {.about = {"note-score", "Note score", "Notes",
                   "Writes down a score given to a tree for one trait: taste, size, scab. Held against the "
                   "book first: the tree must be known and standing on that day."},
         .parameters = {note_book_parameter(), tree_parameter(&Request::tree).required(),
                        trait_parameter(&Request::trait).required(),
                        parameter(&Request::score, "score", "Score", "The score, in the trait's own unit.")
                            .in("points")
                            .between(-1e9, 1e9)
                            .required(),
                        on_parameter(), remark_parameter(), note_as_of_parameter()},
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
