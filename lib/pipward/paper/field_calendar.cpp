// SPDX-License-Identifier: MIT
#include "pipward/paper/field_calendar.h"

#include "pipward/place/address.h"

namespace pipward::paper {
namespace {

/// In a calendar there is room for the names of the hazards only; sheets tell them in full.
Sentence care_words(const std::set<season::Hazard>& hazards) {
    std::vector<Sentence> names;
    for (const auto& caution : season::cautions_about(hazards)) {
        names.push_back(caution.about);
    }
    return names.empty() ? Sentence{} : say("Caution: {}", joined(names, verbatim(" ")));
}

Sentence with_words(const season::FieldWorkItem& item) {
    if (item.with.empty() || item.kind == season::WorkKind::seed) {
        return {};  // the reason names the seed lot
    }
    return item.kind == season::WorkKind::pollen ? say("Store the pollen {}.", item.with)
                                                 : say("Pollen: {}.", item.with);
}

/// What is told of the work below its title: with what, why, what to mind.
Sentence text_of(const season::FieldWorkItem& item) {
    std::vector<Sentence> parts{item.tags.empty() ? Sentence{} : say("Tags: {}.", item.tags),
                                with_words(item), item.why, item.mind, care_words(item.hazards)};
    std::erase_if(parts, [](const Sentence& part) { return part.empty(); });
    return joined(parts, verbatim(" "));
}

Sentence place_of(const std::string& label, const OrchardIndex& book) {
    const auto* tree = book.tree(label);
    return tree == nullptr ? Sentence{} : place::address_of(*tree, book.orchard().rows);
}

}  // namespace

CalendarEvent calendar_event(const season::FieldWorkItem& item, const OrchardIndex& book) {
    return {item.key, *item.from, *item.to, item.title, text_of(item), place_of(item.tree, book)};
}

}  // namespace pipward::paper
