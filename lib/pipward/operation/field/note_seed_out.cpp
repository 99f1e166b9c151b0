// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/note.h"

namespace pipward::operation::detail {
namespace {

struct Request : NoteRequest {
    std::string seed_lot;
    int seeds = 0;
};

Outcome run(const Request& request, const Run& lent) {
    return noted(request,
                 {"seed_out",
                  {{"lot", text_cell(request.seed_lot)},
                   {"on_day", request.day()},
                   {"seeds", whole_cell(request.seeds)},
                   {"note", text_cell(request.remark)}}},
                 lent);
}

}  // namespace

std::unique_ptr<const Operation> note_seed_out() {
    return declare<Request>(
        {.about = {"note-seed-out", "Note seed taken out", "Notes",
                   "Writes down seeds that left a lot: potted, given away, rotten. Held against the book "
                   "first: no more can leave a lot than it had."},
         .parameters = {note_book_parameter(), seed_lot_parameter(&Request::seed_lot).required(),
                        count_parameter(&Request::seeds, "seeds", "Seeds", "The number of seeds.").required(),
                        on_parameter(), remark_parameter(), note_as_of_parameter()},
         .results = {},
         .examples = {{"Sprouted seed potted.",
                       {{"book", "BOOK"},
                        {"seed-lot", "S-25-03"},
                        {"seeds", "20"},
                        {"remark", "potted"},
                        {"as-of", "2026-03-23"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
