// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/record_entry.h"

namespace pipward::operation::detail {
namespace {

struct Request : RecordRequest {
    std::string tag;
    int fruits = 0;
    std::optional<int> seeds_sound;
    std::optional<int> seeds_empty;
};

Outcome run(const Request& request, const Run& lent) {
    return recorded(request,
                    {"fruit",
                     {{"tag", text_cell(request.tag)},
                      {"harvested_on", request.day()},
                      {"fruits", whole_cell(request.fruits)},
                      {"seeds_sound", whole_cell(request.seeds_sound)},
                      {"seeds_empty", whole_cell(request.seeds_empty)},
                      {"remark", text_cell(request.remark)}}},
                    lent);
}

}  // namespace

std::unique_ptr<const Operation> record_harvest() {
    return declare<Request>(
        {.about = {"record-harvest", "Record harvest", "Records",
                   "Records the fruit harvested from a tagged branch and, once it is cut, the seed in it. It "
                   "is checked against the book first: fruit comes after its pollination, is no more than "
                   "the flowers pollinated, and its seed must have had time to ripen."},
         .parameters =
             {record_book_parameter(), tag_parameter(&Request::tag).required(),
              count_parameter(&Request::fruits, "fruits", "Fruits", "Number of fruits harvested.").required(),
              on_parameter("harvested-on", "Harvested on"),
              count_parameter(&Request::seeds_sound, "seeds-sound", "Sound seeds",
                              "Full seeds found in them."),
              count_parameter(&Request::seeds_empty, "seeds-empty", "Empty seeds",
                              "Flat or hollow seeds found in them."),
              remark_parameter(), record_as_of_parameter()},
         .results = {},
         .examples = {{"A few late fruits of a branch pollinated last spring.",
                       {{"book", "BOOK"}, {"tag", "25-03-b"}, {"fruits", "2"}, {"as-of", "2025-10-05"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
