// SPDX-License-Identifier: MIT
#include "console/help.h"

#include <fmt/format.h>

#include <algorithm>

#include "console/call.h"
#include "console/screen.h"
#include "pipward/operation/declare/parameter_text.h"

namespace pipward::console {
namespace {

constexpr int readable_width = 100;  ///< longer lines are hard to read
constexpr int usual_left_width = 28;

int line_width() {
    return std::min(output_screen().width, readable_width);
}

/// On a narrow screen the words stand below what they explain.
int left_width() {
    return line_width() < 2 * usual_left_width ? 6 : usual_left_width;
}

/// Breaks a text at blanks, each line after the first moved in.
std::string wrapped(const std::string& text, int indent) {
    return in_lines(text, {.width = line_width()}, indent) + "\n";
}

std::string entry(const std::string& left, const std::string& right) {
    const int width = left_width();
    const auto blanks = static_cast<std::size_t>(width);
    std::string line = "  " + left;
    if (line.size() + 2 > blanks) {
        line += "\n" + std::string(blanks, ' ');
    } else {
        line.resize(blanks, ' ');
    }
    return line + wrapped(right, width);
}

/// What stands for a value in usage lines. Every kind must be met here.
struct ValueWord {
    std::string operator()(const operation::YesNoKind&) const { return "yes|no"; }
    std::string operator()(const operation::WholeKind&) const { return "NUMBER"; }
    std::string operator()(const operation::WholeListKind&) const { return "N,N,..."; }
    std::string operator()(const operation::NumberKind&) const { return "NUMBER"; }
    std::string operator()(const operation::DayKind&) const { return "DAY"; }
    std::string operator()(const operation::ChoiceKind&) const { return "WORD"; }
    std::string operator()(const operation::TextKind&) const { return "TEXT"; }
    std::string operator()(const operation::BookKind&) const { return "BOOK"; }
    std::string operator()(const operation::NewBookKind&) const { return "BOOK"; }
    std::string operator()(const operation::FileKind&) const { return "FILE"; }
};

std::string value_word(const operation::Parameter& parameter) {
    return std::visit(ValueWord{}, parameter.kind);
}

std::string default_words(const operation::Parameter& parameter) {
    const auto* day = std::get_if<operation::DayKind>(&parameter.kind);
    if (day != nullptr && day->today_if_absent) {
        return " Default: today.";
    }
    return parameter.default_text.empty() ? "" : fmt::format(" Default: {}.", parameter.default_text);
}

std::string right_words(const operation::Parameter& parameter) {
    auto text = parameter.help;
    if (const auto* choice = std::get_if<operation::ChoiceKind>(&parameter.kind)) {
        for (const auto& option : choice->options) {
            text += fmt::format("{} {} ({})", &option == &choice->options.front() ? "" : ",", option.word,
                                option.meaning);
        }
        text += ".";
    } else if (std::holds_alternative<operation::WholeKind>(parameter.kind) ||
               std::holds_alternative<operation::WholeListKind>(parameter.kind) ||
               std::holds_alternative<operation::NumberKind>(parameter.kind)) {
        text += fmt::format(" Give {}.", operation::what_fits(parameter.kind));
    }
    return text + default_words(parameter);
}

std::string option_entry(const operation::Parameter& parameter) {
    return entry(fmt::format("--{} {}", parameter.key, value_word(parameter)), right_words(parameter));
}

std::string options_of(const operation::Operation& operation, bool advanced) {
    const auto* place = positional_of(operation);
    std::string text;
    for (const auto& parameter : operation.parameters()) {
        if (&parameter != place && parameter.advanced == advanced) {
            text += option_entry(parameter);
        }
    }
    return text;
}

std::string section(const std::string& title, const std::string& body) {
    return body.empty() ? "" : "\n" + bold(title, output_screen()) + "\n" + body;
}

std::string output_options() {
    return entry("--format table|json|csv", "How results are printed on standard output. Default: table.") +
           entry("--table NAME", "Print this table of the results only, and all of it.") +
           entry("--wide",
                 "Print every table with every column in lines as long as they need, for a pager or an "
                 "editor.") +
           entry("--findings grouped|all",
                 "Whether one finding stands for more than three of its kind, or each has a line. Default: "
                 "grouped.") +
           entry(
               "--out FOLDER",
               "Where made files go, replacing older ones of their names; without it they are not kept. With "
               "--format csv every table is written there as NAME.csv.") +
           entry("--quiet", "No progress, notices or summary; warnings and errors remain.") +
           entry("--help", "This help.");
}

std::string usage_line(const operation::Operation& operation) {
    const auto* place = positional_of(operation);
    std::string line = "pipward " + operation.about().id;
    if (place != nullptr) {
        line += " " + value_word(*place);
    }
    for (const auto& parameter : operation.parameters()) {
        if (parameter.required && &parameter != place) {
            line += fmt::format(" --{} {}", parameter.key, value_word(parameter));
        }
    }
    return line + " [--option value ...]";
}

std::string tables_of(const operation::Operation& operation) {
    std::string text;
    for (const auto& shape : operation.results()) {
        text += entry(shape.name, shape.description);
    }
    return text;
}

}  // namespace

std::string operation_list() {
    std::string text;
    for (const auto& operation : operation::operations()) {
        text += entry(operation->about().id, operation->about().title);
    }
    return text;
}

std::string overview() {
    return wrapped("Pipward keeps an orchard map and plans bloom and crosses for a fruit breeder.", 0) +
           "\n" + wrapped("Usage: pipward OPERATION BOOK [--option value ...]", 7) +
           "       pipward OPERATION --help\n" + section("Operations", operation_list()) +
           section("Also", entry("--list", "The operations, one a line.") +
                               entry("--reference", "The reference of all operations, in Markdown.") +
                               entry("--schema", "The tables of an orchard book, in Markdown.") +
                               entry("--catalogue", "All operations and their parameters, as JSON.") +
                               entry("--version", "The version of this program.")) +
           section("Options of every operation", output_options()) +
           section("Exit codes",
                   entry("0", "Done.") +
                       entry("1",
                             "The book has findings that prevent the result: all are told, nothing "
                             "is written.") +
                       entry("2", "The call is wrong.") +
                       entry("3", "Something could not be read or written.") + entry("130", "Cancelled.")) +
           "\n" +
           wrapped(
               "Results go to standard output, everything else to standard error. Lines are as wide as the "
               "terminal; COLUMNS sets another width, NO_COLOR turns bold letters off. Without a terminal "
               "the width is 100.",
               0);
}

std::string operation_help(const operation::Operation& operation) {
    const auto& about = operation.about();
    const auto* place = positional_of(operation);
    auto text = fmt::format("{}\n\n{}\n{}", bold(about.title, output_screen()), wrapped(about.help, 0),
                            wrapped("Usage: " + usage_line(operation), 7));
    if (place != nullptr) {
        text += "\n" + entry(value_word(*place), place->help);
    }
    text += section("Options", options_of(operation, false));
    text += section("Options seldom needed", options_of(operation, true));
    text += section("Options of every operation", output_options());
    text += section("Returns", tables_of(operation));
    return text;
}

}  // namespace pipward::console
