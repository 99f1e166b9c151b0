// SPDX-License-Identifier: MIT
#include "pipward/place/detail/name_pool.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

#include "pipward/place/detail/likeness.h"
#include "pipward/place/detail/query_text.h"

namespace pipward::place::detail {
namespace {

// How much the whole name and a part of it are worth: what stands on the tree comes first.
struct Worth {
    MatchKind kind;
    float whole;
    float part;
};
constexpr std::array worths{
    Worth{MatchKind::label, 0.98F, 0.60F},
    Worth{MatchKind::tag, 0.95F, 0.56F},
    Worth{MatchKind::accession, 0.94F, 0.60F},
    Worth{MatchKind::cross_child, 0.92F, 0.50F},
    Worth{MatchKind::cross_pollinated, 0.91F, 0.49F},
    Worth{MatchKind::cross_parent, 0.91F, 0.49F},
};
// Added to the score of a part: for the share of the name that it is, and where the name begins with it.
// Taken off for each slip. Our own figures, as those above: they put the surer way to a tree first.
constexpr float for_coverage = 0.25F;
constexpr float for_beginning = 0.04F;
constexpr float a_slip_costs = 0.11F;

const Worth& worth_of(MatchKind kind) {
    return *std::ranges::find(worths, kind, &Worth::kind);
}

float share(std::size_t part, std::size_t whole) {
    return whole == 0 ? 1.0F
                      : static_cast<float>(std::min(part, whole)) / static_cast<float>(std::max(part, whole));
}

// Of names that are the same but for case and signs, the one written as the search text is comes first.
float for_writing(std::string_view query, std::string_view folded, const std::string& shown) {
    return shown == query ? 0.02F : folded_text(shown) == folded ? 0.015F : 0.01F;
}

constexpr char line_end = '\n';

}  // namespace

int slips_allowed(std::size_t letters) {
    return letters < 4 ? 0 : letters < 7 ? 1 : letters < 12 ? 2 : 3;
}

std::string name_key(std::string_view folded) {
    auto key = squeezed(folded);
    return key.empty() ? std::string(folded) : key;
}

std::string parts_key(std::string_view folded) {
    return fmt::format("{}", fmt::join(name_parts(folded), " "));
}

std::uint32_t NamePool::add(MatchKind kind, const std::string& shown) {
    const auto number = static_cast<std::uint32_t>(names_.size());
    const auto folded = folded_text(shown);
    const auto key = name_key(folded);
    names_.push_back(
        {&shown, static_cast<std::uint32_t>(text_.size()), static_cast<std::uint32_t>(key.size()), kind});
    letters_.push_back(letters_of(key));
    text_ += key;
    text_ += line_end;
    by_key_.add(key, number);
    by_parts_.add(parts_key(folded), number);
    return number;
}

void NamePool::finish() {
    by_key_.finish();
    by_parts_.finish();
    trees_.finish(names_.size());
}

void NamePool::add_hits(std::uint32_t name, Hit hit, Hits& hits) const {
    hit.kind = names_[name].kind;
    hit.source = name;
    trees_.each(name, [&](std::uint32_t tree) {
        hit.tree = tree;
        hits.add(hit);
    });
}

void NamePool::find_whole(std::string_view query, Hits& hits) const {
    const auto folded = folded_text(query);
    const auto sought = name_key(folded);
    by_key_.each(sought, [&](std::uint32_t name) {
        if (key(name) == sought) {
            const float worth = worth_of(names_[name].kind).whole + for_writing(query, folded, shown(name));
            add_hits(name, {.score = std::min(worth, 1.0F)}, hits);
        }
    });
    const auto parts = parts_key(folded);
    if (parts.empty()) {
        return;
    }
    by_parts_.each(parts, [&](std::uint32_t name) {
        if (parts_key(folded_text(shown(name))) == parts) {
            add_hits(name, {.score = worth_of(names_[name].kind).whole}, hits);
        }
    });
}

void NamePool::find_part(std::string_view query, Hits& hits) const {
    const auto sought = name_key(folded_text(query));
    const std::string_view text = text_;
    std::uint32_t name = 0;
    for (auto at = text.find(sought); at != std::string_view::npos; at = text.find(sought, at)) {
        while (name + 1 < names_.size() && names_[name + 1].start <= at) {
            ++name;
        }
        const auto& found = names_[name];
        const bool begins = found.start == at;
        add_hits(name,
                 {.score = worth_of(found.kind).part + for_coverage * share(sought.size(), found.size) +
                           (begins ? for_beginning : 0.0F),
                  .extent = Extent::part},
                 hits);
        at = found.start + found.size;
    }
}

void NamePool::find_like(std::string_view query, Hits& hits) const {
    const auto sought = name_key(folded_text(query));
    int most = slips_allowed(sought.size());
    if (most == 0 || sought.size() > Likeness::longest) {
        return;
    }
    const Likeness likeness(sought);
    const LettersSought letters(sought);
    for (std::uint32_t name = 0; name < names_.size(); ++name) {
        if (letters.lacking(letters_[name]) > most || names_[name].size + most < sought.size()) {
            continue;
        }
        const int slips = likeness.slips_in_part(key(name));
        if (slips > most) {
            continue;
        }
        // What is farther off than one slip more than the nearest is no help.
        most = std::min(most, slips + 1);
        const float worth = worth_of(names_[name].kind).part - a_slip_costs * static_cast<float>(slips) +
                            for_coverage * share(sought.size(), names_[name].size);
        add_hits(name, {.score = worth, .extent = Extent::like, .slips = static_cast<std::uint8_t>(slips)},
                 hits);
    }
}

std::vector<std::string> NamePool::most_like(std::string_view query, std::size_t how_many) const {
    const auto sought = name_key(folded_text(query));
    const Likeness likeness(sought);
    struct Like {
        int slips = 0;
        std::string_view name;

        auto operator<=>(const Like&) const = default;
    };
    std::set<Like> best;
    for (std::uint32_t name = 0; name < names_.size(); ++name) {
        const Like like{likeness.slips_in_all(key(name)), *names_[name].shown};
        if (best.size() < how_many || (how_many > 0 && like < *best.rbegin())) {
            best.insert(like);
            if (best.size() > how_many) {
                best.erase(std::prev(best.end()));
            }
        }
    }
    std::vector<std::string> names;
    std::ranges::transform(best, std::back_inserter(names),
                           [](const auto& entry) { return std::string(entry.name); });
    return names;
}

}  // namespace pipward::place::detail
