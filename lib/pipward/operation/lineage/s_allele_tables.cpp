// SPDX-License-Identifier: MIT
#include "pipward/operation/lineage/detail/s_allele_tables.h"

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/s_match_codes.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

const std::vector<ColumnOf<seed::MatchRow>>& match_columns() {
    static const std::vector<ColumnOf<seed::MatchRow>> columns{
        {{"seed_parent", text, "", "Seed parent", "The accession whose flowers would be pollinated."},
         [](const seed::MatchRow& r) { return text_cell(r.seed_parent); }},
        {{"pollen_parent", text, "", "Pollen parent", "The accession whose pollen it would be."},
         [](const seed::MatchRow& r) { return text_cell(r.pollen_parent); }},
        {{"match", text, "", "S-alleles", "Compatibility of the pollen with the style.", s_match_codes()},
         [](const seed::MatchRow& r) { return text_cell(lineage::to_text(r.match)); }},
        {{"compatible_share", number, "0 to 1", "Compatible pollen",
          "Share of compatible pollen; 0 means none expected, not none possible: incompatibility is not "
          "complete."},
         [](const seed::MatchRow& r) { return number_cell(r.share, 3); }},
        {{"from_alleles", text, "", "From the alleles", "Evidence of the alleles."},
         [](const seed::MatchRow& r) { return text_cell(r.from_alleles); }},
        {{"flowers", whole, "", "Flowers",
          "Flowers pollinated in this cross, where all its fruit was counted."},
         [](const seed::MatchRow& r) { return whole_cell(r.flowers); }},
        {{"set", whole, "", "Fruit set", "Fruits of them; for pear only those with sound seed."},
         [](const seed::MatchRow& r) { return whole_cell(r.set); }},
        {{"from_field", text, "", "From the field", "Evidence of the counts."},
         [](const seed::MatchRow& r) { return text_cell(r.from_field); }},
    };
    return columns;
}

const std::vector<ColumnOf<seed::GenotypeRow>>& genotype_columns() {
    static const std::vector<ColumnOf<seed::GenotypeRow>> columns{
        {{"accession", text, "", "Accession", "Its name."},
         [](const seed::GenotypeRow& r) { return text_cell(r.accession); }},
        {{"alleles", text, "", "S-alleles", "What it has or may have; S? where one is not known."},
         [](const seed::GenotypeRow& r) {
             return r.alleles ? text_cell(lineage::to_text(*r.alleles)) : Cell{};
         }},
        {{"source", text, "", "Source", "Where that is from.", codes_of<lineage::SSource>()},
         [](const seed::GenotypeRow& r) { return text_cell(to_word(r.source)); }},
        {{"probability", number, "0 to 1", "Probability", "By its parents' alleles alone."},
         [](const seed::GenotypeRow& r) { return number_cell(r.chance, 4); }},
        {{"field_probability", number, "0 to 1", "Probability with field data",
          "The same once the counts of its crosses are weighed; unknown where none were counted."},
         [](const seed::GenotypeRow& r) { return number_cell(r.field_chance, 4); }},
        {{"from_alleles", text, "", "From the alleles", "Basis of the probability."},
         [](const seed::GenotypeRow& r) { return text_cell(r.from_alleles); }},
        {{"from_field", text, "", "From the field", "The counts that were weighed."},
         [](const seed::GenotypeRow& r) { return text_cell(r.from_field); }},
    };
    return columns;
}

const std::vector<ColumnOf<seed::ContradictionRow>>& contradiction_columns() {
    static const std::vector<ColumnOf<seed::ContradictionRow>> columns{
        {{"accession", text, "", "Accession", "The offspring."},
         [](const seed::ContradictionRow& r) { return text_cell(r.accession); }},
        {{"alleles", text, "", "S-alleles", "As recorded."},
         [](const seed::ContradictionRow& r) { return text_cell(r.alleles); }},
        {{"seed_parent", text, "", "Seed parent", "As recorded."},
         [](const seed::ContradictionRow& r) { return text_cell(r.seed_parent); }},
        {{"seed_alleles", text, "", "Alleles of the seed parent", "As recorded."},
         [](const seed::ContradictionRow& r) { return text_cell(r.seed_alleles); }},
        {{"pollen_parent", text, "", "Pollen parent", "As recorded: an accession or a blend."},
         [](const seed::ContradictionRow& r) { return text_cell(r.pollen_parent); }},
        {{"pollen_alleles", text, "", "Alleles of the pollen parent",
          "Of a blend, those of all its members."},
         [](const seed::ContradictionRow& r) { return text_cell(r.pollen_alleles); }},
        {{"verdict", text, "", "What is wrong", "What speaks against these parents.",
          codes_of<lineage::SContradiction>()},
         [](const seed::ContradictionRow& r) { return text_cell(to_word(r.verdict)); }},
    };
    return columns;
}

}  // namespace

const TableOf<seed::MatchRow> match_table{
    "s_match", "S-allele match",
    "Every pair of the accessions in both directions: compatibility by the alleles and by fruit set in the "
    "field.",
    match_columns, [] {
        return TableView{
            .first = {"seed_parent", "pollen_parent", "match", "compatible_share", "flowers", "set"},
            .below = {"from_alleles", "from_field"}};
    }};

const TableOf<seed::GenotypeRow> genotype_table{
    "s_genotype", "S-alleles of the accessions", "What each is recorded to have, or may have by its parents.",
    genotype_columns, [] {
        return TableView{.first = {"accession", "alleles", "probability", "field_probability", "source"},
                         .below = {"from_alleles", "from_field"}};
    }};

const TableOf<seed::ContradictionRow> contradiction_table{
    "s_contradiction", "Parents that the alleles contradict",
    "Accessions of the whole book whose alleles do not fit their recorded parents.", contradiction_columns,
    [] {
        return TableView{.first = {"accession", "alleles", "seed_parent", "seed_alleles", "pollen_parent",
                                   "pollen_alleles"},
                         .below = {"verdict"}};
    }};

}  // namespace pipward::operation::detail
