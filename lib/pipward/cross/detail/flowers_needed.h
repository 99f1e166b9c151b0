// SPDX-License-Identifier: MIT
#pragma once

namespace pipward::cross::detail {

/// What becomes of one worked flower.
struct FlowerFate {
    double fruit_set = 0;                 ///< chance that it makes a fruit, 0..1
    double seeds_per_fruit = 0;           ///< mean
    double seeds_per_fruit_variance = 0;  ///< of seeds between fruits
    double seed_to_seedling = 0;  ///< chance that a seed becomes a seedling: germination x survival, 0..1
    double fruit_set_sd = 0;      ///< of the set from cross to cross; 0: every cross sets alike
};

/// Seedlings that one worked flower gives, on average.
double seedlings_per_flower(const FlowerFate& fate);

/// The fewest flowers that give at least `wanted` seedlings with this confidence, rounded up: by the normal
/// curve over the sum of independent flowers of one cross, whose set is drawn from a beta distribution (the
/// fruits are then beta-binomial) in fixed, equally likely steps. 0 for none wanted; nothing can be
/// calculated where flowers give no seedlings, and the answer is then -1.
int flowers_needed(int wanted, const FlowerFate& fate, double confidence);

/// The fewest seedlings among which at least `wanted` are of a kind that appears with `frequency`, with this
/// confidence: exact binomial, rounded up. (Sedcole 1977, Crop Sci. 17:667, tells why.) Range of frequency
/// and confidence: above 0, below 1; wanted 1..1000.
int plants_needed(int wanted, double frequency, double confidence);

}  // namespace pipward::cross::detail
