// SPDX-License-Identifier: MIT
#include "pipward/intake/record_explained.h"

#include <fmt/format.h>

#include <vector>

#include "pipward/book/schema_words.h"

namespace pipward::intake {
namespace {

std::vector<Sentence> general_rules(const std::string& sheet) {
    return {say("One record per line. Lines that were not filled in are skipped."),
            say("Dates as in 2026-05-12. Decimals with a point or a comma, no separator of thousands."),
            say("The column \"where\" is only for orientation; it is not read."),
            say("Save the sheet as CSV in UTF-8. Then \"record-import\" with {} shows what would be written.",
                sheet)};
}

Sentence explained(const book::BookColumn& column) {
    const auto allowed = allowed_in(column);
    auto line = column.required ? say("{} (needed): {}", column.name, holds(column))
                                : say("{}: {}", column.name, holds(column));
    if (!column.unit.empty()) {
        line += verbatim(" ") + say("Unit: {}.", filled(column.unit, {}));
    }
    if (!allowed.empty()) {
        line += verbatim(" ") + say("Allowed: {}.", allowed);
    }
    return line;
}

}  // namespace

Sentence holds(const book::BookColumn& column) {
    return filled(column.description, {});
}

// A stage list would fill the page; it stands in the file of explanations.
Sentence allowed_in(const book::BookColumn& column) {
    const auto* domain = book::find_domain(column.domain);
    if (domain == nullptr) {
        return {};
    }
    if (!domain->choices.empty()) {
        return say("{} to {}", domain->choices.front().value, domain->choices.back().value);
    }
    return domain->high < book::no_upper_end ? say("{:g} to {:g}", domain->low, domain->high)
                                             : say("{:g} or more", domain->low);
}

std::string explanations_of(const book::BookTable& table, const std::string& sheet, const Wording& wording) {
    std::string content = filled(table.title, {}).in(wording) + "\n\n";
    for (const auto& rule : general_rules(sheet)) {
        content += rule.in(wording) + "\n";
    }
    content += "\n";
    for (const auto& column : table.columns) {
        content += explained(column).in(wording) + "\n";
        const auto* domain = book::find_domain(column.domain);
        static const std::vector<book::Choice> none;
        for (const auto& choice : domain == nullptr ? none : domain->choices) {
            content += fmt::format("    {}  {}\n", choice.value, book::meaning_of(choice).in(wording));
        }
    }
    return content;
}

}  // namespace pipward::intake
