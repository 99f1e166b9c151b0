// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include <algorithm>

#include "pipward/book/detail/check.h"
#include "pipward/book/detail/entry_journal.h"
#include "pipward/book/detail/entry_row.h"
#include "pipward/book/detail/row_count.h"
#include "pipward/book/detail/transaction.h"
#include "pipward/book/entry.h"
#include "pipward/book/schema.h"

namespace pipward::book {
namespace {

Finding kept(const AddedRow& row, Sentence message, Sentence remedy) {
    return detail::error({row.table, detail::fid_name(row.fid)}, std::move(message), std::move(remedy));
}

void judge_unchanged(OGRLayer& layer, const AddedRow& row, Findings& findings) {
    const auto now = detail::content_of(layer, row);
    if (!now) {
        findings.push_back(
            kept(row, say("The row is not in the book any more."), say("Nothing needs to be undone.")));
    } else if (*now != row.content) {
        findings.push_back(kept(row, say("The row was changed since it was recorded; it was not changed."),
                                say("Check it in a GIS and remove it there, if it is wrong.")));
    }
}

std::optional<std::string> value_in(const AddedRow& row, std::string_view column) {
    const auto start = fmt::format("{}: ", column);
    const auto at = row.content.starts_with(start) ? 0 : row.content.find("\n" + start);
    if (at == std::string::npos) {
        return std::nullopt;
    }
    const auto begin = at + start.size() + (at == 0 ? 0 : 1);
    return row.content.substr(begin, row.content.find('\n', begin) - begin);
}

bool refers(detail::Session& session, const BookTable& table, const BookColumn& column,
            const std::string& name) {
    return session.dataset->GetLayerByName(std::string(table.name).c_str()) != nullptr &&
           !detail::query(session, fmt::format("SELECT 1 FROM {} WHERE {} = {} LIMIT 1",
                                               detail::quoted_name(table.name),
                                               detail::quoted_name(column.name), detail::quoted_text(name)))
                .empty();
}

// A pollination whose fruit has been noted would leave that fruit without its mother.
void judge_references(detail::Session& session, const AddedRow& row, Findings& findings) {
    for (const auto& table : book_tables()) {
        for (const auto& column : table.columns) {
            const auto named = std::ranges::find(column.references, row.table, &Reference::table);
            const auto name = named == column.references.end() ? std::nullopt : value_in(row, named->column);
            if (name && refers(session, table, column, *name)) {
                findings.push_back(
                    kept(row, say("Rows of {} refer to {} by now; it was not touched.", table.name, *name),
                         say("Undo those first.")));
            }
        }
    }
}

void remove(detail::Session& session, const std::string& location, const AddedRow& row) {
    auto& layer = detail::entry_layer(session, location, row.table);
    const auto before = session.messages->failures();
    detail::expect_success(session, before, layer.DeleteFeature(row.fid) != OGRERR_NONE, "DeleteFeature");
    if (detail::content_of(layer, row)) {
        throw detail::swallowed(location, row.table);
    }
}

void take_back_all(detail::Session& session, const std::string& location, std::span<const AddedRow> rows) {
    Findings findings;
    for (const auto& row : rows) {
        judge_unchanged(detail::entry_layer(session, location, row.table), row, findings);
        judge_references(session, row, findings);
    }
    if (!findings.empty()) {
        throw Error(Trouble::input, std::move(findings));
    }
    for (const auto& row : rows) {
        remove(session, location, row);
        detail::forget(session, row);
    }
}

}  // namespace

std::vector<std::vector<AddedRow>> remembered_batches(const BookAt& book) {
    std::vector<std::vector<AddedRow>> batches;
    detail::look_into_book(book, default_patience, [&](detail::Session& session) {
        batches = detail::remembered(session);
        for (auto& batch : batches) {
            std::erase_if(batch, [&](const AddedRow& row) {
                OGRLayer* layer = session.dataset->GetLayerByName(row.table.c_str());
                return layer == nullptr || !detail::content_of(*layer, row);
            });
        }
        std::erase_if(batches, [](const auto& batch) { return batch.empty(); });
    });
    return batches;
}

std::vector<AddedRow> remembered_entries(const BookAt& book) {
    std::vector<AddedRow> rows;
    for (const auto& batch : remembered_batches(book)) {
        rows.insert(rows.end(), batch.rbegin(), batch.rend());
    }
    return rows;
}

void take_back(const BookAt& book, const AddedRow& row, Patience patience) {
    take_back(book, std::span(&row, 1), patience);
}

void take_back(const BookAt& book, std::span<const AddedRow> rows, Patience patience) {
    std::vector<std::string> tables{detail::journal_table};
    for (const auto& row : rows) {
        if (std::ranges::find(tables, row.table) == tables.end()) {
            tables.push_back(row.table);
        }
    }
    detail::change_book(book, tables, patience,
                        [&](detail::Session& session) { take_back_all(session, book.location, rows); });
}

}  // namespace pipward::book
