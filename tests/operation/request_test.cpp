// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <array>

#include "pipward/operation/declare/detail/declare.h"

namespace pipward::operation {

enum class Colour { red, dark_red };

std::span<const Word<Colour>> words(Colour) {
    static constexpr std::array table{Word<Colour>{Colour::red, "red", "plain red"},
                                      Word<Colour>{Colour::dark_red, "dark-red", "a darker one"}};
    return table;
}

namespace {

struct Common {
    detail::BookName book;
    Day as_of;
};

struct EveryKind : Common {
    int lead = 14;
    std::vector<int> leads{7, 14};
    double factor = 1.5;
    Celsius base{4.5};
    Share risk{0.1};
    bool deep = false;
    Colour colour = Colour::dark_red;
    std::string remark;
    std::optional<int> seasons;
    std::optional<Day> from;
    detail::InputFile file;
};

/// The last request that ran, as text: what the tests look at.
Outcome echo(const EveryKind& request, const Run&) {
    Outcome outcome;
    outcome.summary = verbatim(
        request.book.location + " " + to_iso(request.as_of) + " " + detail::show_field(request.lead) + " " +
        detail::show_field(request.leads) + " " + detail::show_field(request.factor) + " " +
        detail::show_field(request.base) + " " + detail::show_field(request.risk) + " " +
        detail::show_field(request.deep) + " " + std::string(to_word(request.colour)) + " [" +
        request.remark + "] " + (request.seasons ? detail::show_field(*request.seasons) : "none") + " " +
        (request.from ? to_iso(*request.from) : "none") + " [" + request.file.path + "]");
    return outcome;
}

Findings from_before_as_of(const EveryKind& request) {
    if (request.from && *request.from > request.as_of) {
        return {{Level::error, "", "", "from", "", say("from is after as-of."), say("Give an earlier day.")}};
    }
    return {};
}

std::unique_ptr<const Operation> echo_operation() {
    return detail::declare<EveryKind>(
        {.about = {"echo", "Echo", "Test", "Says what it was told."},
         .parameters =
             {detail::parameter(&Common::book, "book", "Book", "The book.").required(),
              detail::parameter(&Common::as_of, "as-of", "As of", "The day.").today_if_absent(),
              detail::parameter(&EveryKind::lead, "lead", "Lead", "Days ahead.").in("days").between(0, 120),
              detail::parameter(&EveryKind::leads, "leads", "Leads", "Days ahead.")
                  .in("days")
                  .between(0, 120),
              detail::parameter(&EveryKind::factor, "factor", "Factor", "A factor.").in("times"),
              detail::parameter(&EveryKind::base, "base-c", "Base", "A base.").between(-5.0, 20.0),
              detail::parameter(&EveryKind::risk, "risk", "Risk", "A risk."),
              detail::parameter(&EveryKind::deep, "deep", "Deep", "Whether deep."),
              detail::parameter(&EveryKind::colour, "colour", "Colour", "A colour.").advanced(),
              detail::parameter(&EveryKind::remark, "note", "Note", "A note."),
              detail::parameter(&EveryKind::seasons, "seasons", "Seasons", "Seasons.").between(1, 200),
              detail::parameter(&EveryKind::from, "from", "From", "A day."),
              detail::parameter(&EveryKind::file, "file", "File", "A file.").named("*.csv")},
         .results = {},
         .examples = {},
         .check = from_before_as_of,
         .run = echo});
}

const Form least{{"book", "b.gpkg"}, {"as-of", "2026-03-20"}};

Form with(const std::string& key, const std::string& value) {
    auto form = least;
    form[key] = value;
    return form;
}

/// The only finding that the form gives, as message and remedy.
std::string only_complaint(const Form& form) {
    const auto findings = echo_operation()->check(form);
    EXPECT_EQ(findings.size(), 1U);
    return findings.empty() ? "" : findings.front().message.text() + " " + findings.front().remedy.text();
}

const Parameter& parameter_named(const Operation& operation, const std::string& key) {
    for (const auto& one : operation.parameters()) {
        if (one.key == key) {
            return one;
        }
    }
    throw std::runtime_error("no parameter " + key);
}

TEST(EveryKind, InitialisersAreTheDefaults) {
    EXPECT_EQ(echo_operation()->run(least, {}).summary,
              "b.gpkg 2026-03-20 14 7,14 1.5 4.5 0.1 no dark-red [] none none []");
}

TEST(EveryKind, EveryKindOfFieldIsFilledFromText) {
    const Form full{{"book", "c.gpkg"}, {"as-of", "2025-02-28"}, {"lead", "0"},      {"leads", "3, 21"},
                    {"factor", "-2e3"}, {"base-c", "-5"},        {"risk", "0.25"},   {"deep", "yes"},
                    {"colour", "red"},  {"note", "wet; windy"},  {"seasons", "200"}, {"from", "2024-02-29"},
                    {"file", "a.csv"}};
    EXPECT_EQ(echo_operation()->run(full, {}).summary,
              "c.gpkg 2025-02-28 0 3,21 -2000 -5 0.25 yes red [wet; windy] 200 2024-02-29 [a.csv]");
}

TEST(EveryKind, AnEmptyTextCountsAsNotGiven) {
    EXPECT_EQ(echo_operation()->run(with("lead", ""), {}).summary, echo_operation()->run(least, {}).summary);
}

TEST(EveryKind, DefaultsAreShownAsTextExceptWhereTheUserMustGiveOne) {
    const auto operation = echo_operation();
    EXPECT_EQ(parameter_named(*operation, "lead").default_text, "14");
    EXPECT_EQ(parameter_named(*operation, "leads").default_text, "7,14");
    EXPECT_EQ(parameter_named(*operation, "colour").default_text, "dark-red");
    EXPECT_EQ(parameter_named(*operation, "deep").default_text, "no");
    EXPECT_EQ(parameter_named(*operation, "seasons").default_text, "");
    EXPECT_EQ(parameter_named(*operation, "book").default_text, "");
    EXPECT_EQ(parameter_named(*operation, "as-of").default_text, "");
}

TEST(EveryKind, AFieldsTypePicksItsKind) {
    const auto operation = echo_operation();
    const auto kind = [&](const std::string& key) { return parameter_named(*operation, key).kind; };
    EXPECT_TRUE(std::holds_alternative<BookKind>(kind("book")));
    EXPECT_TRUE(std::get<DayKind>(kind("as-of")).today_if_absent);
    EXPECT_FALSE(std::get<DayKind>(kind("from")).today_if_absent);
    EXPECT_EQ(std::get<WholeKind>(kind("lead")).unit, "days");
    EXPECT_EQ(std::get<WholeListKind>(kind("leads")).most, 120);
    EXPECT_EQ(std::get<NumberKind>(kind("base-c")).unit, "°C");
    EXPECT_EQ(std::get<NumberKind>(kind("base-c")).least, -5.0);
    EXPECT_EQ(std::get<NumberKind>(kind("risk")).most, 1.0);
    EXPECT_EQ(std::get<ChoiceKind>(kind("colour")).options.at(1).meaning, "a darker one");
    EXPECT_TRUE(std::holds_alternative<TextKind>(kind("note")));
    EXPECT_TRUE(std::holds_alternative<YesNoKind>(kind("deep")));
    EXPECT_EQ(std::get<FileKind>(kind("file")).pattern, "*.csv");
}

TEST(RequestCheck, NamesTheParameterTheValueAndWhatWouldBeRight) {
    EXPECT_EQ(only_complaint(with("lead", "300")),
              "lead is 300 days, which is out of its range. Give an integer, 0 to 120 days.");
    EXPECT_EQ(only_complaint(with("lead", "ten")),
              "lead: 'ten' is not an integer. Give an integer, 0 to 120 days.");
    EXPECT_EQ(only_complaint(with("lead", "7.5")),
              "lead: '7.5' is not an integer. Give an integer, 0 to 120 days.");
    EXPECT_EQ(only_complaint(with("base-c", "30")),
              "base-c is 30 °C, which is out of its range. Give a number, -5 to 20 °C.");
    EXPECT_EQ(only_complaint(with("base-c", "4,5")),
              "base-c: '4,5' is not a number. Give a number, -5 to 20 °C.");
    EXPECT_EQ(only_complaint(with("from", "2026-02-30")),
              "from: there is no day 2026-02-30. Give a day as YYYY-MM-DD.");
    EXPECT_EQ(only_complaint(with("from", "30.2.2026")),
              "from: '30.2.2026' is not a day. Give a day as YYYY-MM-DD.");
    EXPECT_EQ(only_complaint(with("deep", "maybe")), "deep: 'maybe' is not yes or no. Give yes or no.");
    EXPECT_EQ(only_complaint(with("leads", "7,,14")),
              "leads: '7,,14' is not a list of integers. Give integers separated by commas, 0 to 120 days.");
    EXPECT_EQ(
        only_complaint(with("leads", "7,121")),
        "leads is 7,121 days, which is out of its range. Give integers separated by commas, 0 to 120 days.");
    EXPECT_EQ(only_complaint(with("risk", "3")),
              "risk is 3, which is out of its range. Give a number from 0 to 1.");
    EXPECT_EQ(only_complaint(with("factor", "inf")), "factor: 'inf' is not a number. Give a number (times).");
}

TEST(RequestCheck, OffersTheNearestWordAndKey) {
    EXPECT_EQ(
        only_complaint(with("colour", "darkred")),
        "colour: 'darkred' is not one of its words. Did you mean 'dark-red'? Give one of: red, dark-red.");
    EXPECT_EQ(only_complaint(with("laed", "7")), "echo has no parameter 'laed'. Did you mean 'lead'?");
    EXPECT_NE(only_complaint(with("zzz", "7")).find("It has: book, as-of, lead"), std::string::npos);
}

TEST(RequestCheck, SaysWhatIsMissing) {
    EXPECT_EQ(only_complaint({{"as-of", "2026-03-20"}}),
              "book is missing. Give the path of an orchard book.");
    EXPECT_EQ(only_complaint({{"book", "b.gpkg"}}), "as-of is missing. Give a day as YYYY-MM-DD.");
}

TEST(RequestCheck, TellsEverythingWrongAtOnce) {
    const auto findings = echo_operation()->check({{"lead", "300"}, {"from", "x"}, {"nonsense", "1"}});
    std::vector<std::string> fields;
    for (const auto& finding : findings) {
        fields.push_back(finding.field);
        EXPECT_EQ(finding.level, Level::error);
    }
    EXPECT_EQ(fields, (std::vector<std::string>{"nonsense", "book", "as-of", "lead", "from"}));
}

TEST(RequestCheck, AsksTheRulesBetweenFieldsOnceEachFieldIsSound) {
    EXPECT_EQ(only_complaint(with("from", "2026-03-21")), "from is after as-of. Give an earlier day.");
    auto also_wrong = with("from", "2026-03-21");
    also_wrong["lead"] = "300";
    EXPECT_EQ(echo_operation()->check(also_wrong).front().field, "lead");
}

TEST(RequestCheck, ARunRefusesWhatTheCheckRefuses) {
    try {
        (void)echo_operation()->run(with("lead", "300"), {});
        FAIL() << "it ran";
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::usage);
        EXPECT_EQ(error.findings(), echo_operation()->check(with("lead", "300")));
    }
}

TEST(Run, AStepThrowsOnceTheUserHasStoppedTheWork) {
    pipward::operation::Run lent;
    lent.cancelled = [] { return true; };
    try {
        lent.step(0.5, say("Fitting"));
        FAIL() << "it went on";
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::cancelled);
    }
}

TEST(Run, AStepTellsProgress) {
    pipward::operation::Run lent;
    std::string told;
    lent.progress = [&](double share, std::string_view step) {
        told = detail::show_field(share) + " " + std::string(step);
    };
    lent.step(0.5, say("Fitting"));
    EXPECT_EQ(told, "0.5 Fitting");
}

template <class Field>
concept Declarable = detail::RequestField<Field>;

TEST(EveryKind, OnlyTheNamedTypesMayBeFields) {
    EXPECT_TRUE(Declarable<int>);
    EXPECT_TRUE(Declarable<std::optional<Celsius>>);
    EXPECT_TRUE(Declarable<Colour>);
    EXPECT_FALSE(Declarable<float>);
    EXPECT_FALSE(Declarable<long>);
    EXPECT_FALSE(Declarable<Level>);
    EXPECT_FALSE(Declarable<const char*>);
}

}  // namespace
}  // namespace pipward::operation
