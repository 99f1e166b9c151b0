// SPDX-License-Identifier: MIT
// A run that is stopped has written nothing; a run that has written something does not call itself stopped.
#include <gtest/gtest.h>

#include "operation/sample_copy.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

Form form_of(const Example& example, const testing::SampleCopy& sample) {
    Form form;
    for (const auto& [key, value] : example.values) {
        form[key] = value == "BOOK"   ? sample.book()
                    : value == "FILE" ? sample.put("file.csv", example.file)
                                      : value;
    }
    return form;
}

bool writes(const Operation& operation, const Form& form) {
    const auto asked = form.find("write");
    return (asked != form.end() && asked->second == "yes") || operation.about().group == "Records";
}

/// Stopped when it asks for the `number`th time. Whether it was.
bool is_stopped(const Operation& operation, const Form& form, int number) {
    Run lent;
    lent.cancelled = [&] { return --number <= 0; };
    try {
        operation.run(form, lent);
        return false;
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::cancelled) << error.what();
        return true;
    }
}

TEST(Stop, LeavesNothingWrittenWhereverItComes) {
    NEED_SAMPLE();
    int stops = 0;
    for (const auto& operation : operations()) {
        for (const auto& example : operation->examples()) {
            const testing::SampleCopy sample;
            const auto form = form_of(example, sample);
            if (!writes(*operation, form) || form.contains("out")) {
                continue;
            }
            const auto before = sample.bytes();
            int number = 1;
            while (is_stopped(*operation, form, number)) {
                EXPECT_EQ(sample.bytes(), before) << operation->about().id << ", stop " << number;
                ++number;
                ++stops;
            }
            EXPECT_GT(number, 1) << operation->about().id << " never asks whether to stop";
        }
    }
    EXPECT_GT(stops, 20);
}

}  // namespace
}  // namespace pipward::operation
