// SPDX-License-Identifier: MIT
#include "pipward/paper/cautions.h"

#include "pipward/paper/detail/html.h"

namespace pipward::paper {

std::string cautions_html(const std::set<season::Hazard>& hazards, const Speech& speech) {
    std::string items;
    for (const auto& caution : season::cautions_about(hazards)) {
        items += "<li>" + detail::element("strong", "", speech.plain(caution.about)) + " " +
                 speech.plain(caution.text) + "</li>\n";
    }
    return detail::section_html("care", say("Caution"),
                                detail::paragraph_html(season::who_comes_first(), speech) +
                                    "<ul class=\"care\">\n" + items + "</ul>\n",
                                speech);
}

}  // namespace pipward::paper
