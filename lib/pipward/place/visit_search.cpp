// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <cmath>
#include <compare>
#include <limits>
#include <numeric>
#include <optional>

#include "pipward/place/detail/visit_order.h"

// Local search for a short round: stretches turned round (2-opt: Croes 1958, Oper. Res. 6:791), up to three
// stops moved elsewhere (Or-opt: Or 1976, from memory), sides changed; begun again and again from the best
// round with two neighbouring stretches exchanged (double bridge: Martin, Otto & Felten 1991, Complex Systems
// 5:299).
namespace pipward::place::detail {
namespace {

using Place = std::uint32_t;
constexpr double least_gain = 1e-7;  // metres: less is rounding

// Found by trial on the instances that the tests read.
constexpr int tries_a_stop = 100;
constexpr int least_tries = 4000;
constexpr int most_tries = 40000;
constexpr double patience_share = 1.5;  // of the mean way between stops, at the beginning

struct Neighbour {
    double metres = 0;
    std::uint32_t stop = 0;

    auto operator<=>(const Neighbour&) const = default;
};

// The stops in order, each at one of its places.
class Tour {
  public:
    Tour(const PlaceDistances& distances, const Round& round) : distances_(distances), round_(round) {
        to_start_.resize(distances.places());
        to_end_.resize(distances.places());
        for (Place place = 0; place < distances.places(); ++place) {
            to_start_[place] = nearest_of(distances, round.start, place);
            to_end_[place] = nearest_of(distances, round.end, place);
        }
        find_neighbours();
        begin_with_the_nearest();
    }

    int stops() const { return static_cast<int>(order_.size()); }
    const std::vector<Visit>& order() const { return order_; }
    const Visit& operator[](int i) const { return order_[static_cast<std::size_t>(i)]; }
    int where(std::uint32_t stop) const { return where_[stop]; }
    const StopPlaces& places(std::uint32_t stop) const { return round_.stops[stop]; }
    const std::vector<Neighbour>& neighbours(std::uint32_t stop) const { return neighbours_[stop]; }

    // Between the stops at i and i + 1; i may be -1, the start, and i + 1 the end.
    double link(int i) const {
        return i < 0             ? to_start_[(*this)[0].place]
               : i + 1 < stops() ? distances_((*this)[i].place, (*this)[i + 1].place)
                                 : to_end_[(*this)[i].place];
    }
    double from(int i, Place place) const {
        return i < 0 ? to_start_[place] : distances_((*this)[i].place, place);
    }
    double to(Place place, int i) const {
        return i >= stops() ? to_end_[place] : distances_(place, (*this)[i].place);
    }
    double length() const {
        double metres = 0;
        for (int i = -1; i < stops(); ++i) {
            metres += link(i);
        }
        return metres;
    }

    void turn_round(int first, int last) {
        std::reverse(order_.begin() + first, order_.begin() + last + 1);
        renumber(first, last);
    }
    // Exchanges the stretches first..middle-1 and middle..last.
    void exchange(int first, int middle, int last) {
        std::rotate(order_.begin() + first, order_.begin() + middle, order_.begin() + last + 1);
        renumber(first, last);
    }
    // The best places of all for the order as it is; the stops that changed theirs.
    std::vector<int> choose_places() {
        steps_.clear();
        starts_.assign(1, 0);
        for (const auto& visit : order_) {
            const auto before = starts_.back();
            const auto now = static_cast<std::uint32_t>(steps_.size());
            for (const auto place : round_.stops[visit.stop]) {
                steps_.push_back(best_step(place, before, now));
            }
            starts_.push_back(now);
        }
        return go_back();
    }
    void move_to(int i, Place place) { order_[static_cast<std::size_t>(i)].place = place; }
    void put_back(const std::vector<Visit>& order) {
        order_ = order;
        renumber(0, stops() - 1);
    }

  private:
    // The shortest way to be at a place, after the steps before it.
    struct Step {
        Place place = 0;
        double metres = 0;
        std::uint32_t before = 0;
    };

    Step best_step(Place place, std::uint32_t first, std::uint32_t end) const {
        if (first == end) {
            return {place, to_start_[place], 0};
        }
        Step best{place, std::numeric_limits<double>::infinity(), 0};
        for (auto i = first; i < end; ++i) {
            const double metres = steps_[i].metres + distances_(steps_[i].place, place);
            if (metres < best.metres) {
                best = {place, metres, i};
            }
        }
        return best;
    }

