// SPDX-License-Identifier: GPL-2.0-or-later
#include "finding_line.h"

#include "pipward/book/schema.h"
#include "text.h"

namespace pipward::desktop {

QString finding_line(const Finding& finding) {
    auto told = finding;
    if (const auto* table = book::find_book_table(finding.table)) {
        told.table = host_wording(table->title);
        if (const auto* column = book::find_column(*table, finding.field)) {
            told.field = host_wording(column->label);
        }
    }
    return to_qt(to_text(told, host_wording));
}

}  // namespace pipward::desktop
