// SPDX-License-Identifier: MIT
#include "pipward/value/finding.h"

#include <algorithm>
#include <map>
#include <set>

#include "pipward/value/utf8.h"

namespace pipward::value {
namespace {

std::string joined(const Findings& findings) {
    std::string text;
    for (const auto& finding : findings) {
        text += (text.empty() ? "" : "\n") + to_text(finding);
    }
    return text;
}

// What stands in a book may be of any length and hold anything; a line of words must stay one.
constexpr std::size_t longest_place = 400;
constexpr std::size_t longest_value = 200;
constexpr std::size_t longest_sentence = 1000;

std::string where_of(const Finding& finding, const Wording& wording) {
    auto where = one_line(finding.table, longest_place);
    if (!finding.row.empty()) {
        where += (where.empty() ? "" : " ") + one_line(finding.row.in(wording), longest_value);
    }
    if (!finding.field.empty()) {
        where += (where.empty() ? "" : ", ") + one_line(finding.field, longest_place);
        if (!finding.value.empty()) {
            where += " = " + one_line(finding.value, longest_value);
        }
    }
    return where;
}

constexpr std::size_t few_rows = 3;

/// Everything but the row.
std::string alike(const Finding& finding) {
    std::string key;
    for (const std::string* part :
         {&finding.table, &finding.field, &finding.value, &finding.message.text(), &finding.remedy.text()}) {
        key += *part + '\0';
    }
    return key + std::string(to_text(finding.level));
}

Sentence rows_text(const std::vector<Sentence>& rows) {
    const std::vector first(rows.begin(), rows.begin() + few_rows);
    return say("{} and {} more", joined(first, verbatim(", ")), rows.size() - few_rows);
}

/// What reads right already stays a sentence: its form tells which findings are of one kind.
Sentence in_words(Sentence sentence, const Wording& wording) {
    auto text = sentence.in(wording);
    return text == sentence.text() ? std::move(sentence) : verbatim(std::move(text));
}

}  // namespace

std::string_view to_text(Level level) {
    switch (level) {
        case Level::notice:
            return "notice";
        case Level::warning:
            return "warning";
        case Level::error:
            break;
    }
    return "error";
}

Sentence level_words(Level level) {
    switch (level) {
        case Level::notice:
            return say("notice");
        case Level::warning:
            return say("warning");
        case Level::error:
            break;
    }
    return say("error");
}

Findings told_together(const Findings& findings) {
    std::map<std::string, std::vector<Sentence>> rows;
    for (const auto& finding : findings) {
        rows[alike(finding)].push_back(finding.row);
    }
    Findings told;
    std::set<std::string> spoken;
    for (const auto& finding : findings) {
        const auto key = alike(finding);
        const bool many = rows[key].size() > few_rows && !finding.row.empty();
        if (!many || spoken.insert(key).second) {
            told.push_back(finding);
            told.back().row = many ? RowWords(rows_text(rows[key])) : finding.row;
        }
    }
    return told;
}

Findings spoken(Findings findings, const Wording& wording) {
    for (auto& finding : findings) {
        finding.row = finding.row.in(wording);
        finding.message = in_words(std::move(finding.message), wording);
        finding.remedy = verbatim(finding.remedy.in(wording));
    }
    return findings;
}

bool has_errors(const Findings& findings) {
    return std::ranges::any_of(findings, [](const Finding& f) { return f.level == Level::error; });
}

std::string to_text(const Finding& finding, const Wording& wording) {
    auto text = level_words(finding.level).in(wording) + ": ";
    if (const auto where = where_of(finding, wording); !where.empty()) {
        text += where + ": ";
    }
    text += one_line(finding.message.in(wording), longest_sentence);
    if (!finding.remedy.empty()) {
        text += " " + one_line(finding.remedy.in(wording), longest_sentence);
    }
    return text;
}

Error::Error(Trouble trouble, Findings findings)
    : std::runtime_error(joined(findings)), trouble_(trouble), findings_(std::move(findings)) {}

Error::Error(Trouble trouble, Finding finding) : Error(trouble, Findings{std::move(finding)}) {}

}  // namespace pipward::value
