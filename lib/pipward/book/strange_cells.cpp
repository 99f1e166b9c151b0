// SPDX-License-Identifier: MIT
#include "pipward/book/detail/strange_cells.h"

#include <fmt/format.h>

#include <cstdlib>

namespace pipward::book::detail {
namespace {

constexpr int longest_text = 100000;  // characters; a note is not a book

// SQL that is true where the cell is not what its declared type promises. SQLite takes 2024-06-31 as it
// stands until it has to assume it, hence '+0 days'.
std::string condition(const OGRFieldDefn& field) {
    const auto name = quoted_name(field.GetNameRef());
    switch (field.GetType()) {
        case OFTInteger:
            return fmt::format(
                "({0} IS NOT NULL AND (typeof({0}) <> 'integer' OR {0} NOT BETWEEN -2147483648 AND "
                "2147483647))",
                name);
        case OFTInteger64:
            return fmt::format("({0} IS NOT NULL AND typeof({0}) <> 'integer')", name);
        case OFTReal:
            return fmt::format("({0} IS NOT NULL AND typeof({0}) NOT IN ('real', 'integer'))", name);
        case OFTDate:
            return fmt::format(
                "({0} IS NOT NULL AND (typeof({0}) <> 'text' OR date({0}, '+0 days') IS NOT {0}))", name);
        case OFTDateTime:
            return fmt::format(
                "({0} IS NOT NULL AND (typeof({0}) <> 'text' OR date(substr({0}, 1, 10), '+0 days') IS NOT "
                "substr({0}, 1, 10)))",
                name);
        case OFTString:
            return fmt::format(
                "({0} IS NOT NULL AND (typeof({0}) <> 'text' OR length({0}) > {1} OR "
                "instr(CAST({0} AS BLOB), X'00') > 0))",
                name, longest_text);
        default:
            return fmt::format("({} IS NOT NULL)", name);
    }
}

std::string question(const OGRLayer& layer, const std::string& row_number,
                     const std::vector<std::string>& conditions, const std::string& among) {
    auto& fields = *const_cast<OGRLayer&>(layer).GetLayerDefn();
    std::string cells;
    std::string any;
    for (std::size_t i = 0; i < conditions.size(); ++i) {
        cells += fmt::format(", CASE WHEN {} THEN 'x' || substr(CAST({} AS TEXT), 1, 60) END AS c{}",
                             conditions[i],
                             quoted_name(fields.GetFieldDefn(static_cast<int>(i))->GetNameRef()), i);
        any += (any.empty() ? "" : " OR ") + conditions[i];
    }
    return fmt::format("SELECT CAST({} AS TEXT) AS row_number{} FROM {} WHERE ({}){}", row_number, cells,
                       quoted_name(const_cast<OGRLayer&>(layer).GetName()), any,
                       among.empty() ? std::string{} : " AND " + among);
}

}  // namespace

std::map<std::int64_t, StrangeRow> find_strange_cells(Session& session, OGRLayer& layer,
                                                      const std::string& among) {
    std::map<std::int64_t, StrangeRow> found;
    const int count = layer.GetLayerDefn()->GetFieldCount();
    if (session.server || count == 0) {
        return found;
    }
    std::vector<std::string> conditions;
    conditions.reserve(static_cast<std::size_t>(count));
    for (int field = 0; field < count; ++field) {
        conditions.push_back(condition(*layer.GetLayerDefn()->GetFieldDefn(field)));
    }
    for (const auto& row :
         query(session, question(layer, quoted_name(layer.GetFIDColumn()), conditions, among))) {
        auto& cells = found[std::strtoll(row[0].value_or("0").c_str(), nullptr, 10)];
        for (int field = 0; field < count; ++field) {
            if (const auto& value = row[static_cast<std::size_t>(field) + 1]; value) {
                cells[field] = value->substr(1);
            }
        }
    }
    return found;
}

}  // namespace pipward::book::detail
