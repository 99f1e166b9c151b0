// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/operation/passport.h"

namespace pipward::operation {

struct PassportLine {
    int line = 0;  ///< of the file, counted from 1
    Passport passport;
};

struct PassportFile {
    std::vector<PassportLine> lines;
    Findings findings;
};

/// Reads delimited text with descriptors as its header. Findings: errors where it is no such file or not
/// UTF-8; warnings for columns that the standard does not have, which are left out, and for lines that are
/// too long or have no name.
PassportFile read_passport_file(const std::string& text, const std::string& file);

/// Every descriptor as a column, in the order of the standard; commas, UTF-8, RFC 4180.
std::string passport_file(const std::vector<Passport>& passports);

}  // namespace pipward::operation
