// SPDX-License-Identifier: MIT
#include "random_source.h"

#include <cmath>

namespace pipward::larkfold {
namespace {

std::uint64_t fnv1a(std::string_view text) {
    std::uint64_t hash = 0xCBF29CE484222325;
    for (const char letter : text) {
        hash = (hash ^ static_cast<unsigned char>(letter)) * 0x100000001B3;
    }
    return hash;
}

}  // namespace

RandomSource::RandomSource(std::string_view stream) : state_(larkfold_seed ^ fnv1a(stream)) {}

std::uint64_t RandomSource::next() {
    state_ += 0x9E3779B97F4A7C15;
    std::uint64_t mixed = state_;
    mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
    mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
    return mixed ^ (mixed >> 31);
}

double RandomSource::uniform() {
    return static_cast<double>(next() >> 11) * 0x1.0p-53;
}

double RandomSource::normal() {
    double sum = 0;
    for (int i = 0; i < 12; ++i) {
        sum += uniform();
    }
    return sum - 6;
}

bool RandomSource::chance(double probability) {
    return uniform() < probability;
}

int RandomSource::whole(int low, int high) {
    return low + static_cast<int>(uniform() * (high - low + 1));
}

int RandomSource::successes(int trials, double probability) {
    int count = 0;
    for (int i = 0; i < trials; ++i) {
        count += chance(probability) ? 1 : 0;
    }
    return count;
}

double rounded(double value, int parts) {
    return std::floor(value * parts + 0.5) / parts;
}

}  // namespace pipward::larkfold
