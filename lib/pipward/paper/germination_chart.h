// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/seed/trial.h"

namespace pipward::paper {

/// The course of every trial as one SVG file: the share of seed that germinated against days, a step a count,
/// each arm with a mark, a line and a label of its own, so that colour is not needed to tell them apart; at
/// the end the 95 % interval of the final share. Empty for no trial. Arms that have no course show their
/// interval only.
std::string germination_chart_svg(const std::vector<seed::Trial>& trials,
                                  const Wording& wording = in_english);

}  // namespace pipward::paper
