// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_edge.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>

#include "pipward/math/distributions.h"
#include "pipward/math/least_squares.h"

namespace pipward::place::detail {
namespace {

constexpr std::size_t most_tried = 24;  // rows, evenly spread, through which edges are laid
constexpr int most_missing = 40;        // positions at a row's beginning
constexpr double least_spread = 0.06;   // positions: no edge is more even
constexpr double first_spread = 0.2;    // positions
constexpr double any_beginning = 2e-7;  // density a position of a row that begins anywhere
constexpr double as_likely = 1e-4;      // probability below which rows side by side do not miss their trees
constexpr double at_the_side = 3e-3;    // and the outermost row
constexpr double curved_prior = -3;  // logarithms: a bent edge, and a staggered one, against a straight one
constexpr double staggered_prior = -3;

struct Edge {
    std::array<double, 4> shape{};  // metres: offset, lean, bend, half of the step back of odd rows
    double spread = first_spread;   // positions
    double score = -1e300;          // log posterior but for a constant
    std::vector<int> missing{};     // of each row
    bool bends = false;
    bool staggers = false;

    double at(double x, std::size_t row) const {
        return shape[0] + x * (shape[1] + x * shape[2]) + (row % 2 == 0 ? -shape[3] : shape[3]);
    }
};

struct Block {
    std::span<const RowBeginning> rows;
    std::vector<double> x{};  // across, -1..1
    double missing = 0.1;
};

/// In positions.
double beyond(const Block& block, const Edge& edge, std::size_t row) {
    return (block.rows[row].first - edge.at(block.x[row], row)) / block.rows[row].step;
}

double spread_of(const Block& block, const Edge& edge, std::size_t row) {
    return std::hypot(edge.spread, block.rows[row].uncertainty / block.rows[row].step);
}

/// How likely the row begins so many positions behind the edge, and is seen where it is.
double weight(const Block& block, const Edge& edge, std::size_t row, int missing) {
    const double off = beyond(block, edge, row) - missing;
    const double prior = missing < 0 ? 0.001 : (1 - block.missing) * std::pow(block.missing, missing);
    return prior * math::normal_density(off, spread_of(block, edge, row));
}

int likeliest(const Block& block, const Edge& edge, std::size_t row) {
    const int near = std::clamp(static_cast<int>(std::lround(beyond(block, edge, row))), -1, most_missing);
    int best = near;
    for (int missing = std::max(near - 1, -1); missing <= near + 1; ++missing) {
        best = weight(block, edge, row, missing) > weight(block, edge, row, best) ? missing : best;
    }
    return best;
}

/// By the numbers that it has.
void score(const Block& block, Edge& edge) {
    edge.score = (edge.bends ? curved_prior : 0) + (edge.staggers ? staggered_prior : 0);
    for (std::size_t row = 0; row < block.rows.size(); ++row) {
        edge.score += std::log(weight(block, edge, row, edge.missing[row]) + any_beginning);
    }
}

void number(const Block& block, Edge& edge) {
    edge.missing.clear();
    for (std::size_t row = 0; row < block.rows.size(); ++row) {
        edge.missing.push_back(likeliest(block, edge, row));
    }
    score(block, edge);
}

/// By the rows that agree, each as it is numbered now.
void fit(const Block& block, Edge& edge) {
    const double never = 1e-9;
    math::LeastSquares squares({1e4, 1e4, edge.bends ? 1e4 : never, edge.staggers ? 1e4 : never});
    double sum = 0;
    double weights = 0;
    for (std::size_t row = 0; row < block.rows.size(); ++row) {
        const auto& one = block.rows[row];
        const double here = weight(block, edge, row, edge.missing[row]);
        const double counts = here / (here + any_beginning);
        const double x = block.x[row];
        squares.add({1, x, x * x, row % 2 == 0 ? -1.0 : 1.0}, one.first - edge.missing[row] * one.step,
                    counts / (one.step * one.step));
        const double off = beyond(block, edge, row) - edge.missing[row];
        sum += counts * off * off;
        weights += counts;
    }
    const auto shape = squares.solve();
    std::ranges::copy(shape, edge.shape.begin());
    const double free = std::max(weights - (edge.bends ? 3 : 2) - (edge.staggers ? 1 : 0), 1.0);
    edge.spread = std::clamp(std::sqrt(sum / free), least_spread, 0.5);
}

void refine(const Block& block, Edge& edge) {
    for (int turn = 0; turn < 6; ++turn) {
        fit(block, edge);
        number(block, edge);
    }
}

/// Were these rows to begin a position earlier or later, the edge bent to it.
std::optional<Edge> otherwise(const Block& block, Edge edge, std::span<const std::size_t> rows, int by) {
    for (const auto row : rows) {
        edge.missing[row] += by;
        if (edge.missing[row] < 0) {
            return std::nullopt;
        }
    }
    for (int turn = 0; turn < 6; ++turn) {
        fit(block, edge);
    }
    score(block, edge);
    return edge;
}

using Edges = std::map<std::vector<int>, Edge>;

void keep(Edges& edges, Edge edge) {
    const auto found = edges.find(edge.missing);
    if (found == edges.end()) {
        edges.emplace(edge.missing, std::move(edge));
    } else if (edge.score > found->second.score) {
        found->second = std::move(edge);
    }
}

/// Straight through two first trees; bent through three.
std::vector<Edge> tried_edges(const Block& block) {
    std::vector<Edge> tried;
    const auto stride = (block.rows.size() + most_tried - 1) / most_tried;
    for (std::size_t i = 0; i < block.rows.size(); i += stride) {
        for (std::size_t j = i + stride; j < block.rows.size(); j += stride) {
            const double far = block.x[j] - block.x[i];
            if (far < 1e-6) {
                continue;
            }
            Edge straight;
            straight.shape[1] = (block.rows[j].first - block.rows[i].first) / far;
            straight.shape[0] = block.rows[i].first - straight.shape[1] * block.x[i];
            tried.push_back(straight);
            for (std::size_t k = j + stride; k < block.rows.size(); k += stride) {
                const double on = block.x[k] - block.x[j];
                if (on < 1e-6) {
                    continue;
                }
                const double second = ((block.rows[k].first - block.rows[j].first) / on -
                                       (block.rows[j].first - block.rows[i].first) / far) /
                                      (block.x[k] - block.x[i]);
                Edge bent;
                bent.shape[2] = second;
                bent.shape[1] = straight.shape[1] - second * (block.x[i] + block.x[j]);
                bent.shape[0] = block.rows[i].first - block.x[i] * (bent.shape[1] + block.x[i] * second);
                tried.push_back(bent);
            }
        }
    }
    return tried;
}

Block block_of(std::span<const RowBeginning> rows, double missing) {
    Block block{rows, {}, missing};
    double low = 1e300;
    double high = -1e300;
    for (const auto& row : rows) {
        low = std::min(low, row.across);
        high = std::max(high, row.across);
    }
    for (const auto& row : rows) {
        block.x.push_back(2 * (row.across - low) / std::max(high - low, 1e-6) - 1);
    }
    return block;
}

/// Rows that stand side by side and all begin late, or more than gaps would leave: maybe they begin there.
std::vector<bool> late_together(std::span<const int> missing, double share) {
    std::vector<bool> late(missing.size(), false);
    const auto size = missing.size();
    const auto doubt = [&](std::size_t from, std::size_t to) {
        int gone = 0;
        for (std::size_t row = from; row < to; ++row) {
            gone += missing[row];
        }
        // The outermost rows have a neighbour on one side only.
        const bool outermost = from == 0 || to == size;
        const double seldom = to - from > 1 ? as_likely : outermost ? at_the_side : 0;
        if (std::pow(share, gone) < seldom) {
            std::fill(late.begin() + static_cast<std::ptrdiff_t>(from),
                      late.begin() + static_cast<std::ptrdiff_t>(to), true);
        }
    };
    for (std::size_t from = 0; from < size;) {
        auto to = from;
        while (to < size && missing[to] > 0) {
            ++to;
        }
        if (to > from) {
            doubt(from, to);
        }
        from = to + 1;
    }
    const auto gaps = std::ranges::count_if(missing, [](int one) { return one > 0; });
    const auto rows = static_cast<int>(size);
    if (1 - math::binomial_fewer(static_cast<int>(gaps), rows, std::max(share, 0.05)) < 0.002) {
        for (std::size_t i = 0; i < size; ++i) {
            late[i] = late[i] || missing[i] > 0;
        }
    }
    return late;
}

}  // namespace

namespace {

constexpr std::size_t fewest_rows = 3;

/// The edges that do best, the best one among them, and what each row begins with.
struct Readings {
    Edge best{};
    Edges edges{};
};

Readings readings_of(const Block& block) {
    auto tried = tried_edges(block);
    for (auto& edge : tried) {
        number(block, edge);
    }
    std::ranges::sort(tried, std::greater<>{}, &Edge::score);
    Readings readings;
    int refined = 0;
    for (const auto& edge : tried) {
        if (readings.edges.contains(edge.missing)) {
            continue;
        }
        for (const bool staggers : {false, true}) {
            for (const bool bends : {false, true}) {
                auto better = edge;
                better.shape[2] = bends ? better.shape[2] : 0;
                better.bends = bends;
                better.staggers = staggers;
                number(block, better);
                refine(block, better);
                keep(readings.edges, std::move(better));
            }
        }
        if (++refined >= 12) {
            break;
        }
    }
    for (const auto& [numbers, edge] : readings.edges) {
        readings.best = edge.score > readings.best.score ? edge : readings.best;
    }
    return readings;
}

/// Rows at a side have the edge follow them easily: so what if they began elsewhere?
void add_others(const Block& block, Readings& readings) {
    const auto rows = block.rows.size();
    for (std::size_t row = 0; row < rows; ++row) {
        const auto other = row == 0 ? 1 : row + 1 == rows ? row - 1 : row;
        std::vector<std::vector<std::size_t>> groups{{row}};
        if (other != row) {
            groups.push_back({row, other});
        }
        for (const int by : {-1, 1}) {
            for (const auto& group : groups) {
                if (auto edge = otherwise(block, readings.best, group, by)) {
                    keep(readings.edges, std::move(*edge));
                }
            }
        }
    }
}

/// What one edge says of each row: its number, and how sure that is with this edge.
struct NumberedBlock {
    std::vector<int> missing{};
    std::vector<double> certainty{};
    double score = -1e300;
    double spread = 0;
};

NumberedBlock numbered(const Block& block) {
    auto readings = readings_of(block);
    NumberedBlock result{readings.best.missing, {}, readings.best.score, readings.best.spread};
    if (result.missing.empty()) {
        return result;
    }
    add_others(block, readings);
    const auto& best = readings.best;
    for (std::size_t row = 0; row < block.rows.size(); ++row) {
        double sum = any_beginning;
        const int likely = best.missing[row];
        for (int other = -1; other <= likely + 3; ++other) {
            sum += weight(block, best, row, other);
        }
        double same = 0;
        double all = 0;
        for (const auto& [numbers, edge] : readings.edges) {
            const double posterior = std::exp(std::min(edge.score - best.score, 0.0));
            all += posterior;
            same += numbers[row] == likely ? posterior : 0;
        }
        const double own = weight(block, best, row, likely) / sum;
        double certainty = likely < 0 ? 0 : own * same / all;
        // Beginnings as uneven as that come of a receiver's drift, whose errors go together.
        if (best.spread > 0.12) {
            certainty = std::max(1 - 30 * (1 - certainty), 0.0);
        }
        result.certainty.push_back(certainty);
    }
    return result;
}

FoundEdge taken_over(const NumberedBlock& numbers, std::vector<RowBeginning>& rows) {
    FoundEdge found;
    std::size_t agreed = 0;
    for (std::size_t row = 0; row < rows.size(); ++row) {
        rows[row].missing = numbers.missing[row];
        rows[row].certainty = numbers.certainty[row];
        agreed += numbers.missing[row] == 0 && numbers.certainty[row] > 0.5 ? 1 : 0;
    }
    found.clear = agreed >= fewest_rows && 2 * agreed >= rows.size();
    return found;
}

}  // namespace

FoundEdge find_edge(std::vector<RowBeginning>& rows, double missing, bool common) {
    if (rows.size() < fewest_rows) {
        return {};
    }
    const auto numbers = numbered(block_of(rows, missing));
    if (numbers.missing.empty()) {
        return {};
    }
    auto found = taken_over(numbers, rows);
    if (!common) {
        const auto late = late_together(numbers.missing, missing);
        for (std::size_t row = 0; row < rows.size(); ++row) {
            rows[row].certainty = late[row] ? 0 : rows[row].certainty;
            found.late_rows = found.late_rows || late[row];
        }
    }
    return found;
}

FoundEdge find_bent_edge(std::vector<RowBeginning>& rows, double missing) {
    const auto count = rows.size();
    std::vector<NumberedBlock> splits;
    for (std::size_t first = fewest_rows; first + fewest_rows <= count; ++first) {
        const std::span<const RowBeginning> all(rows);
        auto numbers = numbered(block_of(all.first(first), missing));
        const auto others = numbered(block_of(all.subspan(first), missing));
        numbers.missing.insert(numbers.missing.end(), others.missing.begin(), others.missing.end());
        numbers.certainty.insert(numbers.certainty.end(), others.certainty.begin(), others.certainty.end());
        numbers.score += others.score;
        if (numbers.missing.size() == count && numbers.certainty.size() == count) {
            splits.push_back(std::move(numbers));
        }
    }
    if (splits.empty()) {
        return {};
    }
    auto best = *std::ranges::max_element(splits, {}, &NumberedBlock::score);
    for (std::size_t row = 0; row < count; ++row) {
        double same = 0;
        double all = 0;
        for (const auto& split : splits) {
            const double posterior = std::exp(split.score - best.score);
            all += posterior;
            same += split.missing[row] == best.missing[row] ? posterior : 0;
        }
        best.certainty[row] *= same / all;
    }
    return taken_over(best, rows);
}

}  // namespace pipward::place::detail
