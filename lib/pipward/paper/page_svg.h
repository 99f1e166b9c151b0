// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/paper/page.h"

namespace pipward::paper {

/// A page as an SVG file in true millimetres, its text as text. Text stands on one line each and QR codes are
/// left out: layouts for this writer break their lines themselves.
std::string page_svg(const Page& page, const std::string& title);

}  // namespace pipward::paper
