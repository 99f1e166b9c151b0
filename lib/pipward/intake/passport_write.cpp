// SPDX-License-Identifier: MIT
// From an accession to its passport.
#include <fmt/format.h>

#include <algorithm>

#include "pipward/intake/detail/own_remarks.h"
#include "pipward/intake/passport.h"
#include "pipward/lineage/cross_notation.h"

namespace pipward::intake {
namespace {

constexpr std::string_view unknown_parent = "unknown";

lineage::CrossTree leaf_of(const std::optional<std::string>& parent) {
    return {parent.value_or(std::string(unknown_parent)), {}};
}

std::string ancestry_of(const Accession& accession) {
    const bool has_parent = accession.seed_parent || accession.pollen_parent;
    const auto cross = has_parent ? lineage::purdy_text(lineage::crossed(leaf_of(accession.seed_parent),
                                                                         leaf_of(accession.pollen_parent)))
                                  : std::string{};
    if (!accession.sport_of) {
        return cross;
    }
    return "sport of " + *accession.sport_of + (cross.empty() ? "" : ";" + cross);
}

// What passports have no descriptor for goes to REMARKS under the book's own names, as the standard asks:
// NAME:value without a space, parted by semicolons.
std::string own_remarks(const Accession& accession, const std::vector<BlendMember>& blend) {
    std::string text;
    const auto add = [&](std::string_view name, std::string value) {
        std::ranges::replace(value, ';', ' ');
        text += fmt::format("{}:{};", name, value);
    };
    for (const auto* column : detail::own_remarks()) {
        const auto cell = column->field.show(&accession);
        if (!std::holds_alternative<std::monostate>(cell)) {
            add(detail::remark_name(*column), to_text(cell));
        }
    }
    for (const auto& member : blend) {
        add("BLEND", member.share ? fmt::format("{} {}", member.member, member.share->value) : member.member);
    }
    return text;
}

void put(Passport& passport, std::string_view name, std::string value) {
    if (!value.empty()) {
        passport[std::string(name)] = std::move(value);
    }
}

bool stood_on(const Tree& tree, Day day) {
    return (!tree.planted_on || *tree.planted_on <= day) && (!tree.removed_on || *tree.removed_on > day);
}

}  // namespace

PassportFacts facts_of(const Accession& accession, const Orchard& orchard, const std::string& institute,
                       Day as_of) {
    PassportFacts facts;
    facts.institute = institute;
    for (const auto& tree : orchard.trees) {
        if (tree.accession != accession.name) {
            continue;
        }
        facts.stands = facts.stands || stood_on(tree, as_of);
        if (tree.planted_on && *tree.planted_on <= as_of) {
            facts.earliest = std::min(facts.earliest.value_or(*tree.planted_on), *tree.planted_on);
        }
    }
    const bool is_accession = std::ranges::find(orchard.accessions, accession.pollen_parent.value_or(""),
                                                &Accession::name) != orchard.accessions.end();
    for (const auto& member : orchard.blend_members) {
        if (!is_accession && accession.pollen_parent == member.name) {
            facts.blend.push_back(member);
        }
    }
    return facts;
}

std::string crop_of(const std::string& genus) {
    return genus == "Malus" ? "apple" : genus == "Pyrus" ? "pear" : "";
}

Passport passport_of(const Accession& accession, const PassportFacts& facts) {
    const auto whole_remark = kept_in(accession.remark.value_or(""));
    auto passport = whole_remark.kept;
    put(passport, "INSTCODE", facts.institute);
    if (!passport.contains("ACCENUMB")) {
        put(passport, "ACCENUMB", accession.name);
    }
    const bool is_numbered =
        accession.kind == AccessionKind::seedling && passport["ACCENUMB"] == accession.name;
    put(passport, "ACCENAME", is_numbered ? "" : accession.name);
    if (accession.species) {
        const auto space = accession.species->find(' ');
        const auto genus = accession.species->substr(0, space);
        put(passport, "GENUS", genus);
        put(passport, "SPECIES", space == std::string::npos ? "" : accession.species->substr(space + 1));
        if (!passport.contains("CROPNAME")) {
            put(passport, "CROPNAME", crop_of(genus));
        }
    }
    if (kind_of_status(passport["SAMPSTAT"]) != accession.kind) {
        passport["SAMPSTAT"] = status_of_kind(accession.kind);
    }
    // A parent that the book did not know when it was taken in still stands in the note.
    const bool is_whole = accession.sport_of || (accession.seed_parent && accession.pollen_parent);
    if (is_whole || !passport.contains("ANCEST")) {
        put(passport, "ANCEST", ancestry_of(accession));
    }
    put(passport, "ACQDATE", facts.earliest ? passport_day(*facts.earliest) : "");
    put(passport, "STORAGE", facts.stands ? "20" : "");
    put(passport, "REMARKS", own_remarks(accession, facts.blend) + whole_remark.remark);
    std::erase_if(passport, [](const auto& entry) { return entry.second.empty(); });
    return passport;
}

}  // namespace pipward::intake
