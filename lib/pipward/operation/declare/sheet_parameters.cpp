// SPDX-License-Identifier: MIT
#include "pipward/operation/declare/detail/sheet_parameters.h"

#include <filesystem>

namespace pipward::operation::detail {

std::string orchard_name(const std::string& given, const BookName& book) {
    if (!given.empty() || book.location.starts_with("PG:")) {
        return given;
    }
    return std::filesystem::path(book.location).stem().string();
}

std::function<void(double)> walking(const Run& lent) {
    constexpr double walk_begins = 0.95;
    constexpr double walk_takes = 0.04;
    return [&lent](double share) { lent.step(walk_begins + walk_takes * share, say("Walking")); };
}

}  // namespace pipward::operation::detail
