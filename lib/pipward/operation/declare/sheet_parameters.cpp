// SPDX-License-Identifier: MIT
#include "pipward/operation/declare/detail/sheet_parameters.h"

#include <filesystem>

#include "pipward/book/book.h"

namespace pipward::operation::detail {

std::string orchard_name(const std::string& given, const BookName& book) {
    if (!given.empty() || book::is_on_server(book.location)) {
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
