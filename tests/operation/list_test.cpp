// SPDX-License-Identifier: MIT
// Walks the one list of operations: what every declaration must hold to.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "pipward/operation/declare/parameter_text.h"
#include "pipward/operation/operation.h"
#include "pipward/operation/season/result_tables.h"
#include "pipward/record/screen_cell.h"

namespace pipward::operation {
namespace {

bool is_sentence(const std::string& text) {
    return !text.empty() && (std::isupper(static_cast<unsigned char>(text.front())) != 0) &&
           text.back() == '.';
}

/// Lower-case words and digits with single joints between them: "season-plan", "coverage_80".
bool is_joined_by(char joint, const std::string& text) {
    const auto is_letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'); };
    char before = joint;
    for (const char c : text) {
        if (!is_letter(c) && (c != joint || before == joint)) {
            return false;
        }
        before = c;
    }
    return !text.empty() && before != joint && is_letter(text.front());
}

bool is_words(const std::string& text) {
    return !text.empty() && text.back() != '.' &&
           (std::isupper(static_cast<unsigned char>(text.front())) != 0);
}

template <class Check>
void for_each_parameter(Check check) {
    for (const auto& operation : operations()) {
        for (const auto& parameter : operation->parameters()) {
            SCOPED_TRACE(operation->about().id + " " + parameter.key);
            check(parameter);
        }
    }
}

template <class Check>
void for_each_result(Check check) {
    for (const auto& operation : operations()) {
        for (const auto& shape : operation->results()) {
            SCOPED_TRACE(operation->about().id + " " + shape.name);
            check(shape);
        }
    }
}

TEST(Operations, IdsAreUniqueLowerCaseWithHyphens) {
    std::set<std::string> seen;
    for (const auto& operation : operations()) {
        const auto& id = operation->about().id;
        EXPECT_TRUE(is_joined_by('-', id)) << id;
        EXPECT_TRUE(seen.insert(id).second) << id;
        EXPECT_EQ(find_operation(id), operation.get());
    }
    EXPECT_GE(seen.size(), 9U);
    EXPECT_EQ(find_operation("no-such-operation"), nullptr);
}

TEST(Operations, TitlesAreWordsAndHelpIsSentences) {
    for (const auto& operation : operations()) {
        const auto& about = operation->about();
        EXPECT_TRUE(is_words(about.title)) << about.id;
        EXPECT_TRUE(is_words(about.group)) << about.id;
        EXPECT_TRUE(is_sentence(about.help)) << about.id;
    }
}

// What hosts fill in by themselves. A new role stands here before this builds again.
std::vector<std::string> keys_of(Role role) {
    switch (role) {
        case Role::style_book:
            return {"book"};
        case Role::plan_season:
            return {"book", "as-of"};
        case Role::draw_pedigree:
            return {"book", "accessions", "as-of"};
    }
    return {};
}

TEST(Operations, EachRoleIsPlayedOnceAndTakesWhatHostsFillIn) {
    std::map<Role, std::string> players;
    for (const auto& operation : operations()) {
        if (const auto role = operation->about().role) {
            EXPECT_TRUE(players.emplace(*role, operation->about().id).second) << operation->about().id;
            EXPECT_EQ(&operation_for(*role), operation.get());
        }
    }
    EXPECT_EQ(players, (std::map<Role, std::string>{{Role::style_book, "book-style"},
                                                    {Role::plan_season, "season-plan"},
                                                    {Role::draw_pedigree, "pedigree-show"}}));
    for (const auto& [role, id] : players) {
        Form form;
        for (const auto& key : keys_of(role)) {
            form[key] = key == "as-of" ? "2026-03-20" : "text";
        }
        for (const auto& finding : operation_for(role).check(form)) {
            ADD_FAILURE() << id << ": " << to_text(finding);
        }
    }
}

TEST(Operations, ParametersHaveUniqueKeysLabelsAndOneSentenceOfHelp) {
    for (const auto& operation : operations()) {
        std::set<std::string> keys;
        for (const auto& parameter : operation->parameters()) {
            EXPECT_TRUE(keys.insert(parameter.key).second) << operation->about().id << " " << parameter.key;
        }
    }
    for_each_parameter([](const Parameter& parameter) {
        EXPECT_TRUE(is_joined_by('-', parameter.key));
        EXPECT_TRUE(is_words(parameter.label)) << parameter.label;
        EXPECT_TRUE(is_sentence(parameter.help)) << parameter.help;
    });
}

TEST(Operations, NoKeyIsTakenFromTheConsole) {
    for_each_parameter([](const Parameter& parameter) {
        for (const auto* taken : {"format", "table", "wide", "findings", "out", "quiet", "help"}) {
            EXPECT_NE(parameter.key, taken);
        }
    });
}

TEST(Operations, TheSameKeyMeansTheSameEverywhere) {
    std::map<std::string, Parameter> first;
    for_each_parameter([&](const Parameter& parameter) {
        const auto [known, added] = first.try_emplace(parameter.key, parameter);
        const bool book = std::holds_alternative<NewBookKind>(parameter.kind) ||
                          std::holds_alternative<NewBookKind>(known->second.kind);
        if (!book && parameter.key != "station") {  // an import names the station that it fills
            EXPECT_EQ(kind_word(parameter.kind), kind_word(known->second.kind));
        }
    });
}

TEST(Operations, EveryNumberHasAUnit) {
    for_each_parameter([](const Parameter& parameter) {
        if (std::holds_alternative<NumberKind>(parameter.kind)) {
            EXPECT_FALSE(unit_of(parameter.kind).empty());
        }
    });
}

TEST(Operations, WholeNumbersHaveLimits) {
    for_each_parameter([](const Parameter& parameter) {
        if (const auto* whole = std::get_if<WholeKind>(&parameter.kind)) {
            EXPECT_TRUE(whole->least && whole->most);
        }
        if (const auto* list = std::get_if<WholeListKind>(&parameter.kind)) {
            EXPECT_TRUE(list->least && list->most);
        }
    });
}

TEST(Operations, ADefaultWouldPassItsOwnCheck) {
    for_each_parameter([](const Parameter& parameter) {
        if (!parameter.default_text.empty()) {
            EXPECT_EQ(problem_with(parameter, parameter.default_text), std::nullopt);
        }
        if (parameter.required) {
            EXPECT_TRUE(parameter.default_text.empty());
        }
    });
}

TEST(Operations, EveryOperationWorksOnAPlaceThatMustBeNamed) {
    for (const auto& operation : operations()) {
        const auto& first = operation->parameters().at(0);
        EXPECT_EQ(first.key, "book") << operation->about().id;
        EXPECT_TRUE(first.required) << operation->about().id;
    }
}

TEST(Operations, EveryExampleParsesAndPassesTheCheck) {
    for (const auto& operation : operations()) {
        EXPECT_FALSE(operation->examples().empty()) << operation->about().id;
        for (const auto& example : operation->examples()) {
            EXPECT_TRUE(is_sentence(example.words)) << example.words;
            for (const auto& finding : operation->check(example.values)) {
                ADD_FAILURE() << operation->about().id << ": " << to_text(finding);
            }
        }
    }
}

TEST(Operations, ResultTablesAndColumnsAreNamedDescribedAndUnique) {
    for_each_result([](const TableShape& shape) {
        EXPECT_TRUE(is_joined_by('_', shape.name));
        EXPECT_TRUE(is_words(shape.title));
        EXPECT_TRUE(is_sentence(shape.description));
        std::set<std::string> names;
        for (const auto& column : shape.columns) {
            EXPECT_TRUE(is_joined_by('_', column.name)) << column.name;
            EXPECT_TRUE(names.insert(column.name).second) << column.name;
            EXPECT_TRUE(is_words(column.label)) << column.name;
            EXPECT_TRUE(!column.description.empty() && column.description.back() == '.') << column.name;
            EXPECT_TRUE(column.type != CellType::number || !column.unit.empty()) << column.name;
        }
    });
}

std::vector<std::string> viewed_columns(const ResultShape& shape) {
    auto names = shape.view.first;
    names.insert(names.end(), shape.view.below.begin(), shape.view.below.end());
    names.insert(names.end(), shape.view.once.begin(), shape.view.once.end());
    return names;
}

TEST(Operations, ViewsOfTablesNameTheirColumnsAndEachOnce) {
    for_each_result([](const ResultShape& shape) {
        std::set<std::string> seen;
        for (const auto& name : viewed_columns(shape)) {
            EXPECT_NE(std::ranges::find(shape.columns, name, &Column::name), shape.columns.end()) << name;
            EXPECT_TRUE(seen.insert(name).second) << name;
        }
    });
}

// A few columns read on any screen; of more, people are told which matter.
TEST(Operations, TablesOfManyColumnsSayWhichMatter) {
    for_each_result([](const ResultShape& shape) {
        EXPECT_TRUE(shape.columns.size() <= 7 || !shape.view.first.empty());
    });
}

// A chance stands for people in per cent: no unit of a part of a whole may be unknown to the screen.
TEST(Operations, PartsOfAWholeAreKnownByTheirUnit) {
    for_each_result([](const ResultShape& shape) {
        for (const auto& column : shape.columns) {
            const bool says_so = column.name.find("chance") != std::string::npos ||
                                 column.name.find("probability") != std::string::npos ||
                                 column.name.find("share") != std::string::npos;
            EXPECT_TRUE(!says_so || column.type != CellType::number || is_part_of_whole(column))
                << column.name << " " << column.unit;
        }
    });
}

std::vector<std::string> column_names(const TableShape& shape) {
    std::vector<std::string> names;
    std::ranges::transform(shape.columns, std::back_inserter(names), &Column::name);
    return names;
}

/// Scripts and styles rely on these; more may stand beside them, none may go.
void expect_columns(const TableShape& shape, const std::vector<std::string>& promised) {
    const auto names = column_names(shape);
    for (const auto& name : promised) {
        EXPECT_NE(std::ranges::find(names, name), names.end()) << shape.name << " " << name;
    }
}

TEST(ResultTables, HaveThePromisedColumns) {
    expect_columns(bloom_window_shape(), {"tree", "accession", "season", "as_of", "first_p10", "first_p50",
                                          "first_p90", "full_p10", "full_p50", "full_p90", "end_p10",
                                          "end_p50", "end_p90", "model", "observations_used", "warnings"});
    expect_columns(cross_outlook_shape(), {"cross", "seed_parent", "donor", "way", "probability",
                                           "collect_from", "collect_to", "store", "use_from", "use_to",
                                           "flowers", "pollen_mg", "s_match", "kinship", "verdict", "why"});
    expect_columns(pollen_task_shape(), {"donor", "tree", "do_from", "do_to", "flowers", "mass_mg", "store",
                                         "keep_until", "season_of_use", "for_crosses", "urgency", "why"});
    expect_columns(find_operation("chill-heat")->results().at(0),
                   {"station", "day", "t_min_c", "t_max_c", "chilling_hours", "utah_units", "chill_portions",
                    "gdd_mean", "gdd_triangle", "gdd_sine", "gdh_linear", "gdh_asymcur", "day_length_h"});
}

TEST(ResultTables, SkillForwardInTimeHasExactlyThePromisedColumns) {
    const auto& results = find_operation("bloom-skill")->results();
    EXPECT_EQ(column_names(results.at(0)),
              (std::vector<std::string>{"method", "stage", "accession", "issued", "springs", "n", "rmse_days",
                                        "mae_days", "bias_days", "crps_days", "inside_80", "length_bias_days",
                                        "chosen"}));
    EXPECT_EQ(column_names(results.at(2)),
              (std::vector<std::string>{"way", "issued", "chance_from", "chance_to", "n", "mean_chance",
                                        "observed_share", "brier", "brier_climatology"}));
}

TEST(ResultTables, SeasonsLeftOutHaveExactlyThePromisedColumns) {
    EXPECT_EQ(column_names(bloom_left_out_table.shape()),
              (std::vector<std::string>{"method", "stage", "accession", "lead_days", "training_seasons",
                                        "seasons", "observations", "rmse_days", "mae_days", "bias_days",
                                        "within_3_days", "within_5_days", "coverage_80", "chosen"}));
}

}  // namespace
}  // namespace pipward::operation
