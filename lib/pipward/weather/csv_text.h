// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "pipward/value/finding.h"

namespace pipward::weather {

struct CsvRecord {
    int line = 0;  ///< of its first character, counted from 1
    std::vector<std::string> fields;
};

struct CsvText {
    char delimiter = ',';
    std::vector<CsvRecord> records;  ///< the header first
    Findings findings;               ///< an error where the text is not CSV at all
};

/// Splits delimited text after RFC 4180: quoted fields may hold delimiters, doubled quotes and line ends.
/// The delimiter (comma, semicolon or tab) is the commonest in the first line. A byte-order mark, empty lines
/// and lines that begin with # before the header are left out; spaces around a field are taken off.
CsvText read_csv(std::string_view text, std::string_view file);

}  // namespace pipward::weather
