// SPDX-License-Identifier: MIT
#include "pipward/value/nearest.h"

#include <algorithm>
#include <numeric>

namespace pipward::value {
namespace {

std::string small(std::string_view word) {
    std::string text(word);
    std::ranges::transform(text, text.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return text;
}

int distance_without_capitals(const std::string& word, const std::string& candidate) {
    const int distance = edit_distance(word, candidate);
    const bool held = word.size() >= 2 && candidate.find(word) != std::string::npos;
    return held ? std::min(distance, 1) : distance;
}

struct Near {
    int distance = 0;
    std::string candidate;
};

bool comes_before(const Near& one, const Near& other) {
    return one.distance != other.distance ? one.distance < other.distance : one.candidate < other.candidate;
}

}  // namespace

int edit_distance(std::string_view a, std::string_view b) {
    std::vector<int> row(b.size() + 1);
    std::iota(row.begin(), row.end(), 0);
    for (std::size_t i = 0; i < a.size(); ++i) {
        int diagonal = row[0];
        row[0] = static_cast<int>(i) + 1;
        for (std::size_t j = 0; j < b.size(); ++j) {
            const int changed = diagonal + (a[i] == b[j] ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = std::min({row[j + 1] + 1, row[j] + 1, changed});
        }
    }
    return row.back();
}

std::optional<std::string> nearest(std::string_view word, const std::vector<std::string>& candidates) {
    std::optional<std::string> best;
    int least = std::max(2, static_cast<int>(word.size()) / 3) + 1;
    for (const auto& candidate : candidates) {
        const int distance = edit_distance(word, candidate);
        const bool begins_so = word.size() >= 3 && candidate.starts_with(word);
        if (distance < least || (begins_so && !best)) {
            least = std::min(least, distance);
            best = candidate;
        }
    }
    return best;
}

std::vector<std::string> nearest_few(std::string_view word, const std::vector<std::string>& candidates,
                                     std::size_t most) {
    const auto wanted = small(word);
    const int farthest = std::max(2, static_cast<int>(word.size()) / 3);
    std::vector<Near> near;
    for (const auto& candidate : candidates) {
        if (const int distance = distance_without_capitals(wanted, small(candidate)); distance <= farthest) {
            near.push_back({distance, candidate});
        }
    }
    std::ranges::sort(near, comes_before);
    std::vector<std::string> few;
    for (const auto& [distance, candidate] : near) {
        if (few.size() < most) {
            few.push_back(candidate);
        }
    }
    return few;
}

}  // namespace pipward::value
