// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/note.h"

namespace pipward::operation::detail {
namespace {

struct Request : NoteRequest {
    std::string pollen_lot;
    int grains = 0;
    int germinated = 0;
};

Outcome run(const Request& request, const Run& lent) {
    return noted(request,
                 {"pollen_test",
                  {{"lot", text_cell(request.pollen_lot)},
                   {"tested_on", request.day()},
                   {"grains", whole_cell(request.grains)},
                   {"germinated", whole_cell(request.germinated)}}},
                 lent);
}

}  // namespace

std::unique_ptr<const Operation> note_pollen_test() {
    return declare<Request>(
        {.about = {"note-pollen-test", "Note pollen test", "Notes",
                   "Writes down a germination test of stored pollen: what the lot can still do is then "
                   "judged by it instead of by the handbook."},
         .parameters = {note_book_parameter(), pollen_lot_parameter(&Request::pollen_lot).required(),
                        count_parameter(&Request::grains, "grains", "Grains", "The number of grains counted.")
                            .required(),
                        count_parameter(&Request::germinated, "germinated", "Germinated",
                                        "How many of them have a tube.")
                            .required(),
                        on_parameter(), note_as_of_parameter()},
         .results = {},
         .examples = {{"A lot that has kept well.",
                       {{"book", "BOOK"},
                        {"pollen-lot", "P-25-02"},
                        {"grains", "200"},
                        {"germinated", "130"},
                        {"as-of", "2026-03-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
