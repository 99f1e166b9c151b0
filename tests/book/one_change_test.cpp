// SPDX-License-Identifier: MIT
// One state read, one lock from judging to writing, and every row counted that is said to be written.
#include <fmt/format.h>
#include <gtest/gtest.h>
#include <sys/wait.h>

#include <thread>

#include "book/book_testing.h"
#include "pipward/book/change.h"
#include "pipward/book/detail/transaction.h"
#include "pipward/book/entry.h"

namespace pipward::book {
namespace {

using testing::error_of;
using testing::RawBook;
using testing::text;

class OneChange : public testing::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        make_book();
        testing::add(book, "tree", {"label"}, {{{text("A1")}, testing::at(1, 1)}});
    }

    Entry stage(const char* on, std::int64_t bbch = 61) const {
        return {"bloom_observation",
                {{"tree", text("A1")}, {"observed_on", testing::day(on)}, {"bbch", bbch}}};
    }
    EntryAdded note(const char* on) const { return add_entry(book, stage(on), testing::day("2026-06-01")); }
    std::string notes() const { return RawBook(book).text("SELECT count(*) FROM bloom_observation"); }

    /// Says how much of what was asked for was written.
    void expect_swallowed(const std::function<void()>& work) const {
        const auto before = testing::bytes_of(book);
        const auto error = error_of(work);
        EXPECT_EQ(error.trouble(), Trouble::access);
        EXPECT_NE(error.findings().at(0).remedy.text().find("Nothing was changed"), std::string::npos)
            << error.what();
        EXPECT_EQ(testing::bytes_of(book), before);
    }
};

// Reading

TEST_F(OneChange, AReadingSeesOneStateWhateverIsWrittenMeanwhile) {
    RawBook other(book);
    other.run("PRAGMA journal_mode = wal");
    std::vector<std::string> counts;
    detail::look_into_book(book, default_patience, [&](detail::Session& session) {
        for (int i = 0; i < 3; ++i) {
            counts.push_back(
                detail::query(session, "SELECT 0 + count(*) FROM accession").at(0).at(0).value());
            other.run("INSERT INTO accession (name, kind) VALUES ('Red " + std::to_string(i) +
                      "', 'cultivar')");
        }
    });
    EXPECT_EQ(counts, (std::vector<std::string>{"0", "0", "0"}));
    EXPECT_EQ(read_book(book).orchard.accessions.size(), 3U);
}

TEST_F(OneChange, ABusyBookIsNeverCalledDamaged) {
    constexpr int writes = 60;
    const auto child = fork();
    if (child == 0) {
        try {
            RawBook raw(book);
            raw.run("PRAGMA busy_timeout = 20000");
            for (int i = 0; i < writes; ++i) {
                raw.run(fmt::format(
                    "BEGIN IMMEDIATE; INSERT INTO accession (name, kind) VALUES ('R{0}', 'cultivar'); "
                    "INSERT INTO tree (label) VALUES ('R{0}'); COMMIT",
                    i));
            }
        } catch (const std::exception&) {
            _exit(1);
        }
        _exit(0);
    }
    int status = 0;
    int readings = 0;
    while (waitpid(child, &status, WNOHANG) == 0 || readings == 0) {
        const auto orchard = read_book(book).orchard;
        EXPECT_EQ(orchard.trees.size(), orchard.accessions.size() + 1) << "torn";
        ++readings;
    }
    EXPECT_EQ(status, 0);
    EXPECT_EQ(read_book(book).orchard.accessions.size(), static_cast<std::size_t>(writes));
}

// Judging and writing

TEST_F(OneChange, NobodyWritesBetweenJudgingAndWriting) {
    in_one_change(book, [&](const BookAt& held) {
        EXPECT_EQ(read_book(held).orchard.bloom_observations.size(), 0U);
        RawBook other(book);
        EXPECT_THROW(other.run("INSERT INTO accession (name, kind) VALUES ('Red', 'cultivar')"),
                     std::runtime_error);
        add_entry(held, stage("2026-04-20"), testing::day("2026-06-01"));
        EXPECT_EQ(read_book(held).orchard.bloom_observations.size(), 1U);
        EXPECT_EQ(remembered_entries(held).size(), 1U);
    });
    EXPECT_EQ(notes(), "1");
}

