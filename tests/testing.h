// SPDX-License-Identifier: MIT
#pragma once

#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include "paths.h"

/// Helpers shared by the tests: reading files of numbers.
namespace pipward::testing {

/// Split at white space; comment and empty lines left out.
using Rows = std::vector<std::vector<std::string>>;

inline Rows rows_in(const std::string& path) {
    std::ifstream file(path);
    if (!file) {
        throw std::runtime_error("no file " + path);
    }
    Rows rows;
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

/// Of tests/oracles/NAME: what somebody else published.
inline Rows oracle_rows(const std::string& name) {
    return rows_in(oracle_file(name));
}

/// Of tests/regression/NAME: what we calculated ourselves.
inline Rows regression_rows(const std::string& name) {
    return rows_in(regression_file(name));
}

/// Of both files of that name: a source, and what we calculated on from it.
inline Rows all_rows(const std::string& name) {
    auto rows = oracle_rows(name);
    for (auto& row : regression_rows(name)) {
        rows.push_back(std::move(row));
    }
    return rows;
}

}  // namespace pipward::testing
