// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "pipward/book/schema.h"
#include "pipward/intake/detail/adopt_known.h"
#include "pipward/intake/detail/adopt_rows.h"
#include "pipward/intake/detail/adopting.h"
#include "pipward/math/point_tree.h"
#include "pipward/place/metre_plane.h"
#include "pipward/record/presence.h"

namespace pipward::intake::detail {
namespace {

constexpr double one_spot = 0.3;  // metres: no two trees stand so near

bool counts(const Adoption& adoption, const AdoptRow& row) {
    return row.fate != Fate::left_out && !row.text(adoption.key()).empty();
}

/// Nothing where one of the two has no place.
std::optional<double> metres_between(const AdoptRow& row, const KnownThing& known,
                                     const place::ToEarth& to_earth) {
    const auto here = row.points.empty() ? std::nullopt : to_earth(row.points.front());
    const auto there = known.at ? to_earth(*known.at) : std::nullopt;
    return here && there ? std::optional{place::way_between(*here, *there).distance.value} : std::nullopt;
}

Sentence in_words(const std::vector<Difference>& differences, const Adoption& adoption) {
    std::vector<Sentence> words;
    for (const auto& difference : differences) {
        words.push_back(say("{} \"{}\", not \"{}\"", column_label(adoption.table + "." + difference.column),
                            difference.of_book, difference.of_layer));
    }
    return joined(words, verbatim(", "));
}

void judge_known(Adoption& adoption, AdoptRow& row, const KnownThing& known, const AdoptOptions& options,
                 const place::ToEarth& to_earth) {
    const double metres = metres_between(row, known, to_earth).value_or(0);
    if (metres > options.same_place.value + adoption.accuracy.value) {
        adoption.complain(row,
                          {Level::error, field_of(adoption, adoption.key()), row.text(adoption.key()),
                           adoption.table == "tree"
                               ? say("The book has a tree of this label {:.1f} m away.", metres)
                               : say("The book has a row of this name that begins {:.1f} m away.", metres),
                           say("Give one of them another name; where they are the same and the layer is only "
                               "less exact, raise same-location.")});
        return;
    }
    const auto differing = differences(row, known);
    if (row.fate == Fate::added) {
        row.fate = Fate::known;
        row.why = differing.empty() ? say("The book has it already.")
                                    : say("The book has it already, with other values.");
    }
    if (!differing.empty()) {
        adoption.complain(
            row, {Level::warning,
                  {},
                  {},
                  say("The book has it already with another value: {}.", in_words(differing, adoption)),
                  say("The book's values stay; correct them there if they are wrong.")});
    }
}

void judge_book(Adoption& adoption, const AdoptOptions& options, const Orchard& orchard) {
    const auto known = known_things(adoption.table, orchard);
    const place::ToEarth to_earth(orchard.crs);
    int skipped = 0;
    for (auto& row : adoption.rows) {
        const auto found = counts(adoption, row) ? known.find(key_of(adoption, row)) : known.end();
        if (found != known.end()) {
            judge_known(adoption, row, found->second, options, to_earth);
            skipped += row.fate == Fate::known ? 1 : 0;
        }
    }
    if (skipped > 0) {
        adoption.tell(Level::notice, {}, {},
                      skipped == 1
                          ? say("1 feature is in the book already, at the same location.")
                          : say("{} features are in the book already, at the same location.", skipped),
                      say("They are not imported; the book's rows stay as they are."));
    }
}

void judge_doubles(Adoption& adoption) {
    std::map<std::string, AdoptRow*> seen;
    for (auto& row : adoption.rows) {
        if (!counts(adoption, row)) {
            continue;
        }
        const auto [first, is_new] = seen.emplace(key_of(adoption, row), &row);
        if (!is_new && first->second->feature != row.feature) {
            const auto& other = *first->second;
            adoption.complain(row,
                              {Level::error, field_of(adoption, adoption.key()), row.text(adoption.key()),
                               say("The layer has this name twice: in {} as well.", other.feature),
                               say("Keep one, or give one of them another name.")});
        }
    }
}

// Names that people would take for the same.
void judge_likeness(Adoption& adoption, const Orchard& orchard) {
    struct Seen {
        std::string key;
        std::string feature;  // empty where it is the book's
    };
    std::map<std::string, Seen> by_loose_key;
    for (const auto& [key, thing] : known_things(adoption.table, orchard)) {
        by_loose_key.emplace(loose(key), Seen{key, {}});
    }
    for (auto& row : adoption.rows) {
        if (!counts(adoption, row)) {
            continue;
        }
        const auto key = key_of(adoption, row);
        const auto [entry, is_new] = by_loose_key.emplace(loose(key), Seen{key, row.feature});
        const auto& other = entry->second;
        if (is_new || other.key == key) {
            continue;
        }
        const auto name = other.key.substr(other.key.find('\n') + 1);
        adoption.complain(
            row, {Level::warning, field_of(adoption, adoption.key()), row.text(adoption.key()),
                  other.feature.empty()
                      ? say("It differs from \"{}\" of the book only by capitals or spaces.", name)
                      : say("It differs from \"{}\" of {} only by capitals or spaces.", name, other.feature),
                  say("If they are the same, keep one; else make them more different.")});
    }
}

struct Standing {
    std::string label;
    math::PlanePoint at;
    AdoptRow* row;  // null where it is the book's
};

// Of those before it in the list the first that stands on its spot.
const Standing* neighbour_of(std::size_t tree, const std::vector<Standing>& trees,
                             const math::PointTree& places) {
    for (const auto other : places.within(trees[tree].at, one_spot)) {
        if (other < tree && trees[other].label != trees[tree].label) {
            return &trees[other];
        }
    }
    return nullptr;
}

std::vector<Standing> standing_trees(Adoption& adoption, const AdoptOptions& options, const Orchard& orchard,
                                     const place::MetrePlane& plane) {
    std::vector<Standing> trees;
    for (const auto& tree : orchard.trees) {
        if (tree.at && !removed_by(tree, options.as_of)) {
            trees.push_back({tree.label, plane(*tree.at), nullptr});
        }
    }
    for (auto& row : adoption.rows) {
        if (row.points.size() == 1 && row.fate != Fate::left_out && row.fate != Fate::known &&
            row.text("removed_on").empty()) {
            trees.push_back({row.text("label"), plane(row.points.front()), &row});
        }
    }
    return trees;
}

void judge_spots(Adoption& adoption, const AdoptOptions& options, const Orchard& orchard) {
    std::vector<MapPoint> points;
    for (const auto& row : adoption.rows) {
        points.insert(points.end(), row.points.begin(), row.points.end());
    }
    if (adoption.table != "tree" || points.empty()) {
        return;
    }
    const place::MetrePlane plane(orchard.crs, place::middle_of(points));
    const auto trees = standing_trees(adoption, options, orchard, plane);
    std::vector<math::PlanePoint> places;
    std::ranges::transform(trees, std::back_inserter(places), &Standing::at);
    const math::PointTree near(std::move(places));
    for (std::size_t i = 0; i < trees.size(); ++i) {
        const auto* other = trees[i].row == nullptr ? nullptr : neighbour_of(i, trees, near);
        if (other != nullptr) {
            adoption.complain(
                *trees[i].row,
                {Level::warning,
                 {},
                 {},
                 other->row == nullptr ? say("Tree {} of the book is at the same location.", other->label)
                                       : say("Tree {} of the layer is at the same location.", other->label),
                 say("If one was removed, enter the date; else correct a position.")});
        }
    }
}

}  // namespace

void judge_clashes(Adoption& adoption, const AdoptOptions& options, const Orchard& orchard) {
    judge_book(adoption, options, orchard);
    judge_doubles(adoption);
    judge_likeness(adoption, orchard);
    judge_spots(adoption, options, orchard);
}

}  // namespace pipward::intake::detail
