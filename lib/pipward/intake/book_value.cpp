// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/book_value.h"

#include <cmath>

#include "pipward/intake/cells.h"

namespace pipward::intake::detail {
namespace {

ReadValue wrong(Sentence why, Sentence remedy) {
    return {{}, Finding{Level::error, {}, {}, {}, {}, std::move(why), std::move(remedy)}};
}

ReadValue read_plain(const book::BookColumn& column, std::string_view text) {
    const auto elsewhere = [] {
        return say("Correct it in the layer, or map the field to another column with map.");
    };
    if (column.type == CellType::day) {
        const auto day = parse_iso_day(text);
        return day ? ReadValue{*day} : wrong(say("This is no day."), say("Write it as in 2026-04-12."));
    }
    const bool is_whole = column.type == CellType::whole;
    if (!is_whole && column.type != CellType::number) {
        return {std::string(text)};
    }
    const auto number = read_number(text, is_whole ? std::string_view{} : column.unit);
    if (is_whole && (!number || std::abs(*number) >= 1e15 || *number != std::floor(*number))) {
        return wrong(say("This is no integer."), elsewhere());
    }
    if (!number) {
        return wrong(say("This is no number."), elsewhere());
    }
    return {is_whole ? Cell{static_cast<std::int64_t>(*number)} : Cell{*number}};
}

}  // namespace

ReadValue read_value(const book::BookColumn& column, std::string_view text) {
    text = trimmed(text);
    if (says_nothing(text)) {
        return {};
    }
    auto read = read_plain(column, book::as_stored(column, text));
    if (auto against = read.wrong ? std::nullopt : book::check_cell(column, read.cell)) {
        return {{}, std::move(against)};
    }
    return read;
}

}  // namespace pipward::intake::detail
