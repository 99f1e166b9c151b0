// SPDX-License-Identifier: MIT
#include "pipward/operation/list.h"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

#include "pipward/lineage/kinship.h"
#include "pipward/operation/complaint.h"
#include "pipward/operation/cross_wish.h"
#include "pipward/operation/crossing_request.h"
#include "pipward/operation/suggestion_meetings.h"
#include "pipward/operation/suggestion_parents.h"
#include "pipward/operation/suggestion_tables.h"
#include "pipward/operation/trait_values.h"

namespace pipward::operation {
namespace {

struct Request : CrossingRequest {
    std::string parents;
    std::string wish;
    std::string shown;
    std::string better_than;
    double heritability = usual_heritability;
    int wanted = 1;
    double most_kinship = 0.125;
    int per_parent = 2;
    int crosses = 10;
};

/// So many pairs are held against the season; more would not be crossed in one spring.
constexpr std::size_t most_held_against_season = 60;
constexpr int seedlings_without_a_wish = 50;

Findings check(const Request& request) {
    Findings findings;
    if (!parse_weights(request.wish)) {
        findings.push_back(about_parameter("wish", request.wish, say("The wish cannot be read."),
                                           say("Write traits with their weights, as in taste=2; scab=-1.")));
    }
    if (!request.shown.empty() && !parse_shown(request.shown)) {
        findings.push_back(about_parameter("both-sides", request.shown, say("This cannot be read."),
                                           say("Write a trait and a bound, as in taste>=7 or scab<=3.")));
    }
    if (!request.better_than.empty() && request.wish.empty()) {
        findings.push_back(about_parameter("better-than", request.better_than,
                                           say("Nothing says in what the seedlings should be better."),
                                           say("Give the traits with wish.")));
    }
    return findings;
}

SuggestionParents parents_of(const Request& request, const Orchard& orchard, Findings& findings) {
    return suggestion_parents({.names = request.parents,
                               .weights = *parse_weights(request.wish),
                               .better_than = request.better_than,
                               .heritability = request.heritability,
                               .as_of = request.as_of},
                              orchard, findings);
}

cross::SuggestionRules rules_of(const Request& request, const SuggestionParents& parents) {
    return {.additive_variance = parents.additive_variance,
            .bar = parents.bar,
            .wanted = request.wanted,
            .confidence = request.confidence.value,
            .most_kinship = request.most_kinship};
}

/// Crosses of which one side does not show the wished-for trait are left out.
void expect_shown(const Request& request, const Orchard& orchard, const SuggestionParents& parents,
                  std::vector<WeighedCross>& crosses) {
    const auto wanted = parse_shown(request.shown);
    if (!wanted) {
        return;
    }
    const auto means = own_means(orchard, wanted->trait, request.as_of);
    const auto shown = [&](std::size_t parent) {
        return shown_by(orchard, means, *wanted, parents.candidates[parent].name);
    };
    for (auto& cross : crosses) {
        cross.shown_by_one = shown(cross.cross.one);
        cross.shown_by_other = shown(cross.cross.other);
        if (cross.reason.empty() && !(cross.shown_by_one && cross.shown_by_other)) {
            cross.reason = say("not shown on both sides: {}", request.shown);
        }
    }
}

std::vector<WeighedCross> weigh(const Request& request, const Orchard& orchard,
                                const SuggestionParents& parents) {
    const lineage::Kinship kinship(orchard.accessions, orchard.blend_members);
    std::vector<WeighedCross> crosses;
    for (auto& cross :
         cross::suggest_crosses(parents.candidates, rules_of(request, parents),
                                [&](const auto&a, const auto&b) { return kinship.between(a, b); })) {
        crosses.push_back({cross});
        crosses.back().reason = reason_of(cross.left_out, request.most_kinship);
    }
    expect_shown(request, orchard, parents, crosses);
    return crosses;
}

/// Bloom and pollen of the crosses that promise most.
void hold_against_season(const Request& request, Place& place, const SuggestionParents& parents,
                         std::vector<WeighedCross>& crosses, const Run& lent) {
    std::vector<WeighedCross*> shortlist;
    std::vector<std::pair<std::string, std::string>> pairs;
    std::vector<int> seedlings;
    for (auto& cross : crosses) {
        if (cross.reason.empty() && shortlist.size() < most_held_against_season) {
            shortlist.push_back(&cross);
            pairs.emplace_back(parents.candidates[cross.cross.one].name,
                               parents.candidates[cross.cross.other].name);
            seedlings.push_back(cross.cross.plants.value_or(seedlings_without_a_wish));
        }
    }
    const auto past = read_past(place, lent);
    const auto fitted = fit_past(place, past, request.method, lent);
    const auto forecast = forecast_season(place, past, fitted.model, lent);
    const auto meetings =
        meetings_of(pairs, seedlings, place, forecast, assumptions_of(request, place.orchard));
    for (std::size_t i = 0; i < shortlist.size(); ++i) {
        shortlist[i]->meeting = meetings[i];
        const auto& way = meetings[i].way;
        if (way && way->verdict >= cross::Verdict::unlikely) {
            shortlist[i]->reason =
                say("by bloom and pollen it is {} this spring", cross::to_text(way->verdict));
        }
    }
}

/// Where no trait was wished for, what is easiest to do this spring between the least related comes first.
void sort_without_a_wish(std::vector<WeighedCross>& crosses) {
    const auto key = [](const WeighedCross& cross) {
        const auto* way = cross.meeting && cross.meeting->way ? &*cross.meeting->way : nullptr;
        constexpr double unknown_kinship = 2;  // after all that is known
        return std::tuple(!cross.reason.empty(), cross.cross.kinship.value_or(unknown_kinship),
                          way == nullptr ? cross::Verdict::impossible : way->verdict,
                          way == nullptr ? 0.0 : -way->chance.value, way == nullptr ? 0 : way->flowers);
    };
    std::ranges::stable_sort(crosses, {}, key);
}

/// The first ones within the limits.
void choose(const Request& request, const SuggestionParents& parents, std::vector<WeighedCross>& crosses) {
    std::map<std::size_t, int> times;
    int rank = 0;
    for (auto& cross : crosses) {
        if (!cross.reason.empty()) {
            continue;
        }
        for (const auto parent : {cross.cross.one, cross.cross.other}) {
            if (cross.reason.empty() && times[parent] >= request.per_parent) {
                cross.reason = say("{} stands in {} better crosses already", parents.candidates[parent].name,
                                   request.per_parent);
            }
        }
        if (cross.reason.empty() && rank >= request.crosses) {
            cross.reason = say("{} crosses promise more", request.crosses);
        }
        if (cross.reason.empty()) {
            cross.rank = ++rank;
            ++times[cross.cross.one];
            ++times[cross.cross.other];
        }
    }
}

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto parents = parents_of(request, place.orchard, place.findings);
    if (has_errors(place.findings)) {
        throw Error(Trouble::input, place.findings);
    }
    auto crosses = weigh(request, place.orchard, parents);
    if (is_in_progress(place)) {
        try {
            hold_against_season(request, place, parents, crosses, lent);
        } catch (const Error& error) {
            if (error.trouble() != Trouble::input) {
                throw;
            }
            place.findings = error.findings();
            for (auto& finding : place.findings) {
                finding.level = std::min(finding.level, Level::warning);
            }
        }
    }
    if (request.wish.empty()) {
        sort_without_a_wish(crosses);
    }
    choose(request, parents, crosses);
    Outcome outcome;
    outcome.tables = {suggestion_table(crosses, parents, rules_of(request, parents)),
                      left_out_table(crosses, parents)};
    outcome.findings = std::move(place.findings);
    outcome.summary = suggestion_summary(crosses, parents, rules_of(request, parents));
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    std::vector<Bound<Request>> all{
        book_parameter(&Request::book),
        parameter(&Request::parents, "parents", "Parents",
                  "Accessions that may be crossed, with commas between; every cultivar and selection with a "
                  "living tree where none is named."),
        parameter(&Request::wish, "wish", "Wish",
                  "Traits with their weights, as in taste=2; scab=-1; below 0 where low scores are the good "
                  "ones."),
        parameter(&Request::shown, "both-sides", "On both sides",
                  "A trait that each parent, or one of its own parents, must show, as in scab<=3."),
        parameter(
            &Request::better_than, "better-than", "Better than",
            "The accession that the wanted seedlings are to surpass; the best of the parents where none "
            "is named."),
        parameter(&Request::wanted, "wanted", "Wanted",
                  "So many of the wanted seedlings are to be seen at least.")
            .between(1, 1000),
        heritability_parameter(&Request::heritability),
        parameter(&Request::most_kinship, "most-kinship", "Most kinship",
                  "The kinship of two parents that is still borne; 0.125 is that of half sibs.")
            .in("of 1")
            .between(0.0, 1.0),
        parameter(&Request::per_parent, "per-parent", "Crosses a parent",
                  "In so many crosses one parent may stand, so that a favourite does not swamp the plan.")
            .between(1, 100),
        parameter(&Request::crosses, "most-crosses", "Crosses", "So many crosses are suggested at the most.")
            .between(1, 100)};
    for (const auto& shared : crossing_parameters()) {
        if (shared.words.key != "write" && shared.words.key != "book") {
            all.emplace_back(shared);
        }
    }
    return all;
}

}  // namespace

std::unique_ptr<const Operation> line_suggest() {
    return declare<Request>(
        {.about =
             {"line-suggest", "Which crosses to make", "Line",
              "Ranks the crosses that can be made of the parents: what their seedlings should be like and "
              "how far apart, how many to grow to see the wanted ones, how related the parents are, "
              "whether pollen passes, whether their blooms meet this spring and how the pollen would be "
              "had. Each number says what it rests on; what is left out says why. Nothing is written."},
         .parameters = parameters(),
         .results = {suggestion_shape(), left_out_shape()},
         .examples = {{"Tasty and hardly scabbed, each parent in two crosses at the most.",
                       {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"wish", "taste=2; scab=-1"}}},
                      {"Only by blood, alleles and bloom.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"parents", "Wrenlea, Marlside, Tansy Lane, Larkfold Red"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation
