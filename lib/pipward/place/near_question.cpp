// SPDX-License-Identifier: MIT
#include "pipward/place/near_question.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

namespace pipward::place {
namespace {

// How likely the answer at a spot is yes: 1, 0, or a half where nobody knows.
using YesAt = std::function<double(const NearSpot&)>;

struct Asked {
    std::string key;
    Sentence words;
    double effort = 0;  // bits that a question must be worth more to be asked before an easy one
    YesAt yes;
};

constexpr double label_effort = 0.1;
constexpr double name_effort = 0.05;
constexpr double count_effort = 0.02;  // a tree

template <class Value, class Test>
double yes_of(const std::optional<Value>& fact, Test test) {
    return !fact ? 0.5 : test(*fact) ? 1.0 : 0.0;
}

double is_true(const std::optional<bool>& fact) {
    return yes_of(fact, [](bool value) { return value; });
}

Sentence direction(math::PlanePoint way) {
    return compass_words(bearing_deg(way));
}

void ask_of_neighbours(const NearSpots& near, std::vector<Asked>& asked) {
    const auto there = direction(near.ahead);
    const auto back = direction(near.ahead * -1);
    const auto next = [](const Sentence& where) {
        return say("Does a tree stand at the next position of this row to the {}?", where);
    };
    asked.push_back(
        {"tree-ahead", next(there), 0, [](const NearSpot& s) { return is_true(s.facts.tree_ahead); }});
    asked.push_back(
        {"tree-behind", next(back), 0, [](const NearSpot& s) { return is_true(s.facts.tree_behind); }});
    const auto beside = [](const Sentence& where) {
        return say("Is there another row beside this one to the {}?", where);
    };
    asked.push_back({"row-left", beside(direction(left_of(near.ahead))), 0,
                     [](const NearSpot& s) { return is_true(s.facts.row_left); }});
    asked.push_back({"row-right", beside(direction(left_of(near.ahead) * -1)), 0,
                     [](const NearSpot& s) { return is_true(s.facts.row_right); }});
    asked.push_back({"tree-here", say("Does a tree stand here?"), 0,
                     [](const NearSpot& s) { return s.kind == SpotKind::tree ? 1.0 : 0.0; }});
}

void ask_to_count(const NearSpots& near, const std::string& name, const Sentence& where,
                  std::optional<int> SpotFacts::*trees, std::vector<Asked>& asked) {
    constexpr int most_counted = 12;  // trees: nobody counts more
    std::set<int> counts;
    for (const auto& spot : near.spots) {
        const auto& count = spot.facts.*trees;
        if (count && *count <= most_counted) {
            counts.insert(*count);
        }
    }
    for (const int count : counts) {
        auto words = count == 0 ? say("Is there no tree after this one to the {} end of the row?", where)
                                : say("Are there at most {} trees after this one to the {} end of the row?",
                                      count, where);
        asked.push_back({fmt::format("{}:{}", name, count), std::move(words), count_effort * count,
                         [trees, count](const NearSpot& s) {
                             return yes_of(s.facts.*trees, [&](int value) { return value <= count; });
                         }});
    }
}

std::set<std::string> names_at(const NearSpots& near, const Orchard& orchard, bool labels) {
    std::set<std::string> names;
    constexpr std::size_t most = 40;
    for (std::size_t i = 0; i < std::min(near.spots.size(), most); ++i) {
        const auto& spot = near.spots[i];
        if (spot.kind == SpotKind::tree) {
            const auto& tree = orchard.trees[*spot.tree];
            names.insert(labels ? tree.label : tree.accession.value_or(""));
        }
    }
    names.erase("");
    return names;
}

void ask_for_next(const NearSpots& near, const std::string& name, const Sentence& where,
                  std::optional<std::string> SpotFacts::*accession, std::vector<Asked>& asked) {
    std::set<std::string> names;
    for (const auto& spot : near.spots) {
        names.insert((spot.facts.*accession).value_or(""));
    }
    names.erase("");
    for (const auto& next : names) {
        asked.push_back({fmt::format("{}:{}", name, next),
                         say("Is the next tree of this row to the {} {}?", where, next), name_effort,
                         [accession, next](const NearSpot& s) {
                             return s.row ? (s.facts.*accession == next ? 1.0 : 0.0) : 0.5;
                         }});
    }
}

void ask_for_names(const NearSpots& near, const Orchard& orchard, std::vector<Asked>& asked) {
    for (const auto& name : names_at(near, orchard, false)) {
        asked.push_back({"accession:" + name, say("Is this tree {}?", name), name_effort,
                         [&orchard, name](const NearSpot& s) {
                             return s.kind == SpotKind::tree && orchard.trees[*s.tree].accession == name
                                        ? 1.0
                                        : 0.0;
                         }});
    }
    for (const auto& label : names_at(near, orchard, true)) {
        asked.push_back({"label:" + label, say("Does the label read {}?", label), label_effort,
                         [&orchard, label](const NearSpot& s) {
                             return s.kind == SpotKind::tree && orchard.trees[*s.tree].label == label ? 1.0
                                                                                                      : 0.0;
                         }});
    }
}

std::vector<Asked> all_questions(const NearSpots& near, const Orchard& orchard) {
    std::vector<Asked> asked;
    ask_of_neighbours(near, asked);
    ask_to_count(near, "count-ahead", direction(near.ahead), &SpotFacts::trees_ahead, asked);
    ask_to_count(near, "count-behind", direction(near.ahead * -1), &SpotFacts::trees_behind, asked);
    ask_for_next(near, "next-ahead", direction(near.ahead), &SpotFacts::accession_ahead, asked);
    ask_for_next(near, "next-behind", direction(near.ahead * -1), &SpotFacts::accession_behind, asked);
    ask_for_names(near, orchard, asked);
    return asked;
}

/// Bits, 0 to 1, of a question that is answered yes with this probability (Shannon 1948).
double entropy(double share) {
    return share <= 0 || share >= 1 ? 0.0 : -share * std::log2(share) - (1 - share) * std::log2(1 - share);
}

std::vector<double> scaled(std::vector<double> shares, double sum) {
    for (auto& share : shares) {
        share = sum > 0 ? share / sum : 0;
    }
    return shares;
}

/// What an answer is worth: the mutual information of answer and spot, which is the answer's entropy less
/// what is left of it once the spot is known.
NearQuestion weighed(const NearSpots& near, const Asked& asked) {
    NearQuestion question{asked.key, asked.words, 0, 0, {}, {}};
    double unsure = 0;
    for (const auto& spot : near.spots) {
        const double yes = asked.yes(spot);
        question.yes += spot.probability * yes;
        unsure += spot.probability * entropy(yes);
        question.if_yes.push_back(spot.probability * yes);
        question.if_no.push_back(spot.probability * (1 - yes));
    }
    question.bits = std::max(0.0, entropy(question.yes) - unsure);
    question.if_yes = scaled(std::move(question.if_yes), question.yes);
    question.if_no = scaled(std::move(question.if_no), 1 - question.yes);
    return question;
}

}  // namespace

std::vector<NearQuestion> questions_about(const NearSpots& near, const Orchard& orchard,
                                          const std::vector<std::string>& asked) {
    constexpr double least_bits = 0.01;  // what tells less is not worth asking
    struct Ranked {
        long rank = 0;
        NearQuestion question;
    };
    std::vector<Ranked> ranked;
    for (const auto& one : all_questions(near, orchard)) {
        auto question = weighed(near, one);
        if (question.bits >= least_bits && std::ranges::find(asked, one.key) == asked.end()) {
            // In millionths of a bit, so that rounding decides nothing between equals.
            const long rank = std::lround(1e6 * (question.bits - one.effort));
            ranked.push_back({rank, std::move(question)});
        }
    }
    std::ranges::stable_sort(ranked, std::ranges::greater{}, &Ranked::rank);
    std::vector<NearQuestion> questions;
    for (auto& entry : ranked) {
        questions.push_back(std::move(entry.question));
    }
    return questions;
}

std::vector<std::string> weigh_answers(NearSpots& near, const Orchard& orchard,
                                       const std::map<std::string, bool>& answers) {
    constexpr double wrong = 0.02;  // share of answers: common practice, no source
    const auto all = all_questions(near, orchard);
    std::vector<std::string> unknown;
    double sum = 0;
    for (const auto& [key, answer] : answers) {
        const auto found = std::ranges::find(all, key, &Asked::key);
        if (found == all.end()) {
            unknown.push_back(key);
            continue;
        }
        for (auto& spot : near.spots) {
            const double yes = wrong + (1 - 2 * wrong) * found->yes(spot);
            spot.probability *= answer ? yes : 1 - yes;
        }
    }
    for (const auto& spot : near.spots) {
        sum += spot.probability;
    }
    for (auto& spot : near.spots) {
        spot.probability /= sum;
    }
    std::ranges::stable_sort(near.spots, std::ranges::greater{}, &NearSpot::probability);
    return unknown;
}

}  // namespace pipward::place
