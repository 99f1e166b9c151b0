// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include "pipward/book/change.h"
#include "pipward/book/detail/entry_journal.h"
#include "pipward/book/detail/entry_row.h"
#include "pipward/book/detail/layers.h"
#include "pipward/book/detail/named_layer.h"
#include "pipward/book/detail/parts_of_change.h"
#include "pipward/book/detail/row_count.h"
#include "pipward/book/detail/transaction.h"
#include "pipward/book/schema.h"

namespace pipward::book {
namespace {

template <class Change>
Finding about(const Change& edit, std::string field, std::string value, Sentence message, Sentence remedy) {
    return {.level = Level::error,
            .table = edit.table,
            .row = edit.name,
            .field = std::move(field),
            .value = std::move(value),
            .message = std::move(message),
            .remedy = std::move(remedy)};
}

void check_edit(const CellEdit& edit, Findings& findings) {
    const auto* table = find_book_table(edit.table);
    for (const auto& [name, value] : edit.after) {
        const auto* column = table == nullptr ? nullptr : find_column(*table, name);
        if (column == nullptr) {
            throw Error(Trouble::usage, about(edit, name, {}, say("The book has no such column."),
                                              say("Name a table and a column of the book.")));
        }
        if (const auto wrong = check_cell(*column, value)) {
            findings.push_back(about(edit, name, wrong->value, wrong->message, wrong->remedy));
        }
    }
}

void check_edits(const BookChange& change) {
    Findings findings;
    for (const auto& edit : change.edits) {
        check_edit(edit, findings);
    }
    if (!findings.empty()) {
        throw Error(Trouble::input, findings);
    }
}

bool holds(const OGRFeature& feature, const std::map<std::string, Cell>& cells) {
    for (const auto& [name, value] : cells) {
        const int field = feature.GetFieldIndex(name.c_str());
        if (field < 0 || detail::get_field(feature, field) != value) {
            return false;
        }
    }
    return true;
}

void edit_row(detail::Session& session, const std::string& location, const CellEdit& edit,
              Findings& findings) {
    auto& layer = detail::named_layer(session, location, edit.table);
    const OGRFeatureUniquePtr feature(layer.GetFeature(edit.fid));
    if (feature == nullptr || !holds(*feature, edit.before)) {
        findings.push_back(about(edit, {}, {}, say("The row was changed or removed since the book was read."),
                                 say("Run it again. Nothing was changed.")));
        return;
    }
    for (const auto& [name, value] : edit.after) {
        const int field = feature->GetFieldIndex(name.c_str());
        if (field < 0) {
            throw detail::access_error(location, say("The table {} has no column {}.", edit.table, name),
                                       say("Check the book with book-check."));
        }
        detail::set_field(*feature, field, value);
    }
    const auto before = session.messages->failures();
    detail::expect_success(session, before, layer.SetFeature(feature.get()) != OGRERR_NONE, "SetFeature");
    const OGRFeatureUniquePtr now(layer.GetFeature(edit.fid));
    if (now == nullptr || !holds(*now, edit.after)) {
        throw detail::swallowed(location, edit.table);
    }
}

// Of every table that one of the changes is about.
template <class Change>
std::map<std::string, std::int64_t> rows_by_table(detail::Session& session,
                                                  const std::vector<Change>& changes) {
    std::map<std::string, std::int64_t> rows;
    for (const auto& change : changes) {
        const bool is_there = session.dataset->GetLayerByName(change.table.c_str()) != nullptr;
        if (is_there && !rows.contains(change.table)) {
            rows[change.table] = detail::rows_in(session, change.table);
        }
    }
    return rows;
}

void edit_rows(detail::Session& session, const std::string& location, const std::vector<CellEdit>& edits) {
    Findings findings;
    const auto before = rows_by_table(session, edits);
    for (const auto& edit : edits) {
        edit_row(session, location, edit, findings);
    }
    if (!findings.empty()) {
        throw Error(Trouble::input, findings);
    }
    for (const auto& [table, number] : before) {
        detail::expect_rows(session, location, table, number);
    }
}

void remove_row(detail::Session& session, const std::string& location, const RowRemoval& removal,
                Findings& findings) {
    auto& layer = detail::named_layer(session, location, removal.table);
    const OGRFeatureUniquePtr feature(layer.GetFeature(removal.fid));
    if (feature == nullptr || !holds(*feature, removal.before)) {
        findings.push_back(about(removal, {}, {},
                                 say("The row was changed or removed since the book was read."),
                                 say("Run it again. Nothing was changed.")));
        return;
    }
    const auto before = session.messages->failures();
    detail::expect_success(session, before, layer.DeleteFeature(removal.fid) != OGRERR_NONE, "DeleteFeature");
}

void remove_rows(detail::Session& session, const std::string& location,
                 const std::vector<RowRemoval>& removals) {
    Findings findings;
    auto rows = rows_by_table(session, removals);
    for (const auto& removal : removals) {
        remove_row(session, location, removal, findings);
        --rows[removal.table];
    }
    if (!findings.empty()) {
        throw Error(Trouble::input, findings);
    }
    for (const auto& [table, number] : rows) {
        detail::expect_rows(session, location, table, number);
    }
}

std::vector<std::string> tables_of(const BookChange& change) {
    std::vector<std::string> tables;
    if (change.remembered) {
        tables.emplace_back(detail::journal_table);
    }
    for (const auto* list : {&change.added, &change.results}) {
        for (const auto& table : *list) {
            tables.push_back(table.shape.name);
        }
    }
    for (const auto& removal : change.removed) {
        if (tables.empty() || tables.back() != removal.table) {
            tables.push_back(removal.table);
        }
    }
    for (const auto& edit : change.edits) {
        if (tables.empty() || tables.back() != edit.table) {
            tables.push_back(edit.table);
        }
    }
    return tables;
}

}  // namespace

void apply_change(const BookAt& book, const BookChange& change, Patience patience) {
    for (const auto& rows : change.added) {
        detail::check_appended(rows);
    }
    check_edits(change);
    detail::check_results(change.results);
    detail::change_book(book, tables_of(change), patience, [&](detail::Session& session) {
        const auto& location = book.location;
        std::vector<AddedRow> written;
        for (const auto& rows : change.added) {
            detail::append_in(session, location, rows, change.remembered ? &written : nullptr);
        }
        for (auto& row : written) {
            row.content = detail::summed(row.content);
        }
        if (!written.empty()) {
            detail::remember(session, written);
        }
        edit_rows(session, location, change.edits);
        remove_rows(session, location, change.removed);
        detail::replace_in(session, location, change.results);
    });
}

}  // namespace pipward::book
