// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/intake/passport.h"

namespace pipward::intake {

/// One accession of a file.
struct PassportLine {
    int line = 0;       ///< of the file, counted from 1
    Passport passport;  ///< what the line tells; blank cells are left out
};

/// A file of passports as it was read.
struct PassportFile {
    std::vector<PassportLine> lines;  ///< in the file's order
    Findings findings;                ///< with their lines
};

/// Reads a table with descriptors as its heading. Findings: errors where it is no such file; warnings for
/// columns that the standard does not have, which are left out, and for lines that are too long or have no
/// name.
PassportFile read_passport_file(std::string_view bytes, const std::string& file);

/// Every descriptor as a column, in the order of the standard; commas, UTF-8, RFC 4180.
std::string passport_file(const std::vector<Passport>& passports);

}  // namespace pipward::intake