    std::vector<int> go_back() {
        std::vector<int> changed;
        auto at = starts_.back();
        for (auto i = at; i < steps_.size(); ++i) {
            if (steps_[i].metres + to_end_[steps_[i].place] < steps_[at].metres + to_end_[steps_[at].place]) {
                at = i;
            }
        }
        if (steps_[at].metres + to_end_[steps_[at].place] >= length() - least_gain) {
            return changed;
        }
        for (int i = stops() - 1; i >= 0; --i) {
            if ((*this)[i].place != steps_[at].place) {
                move_to(i, steps_[at].place);
                changed.push_back(i);
            }
            at = steps_[at].before;
        }
        return changed;
    }

    void renumber(int first, int last) {
        for (int i = first; i <= last; ++i) {
            where_[(*this)[i].stop] = i;
        }
    }

    double nearest_between(std::uint32_t a, std::uint32_t b) const {
        double nearest = std::numeric_limits<double>::infinity();
        for (const auto place : round_.stops[a]) {
            nearest = std::min(nearest, nearest_of(distances_, round_.stops[b], place));
        }
        return nearest;
    }

    void find_neighbours() {
        constexpr std::size_t most = 12;
        const auto count = static_cast<std::uint32_t>(round_.stops.size());
        neighbours_.resize(count);
        std::vector<Neighbour> others;
        for (std::uint32_t stop = 0; stop < count; ++stop) {
            others.clear();
            for (std::uint32_t other = 0; other < count; ++other) {
                if (other != stop) {
                    others.push_back({nearest_between(stop, other), other});
                }
            }
            const auto kept = std::min(most, others.size());
            std::partial_sort(others.begin(), others.begin() + static_cast<std::ptrdiff_t>(kept),
                              others.end());
            neighbours_[stop].assign(others.begin(), others.begin() + static_cast<std::ptrdiff_t>(kept));
        }
    }

    void begin_with_the_nearest() {
        std::vector<std::uint32_t> left(round_.stops.size());
        std::iota(left.begin(), left.end(), 0U);
        where_.assign(left.size(), 0);
        while (!left.empty()) {
            Visit nearest;
            double shortest = std::numeric_limits<double>::infinity();
            for (const auto stop : left) {
                for (const auto place : round_.stops[stop]) {
                    const double metres = from(stops() - 1, place);
                    if (metres < shortest) {
                        shortest = metres;
                        nearest = {stop, place};
                    }
                }
            }
            order_.push_back(nearest);
            std::erase(left, nearest.stop);
        }
        renumber(0, stops() - 1);
    }

    const PlaceDistances& distances_;
    const Round& round_;
    std::vector<double> to_start_;
    std::vector<double> to_end_;
    std::vector<std::vector<Neighbour>> neighbours_;
    std::vector<Visit> order_;
    std::vector<int> where_;
    std::vector<Step> steps_;            // of choose_places()
    std::vector<std::uint32_t> starts_;  // where the steps of each stop begin
};

// Tries the moves around stops whose surroundings have changed, until none is left.
class Improver {
  public:
    explicit Improver(Tour& tour) : tour_(tour), waits_(static_cast<std::size_t>(tour.stops()), false) {}

    void look_at(int i) {
        if (i >= 0 && i < tour_.stops() && !waits_[tour_[i].stop]) {
            waits_[tour_[i].stop] = true;
            waiting_.push_back(tour_[i].stop);
        }
    }
    void look_at_all() {
        for (int i = 0; i < tour_.stops(); ++i) {
            look_at(i);
        }
    }
    // Whether there was anything to look at.
    bool improve() {
        const bool any = !waiting_.empty();
        for (std::size_t next = 0; next < waiting_.size(); ++next) {
            const auto stop = waiting_[next];
            waits_[stop] = false;
            while (improves_at(stop)) {
            }
        }
        waiting_.clear();
        return any;
    }

