// SPDX-License-Identifier: MIT
// The version that a book carries, and the one place where a book of an older version would be changed.
#include <gtest/gtest.h>

#include <array>

#include "bad-books/raw_book.h"
#include "book/book_testing.h"
#include "pipward/book/book.h"
#include "pipward/book/detail/schema_version.h"
#include "pipward/book/detail/transaction.h"

namespace pipward::book {
namespace {

using namespace detail;

using SchemaVersion = testing::BookTest;

std::string refusal(const std::string& path) {
    try {
        (void)read_book(path);
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::access);
        return error.findings().front().message.text();
    }
    return {};
}

WeatherDay day_of_weather() {
    WeatherDay day;
    day.station = "Ridge";
    day.day = *make_day({2026, 4, 1});
    day.t_min = {1};
    day.t_max = {9};
    return day;
}

TEST_F(SchemaVersion, OfANewBookIsOurs) {
    make_book();
    look_into_book(book, default_patience,
                   [](Session& session) { EXPECT_EQ(detail::version_of(session), detail::our_version); });
    EXPECT_EQ(refusal(book), "");
}

TEST_F(SchemaVersion, OfANewerOrOlderBookIsNamedAndTheBookLeftAlone) {
    make_book();
    testing::RawBook(book).run("UPDATE book_version SET version = 7");
    EXPECT_EQ(refusal(book), "This book is of schema version 7; this program knows version 1.");
    testing::RawBook(book).run("UPDATE book_version SET version = 0");
    EXPECT_EQ(refusal(book), "This book is of schema version 0; this program needs version 1.");
    EXPECT_THROW(write_weather(book, {day_of_weather()}, false), Error);
    testing::RawBook(book).run("DROP TABLE book_version");
    EXPECT_EQ(refusal(book), "This book does not say which version of the schema it is of.");
}

// A step as a later version will bring it: a column gets another name, rows stay.
TEST_F(SchemaVersion, AnUpgradeRunsItsStepsInOrderAndKeepsTheRows) {
    make_book();
    testing::RawBook(book).run("INSERT INTO accession (name, kind) VALUES ('Oak', 'cultivar')");
    testing::RawBook(book).run("UPDATE book_version SET version = 0");
    std::vector<int> run;
    const std::array steps{
        detail::UpgradeStep{0,
                            [&](Session& session) {
                                run.push_back(0);
                                run_sql(session, "ALTER TABLE accession RENAME COLUMN kind TO sort");
                            }},
        detail::UpgradeStep{1, [&](Session& session) {
                                run.push_back(1);
                                run_sql(session, "ALTER TABLE accession RENAME COLUMN sort TO kind");
                            }}};
    auto session = open_session(book, Purpose::writing);
    detail::upgrade(session, steps, 2);
    EXPECT_EQ(run, (std::vector<int>{0, 1}));
    EXPECT_EQ(detail::version_of(session), 2);
    EXPECT_EQ(query(session, "SELECT kind FROM accession WHERE name = 'Oak'").front().front(), "cultivar");
    EXPECT_THROW(detail::upgrade(session, steps, 3), OgrTrouble);
}

TEST_F(SchemaVersion, HasAStepForEveryVersionBeforeOurs) {
    const auto steps = detail::upgrade_steps();
    for (int version = 1; version < detail::our_version; ++version) {
        EXPECT_NE(std::ranges::find(steps, version, &detail::UpgradeStep::from), steps.end()) << version;
    }
    EXPECT_EQ(steps.size(), static_cast<std::size_t>(detail::our_version - 1));
}

}  // namespace
}  // namespace pipward::book
