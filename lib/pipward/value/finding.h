// SPDX-License-Identifier: MIT
#pragma once

#include <stdexcept>
#include <string>
#include <vector>

#include "pipward/value/sentence.h"
#include "pipward/value/spoken.h"

namespace pipward::value {

/// How much a finding weighs, rising.
enum class Level {
    notice,   ///< explains a result
    warning,  ///< weakens a result
    error,    ///< prevents a result
};

/// "notice", "warning" or "error": for scripts, in every language.
std::string_view to_text(Level level);
/// The same for people.
Sentence level_words(Level level);

/// Which row: its key, the same in every language ("Larkfold Red", "fid 12"), or words ("line 3").
class RowWords : public Sentence {
  public:
    RowWords() = default;
    /// Words that a host may say in its language: say("line {}", 3).
    RowWords(Sentence words) : Sentence(std::move(words)) {}  // NOLINT(google-explicit-constructor)
    /// A key, taken as it stands.
    RowWords(std::string key) : Sentence(verbatim(std::move(key))) {}  // NOLINT(google-explicit-constructor)
    /// The same from a literal.
    RowWords(const char* key) : RowWords(std::string(key)) {}  // NOLINT(google-explicit-constructor)
};

/// Something noticed in what was read. An error prevents a result, a warning weakens it, a note explains it.
struct Finding {
    Level level = Level::error;  ///< errors alone stop an operation
    std::string table;           ///< where: table or file; empty when it concerns the whole book
    RowWords row;                ///< which row
    std::string field;           ///< which column
    std::string value;           ///< what stands there
    Sentence message;            ///< what is wrong
    Sentence remedy;             ///< what to do about it

    bool operator==(const Finding&) const = default;
};

using Findings = std::vector<Finding>;  ///< in the order in which they were noticed

/// Whether any of them is an error.
bool has_errors(const Findings& findings);
/// "error: bloom_observation fid 12, bbch = 66: ... Remedy." Always one line of a length that can be read,
/// whatever stands in the book; the fields keep it whole.
std::string to_text(const Finding& finding, const Wording& wording = in_english);

/// For people: where more than three findings differ in nothing but their row, one stands for all, at the
/// place of the first: "A-01, A-02, A-03 and 31 more".
Findings told_together(const Findings& findings);

/// The findings with their sentences in the words of a host.
Findings spoken(Findings findings, const Wording& wording);

/// Why something could not be done. The console's exit codes follow these kinds.
enum class Trouble {
    input,      ///< the input has findings that prevent the result: all of them are carried
    usage,      ///< the request itself is wrong
    access,     ///< something could not be read or written
    cancelled,  ///< the user stopped it
};

/// The library's one exception: every finding that led to it, at least one.
class Error : public std::runtime_error {
  public:
    /// At least one finding; what() is the English text of all, one line each.
    Error(Trouble trouble, Findings findings);
    /// The same with one finding.
    Error(Trouble trouble, Finding finding);

    Trouble trouble() const { return trouble_; }            ///< what kind of failure
    const Findings& findings() const { return findings_; }  ///< never empty

  private:
    Trouble trouble_;
    Findings findings_;
};

}  // namespace pipward::value
