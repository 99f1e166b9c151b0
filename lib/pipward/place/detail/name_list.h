// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "pipward/place/detail/query_readings.h"

/// Inside of the room: the different names that a field has, as of blocks, rows and rootstocks: few, each for
/// many trees.
namespace pipward::place::detail {

class NameList {
  public:
    /// The name's number; the same for the same name. 0 is for fields that are empty.
    std::uint32_t add(const std::string& name);

    /// Another way to write a name, as the code that labels begin with.
    void add_code(std::uint32_t name, const std::string& code);

    /// Every way in which the name of that number is written.
    std::set<std::string> written(std::uint32_t name) const;

    /// The names that the tokens may mean.
    Values called(std::span<const Token> tokens, Effort effort) const;
    /// Those whose parts are just these; for rows, whose "3" must not be taken for the "30" beside it. Roman
    /// numerals are the same as figures.
    Values called_exactly(std::span<const Token> tokens) const;

  private:
    struct Name {
        std::string parts;     // "old orchard 2", without words such as "block"
        std::string key;       // "oldorchard2"
        std::string initials;  // "oo2"
        std::string code{};    // "up"
    };

    float likeness(const Name& name, std::string_view key, Effort effort) const;

    std::vector<Name> names_;  // number 1 and on
    std::unordered_map<std::string, std::uint32_t> by_name_;
    std::unordered_map<std::string, std::uint32_t> by_parts_;
};

/// "up 3": the tokens as parts_key() has them.
std::string parts_of_tokens(std::span<const Token> tokens, std::string_view between = " ");

}  // namespace pipward::place::detail
