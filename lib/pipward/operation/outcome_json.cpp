// SPDX-License-Identifier: MIT
#include "pipward/operation/outcome_json.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "pipward/book/book.h"
#include "pipward/operation/declare/parameter_text.h"

namespace pipward::operation {
namespace {

using Json = nlohmann::ordered_json;
constexpr int one_line = -1;

struct CellJson {
    Json operator()(std::monostate) const { return nullptr; }
    Json operator()(Day day) const { return to_iso(day); }
    Json operator()(const Sentence& sentence) const { return sentence.text(); }
    Json operator()(const auto& plain) const { return plain; }
};

Json json_of(const Column& column) {
    return {{"name", column.name},
            {"type", to_text(column.type)},
            {"unit", column.unit},
            {"description", column.description}};
}

Json json_of(const std::vector<Column>& columns) {
    Json list = Json::array();
    for (const auto& column : columns) {
        list.push_back(json_of(column));
    }
    return list;
}

Json json_of(const Table& plain) {
    const auto table = with_lines_as_text(plain);
    Json rows = Json::array();
    for (const auto& row : table.rows) {
        Json cells = Json::array();
        for (const auto& cell : row.cells) {
            cells.push_back(std::visit(CellJson{}, cell));
        }
        rows.push_back(std::move(cells));
    }
    return {{"columns", json_of(table.shape.columns)}, {"rows", std::move(rows)}};
}

Json json_of(const Finding& finding) {
    return {{"level", to_text(finding.level)}, {"table", finding.table}, {"row", finding.row},
            {"field", finding.field},          {"value", finding.value}, {"message", finding.message},
            {"remedy", finding.remedy}};
}

bool names_the_book(const ParameterKind& kind) {
    return std::holds_alternative<BookKind>(kind) || std::holds_alternative<NewBookKind>(kind);
}

bool is_as_of(const ParameterKind& kind) {
    const auto* day = std::get_if<DayKind>(&kind);
    return day != nullptr && day->today_if_absent;
}

/// The form's value of the first parameter of such a kind.
Json value_of(const Operation& operation, const Form& form, bool (*is_wanted)(const ParameterKind&)) {
    for (const auto& parameter : operation.parameters()) {
        const auto given = form.find(parameter.key);
        if (is_wanted(parameter.kind) && given != form.end()) {
            return book::shown_location(given->second);
        }
    }
    return nullptr;
}

template <class Limited>
void put_limits(Json& json, const Limited& kind) {
    json["least"] = kind.least ? Json(*kind.least) : Json();
    json["most"] = kind.most ? Json(*kind.most) : Json();
}

Json json_of(const Parameter& parameter) {
    Json json{{"key", parameter.key},
              {"label", parameter.label},
              {"help", parameter.help},
              {"kind", kind_word(parameter.kind)},
              {"required", parameter.required},
              {"advanced", parameter.advanced},
              {"default", parameter.default_text},
              {"unit", unit_of(parameter.kind)}};
    std::visit(
        [&](const auto& kind) {
            if constexpr (requires { kind.least; }) {
                put_limits(json, kind);
            }
            if constexpr (requires { kind.options; }) {
                for (const auto& option : kind.options) {
                    json["options"].push_back({{"word", option.word}, {"meaning", option.meaning}});
                }
            }
            if constexpr (requires { kind.today_if_absent; }) {
                json["today_if_absent"] = kind.today_if_absent;
            }
        },
        parameter.kind);
    return json;
}

Json json_of(const TableShape& shape) {
    Json json{{"name", shape.name},
              {"title", shape.title},
              {"description", shape.description},
              {"points", shape.has_points}};
    if (shape.has_lines) {
        json["lines"] = true;
    }
    json["columns"] = json_of(shape.columns);
    return json;
}

Json json_of(const Example& example) {
    return {{"words", example.words}, {"values", Json(example.values)}};
}

template <class Items>
Json list_of(const Items& items) {
    Json list = Json::array();
    for (const auto& item : items) {
        list.push_back(json_of(item));
    }
    return list;
}

Json json_of(const Operation& operation) {
    const auto& about = operation.about();
    return {{"id", about.id},
            {"title", about.title},
            {"group", about.group},
            {"help", about.help},
            {"parameters", list_of(operation.parameters())},
            {"results", list_of(operation.results())},
            {"examples", list_of(operation.examples())}};
}

/// JSON lets DEL and the control characters above it (U+007F to U+009F) stand as they are, and terminals obey
/// some of them.
std::string with_controls_escaped(const std::string& json) {
    std::string text;
    for (std::size_t i = 0; i < json.size(); ++i) {
        const auto byte = static_cast<unsigned char>(json[i]);
        const auto next = static_cast<unsigned char>(i + 1 < json.size() ? json[i + 1] : '\0');
        if (byte == 0x7F) {
            text += "\\u007f";
        } else if (byte == 0xC2 && next >= 0x80 && next <= 0x9F) {
            text += fmt::format("\\u{:04x}", next);
            ++i;
        } else {
            text += json[i];
        }
    }
    return text;
}

/// Text that is not UTF-8 is repaired rather than refused: a stray byte in a note must not lose the plan.
std::string written(const Json& json, int indent) {
    return with_controls_escaped(json.dump(indent, ' ', false, Json::error_handler_t::replace)) + "\n";
}

}  // namespace

std::string outcome_json(const Operation& operation, const Form& form, const Outcome& outcome) {
    Json tables = Json::object();
    for (const auto& table : outcome.tables) {
        tables[table.shape.name] = json_of(table);
    }
    Json files = Json::array();
    for (const auto& file : outcome.files) {
        files.push_back(file.name);
    }
    return written({{"operation", operation.about().id},
                    {"book", value_of(operation, form, names_the_book)},
                    {"as_of", value_of(operation, form, is_as_of)},
                    {"tables", std::move(tables)},
                    {"files", std::move(files)},
                    {"findings", list_of(outcome.findings)}},
                   one_line);
}

Outcome refused_outcome(const Operation& operation, const Findings& findings) {
    Outcome outcome;
    for (const auto& shape : operation.results()) {
        outcome.tables.push_back({shape, {}});
    }
    outcome.findings = findings;
    return outcome;
}

std::string catalogue_json() {
    Json list = Json::array();
    for (const auto& operation : operations()) {
        list.push_back(json_of(*operation));
    }
    return written(list, 2);
}

}  // namespace pipward::operation
