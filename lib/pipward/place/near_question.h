// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "pipward/place/near_spots.h"

namespace pipward::place {

/// A question that can be answered by looking round, and what each answer would say.
struct NearQuestion {
    std::string key;             ///< "tree-ahead", "accession:Wrenlea", "label:UP-03-09"
    Sentence words;              ///< "Does a tree stand at the next place to the north-east?"
    double yes = 0;              ///< the probability of yes, 0..1
    double bits = 0;             ///< what the answer is worth, 0 to 1 (Shannon 1948)
    std::vector<double> if_yes;  ///< the spots' probabilities after yes
    std::vector<double> if_no;   ///< and after no; both as long as NearSpots::spots, sum 1
};

/// The questions that part the spots, the best first: the one that is worth most, less a little where it is
/// harder to answer. `asked` are keys of questions that have been answered.
std::vector<NearQuestion> questions_about(const NearSpots& near, const Orchard& orchard,
                                          const std::vector<std::string>& asked = {});

/// Weighs the spots by answers (key, yes or no): one in fifty is taken to be wrong. Gives the keys that mean
/// nothing here.
std::vector<std::string> weigh_answers(NearSpots& near, const Orchard& orchard,
                                       const std::map<std::string, bool>& answers);

}  // namespace pipward::place
