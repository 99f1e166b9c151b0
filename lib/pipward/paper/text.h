// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

/// User text made fit for markup and for places that cannot wrap by themselves.
namespace pipward::paper {

/// Valid UTF-8 that HTML and XML may hold: broken bytes, control characters, turns of direction and
/// non-characters become U+FFFD, line ends and tabs become spaces.
std::string clean_text(std::string_view text);

/// `clean_text` with & < > " ' as references: safe as content and in quoted attributes of HTML and XML.
std::string escape_markup(std::string_view text);

/// How wide the text is at most in a plain sans-serif face, in em. A guess on the safe side: no font is
/// asked.
double estimated_width(std::string_view text);

/// Breaks at spaces, else anywhere between characters, into at most `max_lines` lines of `max_em` each; what
/// is left over ends in "…". Marks and joined emoji stay with the character before them.
/// Shape: at least one line, each clean but not escaped.
std::vector<std::string> wrap_lines(std::string_view text, double max_em, int max_lines);

}  // namespace pipward::paper
