// SPDX-License-Identifier: MIT
#include "pipward/operation/nearest.h"

#include <algorithm>
#include <numeric>

namespace pipward {

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

}  // namespace pipward
