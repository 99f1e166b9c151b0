// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/note.h"

namespace pipward::operation::detail {
namespace {

struct Request : NoteRequest {
    std::string tag;
    int fruits = 0;
    std::optional<int> seeds_sound;
    std::optional<int> seeds_empty;
};

Outcome run(const Request& request, const Run& lent) {
    return noted(request,
                 {"fruit",
                  {{"tag", text_cell(request.tag)},
                   {"picked_on", request.day()},
                   {"fruits", whole_cell(request.fruits)},
                   {"seeds_sound", whole_cell(request.seeds_sound)},
                   {"seeds_empty", whole_cell(request.seeds_empty)},
                   {"note", text_cell(request.remark)}}},
                 lent);
}

}  // namespace

std::unique_ptr<const Operation> note_pick() {
    return declare<Request>(
        {.about = {"note-pick", "Note pick", "Notes",
                   "Writes down the fruit picked from a tagged branch and, once it is cut, the seed in it. "
                   "Held against the book first: fruit comes after its pollination, is no more than the "
                   "flowers worked, and its seed must have had time to ripen."},
         .parameters = {note_book_parameter(), tag_parameter(&Request::tag).required(),
                        count_parameter(&Request::fruits, "fruits", "Fruits", "The number of fruits picked.")
                            .required(),
                        on_parameter(),
                        count_parameter(&Request::seeds_sound, "seeds-sound", "Sound seeds",
                                        "Full seeds found in them."),
                        count_parameter(&Request::seeds_empty, "seeds-empty", "Empty seeds",
                                        "Flat or hollow seeds found in them."),
                        remark_parameter(), note_as_of_parameter()},
         .results = {},
         .examples = {{"A few late fruits of a branch worked last spring.",
                       {{"book", "BOOK"}, {"tag", "25-03-b"}, {"fruits", "2"}, {"as-of", "2025-10-05"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
