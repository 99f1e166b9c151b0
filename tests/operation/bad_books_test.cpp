// SPDX-License-Identifier: MIT
// Every kind of bad book meets book-check: it is told, in words for people, nothing but an Error comes of it,
// and the file is as it was.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

#include "bad-books/kinds.h"
#include "operation/every_example.h"

namespace pipward::operation {
namespace {

using testing::BadKind;
using testing::SampleCopy;

/// What book-check says of the sample as it is.
const Findings& said_of_the_sample() {
    static const Findings findings = [] {
        const SampleCopy sample;
        const auto& check = *find_operation("book-check");
        return check.run(testing::form_of(sample, check.examples().front()), {}).findings;
    }();
    return findings;
}

bool is_said(const Finding& finding) {
    return finding.level != Level::notice &&
           std::ranges::find(said_of_the_sample(), finding) == said_of_the_sample().end();
}

class BadBooks : public ::testing::TestWithParam<BadKind> {
  protected:
    void SetUp() override {
        NEED_SAMPLE();
        (void)said_of_the_sample();
        sample_.emplace();
        GetParam().spoil(sample_->book());
    }
    /// What came of it: findings of the outcome or of the refusal.
    Findings run(const Operation& operation, const Example& example) {
        const bool is_file = std::filesystem::is_regular_file(sample_->book());
        const auto before = is_file ? sample_->bytes() : std::string{};
        try {
            return operation.run(testing::form_of(*sample_, example), {}).findings;
        } catch (const Error& error) {
            EXPECT_FALSE(error.findings().empty());
            EXPECT_TRUE(!is_file || sample_->bytes() == before)
                << operation.about().id << " changed the file";
            return error.findings();
        }
    }
    std::optional<SampleCopy> sample_;
};

TEST_P(BadBooks, AreToldByBookCheck) {
    const auto& check = *find_operation("book-check");
    const auto findings = run(check, check.examples().front());
    if (GetParam().verdict == testing::Verdict::told) {
        EXPECT_TRUE(std::ranges::any_of(findings, is_said));
    }
    for (const auto& finding : findings) {
        EXPECT_EQ(to_text(finding).find("sqlite3_"), std::string::npos) << to_text(finding);
        EXPECT_TRUE(!is_said(finding) || !finding.remedy.empty()) << to_text(finding);
    }
}

std::string name_of_kind(const ::testing::TestParamInfo<BadKind>& info) {
    std::string name = info.param.name;
    std::ranges::replace(name, '-', '_');
    return name;
}

INSTANTIATE_TEST_SUITE_P(Every, BadBooks, ::testing::ValuesIn(testing::bad_kinds()), name_of_kind);

TEST(BadBooksKinds, AreManyAndNamedOnce) {
    std::vector<std::string> names;
    std::ranges::transform(testing::bad_kinds(), std::back_inserter(names), &BadKind::name);
    std::ranges::sort(names);
    EXPECT_GE(names.size(), 60u);
    EXPECT_EQ(std::ranges::adjacent_find(names), names.end());
}

}  // namespace
}  // namespace pipward::operation
