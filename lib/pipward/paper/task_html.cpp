// SPDX-License-Identifier: MIT
#include "pipward/paper/task_html.h"

#include <fmt/format.h>

#include "pipward/paper/html.h"
#include "pipward/paper/season_words.h"
#include "pipward/paper/text.h"

namespace pipward {
namespace {

std::string strong_name(const std::string& name) {
    return element("strong", "", name_html(name));
}

std::string at_tree(const std::string& tree) {
    return tree.empty() ? ", no living tree on record" : ", tree " + name_html(tree);
}

std::string_view kind_of(Urgency urgency) {
    switch (urgency) {
        case Urgency::too_late:
            return "tag missed";
        case Urgency::today:
            return "tag now";
        case Urgency::this_week:
            return "tag soon";
        case Urgency::later:
            break;
    }
    return "tag";
}

}  // namespace

std::string work_html(const PollenTask& task) {
    switch (task.work) {
        case PollenWork::gather:
            return "Gather balloon flowers of " + strong_name(task.donor) + at_tree(task.tree);
        case PollenWork::cut_branch:
            return "Cut a branch of " + strong_name(task.donor) + at_tree(task.tree) + ", to force indoors";
        case PollenWork::test_lot:
            break;
    }
    return "Test the kept pollen of " + strong_name(task.donor);
}

std::string work_html(const FieldTask& task) {
    const auto place = strong_name(task.seed_parent) + at_tree(task.tree);
    switch (task.work) {
        case FieldWork::bag:
            return "Bag the blossom of " + place;
        case FieldWork::pollinate:
            return "Pollinate " + place + ", with " + strong_name(task.donor);
        case FieldWork::unbag:
            break;
    }
    return "Take the bags off " + place;
}

std::string urgency_tag(Urgency urgency) {
    return element("span", kind_of(urgency), urgency_words(urgency));
}

std::string later_season_tag(const PollenTask& task, Season season) {
    return task.season_of_use > season
               ? element("span", "tag soon", fmt::format("for spring {}", task.season_of_use.year))
               : "";
}

std::string days_html(Day from, Day to) {
    const auto last = element("strong", "", iso_work_day_html(to));
    return from == to ? last : span_html(iso_work_day_html(from), last);
}

std::string tick_box(std::string_view what) {
    return fmt::format("<input type=\"checkbox\" aria-label=\"Done: {}\">", escape_markup(what));
}

}  // namespace pipward
