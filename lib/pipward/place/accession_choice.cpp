// SPDX-License-Identifier: MIT
#include "pipward/place/accession_choice.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "pipward/place/named_place.h"
#include "pipward/record/orchard_index.h"
#include "pipward/value/complaint.h"
#include "pipward/value/listed_names.h"
#include "pipward/value/nearest.h"

namespace pipward::place {
namespace {

constexpr std::size_t most_named = 500;
constexpr std::size_t most_unnamed = 60;

// What a name of the list may stand for.
class OtherNames {
  public:
    explicit OtherNames(const Orchard& orchard) : orchard_(orchard), book_(orchard) {
        for (const auto& member : orchard.blend_members) {
            accessions_.insert(member.member);
        }
        for (const auto& accession : orchard.accessions) {
            add(accession.name);
            add(accession.seed_parent);
            add(accession.pollen_parent);
            add(accession.sport_of);
        }
        for (const auto& goal : orchard.goals) {
            add(goal.seed_parent);
            add(goal.pollen_parent);
        }
    }

    /// Empty where the name is not known.
    std::vector<std::string> meant_by(const std::string& name) const {
        if (accessions_.contains(name)) {
            return {name};
        }
        if (const auto members = book_.blend(name); !members.empty()) {
            std::vector<std::string> names;
            std::ranges::transform(members, std::back_inserter(names), &BlendMember::member);
            return names;
        }
        const auto tree = tree_labelled(orchard_, name);
        const auto& accession = tree ? orchard_.trees[*tree].accession : std::nullopt;
        return accession ? std::vector{*accession} : std::vector<std::string>{};
    }

    Finding complaint(const std::string& name) const {
        std::set<std::string> blends;
        for (const auto& member : orchard_.blend_members) {
            blends.insert(member.name);
        }
        std::vector<std::string> known(accessions_.begin(), accessions_.end());
        known.insert(known.end(), blends.begin(), blends.end());
        const auto near = nearest_few(name, known);
        return about_parameter(
            "accessions", name, say("The book has no accession, blend or tree of this name."),
            near.empty() ? labels_like(orchard_, name)
                         : say("The nearest names are: {}.", fmt::format("{}", fmt::join(near, ", "))));
    }

  private:
    void add(const std::optional<std::string>& name) {
        if (name && !name->empty() && book_.blend(*name).empty()) {
            accessions_.insert(*name);
        }
    }

    const Orchard& orchard_;
    OrchardIndex book_;
    std::set<std::string> accessions_;
};

void add_each(std::vector<std::string>& names, const std::vector<std::string>& more) {
    for (const auto& name : more) {
        if (std::ranges::find(names, name) == names.end()) {
            names.push_back(name);
        }
    }
}

std::optional<Season> season_of_goals(const Orchard& orchard, Day as_of) {
    std::optional<Season> coming;
    std::optional<Season> last;
    for (const auto& goal : orchard.goals) {
        last = std::max(last.value_or(goal.season), goal.season);
        if (goal.season.year >= parts_of(as_of).year) {
            coming = std::min(coming.value_or(goal.season), goal.season);
        }
    }
    return coming ? coming : last;
}

ChosenAccessions unnamed(const Orchard& orchard, const OtherNames& names, Day as_of) {
    ChosenAccessions chosen;
    if (const auto season = season_of_goals(orchard, as_of)) {
        for (const auto& goal : orchard.goals) {
            if (goal.season == *season) {
                add_each(chosen.names, names.meant_by(goal.seed_parent));
                add_each(chosen.names, names.meant_by(goal.pollen_parent));
            }
        }
        chosen.which = say("The parents of the crosses of {}", season->year);
        return chosen;
    }
    for (const auto& accession : orchard.accessions) {
        if (chosen.names.size() < most_unnamed) {
            add_each(chosen.names, {accession.name});
        }
    }
    chosen.which = chosen.names.size() < orchard.accessions.size()
                       ? say("The first {} accessions of the book", most_unnamed)
                       : say("All accessions of the book");
    return chosen;
}

void refuse_too_many(const std::string& text, std::size_t count) {
    if (count > most_named) {
        throw Error(Trouble::input,
                    about_parameter("accessions", text,
                                    say("These are {} accessions; at most {} can be processed at once.",
                                        count, most_named),
                                    say("Name fewer.")));
    }
}

}  // namespace

ChosenAccessions chosen_accessions(const Orchard& orchard, const std::string& text, Day as_of) {
    const OtherNames names(orchard);
    const auto asked = listed_names(text);
    if (asked.empty()) {
        auto chosen = unnamed(orchard, names, as_of);
        if (chosen.names.empty()) {
            throw Error(Trouble::input,
                        about_table(Level::error, "accession", say("The book has no accessions yet."),
                                    say("Enter the accessions and their parents first.")));
        }
        return chosen;
    }
    ChosenAccessions chosen;
    Findings unknown;
    for (const auto& name : asked) {
        const auto meant = names.meant_by(name);
        if (meant.empty()) {
            unknown.push_back(names.complaint(name));
        }
        add_each(chosen.names, meant);
    }
    if (!unknown.empty()) {
        throw Error(Trouble::input, std::move(unknown));
    }
    refuse_too_many(text, chosen.names.size());
    chosen.which = chosen.names.size() == 1 ? say("1 accession") : say("{} accessions", chosen.names.size());
    return chosen;
}

}  // namespace pipward::place
