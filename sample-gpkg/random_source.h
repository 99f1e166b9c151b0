// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string_view>

namespace pipward::larkfold {

/// "LARKFOLD" in ASCII: the one seed of everything that is drawn.
inline constexpr std::uint64_t larkfold_seed = 0x4C41524B464F4C44;

/// Numbers that look random and are the same on every machine: SplitMix64 (Steele, Lea & Flood 2014), and
/// transforms of additions and multiplications alone, so that no mathematics library can differ. The standard
/// library's distributions are not used: each implementation draws its own.
/// Every story has a stream of its own, so adding a draw to one leaves the others as they were.
class RandomSource {
  public:
    /// The stream's start is the seed, mixed with the stream's name by 64-bit FNV-1a.
    explicit RandomSource(std::string_view stream);

    std::uint64_t next();
    /// The upper 53 bits of next(), from 0 up to but not including 1.
    double uniform();
    /// Mean 0 and standard deviation 1: the sum of twelve uniforms less six (Irwin-Hall), range -6..6.
    double normal();
    bool chance(double probability);
    /// A whole number from `low` to `high`, both included.
    int whole(int low, int high);
    /// How many of `trials` succeed: one chance() each.
    int successes(int trials, double probability);

  private:
    std::uint64_t state_;
};

/// To the nearest multiple of 1/`parts`, halves upwards; with 10 the nearest tenth.
double rounded(double value, int parts);

}  // namespace pipward::larkfold
