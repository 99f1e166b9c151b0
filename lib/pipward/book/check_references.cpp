// SPDX-License-Identifier: MIT
#include "pipward/book/detail/check.h"
#include "pipward/book/detail/missing_names.h"
#include "pipward/book/records.h"

namespace pipward::book::detail {
namespace {

MissingNames missing_in(const BookTable& table, const BookColumn& column, const Orchard& orchard,
                        const Named& named) {
    MissingNames missing;
    for (const auto* record : table.records.all(orchard)) {
        const auto cell = column.field.show(record);
        const auto* name = std::get_if<std::string>(&cell);
        if (name != nullptr && !named.answers_to(*name)) {
            auto& rows = missing[*name];
            rows.first_row = rows.rows == 0 ? row_name(table, record) : rows.first_row;
            ++rows.rows;
        }
    }
    return missing;
}

// A name within another column has a rule of its own: check_trees().
bool is_free(const BookColumn& column) {
    return !column.references.empty() && column.references.front().within.empty();
}

}  // namespace

void check_references(const Orchard& orchard, const Names& names, Schema schema, Findings& findings) {
    UnansweredTables unanswered;
    for (const auto& table : schema) {
        for (const auto& column : table.columns) {
            if (is_free(column)) {
                const auto named = named_by(column, names, schema);
                tell({table, column, named, missing_in(table, column, orchard, named)}, unanswered, findings);
            }
        }
    }
    tell_of_empty_tables(unanswered, findings);
}

}  // namespace pipward::book::detail
