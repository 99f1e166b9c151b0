// SPDX-License-Identifier: MIT
#include "pipward/operation/seed/detail/fruit_tables.h"

#include "pipward/operation/declare/column_of.h"
#include "pipward/place/address.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct FruitRow {
    const seed::FirstFruit* fruit = nullptr;
    int year = 0;
    Sentence address{};
};

const std::vector<ColumnOf<FruitRow>>& fruit_columns() {
    static const std::vector<ColumnOf<FruitRow>> columns{
        {{"tree", text, "", "Tree", "The tree's label."},
         [](const FruitRow& r) { return text_cell(r.fruit->tree->label); }},
        {{"accession", text, "", "Accession", "What the tree is."},
         [](const FruitRow& r) { return cell(r.fruit->tree->accession); }},
        {{"cross", text, "", "Cross", "Code of the cross; unknown where it is not in the book."},
         [](const FruitRow& r) { return text_cell(r.fruit->cross); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const FruitRow& r) { return text_cell(r.address); }},
        {{"year", whole, "", "Year", "The year."}, [](const FruitRow& r) { return whole_cell(r.year); }},
        {{"state", text, "", "State", "Whether it should fruit in that year.", codes_of<seed::FruitState>()},
         [](const FruitRow& r) { return text_cell(to_word(r.fruit->state)); }},
        {{"sown", whole, "", "Sown", "Year of sowing."},
         [](const FruitRow& r) { return whole_cell(r.fruit->sown); }},
        {{"age", whole, "years", "Age", "From sowing to the year given."},
         [](const FruitRow& r) { return whole_cell(r.year - r.fruit->sown); }},
        {{"earliest", whole, "", "Earliest", "First year in which it may fruit."},
         [](const FruitRow& r) { return whole_cell(r.fruit->from); }},
        {{"expected", whole, "", "Expected", "Expected year of first fruiting."},
         [](const FruitRow& r) { return whole_cell(r.fruit->expected); }},
        {{"latest", whole, "", "Latest", "After that year few seedlings are still without fruit."},
         [](const FruitRow& r) { return whole_cell(r.fruit->to); }},
        {{"seen", whole, "", "Seen", "Year of its first recorded bloom or score."},
         [](const FruitRow& r) { return whole_cell(r.fruit->seen); }},
        {{"why", text, "", "Why", "Basis of the calculation."},
         [](const FruitRow& r) { return Cell{seed::fruit_reason(*r.fruit)}; }},
    };
    return columns;
}

constexpr TableOf<FruitRow> first_fruit_rows{
    "first_fruiting",
    "First fruiting",
    "Every standing seedling, and the years in which first fruiting is expected.",
    fruit_columns,
    [] {
        return TableView{.first = {"tree", "accession", "address", "state", "expected", "earliest", "latest",
                                   "age", "seen", "cross"},
                         .once = {"year"}};
    },
    [](const FruitRow& r) { return r.fruit->tree->at; }};

const std::vector<ColumnOf<seed::FamilyScores>>& family_columns() {
    static const std::vector<ColumnOf<seed::FamilyScores>> columns{
        {{"seed_parent", text, "", "Seed parent", "Its accession."},
         [](const seed::FamilyScores& f) { return text_cell(f.seed_parent); }},
        {{"pollen_parent", text, "", "Pollen parent", "Its accession or blend."},
         [](const seed::FamilyScores& f) { return text_cell(f.pollen_parent); }},
        {{"trait", text, "", "Trait", "As recorded."},
         [](const seed::FamilyScores& f) { return text_cell(f.trait); }},
        {{"seedlings", whole, "", "Seedlings", "Of the family that were planted."},
         [](const seed::FamilyScores& f) { return whole_cell(f.seedlings); }},
        {{"scored", whole, "", "Trees scored", "Of them with a score of this trait."},
         [](const seed::FamilyScores& f) { return whole_cell(f.scored); }},
        {{"years", whole, "", "Years", "In which scores were made."},
         [](const seed::FamilyScores& f) { return whole_cell(f.years); }},
        {{"mean", number, "as scored", "Mean", "Over the trees, each by its own mean."},
         [](const seed::FamilyScores& f) { return significant_cell(f.mean, 3); }},
        {{"sd", number, "as scored", "SD", "Standard deviation between trees, where two or more."},
         [](const seed::FamilyScores& f) { return f.spread ? significant_cell(*f.spread, 3) : Cell{}; }},
        {{"minimum", number, "as scored", "Minimum", "Of the trees' means."},
         [](const seed::FamilyScores& f) { return significant_cell(f.least, 3); }},
        {{"maximum", number, "as scored", "Maximum", "Of the trees' means."},
         [](const seed::FamilyScores& f) { return significant_cell(f.most, 3); }},
        {{"highest", text, "", "Highest", "The tree with the highest value, which is not always the best."},
         [](const seed::FamilyScores& f) { return text_cell(f.highest); }},
        {{"seed_parent_mean", number, "as scored", "Seed parent's mean", "Where it was scored itself."},
         [](const seed::FamilyScores& f) {
             return f.seed_parent_mean ? significant_cell(*f.seed_parent_mean, 3) : Cell{};
         }},
        {{"pollen_parent_mean", number, "as scored", "Pollen parent's mean", "Where it was scored itself."},
         [](const seed::FamilyScores& f) {
             return f.pollen_parent_mean ? significant_cell(*f.pollen_parent_mean, 3) : Cell{};
         }},
    };
    return columns;
}

}  // namespace

const TableOf<seed::FamilyScores> family_table{
    "family_summary", "Families", "Scores of the seedlings of each family so far, trait by trait.",
    family_columns, [] {
        return TableView{.first = {"seed_parent", "pollen_parent", "trait", "mean", "sd", "minimum",
                                   "maximum", "scored", "seedlings", "highest", "seed_parent_mean",
                                   "pollen_parent_mean", "years"}};
    }};

ResultShape first_fruit_shape() {
    return first_fruit_rows.shape();
}

Table first_fruit_table(const seed::FirstFruits& fruits, int year, std::span<const TreeRow> rows) {
    std::vector<FruitRow> records;
    for (const auto& fruit : fruits.seedlings) {
        records.push_back({&fruit, year, place::address_of(*fruit.tree, rows)});
    }
    return first_fruit_rows.of(records);
}

}  // namespace pipward::operation::detail
