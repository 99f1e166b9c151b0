// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/book/schema.h"
#include "pipward/record/words.h"
#include "pipward/value/bbch.h"

namespace pipward::book {
namespace {

using enum Language;

/// The choices of a list, and what people write instead of them.
struct Choices {
    std::vector<Choice> all;

    Choices&& called(std::string_view value, Language language,
                     const std::vector<std::string_view>& words) && {
        for (auto& choice : all) {
            if (choice.value == value) {
                add_words(choice.known_as, language, words);
            }
        }
        return std::move(*this);
    }
};

template <class Enum>
Choices choices_of() {
    Choices choices;
    for (const auto& entry : words(Enum{})) {
        choices.all.push_back({std::string(entry.word), std::string(entry.meaning)});
    }
    return choices;
}

Choices stage_choices() {
    Choices choices;
    for (const auto& entry : bbch_stages()) {
        choices.all.push_back({std::to_string(entry.stage.code), std::string(entry.words)});
    }
    return choices;
}

Choices purpose_choices() {
    return choices_of<TreePurpose>()
        .called("parent", english,
                {"parents", "parent tree", "crossing parent", "breeding", "mother tree", "mother", "donor"})
        .called("parent", german, {"Elter"})
        .called("seedling", english, {"seedlings", "progeny", "hybrid", "offspring", "trial"})
        .called("seedling", german, {"Sämling", "Saemling"})
        .called("pollinizer", english, {"pollinizers", "pollinator", "pollenizer", "pollinizer tree"})
        .called("pollinizer", german, {"Befruchter"})
        .called("pollinizer", french, {"pollinisateur"})
        .called("other", english, {"others", "various", "misc"})
        .called("other", german, {"andere", "sonstige"});
}

Choices placing_choices() {
    return choices_of<PlacedBy>()
        .called("surveyed", english, {"survey", "GPS", "GNSS", "RTK", "measured", "total station"})
        .called("computed", english, {"calculated", "reckoned"})
        .called("digitised", english, {"digitized", "drawn", "traced", "orthophoto", "aerial"})
        .called("estimated", english, {"guess", "guessed", "approximate", "approx"});
}

Choices kind_choices() {
    return choices_of<AccessionKind>()
        .called("cultivar", english, {"cultivars", "variety", "cv", "named", "commercial"})
        .called("cultivar", german, {"Sorte"})
        .called("selection", english, {"selections", "advanced selection", "sel", "clone"})
        .called("selection", german, {"Zuchtklon"})
        .called("seedling", english, {"seedlings", "hybrid", "progeny"})
        .called("seedling", german, {"Sämling", "Saemling"})
        .called("species", english, {"wild", "wild species", "sp"})
        .called("species", german, {"Wildart", "Art"})
        .called("unknown", english, {"unk", "not known"})
        .called("unknown", german, {"unbekannt"});
}

Choices ploidy_choices() {
    return Choices{{{"2", "diploid"}, {"3", "triploid"}, {"4", "tetraploid"}}}
        .called("2", english, {"2x", "2n", "diploid"})
        .called("3", english, {"3x", "3n", "triploid"})
        .called("4", english, {"4x", "4n", "tetraploid"});
}

Choices branch_task_choices() {
    return choices_of<BranchTask>()
        .called("bag", english, {"bagged"})
        .called("bag", german, {"eingetütet", "eintüten"})
        .called("emasculate", english, {"emasculated"})
        .called("emasculate", german, {"kastriert", "kastrieren"})
        .called("unbag", english, {"unbagged", "bags off"})
        .called("unbag", german, {"ausgetütet", "austüten"})
        .called("cut_branch", english, {"branch cut", "cut"})
        .called("cut_branch", german, {"Zweig geschnitten"})
        .called("indoor_bloom", english, {"forced bloom", "bloom indoors"})
        .called("indoor_bloom", german, {"Treibzweig blüht"});
}

Choices trait_kind_choices() {
    return choices_of<TraitKind>()
        .called("leaf", german, {"Blatt"})
        .called("bloom", english, {"flower"})
        .called("bloom", german, {"Blüte"})
        .called("fruit", german, {"Frucht"})
        .called("tree", german, {"Baum"});
}

FieldDomain range(std::string_view name, std::string_view description, CellType type, double low,
                  double high) {
    return {.name = name, .description = description, .type = type, .choices = {}, .low = low, .high = high};
}

FieldDomain list(std::string_view name, std::string_view description, CellType type, Choices choices) {
    return {.name = name, .description = description, .type = type, .choices = std::move(choices.all)};
}

std::vector<FieldDomain> make_domains() {
    using enum CellType;
    return {
        list("tree_purpose", "What the tree is kept for", text, purpose_choices()),
        list("placed_by", "How the tree's place was found", text, placing_choices()),
        list("accession_kind", "What the accession is", text, kind_choices()),
        list("weather_source", "Where the temperatures come from", text, choices_of<WeatherSource>()),
        list("pollen_store", "Where the pollen is kept", text, choices_of<Store>()),
        list("branch_task", "What was done at the branch", text, branch_task_choices()),
        list("trait_kind", "Where the trait is scored", text, trait_kind_choices()),
        list("bbch_stage", "Growth stage of pome fruit, BBCH scale", whole, stage_choices()),
        list("ploidy", "Chromosome sets", whole, ploidy_choices()),
        range("percent", "A percentage", number, 0, 100),
        range("share", "A part of a whole", number, 0, 1),
        range("position", "Place in a row, counted along it", whole, 0, 100000),
        range("spacing_m", "Distance of two positions", number, 0.1, 100),
        range("elevation_m", "Height above sea level", number, -450, 6000),
        range("accuracy_m", "Likely error of a place", number, 0, 10000),
        range("seed_ripe_days", "Days from full bloom to ripe seed", whole, 1, 365),
        range("chill_portions", "Chill portions of the Dynamic Model", number, 0, 200),
        range("season", "Calendar year of the bloom", whole, 1900, 2200),
        range("priority", "1 is the most urgent", whole, 1, 1000),
        range("count", "A number of things counted", whole, 0, no_upper_end),
        range("wanted", "A number of things wanted", whole, 1, no_upper_end),
        range("mass_mg", "A mass in milligrams", number, 0, no_upper_end),
        range("pass", "Which round of pollination on the same flowers", whole, 1, 20),
        range("store_c", "Temperature of a store", number, -100, 40),
    };
}

}  // namespace

std::span<const FieldDomain> field_domains() {
    static const std::vector<FieldDomain> domains = make_domains();
    return domains;
}

const FieldDomain* find_domain(std::string_view name) {
    const auto domains = field_domains();
    const auto found = std::ranges::find(domains, name, &FieldDomain::name);
    return found == domains.end() ? nullptr : &*found;
}

}  // namespace pipward::book
