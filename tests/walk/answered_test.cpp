// SPDX-License-Identifier: MIT
// A spring of the sample in which every task that the plan prints is answered in the book: it is then done.
#include <gtest/gtest.h>

#include <fmt/format.h>

#include <map>
#include <regex>
#include <string>
#include <vector>

#include "walking.h"

namespace pipward::testing {
namespace {

/// A task of the plan, as the tables have it.
struct Task {
    std::string work;
    std::string whose;  ///< the donor, the lot, or the cross
    std::string tree;
    std::string flowers;
    std::string store;
    std::string pollen;

    std::string name() const { return work + " " + whose + " " + tree; }
};

std::vector<Task> due_tasks(const std::string& book, const std::string& today) {
    const auto plan = run("season-plan", {{"book", book}, {"as-of", today}, {"keep", "no"}});
    std::vector<Task> due;
    const auto& pollen = table_of(plan, "pollen_task");
    for (const auto& row : pollen.rows) {
        if (text_of(pollen, row, "do_from") <= today) {
            const auto lot = text_of(pollen, row, "lot");
            due.push_back({text_of(pollen, row, "work"),
                           lot.empty() ? text_of(pollen, row, "donor") : lot,
                           text_of(pollen, row, "tree"),
                           text_of(pollen, row, "flowers"),
                           text_of(pollen, row, "store"),
                           {}});
        }
    }
    const auto& field = table_of(plan, "field_task");
    for (const auto& row : field.rows) {
        if (text_of(field, row, "do_from") <= today) {
            due.push_back({text_of(field, row, "work"),
                           text_of(field, row, "cross"),
                           text_of(field, row, "tree"),
                           text_of(field, row, "flowers"),
                           {},
                           text_of(field, row, "pollen")});
        }
    }
    return due;
}

/// Writes down that the work was done today as it was asked for.
class Answers {
  public:
    explicit Answers(std::string book) : book_(std::move(book)) {}

    void answer(const Task& task, const std::string& today) {
        operation::Form form{{"book", book_}, {"as-of", today}};
        if (task.work == "collect") {
            form.insert({{"code", fmt::format("P-{}", ++number_)},
                         {"donor", task.whose},
                         {"collected-on", today},
                         {"flowers", task.flowers},
                         {"store", task.store}});
            run("record-pollen-lot", form);
        } else if (task.work == "test lot") {
            form.insert({{"lot", task.whose}, {"grains", "200"}, {"germinated", "150"}});
            run("record-pollen-test", form);
        } else if (task.work == "cut branch") {
            form.insert({{"task", "cut_branch"}, {"tree", task.tree}});
            run("record-branch-work", form);
        } else if (task.work == "pollinate") {
            pollinate(task, form);
        } else {
            form.insert({{"task", task.work}, {"tree", task.tree}, {"cross", task.whose}});
            run("record-branch-work", form);
        }
    }

  private:
    void pollinate(const Task& task, operation::Form form) {
        form.insert({{"tag", fmt::format("{}-t{}", task.whose, ++number_)},
                     {"cross", task.whose},
                     {"tree", task.tree},
                     {"flowers", task.flowers}});
        std::smatch lot;
        if (std::regex_search(task.pollen, lot, std::regex("lot (\\S+?)(,|;| |$)"))) {
            form.insert({"lot", lot[1]});
        }
        run("record-pollination", form);
    }

    std::string book_;
    int number_ = 0;
};

TEST(ASpringThatIsAnswered, EveryTaskThatWasDoneIsOutOfTheList) {
    const Scratch scratch;
    const auto book = scratch.sample();
    Answers answers(book);
    int answered = 0;
    for (const std::string today : {"2026-04-02", "2026-04-20", "2026-04-27", "2026-05-02", "2026-05-08"}) {
        std::map<std::string, std::string> done;
        for (const auto& task : due_tasks(book, today)) {
            try {
                answers.answer(task, today);
                done[task.name()] += task.flowers + " " + task.store + task.pollen + "; ";
                ++answered;
            } catch (const Error& error) {
                ADD_FAILURE() << today << ": " << task.name() << " of " << task.flowers
                              << " cannot be answered: " << error.what();
            }
        }
        for (const auto& task : due_tasks(book, today)) {
            EXPECT_FALSE(done.contains(task.name()))
                << today << ": " << done[task.name()] << task.name()
                << " is asked for again: " << task.flowers << " " << task.pollen;
        }
    }
    EXPECT_GT(answered, 60);
}

}  // namespace
}  // namespace pipward::testing
