// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <string>

#include "pipward/paper/speech.h"
#include "pipward/season/hazards.h"

namespace pipward::paper {

/// A section of a page that tells what can hurt at the work of a sheet, once and shortly.
std::string cautions_html(const std::set<season::Hazard>& hazards, const Speech& speech);

}  // namespace pipward::paper
