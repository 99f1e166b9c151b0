// SPDX-License-Identifier: MIT
#include "pipward/record/table.h"

#include <fmt/format.h>

namespace pipward {

std::string_view to_text(CellType type) {
    switch (type) {
        case CellType::whole:
            return "whole";
        case CellType::number:
            return "number";
        case CellType::day:
            return "day";
        case CellType::yes_no:
            return "yes_no";
        case CellType::text:
            break;
    }
    return "text";
}

std::string to_text(const Cell& cell) {
    struct Writer {
        std::string operator()(std::monostate) const { return {}; }
        std::string operator()(const std::string& text) const { return text; }
        std::string operator()(std::int64_t number) const { return fmt::format("{}", number); }
        std::string operator()(double number) const { return fmt::format("{}", number); }
        std::string operator()(Day day) const { return to_iso(day); }
        std::string operator()(bool yes) const { return yes ? "yes" : "no"; }
    };
    return std::visit(Writer{}, cell);
}

}  // namespace pipward
