// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <span>
#include <vector>

/// The middle and the parts of a list of values.
namespace pipward::math {

/// 0 for none.
double mean(std::span<const double> values);

/// The middle value, or the mean of the middle two; 0 for none. Hyndman & Fan 1996, Am. Stat. 50:361, type 2.
double median(std::vector<double> values);

/// The value that so many others precede, the least being the 0th: of what can be ordered but not halved, or
/// where the answer must be one of the values. Range of `place`: less than the number of values.
template <class Value>
Value in_place(std::vector<Value> values, std::size_t place) {
    const auto at = values.begin() + static_cast<std::ptrdiff_t>(place);
    std::ranges::nth_element(values, at);
    return *at;
}

/// The middle value, the greater one of the middle two. Of at least one value.
template <class Value>
Value middle_value(std::vector<Value> values) {
    const auto half = values.size() / 2;
    return in_place(std::move(values), half);
}

/// Of equally likely values: the smallest that at least `chance` of them do not exceed (type 1: the inverse
/// of the distribution). Range of `chance`: 0 to 1. Nothing for none.
template <class Value>
std::optional<Value> quantile(std::vector<Value> values, double chance) {
    if (values.empty()) {
        return std::nullopt;
    }
    // A billionth is forgiven: 0.1 x 10 is a little more than 1 for a computer.
    const double rank = std::ceil(chance * static_cast<double>(values.size()) - 1e-9) - 1;
    const double place = std::clamp(rank, 0.0, static_cast<double>(values.size() - 1));
    return in_place(std::move(values), static_cast<std::size_t>(place));
}

/// Of a sample: between the two values whose middles enclose `chance` (type 5, Hazen's). Range of `chance`:
/// 0 to 1; beyond the outer values' middles their own. At least one value; it reorders them, so that several
/// quantiles of one list cost no copies.
double sample_quantile(std::vector<double>& values, double chance);

}  // namespace pipward::math
