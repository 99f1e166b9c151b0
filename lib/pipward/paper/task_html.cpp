// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/task_html.h"

#include <fmt/format.h>

#include "pipward/paper/detail/html.h"
#include "pipward/paper/text.h"
#include "pipward/season/words.h"

namespace pipward::paper::detail {
namespace {

std::string strong_name(const std::string& name) {
    return element("strong", "", name_html(name));
}

/// Markup, as a filling.
Sentence placed(const std::string& name, const std::string& tree) {
    const auto strong = verbatim(strong_name(name));
    return tree.empty() ? say("{}, no living tree on record", strong)
                        : say("{}, tree {}", strong, name_html(tree));
}

std::string_view kind_of(cross::Urgency urgency) {
    switch (urgency) {
        case cross::Urgency::too_late:
            return "tag missed";
        case cross::Urgency::today:
            return "tag now";
        case cross::Urgency::this_week:
            return "tag soon";
        case cross::Urgency::later:
            break;
    }
    return "tag";
}

}  // namespace

std::string work_html(const cross::PollenTask& task, const Speech& speech) {
    switch (task.work) {
        case cross::PollenWork::collect:
            return speech.around(say("Collect balloon-stage flowers of {}", placed(task.donor, task.tree)));
        case cross::PollenWork::cut_branch:
            return speech.around(say("Cut a branch of {} for forcing", placed(task.donor, task.tree)));
        case cross::PollenWork::test_lot:
            break;
    }
    return task.lot ? speech.around(say("Test the stored pollen of {}, lot {}", strong_name(task.donor),
                                        name_html(*task.lot)))
                    : speech.around(say("Test the stored pollen of {}", strong_name(task.donor)));
}

std::string work_html(const cross::FieldTask& task, const Speech& speech) {
    const auto place = placed(task.seed_parent, task.tree);
    switch (task.work) {
        case cross::FieldWork::bag:
            return speech.around(say("Bag the blossom of {}", place));
        case cross::FieldWork::pollinate:
            return speech.around(say("Pollinate {}, with {}", place, strong_name(task.donor)));
        case cross::FieldWork::unbag:
            break;
    }
    return speech.around(say("Remove the bags from {}", place));
}

std::string urgency_tag(cross::Urgency urgency, const Speech& speech) {
    return element("span", kind_of(urgency), speech.plain(season::urgency_words(urgency)));
}

std::string later_season_tag(const cross::PollenTask& task, Season season, const Speech& speech) {
    return task.season_of_use > season
               ? element("span", "tag soon", speech.plain(say("for spring {}", task.season_of_use.year)))
               : "";
}

std::string last_day_html(const std::string& day, bool by_median, const Speech& speech) {
    return by_median ? day + " " + element("span", "quiet", speech.plain(say("(median)")))
                     : element("strong", "", day);
}

std::string days_html(Day from, Day to, bool by_median, const Speech& speech) {
    const auto last = last_day_html(day_html(to, speech), by_median, speech);
    return from == to ? last : span_html(day_html(from, speech), last);
}

std::string tick_box(const Sentence& what, const Speech& speech) {
    return fmt::format("<input type=\"checkbox\" aria-label=\"{}\">", speech.plain(say("Done: {}", what)));
}

}  // namespace pipward::paper::detail
