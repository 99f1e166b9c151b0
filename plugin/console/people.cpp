// SPDX-License-Identifier: MIT
#include "console/people.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <vector>

#include "console/finding_lines.h"
#include "console/screen.h"
#include "pipward/operation/season/result_tables.h"
#include "pipward/record/screen_table.h"
#include "pipward/record/table_text.h"
#include "pipward/record/terminal_text.h"
#include "pipward/value/utf8.h"

namespace pipward::console {
namespace {

/// A table that is one of several must not push the others off the screen.
constexpr std::size_t most_rows_of_several = 20;

record::Screen screen_for(const Call& call) {
    auto screen = output_screen();
    screen.year = year_spoken_of(call);
    return screen;
}

bool is_finding_table(const Table& table) {
    return table.shape.name == operation::finding_table.name;
}

record::TableView view_of(const Call& call, const Table& table) {
    const auto& declared = call.operation->results();
    const auto found = std::ranges::find(declared, table.shape.name, &operation::ResultShape::name);
    return found == declared.end() ? record::TableView{} : found->view;
}

/// What stands behind a result is one itself where there is no other.
bool is_shown(const Call& call, const Table& table) {
    const auto& wanted = call.output.table;
    if (!wanted.empty() || call.output.wide) {
        return wanted.empty() || wanted == table.shape.name;
    }
    return !view_of(call, table).behind ||
           std::ranges::all_of(call.operation->results(),
                               [](const operation::ResultShape& shape) { return shape.view.behind; });
}

std::vector<const Table*> shown_tables(const Call& call, const operation::Outcome& outcome) {
    std::vector<const Table*> tables;
    for (const auto& table : outcome.tables) {
        if (is_shown(call, table)) {
            tables.push_back(&table);
        }
    }
    return tables;
}

bool is_cut(const Table& table, std::size_t tables) {
    return tables > 1 && table.rows.size() > most_rows_of_several;
}

std::string part_of(const Table& table, const record::TableView& view, const record::Screen& screen,
                    std::size_t tables) {
    if (!is_cut(table, tables)) {
        return screen_table(table, view, screen, record::Extent::part);
    }
    Table first{table.shape, {table.rows.begin(), table.rows.begin() + most_rows_of_several}};
    const auto more = fmt::format("... and {} more rows: --table {}",
                                  table.rows.size() - most_rows_of_several, table.shape.name);
    return screen_table(first, view, screen, record::Extent::part) + in_lines(more, screen, 4) + "\n";
}

std::string listed(const Findings& findings, const Call& call, const record::Screen& screen) {
    auto text = bold(operation::finding_table.title, screen) + "\n";
    for (const auto& line : finding_lines(findings, call.output.all_findings)) {
        text += in_lines(line, screen, 2) + "\n";
    }
    return findings.empty() ? text + "(nothing)\n" : text;
}

std::string text_of(const Table& table, const Call& call, const operation::Outcome& outcome,
                    const record::Screen& screen, std::size_t tables) {
    if (call.output.wide) {
        return to_terminal(table);
    }
    if (!call.output.table.empty()) {
        return screen_table(table, view_of(call, table), screen, record::Extent::whole);
    }
    return is_finding_table(table) ? listed(outcome.findings, call, screen)
                                   : part_of(table, view_of(call, table), screen, tables);
}

int widest_topic(const std::vector<operation::AnswerLine>& answer) {
    int widest = 0;
    for (const auto& line : answer) {
        widest = std::max(widest, record::terminal_width(line.topic.text()));
    }
    return widest;
}

/// Topics to the left, their words beside them.
std::string text_of(const std::vector<operation::AnswerLine>& answer, const record::Screen& screen) {
    constexpr std::size_t longest = 4000;
    const int column = widest_topic(answer) + 2;
    std::string text;
    for (const auto& line : answer) {
        const auto blanks =
            std::string(static_cast<std::size_t>(column - record::terminal_width(line.topic.text())), ' ');
        text += (line.topic.empty() ? "" : bold(line.topic.text(), screen)) + blanks +
                in_lines(one_line(line.words.text(), longest), screen, column) + "\n";
    }
    return text;
}

}  // namespace

std::optional<int> year_spoken_of(const Call& call) {
    for (const auto& parameter : call.operation->parameters()) {
        const auto* kind = std::get_if<operation::DayKind>(&parameter.kind);
        const auto given = call.form.find(parameter.key);
        if (kind != nullptr && kind->today_if_absent && given != call.form.end()) {
            const auto day = parse_iso_day(given->second);
            return day ? std::optional{parts_of(*day).year} : std::nullopt;
        }
    }
    return std::nullopt;
}

std::string text_for_people(const Call& call, const operation::Outcome& outcome) {
    const auto screen = screen_for(call);
    const auto tables = shown_tables(call, outcome);
    auto text = call.output.table.empty() ? text_of(outcome.answer, screen) : std::string{};
    for (const auto* table : tables) {
        text += (text.empty() ? "" : "\n") + text_of(*table, call, outcome, screen, tables.size());
    }
    return text;
}

std::string left_out(const Call& call, const operation::Outcome& outcome) {
    if (call.output.format != Format::table || call.output.wide || !call.output.table.empty()) {
        return {};
    }
    const auto screen = screen_for(call);
    const auto tables = shown_tables(call, outcome);
    std::vector<std::string> names;
    for (const auto& table : outcome.tables) {
        const bool whole =
            is_finding_table(table) || (is_shown(call, table) && !is_cut(table, tables.size()) &&
                                        !leaves_out(table, view_of(call, table), screen));
        if (!whole && !table.rows.empty()) {
            names.push_back(table.shape.name);
        }
    }
    return names.empty() ? ""
                         : fmt::format(
                               "There is more than stands here: --table NAME shows one table whole "
                               "({}), --wide everything.",
                               fmt::join(names, ", "));
}

bool shows_findings(const Call& call, const operation::Outcome& outcome) {
    return call.output.format == Format::table &&
           std::ranges::any_of(outcome.tables, [&](const Table& table) {
               return is_finding_table(table) && is_shown(call, table);
           });
}

}  // namespace pipward::console
