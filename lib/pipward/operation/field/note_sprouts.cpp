// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/note.h"

namespace pipward::operation::detail {
namespace {

struct Request : NoteRequest {
    std::string seed_lot;
    int sprouted = 0;
};

Outcome run(const Request& request, const Run& lent) {
    return noted(request,
                 {"sprout_count",
                  {{"lot", text_cell(request.seed_lot)},
                   {"counted_on", request.day()},
                   {"sprouted", whole_cell(request.sprouted)}}},
                 lent);
}

}  // namespace

std::unique_ptr<const Operation> note_sprouts() {
    return declare<Request>(
        {.about = {"note-sprouts", "Note sprouts", "Notes",
                   "Writes down how many seeds of a lot have sprouted so far, those taken out included. Held "
                   "against the book first: the count of a lot only grows, and never beyond its seeds."},
         .parameters = {note_book_parameter(), seed_lot_parameter(&Request::seed_lot).required(),
                        count_parameter(&Request::sprouted, "sprouted", "Sprouted",
                                        "The number of seeds that have sprouted so far, all in all.")
                            .required(),
                        on_parameter(), note_as_of_parameter()},
         .results = {},
         .examples =
             {{"A count some days after the last.",
               {{"book", "BOOK"}, {"seed-lot", "S-25-03"}, {"sprouted", "58"}, {"as-of", "2026-03-23"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