  private:
    bool improves_at(std::uint32_t stop) {
        if (changes_side(tour_.where(stop))) {
            return true;
        }
        // One of the new ways must be shorter than the old one it takes the place of.
        const int i = tour_.where(stop);
        const double longest = std::max(tour_.link(i - 1), tour_.link(i));
        for (const auto& neighbour : tour_.neighbours(stop)) {
            if (neighbour.metres >= longest) {
                break;
            }
            if (turns_round(stop, neighbour.stop) || moves(stop, neighbour.stop)) {
                return true;
            }
        }
        return turns_an_end(stop) || moves_to_an_end(stop);
    }

    bool changes_side(int i) {
        const double now = tour_.link(i - 1) + tour_.link(i);
        for (const auto place : tour_.places(tour_[i].stop)) {
            if (tour_.from(i - 1, place) + tour_.to(place, i + 1) < now - least_gain) {
                tour_.move_to(i, place);
                look_at(i - 1);
                look_at(i + 1);
                return true;
            }
        }
        return false;
    }

    // Turns the stretch first..last round if that shortens the way.
    bool turns(int first, int last) {
        if (first >= last) {
            return false;
        }
        const double now = tour_.link(first - 1) + tour_.link(last);
        const double then = tour_.from(first - 1, tour_[last].place) + tour_.to(tour_[first].place, last + 1);
        if (then >= now - least_gain) {
            return false;
        }
        tour_.turn_round(first, last);
        for (const int i : {first - 1, first, last, last + 1}) {
            look_at(i);
        }
        return true;
    }

    // So that the two become neighbours.
    bool turns_round(std::uint32_t stop, std::uint32_t neighbour) {
        const auto [low, high] = std::minmax({tour_.where(stop), tour_.where(neighbour)});
        return turns(low + 1, high) || turns(low, high - 1);
    }
    bool turns_an_end(std::uint32_t stop) {
        const int i = tour_.where(stop);
        return turns(0, i) || turns(i, tour_.stops() - 1);
    }

    struct Stretch {
        int first = 0;
        int last = 0;
    };

    // The stretches of up to three stops that begin or end with i.
    static constexpr std::array<Stretch, 5> stretches{{{0, 0}, {0, 1}, {0, 2}, {-1, 0}, {-2, 0}}};

    bool moves(std::uint32_t stop, std::uint32_t neighbour) {
        for (const auto& stretch : stretches) {
            const int i = tour_.where(stop);
            const int beside = tour_.where(neighbour);
            const Stretch moved{i + stretch.first, i + stretch.last};
            if (moves_between(moved, beside) || moves_between(moved, beside - 1)) {
                return true;
            }
        }
        return false;
    }
    bool moves_to_an_end(std::uint32_t stop) {
        for (const auto& stretch : stretches) {
            const int i = tour_.where(stop);
            const Stretch moved{i + stretch.first, i + stretch.last};
            if (moves_between(moved, -1) || moves_between(moved, tour_.stops() - 1)) {
                return true;
            }
        }
        return false;
    }

    // Moves the stretch between the stops at gap and gap + 1, the one or the other way round.
    bool moves_between(Stretch moved, int gap) {
        const auto [first, last] = moved;
        if (first < 0 || last >= tour_.stops() || (gap >= first - 1 && gap <= last)) {
            return false;
        }
        if (first == last) {
            return moves_one(first, gap);
        }
        const double saved = tour_.link(first - 1) + tour_.link(last) + tour_.link(gap) - closed(moved);
        const double straight = tour_.from(gap, tour_[first].place) + tour_.to(tour_[last].place, gap + 1);
        const double turned = tour_.from(gap, tour_[last].place) + tour_.to(tour_[first].place, gap + 1);
        if (std::min(straight, turned) >= saved - least_gain) {
            return false;
        }
        put(moved, gap, turned < straight);
        return true;
    }
    // A single stop is made at whichever of its places is best there.
    bool moves_one(int i, int gap) {
        const double saved = tour_.link(i - 1) + tour_.link(i) + tour_.link(gap) - closed({i, i});
        double least = saved - least_gain;
        std::optional<Place> best;
        for (const auto place : tour_.places(tour_[i].stop)) {
            if (const double metres = tour_.from(gap, place) + tour_.to(place, gap + 1); metres < least) {
                least = metres;
                best = place;
            }
        }
        if (best) {
            tour_.move_to(i, *best);
            put({i, i}, gap, false);
        }
        return best.has_value();
    }
    // The way where the stretch was taken out.
    double closed(Stretch moved) const {
        if (moved.last + 1 >= tour_.stops()) {
            return moved.first == 0 ? 0.0 : tour_.to(tour_[moved.first - 1].place, tour_.stops());
        }
        return tour_.from(moved.first - 1, tour_[moved.last + 1].place);
    }
    void put(Stretch moved, int gap, bool turned) {
        const auto [first, last] = moved;
        if (turned) {
            tour_.turn_round(first, last);
        }
        if (gap < first) {
            tour_.exchange(gap + 1, first, last);
        } else {
            tour_.exchange(first, last + 1, gap);
        }
        for (const int i : {first - 1, first, last, last + 1, gap - 1, gap, gap + 1, gap + 2,
                            gap - (last - first) - 1, gap + (last - first) + 2}) {
            look_at(i);
        }
    }

