// SPDX-License-Identifier: MIT
#include <cpl_conv.h>
#include <fmt/format.h>

#include <algorithm>

#include "pipward/book/detail/style_stamps.h"
#include "pipward/book/detail/transaction.h"
#include "pipward/book/map_style.h"

namespace pipward::book {
namespace {

// The forms that the desktop itself gives to these tables.
constexpr auto styles_form =
    "CREATE TABLE layer_styles (id INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, f_table_catalog TEXT(256), "
    "f_table_schema TEXT(256), f_table_name TEXT(256), f_geometry_column TEXT(256), styleName TEXT(30), "
    "styleQML TEXT, styleSLD TEXT, useAsDefault BOOLEAN, description TEXT, owner TEXT(30), ui TEXT(30), "
    "update_time DATETIME DEFAULT (strftime('%Y-%m-%dT%H:%M:%fZ','now')))";
constexpr auto projects_form =
    "CREATE TABLE qgis_projects (name TEXT PRIMARY KEY, metadata BLOB, content BLOB)";

// The time of writing; OGR's own setting fixes it where a file must come out the same each time.
std::string time_now(detail::Session& session) {
    if (const char* fixed = CPLGetConfigOption("OGR_CURRENT_DATE", nullptr)) {
        return fixed;
    }
    return detail::query(session, "SELECT strftime('%Y-%m-%dT%H:%M:%fZ','now')").at(0).at(0).value_or("");
}

void make_tables(detail::Session& session, const std::string& time) {
    if (!detail::has_table(session, "layer_styles")) {
        detail::run_sql(session, styles_form);
        detail::run_sql(
            session, fmt::format("INSERT INTO gpkg_contents (table_name, data_type, identifier, description, "
                                 "last_change) VALUES ('layer_styles', 'attributes', 'Layer styles', "
                                 "'How the layers look in a desktop.', {})",
                                 detail::quoted_text(time)));
    }
    if (!detail::has_table(session, "qgis_projects")) {
        detail::run_sql(session, projects_form);
    }
}

struct StyleRow {
    std::string id;
    bool named_as_ours = false;
    bool intact = false;
    bool is_default = false;
    std::string text;
};

// OGR takes a bare id for the row number and leaves it out of the columns.
std::vector<StyleRow> styles_of(detail::Session& session, const StyleText& style) {
    std::vector<StyleRow> rows;
    for (const auto& row : detail::query(
             session, fmt::format("SELECT CAST(id AS TEXT), styleName, useAsDefault, description, styleQML "
                                  "FROM layer_styles WHERE f_table_name = {} ORDER BY id",
                                  detail::quoted_text(style.table)))) {
        auto text = row[4].value_or("");
        const bool ours = row[1] == std::string(style_name);
        rows.push_back({row[0].value_or(""), ours, ours && detail::is_our_style(row[3].value_or(""), text),
                        row[2].value_or("0") != "0", std::move(text)});
    }
    return rows;
}

void add_style(detail::Session& session, const StyleText& style, bool as_default, const std::string& time) {
    detail::run_sql(
        session,
        fmt::format("INSERT INTO layer_styles (f_table_catalog, f_table_schema, f_table_name, "
                    "f_geometry_column, styleName, styleQML, styleSLD, useAsDefault, description, owner, "
                    "update_time) VALUES ('', '', {}, {}, {}, {}, '', {}, {}, '', {})",
                    detail::quoted_text(style.table), detail::quoted_text(style.geometry_column),
                    detail::quoted_text(style_name), detail::quoted_text(style.text), as_default ? 1 : 0,
                    detail::quoted_text(detail::style_mark(style.text)), detail::quoted_text(time)));
}

void replace_style(detail::Session& session, const StyleRow& old, const StyleText& style,
                   const std::string& time) {
    detail::run_sql(
        session,
        fmt::format("UPDATE layer_styles SET styleQML = {}, f_geometry_column = {}, description = {}, "
                    "update_time = {} WHERE id = {}",
                    detail::quoted_text(style.text), detail::quoted_text(style.geometry_column),
                    detail::quoted_text(detail::style_mark(style.text)), detail::quoted_text(time), old.id));
}

void put_style(detail::Session& session, const StyleText& style, const std::string& time,
               StyleReport& report) {
    const auto rows = styles_of(session, style);
    const bool users_default =
        std::ranges::any_of(rows, [](const StyleRow& row) { return row.is_default && !row.named_as_ours; });
    const auto ours = std::ranges::find_if(rows, &StyleRow::named_as_ours);
    if (users_default) {
        report.default_is_the_users.push_back(style.table);
    }
    if (ours == rows.end()) {
        add_style(session, style, !users_default, time);
    } else if (!ours->intact) {
        report.changed_by_user.push_back(style.table);
        return;
    } else if (ours->text == style.text) {
        report.unchanged.push_back(style.table);
        return;
    } else {
        replace_style(session, *ours, style, time);
    }
    report.written.push_back(style.table);
}

void put_project(detail::Session& session, const ProjectText& project, const std::string& time,
                 StyleReport& report) {
    const auto name = detail::quoted_text(project.name);
    const auto rows = detail::query(session,
                                    "SELECT CAST(metadata AS TEXT), CAST(content AS TEXT) FROM qgis_projects "
                                    "WHERE name = " +
                                        name);
    if (!rows.empty()) {
        const auto old = rows[0][1].value_or("");
        if (!detail::is_our_project(rows[0][0].value_or(""), old)) {
            report.changed_by_user.push_back(project.name);
            return;
        }
        if (old == project.content) {
            report.unchanged.push_back(project.name);
            return;
        }
    }
    detail::run_sql(
        session,
        fmt::format("INSERT OR REPLACE INTO qgis_projects (name, metadata, content) VALUES ({}, {}, {})",
                    name, detail::quoted_text(detail::project_mark(project.content, time)),
                    detail::quoted_text(project.content)));
    report.written.push_back(project.name);
}

}  // namespace

StyleReport write_map_style(const BookAt& book, const std::vector<StyleText>& styles,
                            const ProjectText& project, Patience patience) {
    if (detail::is_server(book.location)) {
        throw detail::access_error(
            shown_location(book.location),
            say("Map styles can only be written to a GeoPackage, not to a database server."),
            say("Style the layers in the desktop and keep its project there."));
    }
    StyleReport report;
    detail::change_book(book, {"layer_styles", "qgis_projects"}, patience, [&](detail::Session& session) {
        report = {};
        const auto time = time_now(session);
        make_tables(session, time);
        for (const auto& style : styles) {
            put_style(session, style, time, report);
        }
        put_project(session, project, time, report);
    });
    return report;
}

}  // namespace pipward::book
