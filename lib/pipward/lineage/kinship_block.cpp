// SPDX-License-Identifier: MIT
#include <algorithm>
#include <utility>

#include "pipward/lineage/detail/kinship_sweep.h"
#include "pipward/lineage/kinship_factors.h"

namespace pipward::lineage {
namespace {

std::vector<bool> with_ancestors(const GeneFlow& flow, std::span<const int> rows,
                                 std::span<const int> columns) {
    std::vector<bool> marked(flow.members());
    for (const auto chosen : {rows, columns}) {
        for (const int member : chosen) {
            marked[member] = true;
        }
    }
    for (int i = flow.members() - 1; i >= 0; --i) {
        if (marked[i]) {
            for (const auto& parent : flow.parents_of(i)) {
                marked[parent.parent] = true;
            }
        }
    }
    return marked;
}

}  // namespace

std::vector<double> kinship_block(const KinshipFactors& factors, std::span<const int> rows,
                                  std::span<const int> columns) {
    std::vector<int> place;
    const auto part = detail::marked_part(factors.flow, with_ancestors(factors.flow, rows, columns), place);
    std::vector<double> sampling;
    for (std::size_t i = 0; i < place.size(); ++i) {
        if (place[i] >= 0) {
            sampling.push_back(factors.sampling[i]);
        }
    }
    const auto at = [&](int member) { return place[member]; };
    std::vector<double> block(rows.size() * columns.size());
    std::vector<int> wanted;
    for (const int row : rows) {
        wanted.push_back(at(row));
    }
    detail::KinshipSweep sweep(part);
    for (std::size_t begin = 0; begin < columns.size(); begin += detail::sweep_lanes) {
        const auto some = columns.subspan(begin, std::min(detail::sweep_lanes, columns.size() - begin));
        std::vector<std::vector<ParentShare>> units;
        for (const int column : some) {
            units.push_back({{at(column), 1.0}});
        }
        sweep.run(sampling, units, wanted);
        for (std::size_t row = 0; row < rows.size(); ++row) {
            for (std::size_t lane = 0; lane < some.size(); ++lane) {
                block[row * columns.size() + begin + lane] = sweep.at(wanted[row])[lane] / 2;
            }
        }
    }
    return block;
}

std::vector<MatrixEntry> relationship_inverse(const KinshipFactors& factors) {
    std::vector<MatrixEntry> entries;
    for (int i = 0; i < factors.flow.members(); ++i) {
        const double weight = 1 / std::max(least_sampling, factors.sampling[i]);
        const auto parents = factors.flow.parents_of(i);
        entries.push_back({i, i, weight});
        for (const auto& one : parents) {
            entries.push_back({one.parent, i, -one.share * weight});
            for (const auto& other : parents) {
                if (one.parent <= other.parent) {
                    entries.push_back({one.parent, other.parent, one.share * other.share * weight});
                }
            }
        }
    }
    std::ranges::sort(entries, {}, [](const MatrixEntry& e) { return std::pair(e.row, e.column); });
    std::vector<MatrixEntry> merged;
    for (const auto& entry : entries) {
        if (!merged.empty() && merged.back().row == entry.row && merged.back().column == entry.column) {
            merged.back().value += entry.value;
        } else {
            merged.push_back(entry);
        }
    }
    return merged;
}

}  // namespace pipward::lineage