    Tour& tour_;
    std::vector<bool> waits_;
    std::vector<std::uint32_t> waiting_;
};

// Numbers 0..1 spread evenly without chance: the fractions of the multiples of an irrational (Weyl 1916).
double spread(int k, double irrational) {
    double whole = 0;
    return std::modf(k * irrational, &whole);
}

struct Bridge {
    int first = 0;
    int middle = 0;
    int last = 0;
};

// Two neighbouring stretches to be exchanged: the k-th try.
Bridge bridge(int k, int stops) {
    const int longest = std::max(1, std::min(50, (stops - 1) / 2));
    const auto part = [&](double irrational, int of) { return static_cast<int>(spread(k, irrational) * of); };
    const int one = 1 + part(0.41421356237309515, longest);
    const int other = 1 + part(0.7320508075688772, longest);
    const int first = part(0.6180339887498949, stops - one - other + 1);
    return {first, first + one, first + one + other - 1};
}

// Goes on from a round a little longer than the one before too, ever less so: a threshold that sinks to
// nothing (Dueck & Scheuer 1990, J. Comput. Phys. 90:161).
class Search {
  public:
    Search(const PlaceDistances& distances, const Round& round) : tour_(distances, round), improver_(tour_) {
        improver_.look_at_all();
        improve_fully();
        best_ = current_ = tour_.order();
        shortest_ = length_ = tour_.length();
        patience_ = patience_share * length_ / (tour_.stops() + 1);
    }

    void try_again(const Bridge& cut, double left) {
        tour_.exchange(cut.first, cut.middle, cut.last);
        const int joint = cut.first + cut.last - cut.middle;
        for (const int i : {cut.first - 1, cut.first, joint, joint + 1, cut.last, cut.last + 1}) {
            improver_.look_at(i);
        }
        improve_fully();
        judge(tour_.length(), left);
    }

    const std::vector<Visit>& best() const { return best_; }

  private:
    void improve_fully() {
        do {
            for (const int i : tour_.choose_places()) {
                improver_.look_at(i);
            }
        } while (improver_.improve());
    }

    void judge(double metres, double left) {
        if (metres > length_ + left * patience_ + least_gain) {
            tour_.put_back(current_);
            return;
        }
        length_ = metres;
        current_ = tour_.order();
        if (metres < shortest_ - least_gain) {
            shortest_ = metres;
            best_ = current_;
        }
    }

    Tour tour_;
    Improver improver_;
    std::vector<Visit> best_;
    std::vector<Visit> current_;
    double shortest_ = 0;
    double length_ = 0;
    double patience_ = 0;
};

}  // namespace

std::vector<Visit> searched_order(const PlaceDistances& distances, const Round& round,
                                  const std::function<void(double)>& tell) {
    Search search(distances, round);
    const int stops = static_cast<int>(round.stops.size());
    const int tries = stops < 4 ? 0 : std::clamp(tries_a_stop * stops, least_tries, most_tries);
    for (int k = 1; k <= tries; ++k) {
        const double left = 1 - static_cast<double>(k) / tries;
        search.try_again(bridge(k, stops), left);
        if (tell && k % 500 == 0) {
            tell(1 - left);
        }
    }
    return search.best();
}

}  // namespace pipward::place::detail
