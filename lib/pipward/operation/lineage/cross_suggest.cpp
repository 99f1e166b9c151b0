// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"

#include <algorithm>
#include <iterator>
#include <optional>

#include "pipward/lineage/trait_wish.h"
#include "pipward/operation/lineage/detail/heritability_parameter.h"
#include "pipward/operation/lineage/detail/suggestion_tables.h"
#include "pipward/operation/season/detail/crossing_request.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {
namespace {

struct Request : CrossingRequest {
    std::string parents;
    std::string wish;
    std::string shown;
    std::string better_than;
    double heritability = lineage::usual_heritability;
    int wanted = 1;
    double most_kinship = 0.125;
    int per_parent = 2;
    int crosses = 10;
};

Findings check(const Request& request) {
    Findings findings;
    if (!lineage::parse_weights(request.wish)) {
        findings.push_back(about_parameter("weights", request.wish, say("The weights cannot be read."),
                                           say("Write traits with their weights, as in taste=2; scab=-1.")));
    }
    if (!request.shown.empty() && !lineage::parse_shown(request.shown)) {
        findings.push_back(about_parameter("both-sides", request.shown, say("This cannot be read."),
                                           say("Write a trait and a bound, as in taste>=7 or scab<=3.")));
    }
    if (!request.better_than.empty() && request.wish.empty()) {
        findings.push_back(
            about_parameter("better-than", request.better_than,
                            say("Nothing says in which traits the seedlings should be better."),
                            say("Give the traits with weights.")));
    }
    return findings;
}

season::SuggestionParents parents_of(const Request& request, const Orchard& orchard, Findings& findings) {
    return season::suggestion_parents({.names = request.parents,
                                       .weights = *lineage::parse_weights(request.wish),
                                       .better_than = request.better_than,
                                       .heritability = request.heritability,
                                       .as_of = request.as_of},
                                      orchard, findings);
}

season::SuggestionWish wish_of(const Request& request) {
    return {request.shown, !request.wish.empty(), request.most_kinship, request.per_parent, request.crosses};
}

cross::SuggestionRules rules_of(const Request& request, const season::SuggestionParents& parents) {
    return {.additive_variance = parents.additive_variance,
            .bar = parents.bar,
            .wanted = request.wanted,
            .confidence = request.confidence.value,
            .most_kinship = request.most_kinship};
}

/// The findings of an error in what the book holds, as warnings; any other error goes on.
Findings told_as_warnings(const Error& error) {
    if (error.trouble() != Trouble::input) {
        throw error;
    }
    auto findings = error.findings();
    book::tell_as_warnings(findings);
    return findings;
}

/// The orchard with its place, as far as it has one: genes and counts need neither weather nor trees.
struct Ground {
    book::BookReading reading{};  ///< where there is no place
    std::optional<season::Place> place{};
};

Ground ground_of(const Request& request, const Run& lent) {
    Ground ground;
    try {
        ground.place = read_place(request, lent);
    } catch (const Error& error) {
        auto warnings = told_as_warnings(error);
        ground.reading = read_checked_without_ground(request.book, request.as_of, lent);
        std::ranges::move(warnings, std::back_inserter(ground.reading.findings));
    }
    return ground;
}

void hold_against_season(const Request& request, std::vector<season::WeighedCross>& crosses,
                         const season::SuggestionParents& parents, season::Place& place, const Run& lent) {
    if (!season::is_in_progress(place)) {
        return;
    }
    try {
        season::hold_against_season(crosses, parents, plan_wish(request), place, step_of(lent));
    } catch (const Error& error) {
        place.findings = told_as_warnings(error);
    }
}

Outcome run(const Request& request, const Run& lent) {
    auto ground = ground_of(request, lent);
    const auto& orchard = ground.place ? ground.place->orchard : ground.reading.orchard;
    auto& findings = ground.place ? ground.place->findings : ground.reading.findings;
    const auto parents = parents_of(request, orchard, findings);
    expect_no_errors(findings);
    const auto rules = rules_of(request, parents);
    auto crosses = season::weighed_crosses(wish_of(request), parents, rules, orchard, request.as_of);
    if (ground.place) {
        hold_against_season(request, crosses, parents, *ground.place, lent);
    }
    season::choose_crosses(crosses, wish_of(request), parents);
    Outcome outcome;
    outcome.tables = {suggestion_table(crosses, parents, rules), left_out_table(crosses, parents)};
    outcome.findings = std::move(findings);
    outcome.summary = season::suggestion_summary(crosses, parents, rules);
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    const std::vector<Bound<Request>> all{
        book_parameter(&Request::book),
        parameter(&Request::parents, "accessions", "Accessions",
                  "Accessions that may be crossed, separated by commas; every cultivar and selection with a "
                  "living tree where none is named; all of them where the book has no trees."),
        parameter(&Request::wish, "weights", "Trait weights",
                  "Selection index: traits with their weights, as in taste=2; scab=-1; negative where low "
                  "scores are desired."),
        parameter(&Request::shown, "both-sides", "In both parents",
                  "A trait that each parent, or one of its own parents, must show, as in scab<=3."),
        parameter(
            &Request::better_than, "better-than", "Better than",
            "The accession that the wanted seedlings are to surpass; the best of the parents where none "
            "is named."),
        parameter(&Request::wanted, "wanted", "Wanted seedlings",
                  "Least number of wanted seedlings to obtain.")
            .between(1, 1000),
        heritability_parameter(&Request::heritability),
        parameter(&Request::most_kinship, "max-kinship", "Maximum kinship",
                  "Maximum kinship of two parents; 0.125 is that of half sibs.")
            .in("0 to 1")
            .between(0.0, 1.0),
        parameter(&Request::per_parent, "per-parent", "Crosses per parent",
                  "Maximum number of crosses per parent.")
            .between(1, 100),
        parameter(&Request::crosses, "max-crosses", "Crosses", "Maximum number of suggested crosses.")
            .between(1, 100)};
    return extended<Request>(all, extended<Request>(crossing_parameters(), {}, {"keep", "book"}));
}

}  // namespace

std::unique_ptr<const Operation> cross_suggest() {
    return declare<Request>(
        {.about = {"cross-suggest", "Suggest crosses", "Pedigree",
                   "Ranks the possible crosses of the parents: expected mean and SD of their seedlings, how "
                   "many to grow for the wanted ones, kinship of the parents, compatibility, whether bloom "
                   "overlaps this spring and how the pollen can be obtained. Each number says what it rests "
                   "on; each pair left out says why. Nothing is written."},
         .parameters = parameters(),
         .results = {suggestion_shape(), left_out_shape()},
         .examples = {{"Tasty and hardly scabbed, each parent in two crosses at the most.",
                       {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"weights", "taste=2; scab=-1"}}},
                      {"Only by kinship, alleles and bloom.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"accessions", "Wrenlea, Marlside, Tansy Lane, Larkfold Red"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
