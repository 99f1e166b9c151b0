// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_question.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>

namespace pipward::place::detail {

Question which_bearing(const RecoveryRule& rule, double one, double other) {
    Question question{say("Which way do the rows run?"), {}};
    for (const double bearing : {one, other}) {
        auto variant = rule;
        variant.bearing_deg = std::round(std::fmod(bearing + 360, 360.0));
        question.variants.push_back({variant, say("They run at {:.0f} degrees.", *variant.bearing_deg),
                                     "bearing", fmt::format("{:.0f}", *variant.bearing_deg)});
    }
    return question;
}

Question which_spacing(const RecoveryRule& rule, double one, double other) {
    Question question{say("How far apart are the positions in a row?"), {}};
    for (const double spacing : {other, one}) {
        auto variant = rule;
        variant.spacing = Metres{spacing};
        question.variants.push_back({variant,
                                     spacing > one
                                         ? say("{:.2f} m, with other trees between them.", spacing)
                                         : say("{:.2f} m, most of every second one empty.", spacing),
                                     "spacing", fmt::format("{:.2f}", spacing)});
    }
    return question;
}

Question which_beginning(const RecoveryRule& rule) {
    Question question{say("Some rows begin later than others: are trees missing there?"), {}};
    auto bent = rule;
    bent.begin = RowBegin::bent_edge;
    question.variants.push_back({bent, say("No, the edge turns: they begin there."), "begin", "bent_edge"});
    auto edge = rule;
    edge.begin = RowBegin::edge;
    question.variants.push_back({edge, say("Yes, all rows count from one edge."), "begin", "edge"});
    return question;
}

Question which_rows(const RecoveryRule& rule) {
    Question question{say("There is room for a row without trees: does it have a number?"), {}};
    auto skip = rule;
    skip.empty_rows = EmptyRows::skip;
    question.variants.push_back({skip, say("No, it is an alley."), "empty-rows", "skip"});
    auto count = rule;
    count.empty_rows = EmptyRows::count;
    question.variants.push_back({count, say("Yes, it is a row."), "empty-rows", "count"});
    return question;
}

namespace {

std::ptrdiff_t decided(std::span<const NumberedTree> trees) {
    return std::ranges::count_if(trees, [](const auto& tree) { return tree.doubt.empty(); });
}

/// The first tree that both answers number, and not alike.
std::optional<std::size_t> differing(const RowAnswer& one, const RowAnswer& other) {
    for (std::size_t i = 0; i < one.trees.size(); ++i) {
        const auto& a = one.trees[i];
        const auto& b = other.trees[i];
        if (a.doubt.empty() && b.doubt.empty() && (a.row != b.row || a.position != b.position)) {
            return i;
        }
    }
    return std::nullopt;
}

}  // namespace

std::optional<RowQuestion> asked(
    const Question& question, const std::function<std::vector<NumberedTree>(const RecoveryRule&)>& numbered) {
    RowQuestion result{question.words, {}, {}};
    std::ptrdiff_t most = 0;
    for (const auto& variant : question.variants) {
        auto numbers = numbered(variant.rule);
        most = std::max(most, decided(numbers));
        result.answers.push_back({variant.words, variant.option, variant.value, std::move(numbers)});
    }
    if (most == 0) {
        return std::nullopt;
    }
    std::ranges::stable_sort(result.answers, std::greater<>{},
                             [](const auto& answer) { return decided(answer.trees) > 0; });
    result.tree = differing(result.answers.front(), result.answers.back());
    return result;
}

}  // namespace pipward::place::detail
