// SPDX-License-Identifier: MIT
#include "pipward/book/detail/check.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

#include "pipward/book/book.h"

namespace pipward::book {
namespace {

Finding finding(Level level, detail::Whereabouts place, Sentence message, Sentence remedy) {
    return {.level = level,
            .table = std::string(place.table),
            .row = std::move(place.row),
            .field = std::string(place.field),
            .value = std::move(place.value),
            .message = std::move(message),
            .remedy = std::move(remedy)};
}

template <class Rows, class Member>
std::set<std::string> column(const Rows& rows, Member member) {
    std::set<std::string> names;
    for (const auto& row : rows) {
        names.insert(row.*member);
    }
    return names;
}

// One letter wrong, missing, added, or two neighbours swapped.
bool one_slip_apart(std::string_view a, std::string_view b) {
    if (a.size() > b.size()) {
        std::swap(a, b);
    }
    if (b.size() - a.size() > 1 || b.size() < 4) {
        return false;
    }
    const auto start = static_cast<std::size_t>(std::ranges::mismatch(a, b).in1 - a.begin());
    const auto rest = [&](std::string_view text, std::size_t skip) {
        return text.substr(std::min(text.size(), start + skip));
    };
    if (a.size() < b.size()) {
        return rest(a, 0) == rest(b, 1);
    }
    const bool swapped = start + 1 < a.size() && a[start] == b[start + 1] && a[start + 1] == b[start];
    return rest(a, 1) == rest(b, 1) || (swapped && rest(a, 2) == rest(b, 2));
}

// A row that is there but could not be read still answers to its name.
void add_unread(detail::Names& names, const UnreadRows& unread) {
    const auto add = [&](const char* table, std::set<std::string>& to) {
        if (const auto rows = unread.find(table); rows != unread.end()) {
            to.insert(rows->second.begin(), rows->second.end());
        }
    };
    add("accession", names.accessions);
    add("accession", names.donors);
    add("tree", names.trees);
    add("block", names.blocks);
    add("station", names.stations);
    add("cross_goal", names.crosses);
    add("pollen_lot", names.pollen_lots);
    add("pollination", names.tags);
    add("seed_lot", names.seed_lots);
    for (const auto& [table, rows] : unread) {
        names.unread.insert(table);
    }
}

}  // namespace

Finding detail::error(detail::Whereabouts place, Sentence message, Sentence remedy) {
    return finding(Level::error, std::move(place), std::move(message), std::move(remedy));
}

Finding detail::warning(detail::Whereabouts place, Sentence message, Sentence remedy) {
    return finding(Level::warning, std::move(place), std::move(message), std::move(remedy));
}

Finding detail::note(detail::Whereabouts place, Sentence message, Sentence remedy) {
    return finding(Level::note, std::move(place), std::move(message), std::move(remedy));
}

std::string detail::fid_name(std::int64_t fid) {
    return fmt::format("fid {}", fid);
}

std::string detail::folded(std::string_view name) {
    std::string text;
    for (const char letter : name) {
        const auto byte = static_cast<unsigned char>(letter);
        if (std::isspace(byte) != 0) {
            text += text.empty() || text.back() == ' ' ? "" : " ";
        } else {
            text += byte < 0x80 ? static_cast<char>(std::tolower(byte)) : letter;
        }
    }
    if (text.ends_with(' ')) {
        text.pop_back();
    }
    return text;
}

std::string detail::likely_name(const std::string& name, const std::set<std::string>& known) {
    const auto wanted = detail::folded(name);
    for (const auto& candidate : known) {
        if (detail::folded(candidate) == wanted) {
            return candidate;
        }
    }
    for (const auto& candidate : known) {
        if (one_slip_apart(detail::folded(candidate), wanted)) {
            return candidate;
        }
    }
    return {};
}

detail::Names detail::names_of(const Orchard& orchard) {
    detail::Names names;
    names.accessions = column(orchard.accessions, &Accession::name);
    names.blends = column(orchard.blend_members, &BlendMember::name);
    names.donors = names.accessions;
    names.donors.insert(names.blends.begin(), names.blends.end());
    names.trees = column(orchard.trees, &Tree::label);
    names.blocks = column(orchard.blocks, &Block::name);
    names.stations = column(orchard.stations, &Station::name);
    names.crosses = column(orchard.goals, &CrossGoal::code);
    names.pollen_lots = column(orchard.pollen_lots, &PollenLot::code);
    names.tags = column(orchard.pollinations, &Pollination::tag);
    names.seed_lots = column(orchard.seed_lots, &SeedLot::code);
    return names;
}

UnreadRows unread_in(const Findings& findings) {
    UnreadRows unread;
    for (const auto& finding : findings) {
        if (finding.level == Level::error) {
            auto& rows = unread[finding.table];
            if (!finding.row.empty()) {
                rows.insert(finding.row);
            }
        }
    }
    return unread;
}

Findings check_orchard(const Orchard& orchard, Day as_of, const UnreadRows& unread) {
    Findings findings;
    auto names = detail::names_of(orchard);
    const OrchardIndex book(orchard);
    add_unread(names, unread);
    detail::check_emptiness(orchard, names, findings);
    detail::check_keys(orchard, findings);
    detail::check_references(orchard, names, findings);
    detail::check_trees(orchard, as_of, findings);
    detail::check_bloom_notes(book, as_of, findings);
    detail::check_time_of_bloom(orchard, as_of, findings);
    detail::check_weather(orchard, as_of, findings);
    detail::check_warmth(orchard, findings);
    detail::check_accessions(orchard, findings);
    detail::check_pedigree(orchard, findings);
    detail::check_descent(book, findings);
    detail::check_blends(orchard, names, findings);
    detail::check_goals(book, names, as_of, findings);
    detail::check_pollen(book, as_of, findings);
    detail::check_seed(book, as_of, findings);
    return findings;
}

}  // namespace pipward::book
