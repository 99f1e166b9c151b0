// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <list>

#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/note.h"

namespace pipward::operation {

/// A stage as a form offers it; its number is the BBCH code.
enum class NotedStage : int {};

std::span<const Word<NotedStage>> words(NotedStage);

namespace {

struct Request : detail::NoteRequest {
    NotedStage stage{65};
    std::string tree;
    std::string accession;
    std::optional<double> open_percent;
    std::string observer;
};

Outcome run(const Request& request, const Run& lent) {
    return detail::noted(request,
                         {"bloom_note",
                          {{"tree", text_cell(request.tree)},
                           {"accession", text_cell(request.accession)},
                           {"noted_on", request.day()},
                           {"bbch", whole_cell(static_cast<int>(request.stage))},
                           {"open_percent", cell(request.open_percent)},
                           {"observer", text_cell(request.observer)},
                           {"note", text_cell(request.remark)}}},
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

std::vector<Word<NotedStage>> stage_table() {
    static const auto all = stage_words();
    std::vector<Word<NotedStage>> table;
    for (const auto& word : all) {
        table.push_back({NotedStage{word.stage.code}, word.code, word.meaning});
    }
    return table;
}

}  // namespace

std::span<const Word<NotedStage>> words(NotedStage) {
    static const auto table = stage_table();
    return table;
}

std::unique_ptr<const Operation> detail::note_bloom() {
    return detail::declare<Request>(
        {.about = {"note-bloom", "Note bloom", "Notes",
                   "Writes down the stage that a tree, or an accession as a whole, was seen in. The note is "
                   "held against the book first: an unknown tree, a day to come, a stage that goes back."},
         .parameters = {detail::note_book_parameter(), detail::tree_parameter(&Request::tree),
                        detail::parameter(&Request::stage, "stage", "Stage",
                                          "The growth stage on the BBCH scale.")
                            .required(),
                        detail::on_parameter(),
                        detail::parameter(&Request::open_percent, "open-percent", "Flowers open",
                                          "The part of the flowers that have opened.")
                            .in("%")
                            .between(0.0, 100.0),
                        detail::parameter(&Request::accession, "accession", "Accession",
                                          "The accession, where no single tree was looked at."),
                        detail::parameter(&Request::observer, "observer", "Observer", "Who looked."),
                        detail::remark_parameter(), detail::note_as_of_parameter()},
         .results = {},
         .examples = {{"The first flowers of a tree.",
                       {{"book", "BOOK"}, {"tree", "LO-04-07"}, {"stage", "61"}, {"as-of", "2026-05-12"}}},
                      {"Full bloom of an accession, two days ago.",
                       {{"book", "BOOK"},
                        {"accession", "Greywether"},
                        {"stage", "65"},
                        {"on", "2026-05-14"},
                        {"as-of", "2026-05-16"}}}},
         .run = run});
}

}  // namespace pipward::operation
