// SPDX-License-Identifier: MIT
#include "pipward/operation/reference.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/book/schema.h"
#include "pipward/operation/declare/parameter_text.h"
#include "pipward/operation/operation.h"
#include "pipward/operation/season/result_tables.h"

namespace pipward::operation {
namespace {

/// A table cell: a bar would end it.
std::string cell_text(std::string_view text) {
    std::string safe;
    for (const char c : text) {
        safe += c == '|' ? "\\|" : std::string(1, c);
    }
    return safe;
}

std::string need_text(const Parameter& parameter) {
    if (parameter.required) {
        return "must be given";
    }
    const auto* day = std::get_if<DayKind>(&parameter.kind);
    if (day != nullptr && day->today_if_absent) {
        return "today";
    }
    return parameter.default_text.empty() ? "" : "`" + parameter.default_text + "`";
}

std::string parameter_row(const Parameter& parameter) {
    return fmt::format("| `{}` | {} | {} | {}{} |\n", parameter.key,
                       cell_text(what_fits(parameter.kind).text()), need_text(parameter),
                       cell_text(parameter.help), parameter.advanced ? " Seldom needed." : "");
}

std::string choices_of(const Parameter& parameter) {
    const auto* choice = std::get_if<ChoiceKind>(&parameter.kind);
    if (choice == nullptr) {
        return {};
    }
    std::string text = fmt::format("\n`{}` is one of:\n\n", parameter.key);
    for (const auto& option : choice->options) {
        text += fmt::format("- `{}`: {}\n", option.word, option.meaning);
    }
    return text;
}

std::string parameters_of(const Operation& operation) {
    std::string text = "| parameter | value | default | |\n|---|---|---|---|\n";
    std::string choices;
    for (const auto& parameter : operation.parameters()) {
        text += parameter_row(parameter);
        choices += choices_of(parameter);
    }
    return text + choices;
}

std::string words_of(const Column& column) {
    std::string text;
    for (const auto& word : column.words) {
        text += (text.empty() ? " Words: `" : ", `") + word.code + "`";
    }
    return text.empty() ? text : text + ".";
}

std::string columns_of(const TableShape& shape) {
    std::string text = "| column | type | unit | |\n|---|---|---|---|\n";
    for (const auto& column : shape.columns) {
        text += fmt::format("| `{}` | {} | {} | {}{} |\n", column.name, to_text(column.type),
                            cell_text(column.unit), cell_text(column.description), words_of(column));
    }
    return text;
}

std::string_view geometry_of(const TableShape& shape) {
    return shape.has_points ? " One point a row." : shape.has_lines ? " One line a row." : "";
}

std::string result_of(const TableShape& shape) {
    return fmt::format("\nTable `{}`: {}{}\n\n{}", shape.name, shape.description, geometry_of(shape),
                       columns_of(shape));
}

std::string quoted(const std::string& value) {
    return value.find(' ') == std::string::npos ? value : "'" + value + "'";
}

/// The example as a console call; the book comes first, without its key.
std::string call_of(const Operation& operation, const Example& example) {
    std::string call = "pipward " + operation.about().id;
    bool placed = false;
    for (const auto& parameter : operation.parameters()) {
        const auto given = example.values.find(parameter.key);
        if (given == example.values.end()) {
            continue;
        }
        const bool first = parameter.required && !placed;
        call += (first ? " " : " --" + parameter.key + " ") + quoted(given->second);
        placed = placed || parameter.required;
    }
    return call;
}

std::string examples_of(const Operation& operation) {
    std::string text;
    for (const auto& example : operation.examples()) {
        text += fmt::format("\n{}\n\n    {}\n", example.words, call_of(operation, example));
    }
    return text;
}

std::string section_of(const Operation& operation) {
    const auto& about = operation.about();
    std::string text = fmt::format("\n## {}: `{}`\n\n{}\n\n", about.title, about.id, about.help);
    text += parameters_of(operation) + examples_of(operation);
    for (const auto& shape : operation.results()) {
        text += result_of(shape);
    }
    return text;
}

std::string reference_words(const book::BookColumn& column) {
    std::string text;
    for (const auto& reference : column.references) {
        text += fmt::format("{}`{}.{}`", text.empty() ? "" : " or ", reference.table, reference.column);
    }
    return text.empty() ? text : " Must answer to " + text + ".";
}

std::string domain_words(const book::BookColumn& column) {
    const auto* domain = book::find_domain(column.domain);
    if (domain == nullptr) {
        return {};
    }
    return domain->choices.empty() ? fmt::format(" {} to {}.", domain->low, domain->high)
                                   : fmt::format(" One of [{0}](#{0}).", domain->name);
}

std::string book_column_row(const book::BookColumn& column) {
    return fmt::format("| `{}` | {} | {} | {} | {}{}{} |\n", column.name, to_text(column.type),
                       cell_text(column.unit), column.required ? "yes" : "", cell_text(column.description),
                       domain_words(column), reference_words(column));
}

std::string book_table_section(const book::BookTable& table) {
    auto text = fmt::format("\n### `{}`: {}\n\n{}", table.name, table.title, table.description);
    if (table.geometry != book::GeometryKind::none) {
        text += fmt::format(" One {} a row.", book::to_text(table.geometry));
    }
    if (!table.key.empty()) {
        text += fmt::format(" A row is known by its `{}`.", fmt::join(table.key, "` and `"));
    }
    text += "\n\n| column | type | unit | needed | |\n|---|---|---|---|---|\n";
    for (const auto& column : table.columns) {
        text += book_column_row(column);
    }
    return text;
}

std::string domain_section(const book::FieldDomain& domain) {
    auto text = fmt::format("\n### {}\n\n{}\n\n", domain.name, domain.description);
    for (const auto& choice : domain.choices) {
        text += fmt::format("- `{}`: {}\n", choice.value, choice.meaning);
    }
    return text;
}

}  // namespace

std::string operation_reference() {
    std::string text =
        "# Operations\n\nWritten by `pipward --reference`; not edited by hand.\n\nEvery operation prints its "
        "tables for people, or with `--format json` or `--format csv` for programs. Where the input has "
        "errors (exit code 1), JSON has every table without rows and the findings that tell why; CSV is "
        "empty.\n";
    for (const auto& operation : operations()) {
        text += section_of(*operation);
    }
    return text;
}

std::string book_reference(book::Schema schema) {
    std::string text =
        "# The orchard book\n\nWritten by `pipward --schema`; not edited by hand. Unknown is NULL, never 0 "
        "or an empty text. Days are ISO 8601.\n\n## Tables that you fill in\n";
    for (const auto& table : schema) {
        text += book_table_section(table);
    }
    text += "\n## Closed lists\n";
    for (const auto& domain : book::field_domains()) {
        text += domain.choices.empty() ? "" : domain_section(domain);
    }
    text += "\n## Result tables\n\nReplaced whole by the operations that make them; never edited by hand.\n";
    for (const auto& shape : book_result_shapes()) {
        text += fmt::format("\n### `{}`: {}\n\n{}{}\n\n{}", shape.name, shape.title, shape.description,
                            geometry_of(shape), columns_of(shape));
    }
    return text;
}

}  // namespace pipward::operation
