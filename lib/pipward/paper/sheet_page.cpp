// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/sheet_sections.h"
#include "pipward/paper/text.h"

namespace pipward::paper::detail {

std::string sheet_page(const std::string& title, const std::string& body_html, const Speech& speech) {
    // The form is the language's own tag.
    const auto language = speech.plain(say("en"));
    return "<!DOCTYPE html>\n<html lang=\"" + language +
           "\">\n<head>\n<meta charset=\"utf-8\">\n"
           "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
           "<meta name=\"color-scheme\" content=\"light dark\">\n<title>" +
           escape_markup(title) + "</title>\n<style>\n" + sheet_style() + "</style>\n</head>\n<body>\n" +
           body_html + "</body>\n</html>\n";
}

}  // namespace pipward::paper::detail
