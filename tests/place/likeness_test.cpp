// SPDX-License-Identifier: MIT
#include "pipward/place/detail/likeness.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "pipward/place/detail/query_text.h"

namespace pipward::place {
namespace {

// The plain table of distances with neighbours swapped, filled cell by cell; `whole` or the best part of b.
int table_slips(const std::string& a, const std::string& b, bool whole) {
    std::vector<std::vector<int>> d(a.size() + 1, std::vector<int>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i) {
        for (std::size_t j = 0; j <= b.size(); ++j) {
            if (i == 0 || j == 0) {
                d[i][j] = i == 0 ? (whole ? static_cast<int>(j) : 0) : static_cast<int>(i);
                continue;
            }
            d[i][j] = std::min(
                {d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) {
                d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
            }
        }
    }
    return whole ? d[a.size()].back() : *std::ranges::min_element(d[a.size()]);
}

std::vector<std::string> words_over(const std::string& letters, std::size_t longest) {
    std::vector<std::string> all{""};
    for (std::size_t start = 0; all.back().size() < longest;) {
        const auto end = all.size();
        for (; start < end; ++start) {
            for (const char c : letters) {
                all.push_back(all[start] + c);
            }
        }
    }
    return all;
}

TEST(Likeness, CountsSlipsAsTextbooksDo) {
    EXPECT_EQ(detail::Likeness("kitten").slips_in_all("sitting"), 3);
    EXPECT_EQ(detail::Likeness("ca").slips_in_all("ac"), 1);   // a swap
    EXPECT_EQ(detail::Likeness("ca").slips_in_all("abc"), 3);  // no letter is touched twice
    EXPECT_EQ(detail::Likeness("same").slips_in_all("same"), 0);
}

TEST(Likeness, AgreesWithThePlainTableOnEveryShortWord) {
    const auto words = words_over("abc", 5);
    for (const auto& query : words_over("abc", 4)) {
        if (query.empty()) {
            continue;
        }
        const detail::Likeness likeness(query);
        for (const auto& name : words) {
            ASSERT_EQ(likeness.slips_in_all(name), table_slips(query, name, true)) << query << " " << name;
            ASSERT_EQ(likeness.slips_in_part(name), table_slips(query, name, false)) << query << " " << name;
        }
    }
}

TEST(Likeness, AgreesWithThePlainTableAtFullLength) {
    std::string query;
    for (int i = 0; i < 64; ++i) {
        query += static_cast<char>('a' + i * 7 % 23);
    }
    auto name = "xx" + query.substr(0, 20) + query.substr(22) + "yy";
    std::swap(name[40], name[41]);
    EXPECT_EQ(detail::Likeness(query).slips_in_all(name), table_slips(query, name, true));
    EXPECT_EQ(detail::Likeness(query).slips_in_part(name), table_slips(query, name, false));
}

TEST(Letters, NeverRuleOutANameThatIsNearEnough) {
    const auto words = words_over("a1b", 5);
    for (const auto& query : words_over("a1b", 4)) {
        for (const auto& name : words) {
            ASSERT_LE(detail::LettersSought(query).lacking(detail::letters_of(name)),
                      table_slips(query, name, false))
                << query << " " << name;
        }
    }
}

TEST(FoldedText, MakesCaseAccentsBlanksAndDashesAlike) {
    EXPECT_EQ(detail::folded_text("  Été \t d’Or–2 "), "ete d'or-2");
    EXPECT_EQ(detail::folded_text("GRÖSSE"), detail::folded_text("größe"));
    EXPECT_EQ(detail::folded_text("e\xCC\x81t\xC3\xA9"),
              "ete");  // an accent of its own, and one within the letter
    EXPECT_EQ(detail::folded_text("Яблоко"), "яблоко");
    EXPECT_EQ(detail::folded_text("A×B №3"), "axb no3");
}

TEST(FoldedText, KeepsBytesThatAreNoLetters) {
    EXPECT_EQ(detail::folded_text("\xFF\xC3"), "\xFF\xC3");
    EXPECT_EQ(detail::folded_text("\xF0\x9F\x8D\x8E"), "\xF0\x9F\x8D\x8E");
    EXPECT_EQ(detail::folded_text(""), "");
}

TEST(NameParts, SplitWhereLettersMeetDigitsAndDropLeadingZeros) {
    EXPECT_EQ(detail::name_parts("up-03/12"), (std::vector<std::string>{"up", "3", "12"}));
    EXPECT_EQ(detail::name_parts("b312 000"), (std::vector<std::string>{"b", "312", "0"}));
    EXPECT_TRUE(detail::name_parts("-- ").empty());
}

}  // namespace
}  // namespace pipward::place
