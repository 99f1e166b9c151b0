// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <list>

#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/record_entry.h"

namespace pipward::operation {

/// A stage as a form offers it; its number is the BBCH code.
enum class ObservedStage : int {};

std::span<const Word<ObservedStage>> words(ObservedStage);

namespace {

struct Request : detail::RecordRequest {
    ObservedStage stage{65};
    std::string tree;
    std::string accession;
    std::optional<double> open_percent;
    std::string observer;
};

Outcome run(const Request& request, const Run& lent) {
    return detail::recorded(request,
                            {"bloom_observation",
                             {{"tree", text_cell(request.tree)},
                              {"accession", text_cell(request.accession)},
                              {"observed_on", request.day()},
                              {"bbch", whole_cell(static_cast<int>(request.stage))},
                              {"open_percent", cell(request.open_percent)},
                              {"observer", text_cell(request.observer)},
                              {"remark", text_cell(request.remark)}}},
                            lent);
}

// Words that outlive the table that points to them.
struct StageWord {
    Bbch stage;
    std::string code;
    std::string meaning;
};

std::list<StageWord> stage_words() {
    std::list<StageWord> all;
    for (const auto& entry : bbch_stages()) {
        all.push_back({entry.stage, std::to_string(entry.stage.code),
                       fmt::format("{:02}: {}", entry.stage.code, entry.words)});
    }
    return all;
}

std::vector<Word<ObservedStage>> stage_table() {
    static const auto all = stage_words();
    std::vector<Word<ObservedStage>> table;
    for (const auto& word : all) {
        table.push_back({ObservedStage{word.stage.code}, word.code, word.meaning});
    }
    return table;
}

}  // namespace

std::span<const Word<ObservedStage>> words(ObservedStage) {
    static const auto table = stage_table();
    return table;
}

std::unique_ptr<const Operation> detail::record_bloom() {
    return detail::declare<Request>(
        {.about =
             {"record-bloom", "Record bloom", "Records",
              "Records the BBCH stage of a tree, or of an accession as a whole. The observation is checked "
              "against the book first: an unknown tree, a date in the future, a stage that goes back."},
         .parameters = {detail::record_book_parameter(), detail::tree_parameter(&Request::tree),
                        detail::parameter(&Request::stage, "bbch", "BBCH stage",
                                          "The growth stage on the BBCH scale.")
                            .required(),
                        detail::on_parameter("observed-on", "Observed on"),
                        detail::parameter(&Request::open_percent, "open-percent", "Flowers open",
                                          "The part of the flowers that have opened.")
                            .in("%")
                            .between(0.0, 100.0),
                        detail::parameter(&Request::accession, "accession", "Accession",
                                          "The accession, where no single tree was observed."),
                        detail::parameter(&Request::observer, "observer", "Observer", "Observer."),
                        detail::remark_parameter(), detail::record_as_of_parameter()},
         .results = {},
         .examples = {{"The first flowers of a tree.",
                       {{"book", "BOOK"}, {"tree", "LO-04-07"}, {"bbch", "61"}, {"as-of", "2026-05-12"}}},
                      {"Full bloom of an accession, two days ago.",
                       {{"book", "BOOK"},
                        {"accession", "Greywether"},
                        {"bbch", "65"},
                        {"observed-on", "2026-05-14"},
                        {"as-of", "2026-05-16"}}}},
         .run = run});
}

}  // namespace pipward::operation
