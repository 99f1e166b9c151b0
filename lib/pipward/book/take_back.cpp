// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include <algorithm>
#include <set>

#include "pipward/book/detail/check.h"
#include "pipward/book/detail/entry_journal.h"
#include "pipward/book/detail/entry_row.h"
#include "pipward/book/detail/named_layer.h"
#include "pipward/book/detail/row_count.h"
#include "pipward/book/detail/transaction.h"
#include "pipward/book/entry.h"
#include "pipward/book/schema.h"

namespace pipward::book {
namespace {

Finding kept(const AddedRow& row, Sentence message, Sentence remedy) {
    return detail::error({row.table, detail::fid_name(row.fid)}, std::move(message), std::move(remedy));
}

// Whether the row is there still.
bool judge_unchanged(OGRLayer& layer, const AddedRow& row, Findings& findings) {
    const auto now = detail::content_of(layer, row);
    if (!now) {
        findings.push_back(
            kept(row, say("The row is not in the book any more."), say("Nothing needs to be undone.")));
    } else if (!detail::is_as_remembered(*now, row.content)) {
        findings.push_back(kept(row, say("The row was changed after it was recorded; it was left as it is."),
                                say("Check it in a GIS and remove it there, if it is wrong.")));
    }
    return now.has_value();
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

// What a column refers to: a name, for rows with the block that they stand in.
std::set<std::string> values_of(detail::Session& session, const BookTable& table, const BookColumn& column,
                                const Reference& reference) {
    std::set<std::string> values;
    if (session.dataset->GetLayerByName(std::string(table.name).c_str()) == nullptr) {
        return values;
    }
    const auto within = reference.within.empty() ? column.name : reference.within;
    for (const auto& row :
         detail::query(session, fmt::format("SELECT DISTINCT {1}, {2} FROM {0} WHERE {1} IS NOT NULL",
                                            detail::quoted_name(table.name), detail::quoted_name(column.name),
                                            detail::quoted_name(within)))) {
        values.insert(row[0].value_or("") + (reference.within.empty() ? "" : "\n" + row[1].value_or("")));
    }
    return values;
}

std::optional<std::string> referred_by(const AddedRow& row, const Reference& reference) {
    auto name = value_in(row, reference.column);
    if (name && !reference.within.empty()) {
        *name += "\n" + value_in(row, reference.within).value_or("");
    }
    return name;
}

// A pollination whose fruit has been noted would leave that fruit without its mother. Asked when the rows are
// gone: what still refers to them are others.
void judge_references(detail::Session& session, std::span<const AddedRow> rows, Findings& findings) {
    for (const auto& table : book_tables()) {
        for (const auto& column : table.columns) {
            std::optional<std::set<std::string>> values;
            for (const auto& row : rows) {
                if (!row.filled.empty()) {
                    continue;
                }
                const auto named = std::ranges::find(column.references, row.table, &Reference::table);
                const auto name = named == column.references.end() ? std::nullopt : referred_by(row, *named);
                if (!name) {
                    continue;
                }
                values =
                    values ? std::move(values) : std::optional{values_of(session, table, column, *named)};
                if (values->contains(*name)) {
                    findings.push_back(kept(row,
                                            say("Rows of {} refer to {} by now; it was not touched.",
                                                table.name, value_in(row, named->column).value_or("")),
                                            say("Undo those first.")));
                }
            }
        }
    }
}

void empty_again(detail::Session& session, OGRLayer& layer, const AddedRow& row) {
    const OGRFeatureUniquePtr feature(layer.GetFeature(row.fid));
    for (const auto& column : row.filled) {
        feature->SetFieldNull(feature->GetFieldIndex(column.c_str()));
    }
    const auto before = session.messages->failures();
    detail::expect_success(session, before, layer.SetFeature(feature.get()) != OGRERR_NONE, "SetFeature");
}

void remove(detail::Session& session, const std::string& location, OGRLayer& layer, const AddedRow& row) {
    if (!row.filled.empty()) {
        empty_again(session, layer, row);
        return;
    }
    const auto before = session.messages->failures();
    detail::expect_success(session, before, layer.DeleteFeature(row.fid) != OGRERR_NONE, "DeleteFeature");
    if (detail::content_of(layer, row)) {
        throw detail::swallowed(location, row.table);
    }
}

// What is thrown undoes the whole transaction.
void take_back_all(detail::Session& session, const std::string& location, std::span<const AddedRow> rows) {
    Findings findings;
    for (const auto& row : rows) {
        auto& layer = detail::named_layer(session, location, row.table);
        if (judge_unchanged(layer, row, findings)) {
            remove(session, location, layer, row);
        }
    }
    judge_references(session, rows, findings);
    if (!findings.empty()) {
        throw Error(Trouble::input, std::move(findings));
    }
    detail::forget(session, rows);
}

}  // namespace

std::vector<std::vector<AddedRow>> remembered_batches(const BookAt& book) {
    std::vector<std::vector<AddedRow>> batches;
    detail::look_into_book(book, default_patience, [&](detail::Session& session) {
        batches = detail::remembered(session);
        for (auto& batch : batches) {
            std::erase_if(batch, [&](AddedRow& row) {
                OGRLayer* layer = session.dataset->GetLayerByName(row.table.c_str());
                auto now = layer == nullptr ? std::nullopt : detail::content_of(*layer, row);
                if (now && detail::is_as_remembered(*now, row.content)) {
                    row.content = std::move(*now);
                }
                return !now;
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