TEST_F(OneChange, WhatIsThrownLeavesTheBookAsItWas) {
    const auto before = testing::bytes_of(book);
    EXPECT_THROW(in_one_change(book,
                               [&](const BookAt& held) {
                                   add_entry(held, stage("2026-04-20"), testing::day("2026-06-01"));
                                   throw std::runtime_error("stopped");
                               }),
                 std::runtime_error);
    EXPECT_EQ(testing::bytes_of(book), before);
    EXPECT_EQ(files(), std::vector<std::string>{"book.gpkg"});
}

TEST_F(OneChange, AChangeThatHasEndedIsNotUsedAnyMore) {
    BookAt kept;
    in_one_change(book, [&](const BookAt& held) { kept = held; });
    EXPECT_THROW(read_book(kept), std::logic_error);
}

TEST_F(OneChange, TwoWhoTakeTheSameNameAtOnceAreJudgedOneAfterTheOther) {
    constexpr int at_once = 4;
    std::vector<pid_t> children;
    for (int i = 0; i < at_once; ++i) {
        children.push_back(fork());
        if (children.back() == 0) {
            // Written where nobody has noted it before: what each reads decides.
            int code = 1;
            in_one_change(book, [&](const BookAt& held) {
                code = read_book(held).orchard.bloom_observations.empty() ? 0 : 1;
                if (code == 0) {
                    add_entry(held, stage("2026-04-20"), testing::day("2026-06-01"));
                }
            });
            _exit(code);
        }
    }
    int writers = 0;
    for (const auto child : children) {
        int status = 0;
        waitpid(child, &status, 0);
        writers += status == 0 ? 1 : 0;
    }
    EXPECT_EQ(writers, 1);
    EXPECT_EQ(notes(), "1");
}

// Counting

TEST_F(OneChange, ATriggerThatIgnoresRowsIsTold) {
    note("2026-04-19");
    RawBook(book).run(
        "CREATE TRIGGER t1 BEFORE INSERT ON bloom_observation BEGIN SELECT RAISE(IGNORE); END; "
        "CREATE TRIGGER t2 BEFORE INSERT ON weather_day BEGIN SELECT RAISE(IGNORE); END; "
        "CREATE TRIGGER t3 BEFORE UPDATE ON tree BEGIN SELECT RAISE(IGNORE); END; "
        "CREATE TRIGGER t4 BEFORE DELETE ON bloom_observation BEGIN SELECT RAISE(IGNORE); END; "
        "CREATE TRIGGER t5 BEFORE INSERT ON accession BEGIN SELECT RAISE(IGNORE); END");
    testing::add(book, "station", {"name", "elevation_m"}, {{{text("Ridge"), 300.0}, testing::at(1, 1)}});
    expect_swallowed([&] { note("2026-04-20"); });
    expect_swallowed([&] {
        write_weather(book, {{0, "Ridge", testing::day("2026-04-01"), Celsius{1}, Celsius{9}}}, true);
    });
    expect_swallowed([&] {
        BookChange change;
        change.edits.push_back({"tree", 1, "A1", {}, {{"remark", text("new")}}});
        apply_change(book, change);
    });
    expect_swallowed([&] { take_back(book, remembered_entries(book)); });
    expect_swallowed([&] {
        testing::add(book, "accession", {"name", "kind"}, {{{text("Red"), text("cultivar")}}});
    });
    EXPECT_EQ(notes(), "1");
}

// A constraint of the table itself needs no trigger to drop a row, or another row.
TEST_F(OneChange, AConstraintThatIgnoresOrReplacesRowsIsTold) {
    for (const auto* conflict : {"IGNORE", "REPLACE"}) {
        TearDown();
        SetUp();
        RawBook raw(book);
        const auto make = raw.text("SELECT sql FROM sqlite_master WHERE name = 'bloom_observation'");
        const auto with_constraint =
            make.substr(0, make.rfind(')')) + ", UNIQUE (tree) ON CONFLICT " + conflict + ")";
        raw.run("DROP TABLE bloom_observation; " + with_constraint);
        note("2026-04-19");
        expect_swallowed([&] { note("2026-04-20"); });
        EXPECT_EQ(RawBook(book).text("SELECT observed_on FROM bloom_observation"), "2026-04-19") << conflict;
    }
}

}  // namespace
}  // namespace pipward::book
