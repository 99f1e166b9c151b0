// SPDX-License-Identifier: MIT
#pragma once

namespace pipward::lineage {

/// What came of a worked cross: of so many flowers so many gave a fruit with seed.
struct CrossCount {
    int flowers = 0;  ///< worked, 0 or more
    int set = 0;      ///< of these, with seed: 0..flowers
};

/// What a count is held against: probabilities, 0..1.
struct SetChances {
    double set = 0.3;      ///< of a compatible cross's flowers
    double leak = 0.005;   ///< of an incompatible cross's flowers (common practice, no source)
    double mishap = 0.05;  ///< that a cross fails whole: dead pollen, frost (common practice, no source)
};

/// Exact binomial chance that a compatible cross of so many flowers sets none: (1 - set)^flowers.
double chance_of_none(int flowers, double set);
/// Exact binomial chance that leaking styles alone give so many of so many flowers, or more.
double chance_by_leak(CrossCount count, double leak);

/// How likely the count is where the cross is compatible, and where it is not. One-sided on purpose: where
/// nothing set, a compatible cross must have failed by mishap or chance; where something did, an
/// incompatible one must have leaked. How much set says nothing more: springs differ.
struct FieldLikelihood {
    double compatible = 1;    ///< probability of what was seen if the cross is compatible, 0..1
    double incompatible = 1;  ///< and if it is not, 0..1
};
/// Chances are taken as given: each between 0 and 1, `leak` below 1.
FieldLikelihood field_likelihood(CrossCount count, const SetChances& chances);

}  // namespace pipward::lineage
