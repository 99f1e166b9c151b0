// SPDX-License-Identifier: GPL-2.0-or-later
#include "record/tree_choices.h"

#include <QLocale>
#include <algorithm>

#include "pipward/value/season.h"
#include "record/record_form.h"
#include "text.h"

namespace pipward::desktop {
namespace {

QString day_text(Day day) {
    const auto parts = parts_of(day);
    return QLocale().toString(QDate(parts.year, parts.month, parts.day), QLocale::ShortFormat);
}

Hemisphere hemisphere_in(const Orchard& orchard) {
    const auto placed = std::ranges::find_if(
        orchard.stations, [](const Station& station) { return station.latitude.has_value(); });
    return placed == orchard.stations.end() ? Hemisphere::north : hemisphere_of(*placed->latitude);
}

const CrossGoal* find_goal(const Orchard& orchard, const std::string& code) {
    const auto found = std::ranges::find(orchard.goals, code, &CrossGoal::code);
    return found == orchard.goals.end() ? nullptr : &*found;
}

std::string accession_of(const Orchard& orchard, const std::string& label) {
    const auto tree = std::ranges::find(orchard.trees, label, &Tree::label);
    return tree == orchard.trees.end() ? std::string{} : tree->accession.value_or("");
}

bool is_wanted(const Orchard& orchard, const std::string& wanted, const std::string& donor) {
    return wanted == donor || std::ranges::any_of(orchard.blend_members, [&](const BlendMember& member) {
               return member.name == wanted && member.member == donor;
           });
}

HarvestLine line_of(const PollenLot& lot) {
    return {to_qt(lot.code), RecordForm::tr("%1   %2, collected %3")
                                 .arg(to_qt(lot.code), to_qt(lot.donor), day_text(lot.collected_on))};
}

bool is_in_hand(const PollenLot& lot, Day day) {
    return lot.collected_on <= day && (!lot.used_up_on || *lot.used_up_on >= day);
}

std::vector<HarvestLine> tags_on(const Orchard& orchard, const std::string& label) {
    std::vector<const Pollination*> work;
    for (const auto& row : orchard.pollinations) {
        if (row.tree == label) {
            work.push_back(&row);
        }
    }
    std::ranges::stable_sort(work, std::greater<>{}, &Pollination::pollinated_on);
    std::vector<HarvestLine> lines;
    for (const auto* row : work) {
        lines.push_back({to_qt(row->tag), RecordForm::tr("%1   %2 flowers, pollinated %3")
                                              .arg(to_qt(row->tag), QString::number(row->flowers),
                                                   day_text(row->pollinated_on))});
    }
    return lines;
}

}  // namespace

TreeChoices choices_for(const Orchard& orchard, const std::string& label, Day day) {
    TreeChoices choices;
    const auto accession = accession_of(orchard, label);
    const auto season = season_of(day, hemisphere_in(orchard));
    choices.accession = to_qt(accession);
    choices.season = season.year;
    for (const auto& goal : orchard.goals) {
        if (goal.seed_parent == accession && goal.season == season) {
            choices.crosses.push_back(
                {to_qt(goal.code),
                 QStringLiteral("%1   × %2").arg(to_qt(goal.code), to_qt(goal.pollen_parent))});
        }
    }
    choices.tags = tags_on(orchard, label);
    return choices;
}

std::vector<HarvestLine> lots_for(const Orchard& orchard, const std::string& cross, Day day) {
    std::vector<HarvestLine> wanted;
    std::vector<HarvestLine> others;
    const auto* goal = find_goal(orchard, cross);
    for (const auto& lot : orchard.pollen_lots) {
        if (is_in_hand(lot, day)) {
            const bool fits = goal != nullptr && is_wanted(orchard, goal->pollen_parent, lot.donor);
            (fits ? wanted : others).push_back(line_of(lot));
        }
    }
    wanted.insert(wanted.end(), others.begin(), others.end());
    return wanted;
}

QString next_tag(const Orchard& orchard, const std::string& cross) {
    for (char letter = 'a'; letter <= 'z'; ++letter) {
        const auto tag = cross + "-" + letter;
        if (std::ranges::find(orchard.pollinations, tag, &Pollination::tag) == orchard.pollinations.end()) {
            return to_qt(tag);
        }
    }
    return {};
}

}  // namespace pipward::desktop
