// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/record_entry.h"

namespace pipward::operation::detail {
namespace {

struct Request : RecordRequest {
    std::string seed_lot;
    std::string cross;
    int seeds = 0;
    std::string from_tags;
    std::optional<Day> stratified_from;
    std::optional<Celsius> cold;
    std::string treatment;
    std::string medium;
};

Cell degrees(const std::optional<Celsius>& reading) {
    return reading ? Cell{reading->degrees} : Cell{};
}

Outcome run(const Request& request, const Run& lent) {
    return recorded(request,
                    {"seed_lot",
                     {{"code", text_cell(request.seed_lot)},
                      {"cross", text_cell(request.cross)},
                      {"seeds", whole_cell(request.seeds)},
                      {"from_tags", text_cell(request.from_tags)},
                      {"washed_on", request.day()},
                      {"stratified_from", cell(request.stratified_from)},
                      {"stratification_c", degrees(request.cold)},
                      {"treatment", text_cell(request.treatment)},
                      {"medium", text_cell(request.medium)},
                      {"remark", text_cell(request.remark)}}},
                    lent);
}

std::vector<Bound<Request>> parameters() {
    return {record_book_parameter(),
            parameter(&Request::seed_lot, "code", "Code", "Code on the bag.").required(),
            cross_parameter(&Request::cross).required(),
            count_parameter(&Request::seeds, "seeds", "Seeds", "The number of seeds.").required(),
            parameter(&Request::from_tags, "from-tags", "From tags",
                      "Tags whose fruit the seed came from, separated by blanks."),
            on_parameter("washed-on", "Washed on"),
            parameter(&Request::stratified_from, "stratified-from", "Stratified from",
                      "First day of stratification."),
            parameter(&Request::cold, "stratification-c", "Stratified at", "Stratification temperature.")
                .between(-100.0, 40.0),
            parameter(&Request::treatment, "treatment", "Treatment", "Treatment of the seed."),
            parameter(&Request::medium, "medium", "Medium", "Medium that the seed is in."),
            remark_parameter(),
            record_as_of_parameter()};
}

}  // namespace

std::unique_ptr<const Operation> record_seed_lot() {
    return declare<Request>({.about = {"record-seed-lot", "Record seed lot", "Records",
                                       "Records a lot of seed of one cross that is treated alike, on the day "
                                       "of its washing. It is checked against the book first: its tags must "
                                       "belong to its cross, and it has no more seed than their fruit."},
                             .parameters = parameters(),
                             .results = {},
                             .examples = {{"Forty seeds washed and stratified the same day.",
                                           {{"book", "BOOK"},
                                            {"code", "S-25-04"},
                                            {"cross", "25-03"},
                                            {"seeds", "40"},
                                            {"from-tags", "25-03-b"},
                                            {"stratified-from", "2025-10-10"},
                                            {"stratification-c", "3"},
                                            {"medium", "moist sand"},
                                            {"as-of", "2025-10-10"}}}},
                             .run = run});
}

}  // namespace pipward::operation::detail
