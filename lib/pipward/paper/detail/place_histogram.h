// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>

#include "pipward/bloom/forward.h"
#include "pipward/paper/speech.h"

namespace pipward::paper::detail {

/// One histogram a score, beside each other: how many observed days fell into each tenth of the scenarios,
/// with the tenth that a right forecast has as a line and the room that chance leaves so many springs as a
/// band (80 % of a binomial share, one draw a spring: a spring's accessions tell one thing).
/// SVG to stand within a page; empty without scores.
std::string place_histograms_svg(std::span<const bloom::ForwardScore> scores, const Speech& speech);

}  // namespace pipward::paper::detail
