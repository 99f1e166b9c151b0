// SPDX-License-Identifier: MIT
#include "pipward/operation/outcome_json.h"

#include <gtest/gtest.h>

#include <fstream>
#include <limits>
#include <nlohmann/json.hpp>
#include <sstream>

#include "paths.h"
#include "pipward/operation/declare/detail/declare.h"

namespace pipward::operation {
namespace {

using Json = nlohmann::ordered_json;

struct Request {
    detail::BookName book;
    Day as_of;
};

std::unique_ptr<const Operation> season_like() {
    return detail::declare<Request>(
        {.about = {"season-like", "Season", "Test", "A test."},
         .parameters = {detail::parameter(&Request::book, "book", "Book", "The book.").required(),
                        detail::parameter(&Request::as_of, "as-of", "As of", "The day.").today_if_absent()},
         .results = {},
         .examples = {},
         .run = [](const Request&, const Run&) { return Outcome{}; }});
}

Outcome outcome() {
    using enum CellType;
    Outcome made;
    made.tables.push_back(
        {{"b_table",
          "B",
          "B.",
          false,
          {{"name", text, "", "Name", "Its name."}, {"chance", number, "share", "Chance", "Probability."}}},
         {{{"X", 0.1}}, {{{}, {}}}}});
    made.tables.push_back({{"a_table",
                            "A",
                            "A.",
                            false,
                            {{"on", day, "", "On", "When."},
                             {"n", whole, "", "N", "Count."},
                             {"yes", yes_no, "", "Yes", "Whether."}}},
                           {{{Day{0}, std::int64_t{7}, true}}}});
    made.files.push_back({"sheet.html", "text/html", "<p>"});
    made.findings.push_back(
        {Level::warning, "tree", "fid 3", "label", "T 3", say("It is doubled."), say("Rename one.")});
    return made;
}

const Form plain_form{{"book", "b.gpkg"}, {"as-of", "2026-03-20"}};

TEST(OutcomeJson, KeepsTheServersPasswordToItself) {
    const Form to_server{{"book", "PG:host=orchard dbname=book password=secret"}, {"as-of", "2026-03-20"}};
    const auto text = outcome_json(*season_like(), to_server, {});
    EXPECT_EQ(text.find("secret"), std::string::npos);
    EXPECT_NE(text.find("host=orchard"), std::string::npos);
}

TEST(OutcomeJson, HasNoControlCharacterThatATerminalObeys) {
    auto made = outcome();
    made.findings.front().value = "a\x1B[31m\x7F\xC2\x9B";
    const auto text = outcome_json(*season_like(), plain_form, made);
    EXPECT_NE(text.find("a\\u001b[31m\\u007f\\u009b"), std::string::npos) << text;
    EXPECT_EQ(Json::parse(text)["findings"][0]["value"], "a\x1B[31m\x7F\xC2\x9B");
}

std::vector<std::string> keys_of(const Json& object) {
    std::vector<std::string> keys;
    for (const auto& [key, value] : object.items()) {
        keys.push_back(key);
    }
    return keys;
}

using Keys = std::vector<std::string>;

TEST(OutcomeJson, HasTheKeysOfTheContractInTheirOrder) {
    const auto json = Json::parse(outcome_json(*season_like(), plain_form, outcome()));
    EXPECT_EQ(keys_of(json), (Keys{"operation", "book", "as_of", "tables", "files", "findings"}));
    EXPECT_EQ(keys_of(json["tables"]), (Keys{"b_table", "a_table"}));
    EXPECT_EQ(keys_of(json["tables"]["a_table"]), (Keys{"columns", "rows"}));
    EXPECT_EQ(keys_of(json["tables"]["a_table"]["columns"][0]),
              (Keys{"name", "type", "unit", "description"}));
    EXPECT_EQ(keys_of(json["findings"][0]),
              (Keys{"level", "table", "row", "field", "value", "message", "remedy"}));
}

TEST(OutcomeJson, OfARefusalHasEveryDeclaredTableWithoutRowsAndTheFindings) {
    const auto* plan = find_operation("season-plan");
    const Findings why{{Level::error, "tree", "", "", "", say("The book has no trees."), say("Draw them.")}};
    const auto json = Json::parse(outcome_json(*plan, plain_form, refused_outcome(*plan, why)));
    EXPECT_EQ(keys_of(json), (Keys{"operation", "book", "as_of", "tables", "files", "findings"}));
    ASSERT_EQ(json["tables"].size(), plan->results().size());
    for (const auto& shape : plan->results()) {
        EXPECT_EQ(json["tables"][shape.name]["columns"].size(), shape.columns.size());
        EXPECT_TRUE(json["tables"][shape.name]["rows"].empty());
    }
    EXPECT_EQ(json["findings"][0]["message"], "The book has no trees.");
}

TEST(OutcomeJson, CarriesEveryValueWithItsType) {
    const auto json = Json::parse(outcome_json(*season_like(), plain_form, outcome()));
    EXPECT_EQ(json["operation"], "season-like");
    EXPECT_EQ(json["book"], "b.gpkg");
    EXPECT_EQ(json["as_of"], "2026-03-20");
    EXPECT_EQ(json["tables"]["b_table"]["rows"], Json::parse(R"([["X", 0.1], [null, null]])"));
    EXPECT_EQ(json["tables"]["a_table"]["rows"], Json::parse(R"([["1970-01-01", 7, true]])"));
    EXPECT_EQ(json["tables"]["b_table"]["columns"][1],
              Json::parse(
                  R"({"name": "chance", "type": "number", "unit": "share", "description": "Probability."})"));
    EXPECT_EQ(json["files"], Json::parse(R"(["sheet.html"])"));
    EXPECT_EQ(json["findings"][0]["level"], "warning");
    EXPECT_EQ(json["findings"][0]["value"], "T 3");
}

TEST(OutcomeJson, NumbersReadBackExactly) {
    auto made = outcome();
    const double awkward = 0.1 + 0.2;
    made.tables[0].rows[0].cells[1] = awkward;
    const auto json = Json::parse(outcome_json(*season_like(), plain_form, made));
    EXPECT_EQ(json["tables"]["b_table"]["rows"][0][1].get<double>(), awkward);
}

TEST(OutcomeJson, ANumberThatIsNoneIsNull) {
    auto made = outcome();
    made.tables[0].rows[0].cells[1] = std::numeric_limits<double>::quiet_NaN();
    EXPECT_TRUE(
        Json::parse(outcome_json(*season_like(), plain_form, made))["tables"]["b_table"]["rows"][0][1].is_null());
}

TEST(OutcomeJson, AnEmptyOutcomeStillHasEveryKey) {
    EXPECT_EQ(outcome_json(*season_like(), {}, {}),
              R"({"operation":"season-like","book":null,"as_of":null,"tables":{},"files":[],"findings":[]})"
              "\n");
}

TEST(OutcomeJson, AStrayByteInANoteDoesNotLoseThePlan) {
    auto made = outcome();
    made.tables[0].rows[0].cells[0] = std::string("M\xFCller");
    EXPECT_FALSE(Json::parse(outcome_json(*season_like(), plain_form, made)).is_discarded());
}

TEST(Catalogue, EqualsTheGoldenFile) {
    std::ifstream file(testing::project_file("tests/operation/catalogue.json"));
    ASSERT_TRUE(file) << "tests/operation/catalogue.json is missing: build the target reference";
    std::ostringstream golden;
    golden << file.rdbuf();
    EXPECT_EQ(catalogue_json(), golden.str()) << "What users see has changed. If that is meant, build the "
                                                 "target reference and look at the difference.";
}

}  // namespace
}  // namespace pipward::operation
