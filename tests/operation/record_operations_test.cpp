// SPDX-License-Identifier: MIT
// The operations that write single entries, each on a copy of the sample.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <set>

#include "operation/sample_copy.h"
#include "pipward/book/entry.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

Form example_of(const Operation& operation, const testing::SampleCopy& sample) {
    Form form;
    for (const auto& [key, value] : operation.examples().front().values) {
        form[key] = value == "BOOK" ? sample.book() : value;
    }
    return form;
}

std::vector<const Operation*> recording() {
    const std::set<std::string> others{"record-template", "record-import", "record-undo"};
    std::vector<const Operation*> found;
    for (const auto& operation : operations()) {
        if (operation->about().group == "Records" && !others.contains(operation->about().id)) {
            found.push_back(operation.get());
        }
    }
    return found;
}

TEST(RecordOperations, ThereIsOneForEveryTableThatTakesEntriesAndOneThatCompletesSeedLots) {
    EXPECT_EQ(recording().size(), book::entry_tables().size() + 1);
}

TEST(RecordOperations, EachWritesOneRowThatIsTakenBackByName) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    std::set<std::string> tables;
    for (const auto* operation : recording()) {
        const auto outcome = operation->run(example_of(*operation, sample), {});
        const auto row = book::remembered_entries(sample.book()).at(0);
        EXPECT_NE(outcome.summary.text().find(book::name_of(row)), std::string::npos)
            << outcome.summary.text();
        EXPECT_TRUE(outcome.findings.empty()) << operation->about().id;
        tables.insert(row.table);
        find_operation("record-undo")->run({{"book", sample.book()}, {"entry", book::name_of(row)}}, {});
        EXPECT_TRUE(book::remembered_entries(sample.book()).empty());
    }
    EXPECT_EQ(tables.size(), book::entry_tables().size());
}

TEST(RecordOperations, TakeBackTheLastFirstAndThenTheOneBefore) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const Form undo{{"book", sample.book()}};
    const auto& bloom = *find_operation("record-bloom");
    const auto before = book::read_book(sample.book()).orchard.bloom_observations.size();
    for (const auto* stage : {"60", "61"}) {
        bloom.run({{"book", sample.book()}, {"tree", "LO-04-07"}, {"bbch", stage}, {"as-of", "2026-05-12"}},
                  {});
    }
    EXPECT_NE(find_operation("record-undo")->run(undo, {}).summary.text().find("stage 61"),
              std::string::npos);
    EXPECT_NE(find_operation("record-undo")->run(undo, {}).summary.text().find("stage 60"),
              std::string::npos);
    EXPECT_EQ(book::read_book(sample.book()).orchard.bloom_observations.size(), before);
}

TEST(RecordOperations, AnEntryThatTheBookDoesNotRememberIsToldWithTheLatest) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto& bloom = *find_operation("record-bloom");
    bloom.run(example_of(bloom, sample), {});
    const auto latest = book::read_book(sample.book()).orchard.bloom_observations.back().fid;
    try {
        find_operation("record-undo")->run({{"book", sample.book()}, {"entry", "bloom_observation/1"}}, {});
        FAIL() << "it took something back";
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::input);
        EXPECT_NE(error.findings().at(0).remedy.text().find(fmt::format("bloom_observation/{}", latest)),
                  std::string::npos);
    }
}

TEST(RecordOperations, AStageThatTheScaleLacksIsAWrongCallWithTheNearest) {
    const auto findings =
        find_operation("record-bloom")->check({{"book", "b"}, {"bbch", "66"}, {"as-of", "2026-05-12"}});
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_NE(findings[0].message.text().find("Did you mean '65'?"), std::string::npos);
}

}  // namespace
}  // namespace pipward::operation
