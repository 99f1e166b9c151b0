// SPDX-License-Identifier: MIT
#include "pipward/book/detail/triggers.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace pipward::book::detail {
namespace {

constexpr std::array every_write_touches{
    "gpkg_contents", "gpkg_geometry_columns",   "gpkg_extensions", "gpkg_ogr_contents",   "gpkg_data_columns",
    "gpkg_metadata", "gpkg_metadata_reference", "sqlite_sequence", "gpkg_spatial_ref_sys"};

std::string upper(std::string text) {
    std::ranges::transform(text, text.begin(), [](unsigned char c) { return std::toupper(c); });
    return text;
}

// White space runs become one space; quotes go, so that "x", 'x' and x look alike.
std::string plain(const std::string& sql) {
    std::string text;
    for (const char c : sql) {
        if (std::isspace(static_cast<unsigned char>(c)) != 0) {
            if (!text.empty() && text.back() != ' ') {
                text += ' ';
            }
        } else if (c != '"' && c != '\'' && c != '`') {
            text += c;
        }
    }
    return upper(text);
}

std::vector<std::string> split(const std::string& body) {
    std::vector<std::string> statements;
    for (std::size_t at = 0; at < body.size();) {
        const auto stop = std::min(body.find(';', at), body.size());
        auto statement = body.substr(at, stop - at);
        statement.erase(0, statement.find_first_not_of(' '));
        if (!statement.empty()) {
            statements.push_back(statement);
        }
        at = stop + 1;
    }
    return statements;
}

// The statements between BEGIN and END. Nothing where the text could hide a second beginning.
std::vector<std::string> statements_of(const std::string& sql) {
    constexpr std::string_view opening = " BEGIN ";
    const auto text = plain(sql);
    const auto begin = text.find(opening);
    const auto end = text.rfind("END");
    const bool clear = begin != std::string::npos && begin == text.rfind(opening) &&
                       end != std::string::npos && begin + opening.size() <= end &&
                       text.find("--") == std::string::npos && text.find("/*") == std::string::npos;
    const auto start = begin + opening.size();
    return clear ? split(text.substr(start, end - start)) : std::vector<std::string>{};
}

bool is_known_statement(const std::string& table, const std::string& statement) {
    const auto index = "RTREE_" + upper(table) + "_";
    const std::array allowed{"INSERT OR REPLACE INTO " + index,
                             "DELETE FROM " + index,
                             "UPDATE " + index,
                             std::string("UPDATE GPKG_OGR_CONTENTS SET FEATURE_COUNT"),
                             std::string("SELECT RAISE(ABORT,"),
                             std::string("SELECT RAISE(ROLLBACK,")};
    return std::ranges::any_of(allowed, [&](const auto& start) { return statement.starts_with(start); });
}

}  // namespace

bool is_known_trigger(const std::string& table, const std::string& sql) {
    const auto statements = statements_of(sql);
    return !statements.empty() && std::ranges::all_of(statements, [&](const auto& statement) {
        return is_known_statement(table, statement);
    });
}

void refuse_foreign_triggers(Session& session, const std::string& location,
                             const std::vector<std::string>& tables) {
    if (session.server) {
        return;  // a server's triggers are its owner's business, and bound to that owner's rights
    }
    std::string names;
    for (const auto* name : every_write_touches) {
        names += (names.empty() ? "" : ", ") + quoted_text(name);
    }
    for (const auto& table : tables) {
        names += ", " + quoted_text(table);
    }
    const auto found = query(session,
                             "SELECT name, tbl_name, sql FROM sqlite_master WHERE type = 'trigger' AND "
                             "(lower(tbl_name) IN (" +
                                 names + ") OR tbl_name LIKE 'rtree_%') ORDER BY name");
    for (const auto& row : found) {
        if (!is_known_trigger(row[1].value_or(""), row[2].value_or(""))) {
            throw access_error(
                location,
                say("The table {} carries a trigger \"{}\" that is not of the GeoPackage "
                    "standard; it would change the book behind our back.",
                    row[1].value_or(""), row[0].value_or("")),
                say("Remove the trigger, or copy the tables into a new book. Nothing was changed."));
        }
    }
}

}  // namespace pipward::book::detail
