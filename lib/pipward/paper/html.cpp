// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/html.h"

#include <fmt/format.h>

#include "pipward/paper/text.h"

namespace pipward::paper::detail {
namespace {

// One word this short is a code or a tag: "B-11" broken at its hyphen is read wrongly.
constexpr double code_em = 7;

std::string time_html(Day day, std::string_view text) {
    return fmt::format("<time datetime=\"{}\">{}</time>", to_iso(day), text);
}

std::string head_html(const std::vector<SheetColumn>& columns, const Speech& speech) {
    std::string cells;
    for (const auto& column : columns) {
        cells += fmt::format("<th scope=\"col\" style=\"width:{}%\">{}</th>", column.percent,
                             speech.plain(column.label));
    }
    return "<thead><tr>" + cells + "</tr></thead>\n";
}

std::string cell_html(const SheetColumn& column, const std::string& html, const Speech& speech) {
    if (column.heads_row) {
        return "<th scope=\"row\">" + html + "</th>";
    }
    std::string kind(column.kind);
    if (html.empty()) {
        kind += kind.empty() ? "empty" : " empty";
    }
    const auto attribute = kind.empty() ? "" : " class=\"" + kind + "\"";
    return fmt::format("<td{} data-label=\"{}\"><div>{}</div></td>", attribute, speech.plain(column.label),
                       html);
}

std::string row_html(const std::vector<SheetColumn>& columns, const SheetRow& row, const Speech& speech) {
    std::string cells;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        cells += cell_html(columns[i], row.html.at(i), speech);
    }
    auto html = "<tbody><tr>" + cells + "</tr>";
    if (!row.below_html.empty()) {
        html += fmt::format("\n<tr class=\"below\"><td colspan=\"{}\">{}</td></tr>", columns.size(),
                            row.below_html);
    }
    return html + "</tbody>\n";
}

}  // namespace

std::string element(std::string_view tag, std::string_view kind, std::string_view html) {
    return kind.empty() ? fmt::format("<{0}>{1}</{0}>", tag, html)
                        : fmt::format("<{0} class=\"{2}\">{1}</{0}>", tag, html, kind);
}

std::string name_html(std::string_view name) {
    const bool is_code = name.find(' ') == name.npos && estimated_width(name) <= code_em;
    return (is_code ? "<bdi class=\"short\">" : "<bdi>") + escape_markup(name) + "</bdi>";
}

std::string names_html(const std::vector<std::string>& names) {
    std::string html;
    for (const auto& name : names) {
        html += (html.empty() ? "" : ", ") + name_html(name);
    }
    return html;
}

std::string day_html(Day day, const Speech& speech) {
    return time_html(day, escape_markup(speech.day(day)));
}

std::string span_html(const std::string& from_html, const std::string& to_html) {
    return element("span", "from", from_html + " –") + " " + to_html;
}

std::string section_html(std::string_view id, const Sentence& title, std::string_view html,
                         const Speech& speech) {
    return fmt::format(
        "<section id=\"{0}\" aria-labelledby=\"{0}-title\">\n<h2 id=\"{0}-title\">{1}</h2>\n{2}</section>\n",
        id, speech.plain(title), html);
}

std::string sheet_table(const Sentence& caption, const std::vector<SheetColumn>& columns,
                        const std::vector<SheetRow>& rows, const Speech& speech) {
    auto html = "<table>\n<caption>" + speech.plain(caption) + "</caption>\n" + head_html(columns, speech);
    for (const auto& row : rows) {
        html += row_html(columns, row, speech);
    }
    return html + "</table>\n";
}

std::string paragraph_html(const Sentence& sentence, const Speech& speech) {
    return element("p", "", speech.around(sentence)) + "\n";
}

}  // namespace pipward::paper::detail
