// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/operation/operation.h"

/// What the command line asks for.
namespace pipward::console {

enum class Format { table, json, csv };

/// Options that every operation has in this host.
struct Output {
    Format format = Format::table;
    std::string table{};  ///< only this one; empty for all
    std::string out{};    ///< folder for made files; empty: they are not kept
    bool quiet = false;
    bool wide = false;          ///< every table and column, however wide
    bool all_findings = false;  ///< each by itself, not one for all of its kind
};

enum class Wish { run, help, operation_help, version, list, reference, schema, catalogue };

struct Call {
    Wish wish = Wish::run;
    const operation::Operation* operation = nullptr;
    operation::Form form{};
    Output output{};
};

/// Reads the words after the program's name. `today` stands in where the user gave no day.
/// Throws Error (usage) with everything wrong.
Call read_call(const std::vector<std::string>& words, const std::string& today);

/// The parameter that is given without its key: the first that must be given and names a place; null where
/// none.
const operation::Parameter* positional_of(const operation::Operation& operation);

}  // namespace pipward::console
