// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include <algorithm>

#include "pipward/book/detail/check.h"
#include "pipward/book/detail/entry_journal.h"
#include "pipward/book/detail/entry_reading.h"
#include "pipward/book/detail/entry_row.h"
#include "pipward/book/detail/layers.h"
#include "pipward/book/detail/named_layer.h"
#include "pipward/book/detail/row_count.h"
#include "pipward/book/detail/transaction.h"
#include "pipward/book/entry.h"
#include "pipward/book/schema.h"

namespace pipward::book {
namespace {

void expect_columns(const OGRLayer& layer, const std::string& location, const Entry& entry) {
    for (const auto& [name, value] : entry.values) {
        if (const_cast<OGRLayer&>(layer).GetLayerDefn()->GetFieldIndex(name.c_str()) < 0) {
            throw detail::access_error(location, say("The table {} has no column {}.", entry.table, name),
                                       say("Check the book with book-check."));
        }
    }
}

// Someone else may have used the name since the book was read.
Error taken(const Entry& entry) {
    return {Trouble::input, detail::error({entry.table}, say("The book has a row of this name already."),
                                          say("Give it another name: each must be one row's alone."))};
}

std::int64_t write(detail::Session& session, OGRLayer& layer, const Entry& entry) {
    OGRFeature feature(layer.GetLayerDefn());
    for (const auto& [name, value] : entry.values) {
        if (!std::holds_alternative<std::monostate>(value)) {
            detail::set_field(feature, feature.GetFieldIndex(name.c_str()), value);
        }
    }
    if (entry.at) {
        auto point = detail::to_ogr(*entry.at);
        point.assignSpatialReference(layer.GetSpatialRef());
        feature.SetGeometry(&point);
    }
    try {
        return detail::create_feature(session, layer, feature);
    } catch (const detail::OgrTrouble& trouble) {
        if (detail::is_taken(trouble)) {
            throw taken(entry);
        }
        throw;
    }
}

OGRFeatureUniquePtr row_named(OGRLayer& layer, const BookColumn& key, const std::string& name) {
    layer.SetAttributeFilter(
        fmt::format("{} = {}", detail::quoted_name(key.name), detail::quoted_text(name)).c_str());
    layer.ResetReading();
    OGRFeatureUniquePtr feature(layer.GetNextFeature());
    layer.SetAttributeFilter(nullptr);
    return feature;
}

// Someone else may have filled a cell, or taken the row out, since the book was read.
Error changed_meanwhile(const Entry& entry) {
    return {Trouble::input, detail::error({entry.table}, say("The row was changed meanwhile."),
                                          say("Look at it and record again what is still missing."))};
}

std::vector<std::string> fill(OGRFeature& feature, const BookColumn& key, const Entry& entry) {
    std::vector<std::string> filled;
    for (const auto& [name, value] : entry.values) {
        const int field = feature.GetFieldIndex(name.c_str());
        if (name == key.name || std::holds_alternative<std::monostate>(value)) {
            continue;
        }
        if (feature.IsFieldSetAndNotNull(field) == 0) {
            detail::set_field(feature, field, value);
            filled.push_back(name);
        } else if (to_text(detail::get_field(feature, field)) != to_text(value)) {
            throw changed_meanwhile(entry);
        }
    }
    return filled;
}

AddedRow complete_row(detail::Session& session, OGRLayer& layer, const Entry& entry) {
    const auto& key = *key_column(*find_book_table(entry.table));
    const auto name = to_text(entry.values.at(std::string(key.name)));
    const auto feature = row_named(layer, key, name);
    if (feature == nullptr) {
        throw changed_meanwhile(entry);
    }
    AddedRow row{entry.table, feature->GetFID(), {}, fill(*feature, key, entry)};
    const auto before = session.messages->failures();
    detail::expect_success(session, before, layer.SetFeature(feature.get()) != OGRERR_NONE, "SetFeature");
    return row;
}

AddedRow write_row(detail::Session& session, OGRLayer& layer, const Entry& entry) {
    auto row = entry.completes ? complete_row(session, layer, entry)
                               : AddedRow{entry.table, write(session, layer, entry), {}};
    row.content = detail::content_of(layer, row).value_or("");
    return row;
}

std::vector<AddedRow> write_and_remember(detail::Session& session, const std::string& location,
                                         std::span<const Entry> entries) {
    auto& layer = detail::named_layer(session, location, entries.front().table);
    const auto& table = entries.front().table;
    const auto before = detail::rows_in(session, table);
    std::vector<AddedRow> rows;
    for (const auto& entry : entries) {
        expect_columns(layer, location, entry);
        rows.push_back(write_row(session, layer, entry));
    }
    const auto made = std::ranges::count(entries, false, &Entry::completes);
    detail::expect_rows(session, location, table, before + made);
    detail::remember(session, rows);
    return rows;
}

}  // namespace

EntryAdded add_entry(const BookAt& book, const Entry& entry, Day as_of, Patience patience) {
    EntriesAdded added;
    in_one_change(
        book,
        [&](const BookAt& held) {
            const std::span one(&entry, 1);
            const auto part = detail::read_for_entry(held, entry);
            if (part) {
                added = add_entries(held, *part, one, as_of, patience);
            }
            // The names that were meant are in the rest of the book.
            if (!part || has_errors(added.findings.front())) {
                added = add_entries(held, detail::read_without_weather(held), one, as_of, patience);
            }
        },
        patience);
    if (has_errors(added.findings.front())) {
        throw Error(Trouble::input, added.findings.front());
    }
    return {added.rows.front(), added.findings.front()};
}

EntriesAdded add_entries(const BookAt& book, const BookReading& reading, std::span<const Entry> entries,
                         Day as_of, Patience patience) {
    EntriesAdded added;
    added.findings = check_entries(reading, entries, as_of);
    if (!entries.empty() && std::ranges::none_of(added.findings, has_errors)) {
        detail::change_book(book, {entries.front().table, detail::journal_table}, patience,
                            [&](detail::Session& session) {
                                added.rows = write_and_remember(session, book.location, entries);
                            });
    }
    return added;
}

std::vector<AddedRow> rows_of_entries(const BookAt& book, const std::string& table) {
    std::vector<AddedRow> rows;
    detail::look_into_book(book, default_patience, [&](detail::Session& session) {
        rows.clear();
        auto& layer = detail::named_layer(session, book.location, table);
        layer.ResetReading();
        for (OGRFeatureUniquePtr feature(layer.GetNextFeature()); feature != nullptr;
             feature.reset(layer.GetNextFeature())) {
            rows.push_back({table, feature->GetFID(), detail::content_of(*feature, table)});
        }
    });
    return rows;
}

}  // namespace pipward::book
