// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include <algorithm>

#include "pipward/book/check.h"
#include "pipward/book/entry.h"
#include "pipward/book/entry_journal.h"
#include "pipward/book/entry_row.h"
#include "pipward/book/schema.h"
#include "pipward/book/transaction.h"

namespace pipward {
namespace {

Error kept(const AddedRow& row, Sentence message, Sentence remedy) {
    return {Trouble::input, error({row.table, fid_name(row.fid)}, std::move(message), std::move(remedy))};
}

void expect_unchanged(OGRLayer& layer, const AddedRow& row) {
    const auto now = content_of(layer, row);
    if (!now) {
        throw kept(row, say("The row is not in the book any more."), say("Nothing need be taken back."));
    }
    if (*now != row.content) {
        throw kept(row, say("The row was changed since it was noted; it was not touched."),
                   say("Look at it in a GIS and remove it there, if it is wrong."));
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

bool refers(Session& session, const BookTable& table, const BookColumn& column, const std::string& name) {
    return session.dataset->GetLayerByName(std::string(table.name).c_str()) != nullptr &&
           !query(session, fmt::format("SELECT 1 FROM {} WHERE {} = {} LIMIT 1", quoted_name(table.name),
                                       quoted_name(column.name), quoted_text(name)))
                .empty();
}

// A pollination whose fruit has been noted would leave that fruit without its mother.
void expect_nothing_refers(Session& session, const AddedRow& row) {
    for (const auto& table : book_tables()) {
        for (const auto& column : table.columns) {
            const auto named = std::ranges::find(column.references, row.table, &Reference::table);
            const auto name = named == column.references.end() ? std::nullopt : value_in(row, named->column);
            if (name && refers(session, table, column, *name)) {
                throw kept(row, say("Rows of {} refer to {} by now; it was not touched.", table.name, *name),
                           say("Take those back first."));
            }
        }
    }
}

void remove(Session& session, OGRLayer& layer, const AddedRow& row) {
    const auto before = session.messages->failures();
    expect_success(session, before, layer.DeleteFeature(row.fid) != OGRERR_NONE, "DeleteFeature");
}

}  // namespace

std::vector<AddedRow> remembered_entries(const std::string& location) {
    std::vector<AddedRow> rows;
    look_into_book(location, default_patience, [&](Session& session) {
        rows = remembered(session);
        std::erase_if(rows, [&](const AddedRow& row) {
            OGRLayer* layer = session.dataset->GetLayerByName(row.table.c_str());
            return layer == nullptr || !content_of(*layer, row);
        });
    });
    return rows;
}

void take_back(const std::string& location, const AddedRow& row, Patience patience) {
    change_book(location, {row.table, journal_table}, patience, [&](Session& session) {
        auto& layer = entry_layer(session, location, row.table);
        expect_unchanged(layer, row);
        expect_nothing_refers(session, row);
        remove(session, layer, row);
        forget(session, row);
    });
}

}  // namespace pipward
