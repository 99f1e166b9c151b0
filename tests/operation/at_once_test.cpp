// SPDX-License-Identifier: MIT
// Several programs that do the same to one book at the same moment.
#include <gtest/gtest.h>
#include <sys/wait.h>

#include <array>
#include <chrono>
#include <functional>
#include <set>
#include <thread>

#include "operation/sample_copy.h"
#include "pipward/book/entry.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

/// How many of the programs succeed.
int done_at_once(int programs, const std::function<void()>& work) {
    std::vector<pid_t> children;
    for (int i = 0; i < programs; ++i) {
        children.push_back(fork());
        if (children.back() == 0) {
            try {
                work();
                _exit(0);
            } catch (const std::exception&) {
                _exit(1);
            }
        }
    }
    int done = 0;
    for (const auto child : children) {
        int status = 0;
        waitpid(child, &status, 0);
        done += status == 0 ? 1 : 0;
    }
    return done;
}

/// Another program that holds the book's lock for a while.
class LockHolder {
  public:
    explicit LockHolder(const std::string& location) {
        std::array<int, 2> ends{};
        EXPECT_EQ(pipe(ends.data()), 0);
        child_ = fork();
        if (child_ == 0) {
            book::in_one_change(location, [&](const book::BookAt&) {
                EXPECT_EQ(write(ends[1], "x", 1), 1);
                std::this_thread::sleep_for(std::chrono::milliseconds(1500));
            });
            _exit(0);
        }
        char begun = 0;
        EXPECT_EQ(read(ends[0], &begun, 1), 1);
    }
    ~LockHolder() { waitpid(child_, nullptr, 0); }
    LockHolder(const LockHolder&) = delete;
    LockHolder& operator=(const LockHolder&) = delete;

  private:
    pid_t child_ = 0;
};

TEST(AtOnce, ASheetImportedTwiceStandsInTheBookOnce) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto before = book::read_book(sample.book()).orchard.bloom_observations.size();
    const auto sheet =
        sample.put("sheet.csv", "tree,observed_on,bbch\nLO-04-07,2026-05-12,61\nLO-04-08,2026-05-13,62\n");
    const Form form{
        {"book", sample.book()}, {"records-file", sheet}, {"write", "yes"}, {"as-of", "2026-05-16"}};
    EXPECT_EQ(done_at_once(3, [&] { find_operation("record-import")->run(form, {}); }), 3);
    EXPECT_EQ(book::read_book(sample.book()).orchard.bloom_observations.size(), before + 2);
}

TEST(AtOnce, SeedlingsAreAssignedToTheirPlacesOnce) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto before = book::read_book(sample.book()).orchard.trees.size();
    const Form form{{"book", sample.book()},
                    {"block", "Upper"},
                    {"crosses", "24-01=2"},
                    {"write", "yes"},
                    {"as-of", "2026-03-20"}};
    const int done = done_at_once(3, [&] { find_operation("row-assign")->run(form, {}); });
    const auto orchard = book::read_book(sample.book()).orchard;
    EXPECT_EQ(orchard.trees.size(), before + static_cast<std::size_t>(2 * done));
    std::set<std::string> places;
    for (const auto& tree : orchard.trees) {
        if (tree.block && tree.row && tree.position && !tree.removed_on) {
            EXPECT_TRUE(
                places.insert(*tree.block + "/" + *tree.row + "/" + std::to_string(*tree.position)).second)
                << tree.label;
        }
    }
}

TEST(AtOnce, TwoWhoUndoTheLastRecordDoNotUndoTheOneBeforeIt) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    for (const auto* stage : {"60", "61"}) {
        find_operation("record-bloom")
            ->run({{"book", sample.book()}, {"tree", "LO-04-07"}, {"bbch", stage}, {"as-of", "2026-05-12"}},
                  {});
    }
    // Both see the last record before either may write.
    const LockHolder holder(sample.book());
    const Form undo{{"book", sample.book()}};
    EXPECT_EQ(done_at_once(2, [&] { find_operation("record-undo")->run(undo, {}); }), 1);
    EXPECT_EQ(book::remembered_entries(sample.book()).size(), 1U);
}

}  // namespace
}  // namespace pipward::operation
