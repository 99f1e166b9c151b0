// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/book/schema.h"
#include "pipward/record/words.h"
#include "pipward/value/bbch.h"

namespace pipward::book {
namespace {

template <class Enum>
std::vector<Choice> choices_of() {
    std::vector<Choice> choices;
    for (const auto& entry : words(Enum{})) {
        choices.push_back({std::string(entry.word), std::string(entry.meaning)});
    }
    return choices;
}

std::vector<Choice> stage_choices() {
    std::vector<Choice> choices;
    for (const auto& entry : bbch_stages()) {
        choices.push_back({std::to_string(entry.stage.code), std::string(entry.words)});
    }
    return choices;
}

FieldDomain range(std::string_view name, std::string_view description, CellType type, double low,
                  double high) {
    return {.name = name, .description = description, .type = type, .choices = {}, .low = low, .high = high};
}

FieldDomain list(std::string_view name, std::string_view description, CellType type,
                 std::vector<Choice> choices) {
    return {.name = name, .description = description, .type = type, .choices = std::move(choices)};
}

std::vector<FieldDomain> make_domains() {
    using enum CellType;
    return {
        list("tree_purpose", "What the tree is kept for", text, choices_of<TreePurpose>()),
        list("placed_by", "How the tree's place was found", text, choices_of<PlacedBy>()),
        list("accession_kind", "What the accession is", text, choices_of<AccessionKind>()),
        list("weather_source", "Where the temperatures come from", text, choices_of<WeatherSource>()),
        list("pollen_store", "Where the pollen is kept", text, choices_of<Store>()),
        list("bbch_stage", "Growth stage of pome fruit, BBCH scale", whole, stage_choices()),
        list("ploidy", "Chromosome sets", whole, {{"2", "diploid"}, {"3", "triploid"}, {"4", "tetraploid"}}),
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
