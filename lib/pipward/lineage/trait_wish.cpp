// SPDX-License-Identifier: MIT
#include "pipward/lineage/trait_wish.h"

#include <algorithm>
#include <charconv>
#include <set>

#include "pipward/lineage/trait_descent.h"
#include "pipward/lineage/trait_scores.h"
#include "pipward/value/plain_text.h"

namespace pipward::lineage {
namespace {

std::optional<double> number_in(std::string_view text) {
    text = trimmed(text);
    double number = 0;
    const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool whole = trouble == std::errc{} && end == text.data() + text.size();
    return whole ? std::optional{number} : std::nullopt;
}

bool shows(const std::map<std::string, double>& means, const ShownTrait& wanted,
           const std::optional<std::string>& accession) {
    const auto mean = means.find(accession.value_or(""));
    return mean != means.end() &&
           (wanted.at_least ? mean->second >= wanted.bound : mean->second <= wanted.bound);
}

}  // namespace

std::optional<std::vector<TraitWeight>> parse_weights(std::string_view text) {
    std::vector<TraitWeight> weights;
    std::set<std::string_view> traits;
    while (!trimmed(text).empty()) {
        const auto end = std::min(text.find(';'), text.size());
        const auto part = trimmed(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (part.empty()) {
            continue;
        }
        const auto sign = part.find('=');
        const auto trait = trimmed(part.substr(0, sign));
        const auto weight = sign == part.npos ? std::optional{1.0} : number_in(part.substr(sign + 1));
        if (trait.empty() || !weight || *weight == 0 || !traits.insert(trait).second) {
            return std::nullopt;
        }
        weights.push_back({std::string(trait), *weight});
    }
    return weights;
}

std::optional<ShownTrait> parse_shown(std::string_view text) {
    const auto sign = text.find_first_of("<>");
    if (sign == text.npos || sign + 1 >= text.size() || text[sign + 1] != '=') {
        return std::nullopt;
    }
    const auto trait = trimmed(text.substr(0, sign));
    const auto bound = number_in(text.substr(sign + 2));
    if (trait.empty() || !bound) {
        return std::nullopt;
    }
    return ShownTrait{std::string(trait), text[sign] == '>', *bound};
}

std::map<std::string, double> own_means(const Orchard& orchard, const std::string& trait, Day as_of) {
    std::map<std::string, double> means;
    for (const auto& [accession, by_trait] : trait_means(orchard.trees, scores_until(orchard, as_of))) {
        if (const auto found = by_trait.find(trait); found != by_trait.end()) {
            means.emplace(accession, found->second.mean);
        }
    }
    return means;
}

std::optional<std::string> shown_by(const OrchardIndex& book, const std::map<std::string, double>& means,
                                    const ShownTrait& wanted, const std::string& accession) {
    if (shows(means, wanted, accession)) {
        return accession;
    }
    const auto* record = book.accession(accession);
    if (record == nullptr) {
        return std::nullopt;
    }
    for (const auto& parent : {record->seed_parent, record->pollen_parent}) {
        if (shows(means, wanted, parent)) {
            return parent;
        }
    }
    return std::nullopt;
}

}  // namespace pipward::lineage
