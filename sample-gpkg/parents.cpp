// SPDX-License-Identifier: MIT
#include "parents.h"

#include <algorithm>
#include <stdexcept>

namespace pipward::larkfold {
namespace {

using enum AccessionKind;

std::optional<std::string> if_known(const std::string& text) {
    return text.empty() ? std::nullopt : std::optional{text};
}

std::optional<int> if_known(int number) {
    return number == 0 ? std::nullopt : std::optional{number};
}

/// The first word of its note says which fruit it is.
std::optional<std::string> species_of(const Parent& parent) {
    if (parent.remark.starts_with("Apple")) {
        return "Malus domestica";
    }
    return is_pear(parent) ? std::optional<std::string>{"Pyrus communis"} : std::nullopt;
}

}  // namespace

// Two alleles of a child are always one of each parent, and the pollen parent's is one that the seed parent's
// style lets through.
std::span<const Parent> parents() {
    static const std::vector<Parent> all{
        {.name = "Larkfold Early",
         .s_alleles = "S5 S24",
         .ploidy = 2,
         .seed_ripe_days = 95,
         .remark = "Apple. Fruit ripens before its seed does: keep it three weeks.",
         .chill_portions = 44,
         .heat = 3850,
         .observed_from = 2012},
        {.name = "Owlcombe",
         .s_alleles = "S5 S9",
         .ploidy = 2,
         .seed_ripe_days = 120,
         .remark = "Apple.",
         .chill_portions = 46,
         .heat = 4100,
         .observed_from = 2012},
        {.name = "Wrenlea",
         .s_alleles = "S2 S5",
         .ploidy = 2,
         .seed_ripe_days = 125,
         .remark = "Apple.",
         .chill_portions = 50,
         .heat = 4350,
         .observed_from = 2012},
        {.name = "Tansy Lane",
         .s_alleles = "S3 S9",
         .ploidy = 2,
         .seed_ripe_days = 130,
         .remark = "Apple. Crops every other year.",
         .chill_portions = 48,
         .heat = 4750,
         .observed_from = 2012},
        {.name = "Larkfold Red",
         .s_alleles = "S3 S7",
         .ploidy = 2,
         .seed_ripe_days = 138,
         .remark = "Apple. The orchard's oldest variety.",
         .chill_portions = 52,
         .heat = 4950,
         .observed_from = 2012},
        {.name = "LF 08-041",
         .kind = selection,
         .seed_parent = "Larkfold Red",
         .pollen_parent = "Owlcombe",
         .s_alleles = "S3 S5",
         .ploidy = 2,
         .seed_ripe_days = 130,
         .remark = "Apple. Firm and sharp.",
         .chill_portions = 49,
         .heat = 4600,
         .observed_from = 2014},
        {.name = "Kettlefen",
         .s_alleles = "S2 S3",
         .ploidy = 2,
         .seed_ripe_days = 140,
         .remark = "Apple.",
         .chill_portions = 50,
         .heat = 5400,
         .observed_from = 2012},
        {.name = "Marlside",
         .seed_parent = "Larkfold Red",
         .pollen_parent = "Tansy Lane",
         .s_alleles = "S7 S9",
         .ploidy = 2,
         .seed_ripe_days = 142,
         .protected_until = "2038-12-31",
         .remark = "Apple. Protected: ask before its seedlings leave the orchard.",
         .chill_portions = 54,
         .heat = 5300,
         .observed_from = 2015},
        {.name = "Dapplestead",
         .seed_parent = "Kettlefen",
         .pollen_parent = "Wrenlea",
         .s_alleles = "S3 S5",
         .ploidy = 2,
         .seed_ripe_days = 145,
         .remark = "Apple.",
         .chill_portions = 52,
         .heat = 5600,
         .observed_from = 2013},
        {.name = "LF 09-117",
         .kind = selection,
         .seed_parent = "Wrenlea",
         .pollen_parent = "Mossgate Late",
         .s_alleles = "S5 S10",
         .ploidy = 2,
         .seed_ripe_days = 140,
         .remark = "Apple. Keeps well.",
         .chill_portions = 53,
         .heat = 5850,
         .observed_from = 2016},
        {.name = "Fallowby",
         .seed_ripe_days = 148,
         .remark = "Apple. Graftwood of an old farm tree.",
         .chill_portions = 50,
         .heat = 6050,
         .observed_from = 2016},
        {.name = "Greywether",
         .s_alleles = "S1 S3",
         .ploidy = 2,
         .seed_ripe_days = 155,
         .remark = "Apple.",
         .chill_portions = 56,
         .heat = 6300,
         .observed_from = 2012},
        {.name = "Mossgate Late",
         .s_alleles = "S1 S10",
         .ploidy = 2,
         .seed_ripe_days = 160,
         .remark = "Apple. Keeps until May.",
         .chill_portions = 58,
         .heat = 7000,
         .observed_from = 2012},
        {.name = "Ridgewhistle",
         .s_alleles = "S9 S20",
         .ploidy = 2,
         .seed_ripe_days = 158,
         .remark = "Apple. Blooms last of all.",
         .chill_portions = 60,
         .heat = 7900,
         .observed_from = 2013},
        {.name = "Quillet",
         .s_alleles = "S2 S3 S10",
         .ploidy = 3,
         .seed_ripe_days = 150,
         .remark = "Apple, triploid: little of its pollen is any good.",
         .chill_portions = 51,
         .heat = 4900,
         .observed_from = 2018},
        {.name = "LF 11-023",
         .kind = selection,
         .seed_parent = "Larkfold Early",
         .pollen_parent = "Dapplestead",
         .s_alleles = "S3 S24",
         .ploidy = 2,
         .seed_ripe_days = 120,
         .remark = "Apple. Grafted in 2022; nobody has noted its bloom yet.",
         .chill_portions = 48,
         .heat = 4500},
        {.name = "Mirkendell",
         .kind = unknown,
         .remark = "Apple. Came as graftwood without papers in 2023; nothing is known of its bloom.",
         .chill_portions = 50,
         .heat = 5400},
        {.name = "Ditch Crab",
         .kind = species,
         .ploidy = 2,
         .seed_ripe_days = 130,
         .remark = "Wild apple from the lane, kept for the bees.",
         .chill_portions = 47,
         .heat = 4900,
         .observed_from = 2019},
        {.name = "16-01-04",
         .kind = seedling,
         .seed_parent = "Tansy Lane",
         .pollen_parent = "Wrenlea",
         .s_alleles = "S5 S9",
         .ploidy = 2,
         .seed_ripe_days = 128,
         .remark = "Apple. The best of its family; meant to become a parent.",
         .chill_portions = 49,
         .heat = 4500,
         .observed_from = 2023},
        {.name = "Swanmarsh",
         .s_alleles = "S101 S105",
         .ploidy = 2,
         .seed_ripe_days = 125,
         .remark = "Pear.",
         .chill_portions = 48,
         .heat = 3800,
         .observed_from = 2012},
        {.name = "Tillowby",
         .s_alleles = "S105 S108",
         .ploidy = 2,
         .seed_ripe_days = 130,
         .remark = "Pear.",
         .chill_portions = 49,
         .heat = 4100,
         .observed_from = 2012},
        {.name = "Amberwell",
         .seed_parent = "Swanmarsh",
         .s_alleles = "S101 S102",
         .ploidy = 2,
         .seed_ripe_days = 135,
         .remark = "Pear. Its pollen parent was not written down.",
         .chill_portions = 52,
         .heat = 4600,
         .observed_from = 2012},
    };
    return all;
}

const Parent& parent_named(const std::string& name) {
    const auto found = std::ranges::find(parents(), name, &Parent::name);
    if (found == parents().end()) {
        throw std::out_of_range("no parent is called " + name);
    }
    return *found;
}

bool is_pear(const Parent& parent) {
    return parent.remark.starts_with("Pear");
}

Accession accession_of(const Parent& parent) {
    Accession accession;
    accession.name = parent.name;
    accession.kind = parent.kind;
    accession.seed_parent = if_known(parent.seed_parent);
    accession.pollen_parent = if_known(parent.pollen_parent);
    accession.s_alleles = if_known(parent.s_alleles);
    accession.ploidy = if_known(parent.ploidy);
    accession.seed_ripe_days = if_known(parent.seed_ripe_days);
    accession.protected_until = parse_iso_day(parent.protected_until);
    accession.remark = if_known(parent.remark);
    accession.species = species_of(parent);
    return accession;
}

std::vector<BlendMember> pollen_blends() {
    return {
        {.name = "Larkfold Mix", .member = "Larkfold Early", .share = Share{0.40}},
        {.name = "Larkfold Mix", .member = "Owlcombe", .share = Share{0.35}},
        {.name = "Larkfold Mix", .member = "Tansy Lane", .share = Share{0.25}},
    };
}

}  // namespace pipward::larkfold
