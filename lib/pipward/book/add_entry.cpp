// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include "pipward/book/check.h"
#include "pipward/book/entry.h"
#include "pipward/book/entry_journal.h"
#include "pipward/book/entry_row.h"
#include "pipward/book/layers.h"
#include "pipward/book/schema.h"
#include "pipward/book/transaction.h"

namespace pipward {
namespace {

void expect_columns(const OGRLayer& layer, const std::string& location, const Entry& entry) {
    for (const auto& [name, value] : entry.values) {
        if (const_cast<OGRLayer&>(layer).GetLayerDefn()->GetFieldIndex(name.c_str()) < 0) {
            throw access_error(location, say("The table {} has no column {}.", entry.table, name),
                               say("Check the book with book-check."));
        }
    }
}

// Someone else may have used the name since the book was read.
Error taken(const Entry& entry) {
    return {Trouble::input, error({entry.table}, say("The book has a row of this name already."),
                                  say("Give it another name: each must be one row's alone."))};
}

std::int64_t write(Session& session, OGRLayer& layer, const Entry& entry) {
    OGRFeature feature(layer.GetLayerDefn());
    for (const auto& [name, value] : entry.values) {
        if (!std::holds_alternative<std::monostate>(value)) {
            set_field(feature, feature.GetFieldIndex(name.c_str()), value);
        }
    }
    try {
        return create_feature(session, layer, feature);
    } catch (const OgrTrouble& trouble) {
        if (is_taken(trouble)) {
            throw taken(entry);
        }
        throw;
    }
}

AddedRow write_and_remember(Session& session, const std::string& location, const Entry& entry) {
    auto& layer = entry_layer(session, location, entry.table);
    expect_columns(layer, location, entry);
    AddedRow row{entry.table, write(session, layer, entry), {}};
    row.content = content_of(layer, row).value_or("");
    remember(session, row);
    return row;
}

}  // namespace

EntryAdded add_entry(const std::string& location, const Entry& entry, Day as_of, Patience patience) {
    EntryAdded added;
    added.findings = check_entry(read_book(location), entry, as_of);
    if (has_errors(added.findings)) {
        throw Error(Trouble::input, added.findings);
    }
    change_book(location, {entry.table, journal_table}, patience,
                [&](Session& session) { added.row = write_and_remember(session, location, entry); });
    return added;
}

}  // namespace pipward
