// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/intake/remark.h"
#include "pipward/value/finding.h"

/// What every file that comes in goes through first: bytes -> encoding -> cells with their lines -> the line
/// that heads the columns. Nothing is guessed in silence: each finding names file and line.
namespace pipward::intake {

/// One line's cells: UTF-8, without blanks around them.
struct Record {
    int line = 0;  ///< of its first character, counted from 1; of a workbook, the spreadsheet's own number
    std::vector<std::string> fields;  ///< may be fewer or more than the heading's

    /// Empty where the line is too short.
    const std::string& at(std::size_t field) const;
};

/// A file, understood as far as cells.
struct Sheet {
    std::string file;             ///< how findings name it
    std::vector<Record> records;  ///< the heading first; lines without any text left out
    Findings findings{};          ///< how it was understood; errors where it cannot be

    std::span<const Record> rows() const;  ///< those under the heading
    /// There are no rows to look at then.
    bool is_refused() const { return has_errors(findings); }
};

/// Whether a cell is a heading that somebody is looking for.
using KnowsHeading = std::function<bool(std::string_view)>;

/// Reads comma, semicolon or tab separated text (RFC 4180: quoted fields may hold delimiters, doubled quotes
/// and line ends) in UTF-8, UTF-16 or Windows-1252, or the one sheet of a workbook (XLSX, ODS). The delimiter
/// is the commonest in the heading. Empty lines and lines that begin with # before the heading are left out;
/// so is a title above it: a line with at most half as many cells, none of them known, above one that has a
/// known heading. An encoding other than UTF-8 and a title are told as notes or warnings.
Sheet read_sheet(std::string_view bytes, std::string file, const KnowsHeading& known,
                 std::string_view wanted = {});

/// Text of delimited cells without any of that: UTF-8, and its first line is the heading.
Sheet split_text(std::string_view text, std::string file);

/// A cell as it is written into such a file: quoted where it would be read otherwise.
std::string quoted_cell(const std::string& text);

/// A finding about a file, or a line of it where `line` is above zero.
Finding about_file(const std::string& file, int line, Remark remark);

}  // namespace pipward::intake
