// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/paper/season_sheet.h"

/// The parts of the season's sheet, in the order of the page. Each is one <section> with its own heading.
namespace pipward {

std::string do_now_section(const SeasonPlan& plan);
std::string bloom_section(const SeasonSheet& sheet);
std::string crosses_section(const SeasonPlan& plan);
std::string pollen_section(const SeasonPlan& plan);
std::string field_section(const SeasonPlan& plan);
std::string findings_section(const SeasonSheet& sheet);
std::string sureness_section(const SeasonSheet& sheet);
std::string cautions_section();

/// The page's own style sheet, the bloom chart's included.
std::string sheet_style();

}  // namespace pipward
