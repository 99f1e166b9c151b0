// SPDX-License-Identifier: MIT
#include "pipward/place/near_words.h"

#include <algorithm>

#include "pipward/place/address.h"
#include "pipward/value/plain_text.h"

namespace pipward::place {
namespace {

Sentence name_at(const NearSpot& spot, const Orchard& orchard) {
    if (spot.kind == SpotKind::tree) {
        return verbatim(orchard.trees[*spot.tree].label);
    }
    return say("the gap at {}", address_at(spot, orchard));
}

}  // namespace

std::optional<NearAnswers> parse_answers(std::string_view text) {
    NearAnswers answers;
    while (!trimmed(text).empty()) {
        const auto end = std::min(text.find(';'), text.size());
        const auto part = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        const auto sign = part.rfind('=');
        const auto word = sign == std::string_view::npos ? "" : trimmed(part.substr(sign + 1));
        if (word != "yes" && word != "no") {
            return std::nullopt;
        }
        answers.keys.emplace_back(trimmed(part.substr(0, sign)));
        answers.by_key[answers.keys.back()] = word == "yes";
    }
    return answers;
}

Sentence address_at(const NearSpot& spot, const Orchard& orchard) {
    if (spot.tree) {
        return address_of(orchard.trees[*spot.tree], orchard.rows);
    }
    Tree place;
    place.block = spot.row && !spot.row->first.empty() ? std::optional{spot.row->first} : std::nullopt;
    place.row = spot.row ? std::optional{spot.row->second} : std::nullopt;
    place.position = spot.position;
    return address_of(place, orchard.rows);
}

Sentence after_words(const NearSpots& near, const std::vector<double>& shares, const Orchard& orchard) {
    std::vector<std::size_t> order(shares.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        order[i] = i;
    }
    std::ranges::stable_sort(order, std::ranges::greater{}, [&](std::size_t i) { return shares[i]; });
    std::vector<Sentence> named;
    constexpr std::size_t most = 3;
    for (std::size_t i = 0; i < std::min(most, order.size()) && shares[order[i]] >= 0.05; ++i) {
        named.push_back(say("{} {:.0f} %", name_at(near.spots[order[i]], orchard), 100 * shares[order[i]]));
    }
    return joined(named, verbatim(", "));
}

std::optional<Finding> distance_warning(const NearSpots& near, const NamedPlace& named) {
    if (near.spots.empty()) {
        return Finding{Level::warning,
                       "",
                       "",
                       named.key,
                       named.text,
                       say("There is no tree near this position."),
                       say("Check the position; tree-find --at shows the nearest trees however far.")};
    }
    constexpr double unlikely = 3.0;  // farther off one time in ninety
    if (near.off > unlikely) {
        return Finding{Level::warning,
                       "",
                       "",
                       named.key,
                       named.text,
                       say("No tree is within the accuracy: the most likely is {:.1f} m away.",
                           math::length(near.spots.front().at)),
                       say("Check the position, or give a larger accuracy-m.")};
    }
    return std::nullopt;
}

Sentence near_summary(const NearSpots& near, const std::vector<NearQuestion>& questions,
                      const Orchard& orchard) {
    if (near.spots.empty()) {
        return say("No tree is near.");
    }
    const auto& best = near.spots.front();
    constexpr double sure = 0.95;
    const auto where =
        say("{:.0f} % for {}, {:.1f} m to the {}.", 100 * best.probability, name_at(best, orchard),
            math::length(best.at), compass_words(math::bearing_deg(best.at)));
    return best.probability >= sure || questions.empty()
               ? where
               : say("Check: {} So far {}", questions.front().words, where);
}

}  // namespace pipward::place
