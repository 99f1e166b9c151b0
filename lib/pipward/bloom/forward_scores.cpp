// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include "pipward/bloom/forward.h"

namespace pipward::bloom {
namespace {

enum class Scope { all, species, accession };

struct ScoreKey {
    BloomMethod method;
    Scope scope = Scope::all;
    std::string name;
    Bbch stage;
    DayOfYear issued;

    auto operator<=>(const ScoreKey&) const = default;
};

struct Group {
    ForwardScore score;
    std::set<Season> springs;
    double length_error = 0;
    int lengths = 0;
};

void add(Group& group, const ForwardCase& scored) {
    auto& score = group.score;
    ++score.n;
    group.springs.insert(scored.season);
    score.rmse += scored.error * scored.error;
    score.mae += std::abs(scored.error);
    score.bias += scored.error;
    score.crps += scored.crps;
    score.inside_80 += scored.inside ? 1 : 0;
    ++score.places[std::min(histogram_bins - 1, static_cast<int>(scored.place * histogram_bins))];
    if (scored.length_error) {
        group.length_error += *scored.length_error;
        ++group.lengths;
    }
}

ForwardScore finished(const ScoreKey& key, Group group) {
    auto& score = group.score;
    score.method = key.method;
    score.stage = key.stage;
    score.accession = key.name;
    score.of_species = key.scope == Scope::species;
    score.issued = key.issued;
    score.springs = static_cast<int>(group.springs.size());
    score.rmse = std::sqrt(score.rmse / score.n);
    for (double* sum : {&score.mae, &score.bias, &score.crps, &score.inside_80}) {
        *sum /= score.n;
    }
    if (group.lengths > 0) {
        score.length_bias = group.length_error / group.lengths;
    }
    return score;
}

}  // namespace

std::vector<ForwardScore> forward_scores(std::span<const ForwardCase> cases) {
    std::map<ScoreKey, Group> groups;
    for (const auto& scored : cases) {
        add(groups[{scored.method, Scope::all, "", scored.stage, scored.issued}], scored);
        add(groups[{scored.method, Scope::accession, scored.accession, scored.stage, scored.issued}], scored);
        if (!scored.species.empty()) {
            add(groups[{scored.method, Scope::species, scored.species, scored.stage, scored.issued}], scored);
        }
    }
    std::vector<ForwardScore> scores;
    for (auto& [key, group] : groups) {
        scores.push_back(finished(key, std::move(group)));
    }
    return scores;
}

}  // namespace pipward::bloom
