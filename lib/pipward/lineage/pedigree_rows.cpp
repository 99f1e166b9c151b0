// SPDX-License-Identifier: MIT
// Order and heights of what stands in the columns.
#include <algorithm>
#include <limits>
#include <map>
#include <optional>

#include "pipward/lineage/detail/pedigree_columns.h"

namespace pipward::lineage::detail {
namespace {

constexpr int sorting_sweeps = 16;
constexpr int placing_sweeps = 24;

// By key, but never against an order; of orders that contradict each other the topmost item wins.
std::vector<int> sorted(const PedigreeColumns& columns, std::vector<int> open,
                        const std::vector<double>& key) {
    std::ranges::stable_sort(open, {}, [&](int item) { return key[item]; });
    std::map<int, int> above;  // items of the column that still must come before
    for (const int item : open) {
        for (const int below : columns.items[item].below) {
            ++above[below];
        }
    }
    std::vector<int> order;
    while (!open.empty()) {
        auto next = std::ranges::find_if(open, [&](int item) { return above[item] == 0; });
        next = next == open.end() ? open.begin() : next;
        for (const int below : columns.items[*next].below) {
            --above[below];
        }
        order.push_back(*next);
        open.erase(next);
    }
    return order;
}

std::optional<double> mean_of(const PedigreeColumns& columns, const std::vector<int>& items) {
    if (items.empty()) {
        return std::nullopt;
    }
    double sum = 0;
    for (const int item : items) {
        sum += columns.items[item].middle;
    }
    return sum / static_cast<double>(items.size());
}

void stack(PedigreeColumns& columns, const std::vector<int>& column, const PedigreeSpace& space) {
    double y = (space.height - column_height(columns, column, space)) / 2;
    for (std::size_t i = 0; i < column.size(); ++i) {
        auto& item = columns.items[column[i]];
        y += i > 0 ? gap_between(columns.items[column[i - 1]], item, space) : 0;
        item.middle = y + item.height / 2;
        y += item.height;
    }
}

void sort_column(PedigreeColumns& columns, std::vector<int>& column, bool by_younger,
                 const PedigreeSpace& space) {
    std::vector<double> key(columns.items.size());
    for (const int item : column) {
        const auto& it = columns.items[item];
        key[item] = mean_of(columns, by_younger ? it.younger : it.older).value_or(it.middle);
    }
    column = sorted(columns, column, key);
    stack(columns, column, space);
}

// Pairs of links between neighbouring columns that cross.
struct Link {
    int from = 0;
    int to = 0;
};

int crossings(const PedigreeColumns& columns) {
    std::vector<int> place(columns.items.size());
    for (const auto& column : columns.columns) {
        for (std::size_t i = 0; i < column.size(); ++i) {
            place[column[i]] = static_cast<int>(i);
        }
    }
    int count = 0;
    for (const auto& column : columns.columns) {
        std::vector<Link> links;
        for (const int item : column) {
            for (const int older : columns.items[item].older) {
                links.push_back({place[item], place[older]});
            }
        }
        for (std::size_t i = 0; i < links.size(); ++i) {
            for (std::size_t k = 0; k < i; ++k) {
                const auto [from, to] = links[i];
                const auto [other_from, other_to] = links[k];
                count += (from < other_from && to > other_to) || (from > other_from && to < other_to) ? 1 : 0;
            }
        }
    }
    return count;
}

void centre(PedigreeColumns& columns, const PedigreeSpace& space) {
    double top = space.height;
    double bottom = 0;
    for (const auto& item : columns.items) {
        top = std::min(top, item.middle - item.height / 2);
        bottom = std::max(bottom, item.middle + item.height / 2);
    }
    for (auto& item : columns.items) {
        item.middle += (space.height - bottom - top) / 2;
    }
}

struct Pool {
    double mean = 0;
    double weight = 0;
    std::size_t items = 0;
};

// The heights nearest to the wished ones (least squares) that keep the order and the gaps: pooling adjacent
// violators, after Ayer et al. 1955, Ann. Math. Stat. 26:641 (from memory).
void place_column(PedigreeColumns& columns, const std::vector<int>& column, const std::vector<double>& wish,
                  const PedigreeSpace& space) {
    std::vector<double> offset(column.size());
    std::vector<Pool> pools;
    for (std::size_t i = 0; i < column.size(); ++i) {
        const auto& item = columns.items[column[i]];
        if (i > 0) {
            const auto& above = columns.items[column[i - 1]];
            offset[i] = offset[i - 1] + (above.height + item.height) / 2 + gap_between(above, item, space);
        }
        pools.push_back({wish[column[i]] - offset[i], 1, 1});
        while (pools.size() > 1 && pools[pools.size() - 2].mean > pools.back().mean) {
            const auto last = pools.back();
            pools.pop_back();
            auto& pool = pools.back();
            pool.mean = (pool.mean * pool.weight + last.mean * last.weight) / (pool.weight + last.weight);
            pool.weight += last.weight;
            pool.items += last.items;
        }
    }
    const double least = columns.items[column.front()].height / 2;
    const double most = space.height - columns.items[column.back()].height / 2 - offset.back();
    std::size_t i = 0;
    for (const auto& pool : pools) {
        for (std::size_t n = 0; n < pool.items; ++n, ++i) {
            columns.items[column[i]].middle = std::clamp(pool.mean, least, std::max(least, most)) + offset[i];
        }
    }
}

enum class Pull { younger, older, both };

void place_all(PedigreeColumns& columns, Pull pull, const PedigreeSpace& space) {
    const auto count = columns.columns.size();
    for (std::size_t n = 0; n < count; ++n) {
        const auto& column = columns.columns[pull == Pull::older ? count - 1 - n : n];
        std::vector<double> wish(columns.items.size());
        for (const int item : column) {
            const auto& it = columns.items[item];
            auto joined = pull == Pull::older ? it.older : it.younger;
            if (pull == Pull::both) {
                joined.insert(joined.end(), it.older.begin(), it.older.end());
            }
            wish[item] = mean_of(columns, joined).value_or(it.middle);
        }
        if (!column.empty()) {
            place_column(columns, column, wish, space);
        }
    }
}

}  // namespace

void order_columns(const PedigreeView& view, PedigreeColumns& columns, const PedigreeSpace& space) {
    for (auto& column : columns.columns) {
        stack(columns, column, space);
    }
    const auto count = static_cast<std::size_t>(view.column_count);
    auto best = columns.columns;
    int fewest = std::numeric_limits<int>::max();
    for (int sweep = 0; sweep < sorting_sweeps; ++sweep) {
        const bool by_younger = sweep % 2 == 0;
        for (std::size_t n = 0; n < count; ++n) {
            sort_column(columns, columns.columns[by_younger ? n : count - 1 - n], by_younger, space);
        }
        if (const int crossed = crossings(columns); crossed < fewest) {
            fewest = crossed;
            best = columns.columns;
        }
    }
    columns.columns = std::move(best);
    for (auto& column : columns.columns) {
        stack(columns, column, space);
    }
    for (int sweep = 0; sweep < placing_sweeps; ++sweep) {
        place_all(columns, sweep % 2 == 0 ? Pull::older : Pull::younger, space);
    }
    place_all(columns, Pull::both, space);
    place_all(columns, Pull::older, space);
    centre(columns, space);
}

}  // namespace pipward::lineage::detail
