// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/crossing.h"

#include <algorithm>

#include "pipward/cross/detail/forcing.h"
#include "pipward/math/quantile.h"

namespace pipward::cross::detail {
namespace {

std::optional<lineage::SAlleles> alleles_of(const Accession* accession) {
    return accession != nullptr && accession->s_alleles ? lineage::parse_s_alleles(*accession->s_alleles)
                                                        : std::nullopt;
}

std::optional<int> ploidy_of(const Accession* accession) {
    return accession != nullptr ? accession->ploidy : std::nullopt;
}

// The tree that stands for the accession, then the earliest and the latest where they bloom apart from it.
std::vector<bloom::TreeBloom> telling_trees(const bloom::BloomForecast& forecast,
                                            const std::vector<bloom::TreeBloom>& trees,
                                            std::size_t standing) {
    const auto full_bloom = [&](const bloom::TreeBloom& t) {
        return math::mean(forecast.windows[t.window].full_bloom);
    };
    const auto [earliest, latest] = std::ranges::minmax_element(trees, {}, full_bloom);
    const auto stands = std::ranges::find(trees, standing, &bloom::TreeBloom::window);
    std::vector<bloom::TreeBloom> telling{stands == trees.end() ? trees.front() : *stands};
    for (const auto& tree : {*earliest, *latest}) {
        if (std::ranges::find(telling, tree.window, &bloom::TreeBloom::window) == telling.end()) {
            telling.push_back(tree);
        }
    }
    return telling;
}

std::vector<bloom::TreeBloom> telling_trees(const Bench& bench, const std::string& accession) {
    const auto trees = bench.stock.trees.find(accession);
    if (trees == bench.stock.trees.end()) {
        return {};
    }
    const auto standing = bench.forecast->of_accession.find(accession);
    return telling_trees(
        *bench.forecast, trees->second,
        standing == bench.forecast->of_accession.end() ? trees->second.front().window : standing->second);
}

void place_seed_parent(Bench& bench, Crossing& crossing) {
    const auto trees = telling_trees(bench, crossing.goal->seed_parent);
    if (trees.empty()) {
        return;
    }
    const std::size_t window = trees.front().window;
    crossing.seed_whole = &bench.shelf.whole(window);
    crossing.seed_left = crossing.next_season ? crossing.seed_whole : &bench.shelf.left(window);
}

void place_donors(Bench& bench, Crossing& crossing) {
    for (const auto& tree : telling_trees(bench, crossing.donor)) {
        crossing.donors.push_back(
            {tree.tree, &bench.shelf.whole(tree.window), &bench.shelf.left(tree.window)});
    }
}

void place_in_time(const bloom::BloomForecast& forecast, Crossing& crossing) {
    const auto& goal = *crossing.goal;
    crossing.next_season = goal.season.year == forecast.season.year + 1;
    crossing.anchor = anchor_of(goal.season, forecast.hemisphere);
    crossing.from = crossing.next_season ? season_first : forecast.as_of - crossing.anchor;
}

void fill_parentage(const Bench& bench, Crossing& crossing) {
    const auto& goal = *crossing.goal;
    const auto* seed = bench.book.accession(goal.seed_parent);
    const auto* donor = bench.book.accession(crossing.donor);
    crossing.selfed = goal.seed_parent == crossing.donor;
    crossing.compatibility = compatibility_of(bench.book, goal.seed_parent, crossing.donor);
    crossing.ploidy = ploidy_attrition(ploidy_of(seed), ploidy_of(donor));
    crossing.donor_chill = donor != nullptr && donor->chill ? *donor->chill : usual_chill;
    if (bench.kinship) {
        crossing.kinship = bench.kinship->between(goal.seed_parent, crossing.donor);
    }
}

}  // namespace

const BloomCourses& CourseShelf::whole(std::size_t window) {
    auto found = whole_.find(window);
    if (found == whole_.end()) {
        found = whole_.emplace(window, bloom_courses(*forecast_, forecast_->windows[window])).first;
    }
    return found->second;
}

const BloomCourses& CourseShelf::left(std::size_t window) {
    auto found = left_.find(window);
    if (found == left_.end()) {
        const SeasonDay from = forecast_->as_of - anchor_of(forecast_->season, forecast_->hemisphere);
        found = left_.emplace(window, from_day(whole(window), from)).first;
    }
    return found->second;
}

lineage::SCompatibility compatibility_of(const OrchardIndex& book, const std::string& seed_parent,
                                         const std::string& donor) {
    if (seed_parent == donor) {
        return {lineage::SMatch::none, {0}};
    }
    return lineage::s_compatibility(alleles_of(book.accession(seed_parent)),
                                    alleles_of(book.accession(donor)));
}

std::vector<DonorShare> donors_of(const OrchardIndex& book, const CrossGoal& goal) {
    auto donors = book.donors(goal.pollen_parent);
    std::ranges::stable_sort(donors, {}, &DonorShare::donor);
    double whole = 0;
    for (const auto& donor : donors) {
        whole += donor.share.value;
    }
    for (auto& donor : donors) {
        donor.share.value /= whole > 0 ? whole : 1;
    }
    return donors;
}

Crossing crossing_of(Bench& bench, const CrossGoal& goal, const DonorShare& donor) {
    Crossing crossing;
    crossing.goal = &goal;
    crossing.donor = donor.donor;
    crossing.share = donor.share;
    crossing.blend = bench.book.is_blend(goal.pollen_parent);
    place_in_time(*bench.forecast, crossing);
    place_seed_parent(bench, crossing);
    place_donors(bench, crossing);
    fill_parentage(bench, crossing);
    return crossing;
}

}  // namespace pipward::cross::detail
