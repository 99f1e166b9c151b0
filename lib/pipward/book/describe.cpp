// SPDX-License-Identifier: MIT
#include "pipward/book/detail/describe.h"

#include <fmt/format.h>
#include <ogr_core.h>
#include <ogrsf_frmts.h>

namespace pipward::book::detail {
namespace {

// GeoPackage 1.2 wanted the short name to be unique in the whole file, later versions only within a table.
// OGR 3.6 still makes the old form, in which two tables could not both have a column labelled "Note".
constexpr auto data_columns_form =
    "CREATE TABLE gpkg_data_columns (table_name TEXT NOT NULL,column_name TEXT NOT NULL,name TEXT,"
    "title TEXT,description TEXT,mime_type TEXT,constraint_name TEXT,"
    "CONSTRAINT pk_gdc PRIMARY KEY (table_name, column_name),CONSTRAINT gdc_tn UNIQUE (table_name, name))";

bool names_are_per_table(Session& session) {
    const auto rows = query(session, "SELECT sql FROM sqlite_master WHERE name = 'gpkg_data_columns'");
    return !rows.empty() && rows[0][0] && rows[0][0]->find("name TEXT UNIQUE") == std::string::npos;
}

std::string title_of(const ColumnWords& words) {
    return words.unit.empty() ? words.label : fmt::format("{} ({})", words.label, words.unit);
}

std::string text_or_null(const std::string& text) {
    return text.empty() ? "NULL" : quoted_text(text);
}

void describe_on_server(Session& session, const std::string& table, const ColumnWords& words) {
    run_sql(session, fmt::format("COMMENT ON COLUMN {}.{} IS {}", quoted_name(table), quoted_name(words.name),
                                 quoted_text(title_of(words) + ": " + words.description)));
}

// The title is the label, with the unit in brackets behind it where there is one.
std::string unit_in(const std::string& title, const std::string& label) {
    const auto start = label.size() + 2;
    return title.size() > start && title.starts_with(label + " (") && title.back() == ')'
               ? title.substr(start, title.size() - start - 1)
               : std::string{};
}

// What describe_on_server() wrote: "Label (unit): description".
ColumnWords words_in(const std::string& name, const std::string& comment) {
    const auto colon = comment.find(": ");
    if (colon == std::string::npos) {
        return {name, name, {}, comment, {}};
    }
    const auto title = comment.substr(0, colon);
    const auto label = title.ends_with(')') ? title.substr(0, title.rfind(" (")) : title;
    return {name, label, unit_in(title, label), comment.substr(colon + 2), {}};
}

std::map<std::string, ColumnWords> read_comments(Session& session, const std::string& table) {
    std::map<std::string, ColumnWords> found;
    for (const auto& row : query(session,
                                 "SELECT attname::text, col_description(attrelid, attnum) FROM pg_attribute "
                                 "WHERE attnum > 0 AND attrelid = to_regclass(" +
                                     quoted_text(quoted_name(table)) + ")")) {
        if (row[0] && row[1]) {
            found[*row[0]] = words_in(*row[0], *row[1]);
        }
    }
    return found;
}

OGRFieldType stored_as(CellType type) {
    return type == CellType::whole ? OFTInteger : type == CellType::number ? OFTReal : OFTString;
}

std::unique_ptr<OGRFieldDomain> coded_domain(const FieldDomain& domain) {
    std::vector<OGRCodedValue> values;
    for (const auto& choice : domain.choices) {
        values.push_back({CPLStrdup(choice.value.c_str()), CPLStrdup(choice.meaning.c_str())});
    }
    return std::make_unique<OGRCodedFieldDomain>(std::string(domain.name), std::string(domain.description),
                                                 stored_as(domain.type), OFSTNone, std::move(values));
}

OGRField bound(const FieldDomain& domain, double value) {
    OGRField field;
    if (domain.type == CellType::whole) {
        field.Integer = static_cast<int>(value);
    } else {
        field.Real = value;
    }
    return field;
}

std::unique_ptr<OGRFieldDomain> range_domain(const FieldDomain& domain) {
    return std::make_unique<OGRRangeFieldDomain>(std::string(domain.name), std::string(domain.description),
                                                 stored_as(domain.type), OFSTNone, bound(domain, domain.low),
                                                 true, bound(domain, domain.high), true);
}

}  // namespace

ColumnWords words_of(const BookColumn& column) {
    return {std::string(column.name), std::string(column.label), std::string(column.unit),
            std::string(column.description), std::string(column.domain)};
}

ColumnWords words_of(const Column& column) {
    return {column.name, column.label, column.unit, column.description, {}};
}

void prepare_descriptions(Session& session) {
    if (!has_table(session, "gpkg_data_columns")) {
        run_sql(session, data_columns_form);
    }
}

void write_domains(Session& session) {
    for (const auto& domain : field_domains()) {
        std::string reason;
        if (session.dataset->GetFieldDomain(std::string(domain.name)) != nullptr) {
            continue;
        }
        if (!session.dataset->AddFieldDomain(
                domain.choices.empty() ? range_domain(domain) : coded_domain(domain), reason)) {
            throw OgrTrouble(fmt::format("field domain {}: {}", domain.name, reason));
        }
    }
}

void describe_columns(Session& session, const std::string& table, const std::vector<ColumnWords>& columns) {
    if (session.server) {
        for (const auto& words : columns) {
            describe_on_server(session, table, words);
        }
        return;
    }
    if (!has_table(session, "gpkg_data_columns")) {
        return;
    }
    const bool named = names_are_per_table(session);
    run_sql(session, "DELETE FROM gpkg_data_columns WHERE table_name = " + quoted_text(table));
    for (const auto& words : columns) {
        run_sql(
            session,
            fmt::format("INSERT INTO gpkg_data_columns (table_name, column_name, name, title, description, "
                        "constraint_name) VALUES ({}, {}, {}, {}, {}, {})",
                        quoted_text(table), quoted_text(words.name),
                        named ? text_or_null(words.label) : "NULL", text_or_null(title_of(words)),
                        text_or_null(words.description), text_or_null(words.domain)));
    }
}

std::map<std::string, ColumnWords> read_descriptions(Session& session, const std::string& table) {
    if (session.server) {
        return read_comments(session, table);
    }
    std::map<std::string, ColumnWords> found;
    if (!has_table(session, "gpkg_data_columns")) {
        return found;
    }
    for (const auto& row : query(session,
                                 "SELECT column_name, name, title, description, constraint_name FROM "
                                 "gpkg_data_columns WHERE table_name = " +
                                     quoted_text(table))) {
        const auto name = row[0].value_or("");
        const auto title = row[2].value_or("");
        const auto label = row[1].value_or(title);
        found[name] = {name, label, unit_in(title, label), row[3].value_or(""), row[4].value_or("")};
    }
    return found;
}

}  // namespace pipward::book::detail
