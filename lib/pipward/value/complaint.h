// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <utility>

#include "pipward/value/finding.h"
#include "pipward/value/spoken.h"

/// Findings as operations make them.
namespace pipward::value {

/// An error in what was asked for: `key` is the parameter's name, `value` what was given for it.
inline Finding about_parameter(std::string key, std::string value, Sentence message, Sentence remedy) {
    return {Level::error, "", "", std::move(key), std::move(value), std::move(message), std::move(remedy)};
}

/// A finding about a table as a whole: row, field and value are empty.
inline Finding about_table(Level level, std::string table, Sentence message, Sentence remedy) {
    return {level, std::move(table), "", "", "", std::move(message), std::move(remedy)};
}

}  // namespace pipward::value
