// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/note.h"

namespace pipward::operation::detail {
namespace {

struct Request : NoteRequest {
    std::string seed_lot;
    std::string cross;
    int seeds = 0;
    std::string from_tags;
    std::optional<Day> cold_from;
    std::optional<Celsius> cold;
    std::string treatment;
    std::string medium;
};

Cell degrees(const std::optional<Celsius>& reading) {
    return reading ? Cell{reading->degrees} : Cell{};
}

Outcome run(const Request& request, const Run& lent) {
    return noted(request,
                 {"seed_lot",
                  {{"code", text_cell(request.seed_lot)},
                   {"cross", text_cell(request.cross)},
                   {"seeds", whole_cell(request.seeds)},
                   {"from_tags", text_cell(request.from_tags)},
                   {"washed_on", request.day()},
                   {"cold_from", cell(request.cold_from)},
                   {"cold_c", degrees(request.cold)},
                   {"treatment", text_cell(request.treatment)},
                   {"medium", text_cell(request.medium)},
                   {"note", text_cell(request.remark)}}},
                 lent);
}

std::vector<Bound<Request>> parameters() {
    return {
        note_book_parameter(),
        seed_lot_parameter(&Request::seed_lot).required(),
        cross_parameter(&Request::cross).required(),
        count_parameter(&Request::seeds, "seeds", "Seeds", "The number of seeds.").required(),
        parameter(&Request::from_tags, "from-tags", "From tags",
                  "The tags whose fruit the seed came from, parted by blanks."),
        on_parameter(),
        parameter(&Request::cold_from, "cold-from", "Cold from", "The first day in the cold."),
        parameter(&Request::cold, "cold-c", "Cold at", "The temperature of the cold.").between(-100.0, 40.0),
        parameter(&Request::treatment, "treatment", "Treatment", "What was done to the seed."),
        parameter(&Request::medium, "medium", "Medium", "What the seed lies in."),
        remark_parameter(),
        note_as_of_parameter()};
}

}  // namespace

std::unique_ptr<const Operation> note_seed_lot() {
    return declare<Request>(
        {.about = {"note-seed-lot", "Note seed lot", "Notes",
                   "Writes down a bag of seed of one cross that is treated alike, on the day of its "
                   "washing. Held against the book first: its tags must be of its cross, and it holds no "
                   "more seed than their fruit."},
         .parameters = parameters(),
         .results = {},
         .examples = {{"Forty seeds washed and put into the cold the same day.",
                       {{"book", "BOOK"},
                        {"seed-lot", "S-25-04"},
                        {"cross", "25-03"},
                        {"seeds", "40"},
                        {"from-tags", "25-03-b"},
                        {"cold-from", "2025-10-10"},
                        {"cold-c", "3"},
                        {"medium", "moist sand"},
                        {"as-of", "2025-10-10"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
