// SPDX-License-Identifier: MIT
#include "pipward/seed/detail/seedling_numbers.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

namespace pipward::seed::detail {
namespace {

/// The digits after "24-01-"; empty where the name is no seedling of the cross.
std::string_view digits_in(std::string_view name, std::string_view cross) {
    if (!name.starts_with(cross) || name.size() <= cross.size() + 1 || name[cross.size()] != '-') {
        return {};
    }
    const auto digits = name.substr(cross.size() + 1);
    return digits.size() < 9 && digits.find_first_not_of("0123456789") == digits.npos ? digits
                                                                                      : std::string_view{};
}

}  // namespace

SeedlingNumbers::SeedlingNumbers(const Orchard& orchard, std::string cross) : cross_(std::move(cross)) {
    bool found = false;
    const auto take = [&](std::string_view name) {
        const auto digits = digits_in(name, cross_);
        int number = 0;
        if (!digits.empty() &&
            std::from_chars(digits.data(), digits.data() + digits.size(), number).ec == std::errc{}) {
            last_ = std::max(last_, number);
            digits_ = found ? std::max(digits_, digits.size()) : digits.size();
            found = true;
        }
    };
    for (const auto& accession : orchard.accessions) {
        take(accession.name);
    }
    for (const auto& tree : orchard.trees) {
        take(tree.label);
    }
}

std::string SeedlingNumbers::next() {
    return fmt::format("{}-{:0{}}", cross_, ++last_, digits_);
}

}  // namespace pipward::seed::detail
