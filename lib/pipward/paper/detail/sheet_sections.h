// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/paper/season_sheet.h"
#include "pipward/paper/speech.h"

/// The parts of the season's sheet, in the order of the page. Each is one `<section>` with its own heading.
namespace pipward::paper::detail {

std::string do_now_section(const cross::SeasonPlan& plan, const Speech& speech);
std::string bloom_section(const SeasonSheet& sheet, const Speech& speech);
std::string crosses_section(const cross::SeasonPlan& plan, const Speech& speech);
std::string pollen_section(const cross::SeasonPlan& plan, const Speech& speech);
std::string field_section(const cross::SeasonPlan& plan, const Speech& speech);
std::string findings_section(const SeasonSheet& sheet, const Speech& speech);
std::string sureness_section(const SeasonSheet& sheet, const Speech& speech);
std::string cautions_section(const Speech& speech);

/// The page's own style sheet, the bloom chart's included.
std::string sheet_style();

/// A whole page of HTML 5: its title as plain text, its body as markup.
std::string sheet_page(const std::string& title, const std::string& body_html, const Speech& speech);

}  // namespace pipward::paper::detail
