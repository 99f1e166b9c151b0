// SPDX-License-Identifier: MIT
#include "pipward/place/detail/visit_order.h"

#include <algorithm>
#include <limits>

namespace pipward::place::detail {
namespace {

constexpr double far = std::numeric_limits<double>::infinity();

// One way of making one stop.
struct Option {
    std::uint32_t stop = 0;
    std::uint32_t place = 0;
};

std::vector<Option> options_of(const Round& round) {
    std::vector<Option> options;
    for (std::uint32_t stop = 0; stop < round.stops.size(); ++stop) {
        for (const auto place : round.stops[stop]) {
            options.push_back({stop, place});
        }
    }
    return options;
}

// The shortest way to have made a set of stops and be at one of them, for every set.
class SetTable {
  public:
    SetTable(const PlaceDistances& distances, const Round& round)
        : distances_(distances),
          round_(round),
          options_(options_of(round)),
          sets_(std::size_t{1} << round.stops.size()),
          entries_(sets_ * options_.size()) {
        begin();
        for (std::size_t set = 1; set < sets_; ++set) {
            extend(set);
        }
    }

    std::vector<Visit> order() const {
        std::size_t set = sets_ - 1;
        std::size_t last = best_last();
        std::vector<Visit> visits;
        while (set != 0) {
            visits.push_back({options_[last].stop, options_[last].place});
            const auto before = at(set, last).before;
            set &= ~bit(last);
            last = before;
        }
        std::ranges::reverse(visits);
        return visits;
    }

  private:
    struct Entry {
        double metres = far;
        std::uint32_t before = 0;
    };

    std::size_t bit(std::size_t option) const { return std::size_t{1} << options_[option].stop; }
    Entry& at(std::size_t set, std::size_t option) { return entries_[set * options_.size() + option]; }
    const Entry& at(std::size_t set, std::size_t option) const {
        return entries_[set * options_.size() + option];
    }

    void begin() {
        for (std::size_t option = 0; option < options_.size(); ++option) {
            at(bit(option), option).metres = nearest_of(distances_, round_.start, options_[option].place);
        }
    }

    void extend(std::size_t set) {
        for (std::size_t last = 0; last < options_.size(); ++last) {
            const auto so_far = at(set, last).metres;
            for (std::size_t next = 0; so_far < far && next < options_.size(); ++next) {
                if ((set & bit(next)) == 0) {
                    improve(at(set | bit(next), next),
                            so_far + distances_(options_[last].place, options_[next].place), last);
                }
            }
        }
    }

    static void improve(Entry& entry, double metres, std::size_t before) {
        if (metres < entry.metres) {
            entry = {metres, static_cast<std::uint32_t>(before)};
        }
    }

    std::size_t best_last() const {
        std::size_t best = 0;
        double shortest = far;
        for (std::size_t option = 0; option < options_.size(); ++option) {
            const double metres =
                at(sets_ - 1, option).metres + nearest_of(distances_, round_.end, options_[option].place);
            if (metres < shortest) {
                shortest = metres;
                best = option;
            }
        }
        return best;
    }

    const PlaceDistances& distances_;
    const Round& round_;
    std::vector<Option> options_;
    std::size_t sets_;
    std::vector<Entry> entries_;
};

}  // namespace

double nearest_of(const PlaceDistances& distances, const StopPlaces& places, std::uint32_t to) {
    double nearest = places.empty() ? 0.0 : far;
    for (const auto place : places) {
        nearest = std::min(nearest, distances(place, to));
    }
    return nearest;
}

std::vector<Visit> shortest_order(const PlaceDistances& distances, const Round& round) {
    return SetTable(distances, round).order();
}

double round_length(const PlaceDistances& distances, const Round& round, const std::vector<Visit>& order) {
    if (order.empty()) {
        return 0;
    }
    double metres = nearest_of(distances, round.start, order.front().place) +
                    nearest_of(distances, round.end, order.back().place);
    for (std::size_t i = 1; i < order.size(); ++i) {
        metres += distances(order[i - 1].place, order[i].place);
    }
    return metres;
}

std::vector<Visit> visit_order(const PlaceDistances& distances, const Round& round,
                               const std::function<void(double)>& tell) {
    if (round.stops.empty()) {
        return {};
    }
    return round.stops.size() <= exact_stops ? shortest_order(distances, round)
                                             : searched_order(distances, round, tell);
}

}  // namespace pipward::place::detail
