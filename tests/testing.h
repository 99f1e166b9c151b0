// SPDX-License-Identifier: MIT
#pragma once

#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

#include "paths.h"

/// Helpers shared by the tests: reading oracle files.
namespace pipward::testing {

/// The rows of tests/oracles/NAME: split at white space, comment and empty lines left out.
inline std::vector<std::vector<std::string>> oracle_rows(const std::string& name) {
    std::ifstream file(oracle_file(name));
    if (!file) {
        throw std::runtime_error("no oracle file " + name);
    }
    std::vector<std::vector<std::string>> rows;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line.front() == '#') {
            continue;
        }
        std::istringstream words(line);
        std::vector<std::string> row;
        for (std::string word; words >> word;) {
            row.push_back(word);
        }
        rows.push_back(row);
    }
    return rows;
}

}  // namespace pipward::testing
