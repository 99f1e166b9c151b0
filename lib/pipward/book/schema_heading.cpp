// SPDX-License-Identifier: MIT
// What people's own headings and words mean in the schema.
#include <algorithm>

#include "pipward/book/schema.h"

namespace pipward::book {
namespace {

template <class Matches>
const BookColumn* only_column(const BookTable& table, const Matches& matches) {
    const auto found = std::ranges::find_if(table.columns, matches);
    return std::ranges::count_if(table.columns, matches) == 1 ? &*found : nullptr;
}

template <class Values>
const typename Values::value_type* value_called(const Values& values, std::string_view text) {
    const auto wanted = field_word(text);
    auto found =
        std::ranges::find_if(values, [&](const auto& known) { return field_word(known.value) == wanted; });
    if (found == values.end()) {
        found = std::ranges::find_if(values,
                                     [&](const auto& known) { return is_called(known.known_as, wanted); });
    }
    return found == values.end() ? nullptr : &*found;
}

}  // namespace

const BookColumn* column_headed(const BookTable& table, std::string_view heading) {
    const auto wanted = heading_word(heading);
    if (wanted.empty()) {
        return nullptr;
    }
    if (const auto* named =
            only_column(table, [&](const BookColumn& column) { return field_word(column.name) == wanted; })) {
        return named;
    }
    if (const auto* labelled = only_column(
            table, [&](const BookColumn& column) { return field_word(column.label) == wanted; })) {
        return labelled;
    }
    return only_column(table, [&](const BookColumn& column) { return is_called(column.known_as, wanted); });
}

const Choice* choice_called(const FieldDomain& domain, std::string_view text) {
    return value_called(domain.choices, text);
}

std::string as_stored(const BookColumn& column, std::string_view text) {
    if (const auto* domain = find_domain(column.domain)) {
        const auto* choice = choice_called(*domain, text);
        return choice == nullptr ? std::string(text) : choice->value;
    }
    const auto* usual = value_called(column.usual, text);
    return usual == nullptr ? std::string(text) : usual->value;
}

}  // namespace pipward::book
