// SPDX-License-Identifier: MIT
#include "pipward/operation/lineage/detail/line_alleles_tables.h"

#include "pipward/operation/declare/column_of.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

std::vector<CodeWord> matches_as_codes() {
    return {{"full", "full"}, {"half", "half"}, {"none", "none"}, {"unknown", "not known"}};
}

const std::vector<ColumnOf<seed::MatchRow>>& match_columns() {
    static const std::vector<ColumnOf<seed::MatchRow>> columns{
        {{"seed_parent", text, "", "Seed parent", "The accession whose flowers would be worked."},
         [](const seed::MatchRow& r) { return text_cell(r.seed_parent); }},
        {{"pollen_parent", text, "", "Pollen parent", "The accession whose pollen it would be."},
         [](const seed::MatchRow& r) { return text_cell(r.pollen_parent); }},
        {{"match", text, "", "S-alleles", "Whether the style lets the pollen through.", matches_as_codes()},
         [](const seed::MatchRow& r) { return text_cell(lineage::to_text(r.match)); }},
        {{"pollen_share", number, "share", "Pollen let through",
          "Share of the pollen, 0 to 1; 0 is none expected, not none possible: styles leak."},
         [](const seed::MatchRow& r) { return number_cell(r.share, 3); }},
        {{"from_alleles", text, "", "From the alleles", "What the alleles tell."},
         [](const seed::MatchRow& r) { return text_cell(r.from_alleles); }},
        {{"flowers", whole, "", "Flowers", "Worked in this cross, where all its fruit was counted."},
         [](const seed::MatchRow& r) { return whole_cell(r.flowers); }},
        {{"set", whole, "", "Set", "Fruits of them, of a pear only such as had sound seed."},
         [](const seed::MatchRow& r) { return whole_cell(r.set); }},
        {{"from_field", text, "", "From the field", "What the counts tell."},
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
        {{"chance", number, "of 1", "Chance", "By its parents' alleles alone."},
         [](const seed::GenotypeRow& r) { return number_cell(r.chance, 4); }},
        {{"field_chance", number, "of 1", "Chance with the field",
          "The same once the counts of its crosses are weighed; unknown where none were counted."},
         [](const seed::GenotypeRow& r) { return number_cell(r.field_chance, 4); }},
        {{"from_alleles", text, "", "From the alleles", "What the chance rests on."},
         [](const seed::GenotypeRow& r) { return text_cell(r.from_alleles); }},
        {{"from_field", text, "", "From the field", "The counts that were weighed."},
         [](const seed::GenotypeRow& r) { return text_cell(r.from_field); }},
    };
    return columns;
}

const std::vector<ColumnOf<seed::ContradictionRow>>& contradiction_columns() {
    static const std::vector<ColumnOf<seed::ContradictionRow>> columns{
        {{"accession", text, "", "Accession", "The child."},
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
    "Every two of the accessions both ways: what the alleles tell of the cross, and what the field does.",
    match_columns};

const TableOf<seed::GenotypeRow> genotype_table{"s_genotype", "S-alleles of the accessions",
                                                "What each is recorded to have, or may have by its parents.",
                                                genotype_columns};

const TableOf<seed::ContradictionRow> contradiction_table{
    "s_contradiction", "Parents that the alleles contradict",
    "Accessions of the whole book whose alleles do not fit their recorded parents.", contradiction_columns};

}  // namespace pipward::operation::detail
