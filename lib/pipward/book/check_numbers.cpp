// SPDX-License-Identifier: MIT
#include "pipward/book/detail/check.h"
#include "pipward/book/records.h"

namespace pipward::book::detail {
namespace {

bool is_limited(const BookColumn& column) {
    const auto* domain = find_domain(column.domain);
    return domain != nullptr && domain->choices.empty();
}

void check_column(const BookTable& table, const BookColumn& column, const Orchard& orchard,
                  Findings& findings) {
    for (const auto* record : table.records.all(orchard)) {
        const auto cell = column.field.show(record);
        auto wrong = std::holds_alternative<std::monostate>(cell) ? std::nullopt : check_cell(column, cell);
        if (wrong) {
            wrong->table = table.name;
            wrong->row = row_name(table, record);
            findings.push_back(std::move(*wrong));
        }
    }
}

}  // namespace

// Rows that were read have no such numbers left; an orchard that was made otherwise may have them.
void check_numbers(const Orchard& orchard, Schema schema, Findings& findings) {
    for (const auto& table : schema) {
        for (const auto& column : table.columns) {
            if (is_limited(column)) {
                check_column(table, column, orchard, findings);
            }
        }
    }
}

}  // namespace pipward::book::detail
