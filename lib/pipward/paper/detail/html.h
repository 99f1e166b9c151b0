// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "pipward/paper/speech.h"
#include "pipward/value/day.h"

/// Pieces of HTML. Parameters called `html` hold markup; all others are plain text and escaped here.
namespace pipward::paper::detail {

/// `<tag class="kind">html</tag>`; no class attribute where `kind` is empty.
std::string element(std::string_view tag, std::string_view kind, std::string_view html);
/// A name from the book, kept apart from the direction of the writing around it.
std::string name_html(std::string_view name);
/// Names joined by commas.
std::string names_html(const std::vector<std::string>& names);
/// "Sun 12 Apr", machine-readable.
std::string day_html(Day day, const Speech& speech);
/// From one day to another, on two lines where the place is narrow, each day whole. Both are markup.
std::string span_html(const std::string& from_html, const std::string& to_html);

/// A part of a page under its own second-level heading; `id` is the target of links to it.
std::string section_html(std::string_view id, const Sentence& title, std::string_view html,
                         const Speech& speech);

struct SheetColumn {
    Sentence label;
    int percent = 0;             ///< of the table's width on a wide page
    bool heads_row = false;      ///< its cells name their row; one column a table
    std::string_view kind = "";  ///< class of its cells
};

struct SheetRow {
    std::vector<std::string> html;  ///< one a column
    std::string below_html;         ///< across the whole width, under the cells; may be empty
};

/// A table that turns into a pile of cards on a phone, each value under its column's label.
/// Rows are never torn over two pages.
std::string sheet_table(const Sentence& caption, const std::vector<SheetColumn>& columns,
                        const std::vector<SheetRow>& rows, const Speech& speech);
/// A paragraph; fillings of the sentence are markup.
std::string paragraph_html(const Sentence& sentence, const Speech& speech);

}  // namespace pipward::paper::detail
