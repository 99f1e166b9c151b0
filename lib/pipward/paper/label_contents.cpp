// SPDX-License-Identifier: MIT
#include "pipward/paper/label_contents.h"

#include <algorithm>
#include <array>
#include <set>
#include <string_view>

#include "pipward/place/address.h"
#include "pipward/place/address_order.h"
#include "pipward/place/earth.h"
#include "pipward/place/geo_uri.h"
#include "pipward/record/orchard_index.h"

#include "pipward/value/complaint.h"

namespace pipward::paper {
namespace {

class ParentNames {
  public:
    ParentNames(const Orchard& orchard, const Wording& wording) : wording_(wording), book_(orchard) {}

    /// Empty where neither is known.
    std::string of(const std::string& accession) const {
        const auto* record = book_.accession(accession);
        if (record == nullptr || (!record->seed_parent && !record->pollen_parent)) {
            return {};
        }
        return crossed(record->seed_parent, record->pollen_parent);
    }
    std::string crossed(const std::optional<std::string>& seed,
                        const std::optional<std::string>& pollen) const {
        return named(seed) + " × " + named(pollen);
    }

  private:
    std::string named(const std::optional<std::string>& name) const {
        if (!name) {
            return say("unknown").in(wording_);
        }
        return book_.is_blend(*name) ? say("{} (blend)", *name).in(wording_) : *name;
    }

    const Wording& wording_;
    OrchardIndex book_;
};

void put_line(LabelText& text, std::string line) {
    if (!line.empty()) {
        text.lines.push_back(std::move(line));
    }
}

LabelText text_of(const Tree& tree, const Orchard& orchard, const ParentNames& parents,
                  const Wording& wording) {
    LabelText text;
    text.headline = tree.label;
    if (tree.accession && *tree.accession != tree.label) {
        put_line(text, *tree.accession);
    }
    put_line(text, tree.accession ? parents.of(*tree.accession) : "");
    put_line(text, place::address_of(tree, orchard.rows));
    if (tree.planted_on) {
        put_line(text, say("planted {}", parts_of(*tree.planted_on).year).in(wording));
    }
    return text;
}

std::string code_of(const Tree& tree, CodeSays code, const place::ToEarth& to_earth, Findings& findings) {
    if (code == CodeSays::label) {
        return tree.label;
    }
    if (const auto place = tree.at ? to_earth(*tree.at) : std::nullopt) {
        return place::geo_uri(*place, tree.accuracy);
    }
    findings.push_back({Level::warning, "tree", tree.label, "", "",
                        say("The tree has no geographic position: its code has its label instead."),
                        say("Draw it on the map.")});
    return tree.label;
}

std::vector<Blank> tag_blanks(const Wording& wording) {
    return {{say("Date").in(wording)}, {say("Flowers").in(wording)}, {say("Initials").in(wording)}};
}

// The next letters that no pollination of the cross has; fewer where the alphabet ends.
std::vector<std::string> free_tags(const Orchard& orchard, const std::string& cross, int wanted) {
    std::set<std::string_view> used;
    for (const auto& pollination : orchard.pollinations) {
        used.insert(pollination.tag);
    }
    std::vector<std::string> tags;
    for (char letter = 'a'; letter <= 'z' && std::ssize(tags) < wanted; ++letter) {
        auto tag = cross + "-" + letter;
        if (!used.contains(tag)) {
            tags.push_back(std::move(tag));
        }
    }
    return tags;
}

std::vector<std::string> tags_of(const Orchard& orchard, const CrossGoal& goal, const TagWish& wish,
                                 Findings& findings) {
    if (!wish.letters) {
        return std::vector<std::string>(static_cast<std::size_t>(wish.each), goal.code);
    }
    auto tags = free_tags(orchard, goal.code, wish.each);
    if (std::ssize(tags) < wish.each) {
        findings.push_back(
            {Level::warning, "cross_goal", goal.code, "", "",
             say("The letters a to z are not enough for these tags: {} were made.", tags.size()),
             say("Choose fewer, or tags without letters.")});
    }
    return tags;
}

std::vector<const CrossGoal*> goals_of(const Orchard& orchard, Season season) {
    std::vector<const CrossGoal*> goals;
    for (const auto& goal : orchard.goals) {
        if (goal.season == season) {
            goals.push_back(&goal);
        }
    }
    std::ranges::stable_sort(
        goals, [](const auto* a, const auto* b) { return place::counts_before(a->code, b->code); });
    return goals;
}

}  // namespace

std::span<const Word<CodeSays>> words(CodeSays) {
    static constexpr std::array<Word<CodeSays>, 3> all{
        {{CodeSays::label, "label", "the label as plain text"},
         {CodeSays::place, "place", "the tree's location as a geo: link that opens on a telephone's map"},
         {CodeSays::nothing, "nothing", "no code"}}};
    return all;
}

std::vector<NamedLabel> tree_labels(const Orchard& orchard, std::span<const std::uint32_t> trees,
                                    CodeSays code, const Wording& wording, Findings& findings) {
    const ParentNames parents(orchard, wording);
    const place::ToEarth to_earth(orchard.crs);
    std::vector<NamedLabel> labels;
    for (const auto i : trees) {
        const auto& tree = orchard.trees[i];
        NamedLabel label{"tree", tree.label, text_of(tree, orchard, parents, wording)};
        if (code != CodeSays::nothing) {
            label.text.qr = code_of(tree, code, to_earth, findings);
        }
        labels.push_back(std::move(label));
    }
    return labels;
}

std::vector<NamedLabel> cross_tags(const Orchard& orchard, const TagWish& wish, const Wording& wording,
                                   Findings& findings) {
    const ParentNames parents(orchard, wording);
    std::vector<NamedLabel> labels;
    for (const auto* goal : goals_of(orchard, wish.season)) {
        for (auto& tag : tags_of(orchard, *goal, wish, findings)) {
            LabelText text{
                tag, {parents.crossed(goal->seed_parent, goal->pollen_parent)}, tag_blanks(wording)};
            if (wish.with_code) {
                text.qr = tag;
            }
            labels.push_back({"cross_goal", goal->code, std::move(text)});
        }
    }
    if (labels.empty()) {
        findings.push_back(about_table(Level::warning, "cross_goal",
                                       say("The book has no crosses of the season {}.", wish.season.year),
                                       say("Name another season, or enter the crosses first.")));
    }
    return labels;
}

NamedLabel blank_tag(const Wording& wording) {
    NamedLabel tag;
    tag.text.blanks = {{say("Tag").in(wording), true},
                       {say("Seed parent").in(wording), true},
                       {say("Pollen parent").in(wording), true}};
    std::ranges::move(tag_blanks(wording), std::back_inserter(tag.text.blanks));
    return tag;
}

std::vector<NamedLabel> blank_tags(const LabelGrid& grid, const BlankSheets& wish, const Wording& wording) {
    const int count = grid.labels_a_page() * wish.sheets - wish.first_place;
    return std::vector<NamedLabel>(static_cast<std::size_t>(count), blank_tag(wording));
}

}  // namespace pipward::paper
