// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "pipward/value/finding.h"
#include "pipward/value/plain_text.h"

/// Single cells of foreign tables, as people and other programs write them. Whatever the locale.
namespace pipward::intake {

/// Letters of ASCII only.
std::string lower_case(std::string_view text);

/// Nothing, in the ways in which people write it: empty, "-", "?", "n/a", "NA", "null", "none".
bool says_nothing(std::string_view text);

/// A number with a decimal point or a single decimal comma, and perhaps its unit behind it: "446,5 m".
std::optional<double> read_number(std::string_view text, std::string_view unit = {});

/// What is no value: a formula, or the error that a spreadsheet shows in its place. Nothing where it is fine;
/// `table`, `row` and `field` of the finding are left to the caller.
std::optional<Finding> formula_or_error(std::string_view text);

/// "1.200", "12,345,678": thousands, or three decimals?
bool may_have_thousands(std::string_view text);

/// A cell of our own sheets such that no spreadsheet takes it for a formula: text that begins as one gets an
/// apostrophe in front.
std::string harmless(const std::string& text);
/// Such an apostrophe taken off.
std::string_view without_apostrophe(std::string_view text);

/// An error about a cell, its text in one line of at most 60 letters.
Finding wrong_cell(std::string_view text, Sentence message, Sentence remedy);

}  // namespace pipward::intake
