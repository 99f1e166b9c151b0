// SPDX-License-Identifier: MIT
#include "pipward/operation/sheet_parameters.h"

#include <filesystem>

namespace pipward::operation {

std::string orchard_name(const std::string& given, const BookName& book) {
    if (!given.empty() || book.location.starts_with("PG:")) {
        return given;
    }
    return std::filesystem::path(book.location).stem().string();
}

}  // namespace pipward::operation
