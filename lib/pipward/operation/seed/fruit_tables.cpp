// SPDX-License-Identifier: MIT
#include "pipward/operation/seed/detail/fruit_tables.h"

#include <array>

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

std::string_view state_code(seed::FruitState state) {
    static constexpr std::array<std::string_view, 6> codes{"bloomed", "young",   "possible",
                                                           "due",     "waiting", "overdue"};
    return codes[static_cast<std::size_t>(state)];
}

std::vector<CodeWord> state_words() {
    return {{"bloomed", "has bloomed"},        {"young", "too young"},
            {"possible", "may fruit"},         {"due", "should fruit this year"},
            {"waiting", "fruit was expected"}, {"overdue", "longer than most"}};
}

Sentence sown_words(const seed::FirstFruit& fruit) {
    switch (fruit.sown_by) {
        case seed::SownBy::lot_counts:
            return say("Seed of cross {} sprouted in {}.", fruit.cross, fruit.sown);
        case seed::SownBy::cross:
            return say("The cross is of {}, its seed was sown the year after.", fruit.sown - 1);
        case seed::SownBy::planting:
            break;
    }
    return say("The cross is not known; it was planted in {}.", fruit.sown);
}

Sentence why_of(const seed::FirstFruit& fruit) {
    auto why = sown_words(fruit);
    why += verbatim(" ");
    why += fruit.pear ? say("Pear: {} years to the first fruit as a rule, {} to {} are known.",
                            seed::pear_years, seed::fewest_years, seed::most_years)
                      : say("Apple: {} years to the first fruit as a rule, {} to {} are known.",
                            seed::apple_years, seed::fewest_years, seed::most_years);
    if (fruit.dwarfed) {
        why += verbatim(" ");
        why += say("On a dwarfing stock about {} years sooner.", seed::years_off_on_dwarfing_stock);
    }
    return why;
}

const std::vector<ColumnOf<FruitRow>>& fruit_columns() {
    static const std::vector<ColumnOf<FruitRow>> columns{
        {{"label", text, "", "Label", "What stands on the tree's tag."},
         [](const FruitRow& r) { return text_cell(r.fruit->tree->label); }},
        {{"accession", text, "", "Accession", "What the tree is."},
         [](const FruitRow& r) { return cell(r.fruit->tree->accession); }},
        {{"cross", text, "", "Cross", "Code of the cross; unknown where the book does not tell it."},
         [](const FruitRow& r) { return text_cell(r.fruit->cross); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const FruitRow& r) { return text_cell(r.address); }},
        {{"year", whole, "", "Year", "The year asked about."},
         [](const FruitRow& r) { return whole_cell(r.year); }},
        {{"state", text, "", "State", "Whether it should fruit in that year.", state_words()},
         [](const FruitRow& r) { return text_cell(state_code(r.fruit->state)); }},
        {{"sown", whole, "", "Sown", "Year of sowing."},
         [](const FruitRow& r) { return whole_cell(r.fruit->sown); }},
        {{"age", whole, "years", "Age", "From sowing to the year asked about."},
         [](const FruitRow& r) { return whole_cell(r.year - r.fruit->sown); }},
        {{"earliest", whole, "", "Earliest", "First year in which it may fruit."},
         [](const FruitRow& r) { return whole_cell(r.fruit->from); }},
        {{"expected", whole, "", "Expected", "Year in which it should first fruit."},
         [](const FruitRow& r) { return whole_cell(r.fruit->expected); }},
        {{"latest", whole, "", "Latest", "After that year few seedlings are still without fruit."},
         [](const FruitRow& r) { return whole_cell(r.fruit->to); }},
        {{"seen", whole, "", "Seen", "Year of the first bloom or score noted at it."},
         [](const FruitRow& r) { return whole_cell(r.fruit->seen); }},
        {{"why", text, "", "Why", "What that is reckoned from."},
         [](const FruitRow& r) { return Cell{why_of(*r.fruit)}; }},
    };
    return columns;
}

const std::vector<ColumnOf<seed::FamilyScores>>& family_columns() {
    static const std::vector<ColumnOf<seed::FamilyScores>> columns{
        {{"seed_parent", text, "", "Seed parent", "Its accession."},
         [](const seed::FamilyScores& f) { return text_cell(f.seed_parent); }},
        {{"pollen_parent", text, "", "Pollen parent", "Its accession or blend."},
         [](const seed::FamilyScores& f) { return text_cell(f.pollen_parent); }},
        {{"trait", text, "", "Trait", "As it was noted."},
         [](const seed::FamilyScores& f) { return text_cell(f.trait); }},
        {{"seedlings", whole, "", "Seedlings", "Of the family that were planted."},
         [](const seed::FamilyScores& f) { return whole_cell(f.seedlings); }},
        {{"scored", whole, "", "Trees scored", "Of them with a score of this trait."},
         [](const seed::FamilyScores& f) { return whole_cell(f.scored); }},
        {{"years", whole, "", "Years", "In which scores were made."},
         [](const seed::FamilyScores& f) { return whole_cell(f.years); }},
        {{"mean", number, "as scored", "Mean", "Over the trees, each by its own mean."},
         [](const seed::FamilyScores& f) { return significant_cell(f.mean, 3); }},
        {{"spread", number, "as scored", "Spread", "Standard deviation between trees; of two or more."},
         [](const seed::FamilyScores& f) { return f.spread ? significant_cell(*f.spread, 3) : Cell{}; }},
        {{"least", number, "as scored", "Least", "Of the trees' means."},
         [](const seed::FamilyScores& f) { return significant_cell(f.least, 3); }},
        {{"most", number, "as scored", "Most", "Of the trees' means."},
         [](const seed::FamilyScores& f) { return significant_cell(f.most, 3); }},
        {{"highest", text, "", "Highest", "The tree with the most, which is not always the best."},
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

TableShape first_fruit_shape() {
    return shape_of<FruitRow>({"first_fruit",
                               "First fruit",
                               "Every standing seedling, and the years in which it should first fruit.",
                               true,
                               {}},
                              fruit_columns());
}

Table first_fruit_table(const seed::FirstFruits& fruits, int year, std::span<const TreeRow> rows) {
    Table table{first_fruit_shape(), {}};
    for (const auto& fruit : fruits.seedlings) {
        const FruitRow record{&fruit, year, place::address_of(*fruit.tree, rows)};
        table.rows.push_back(row_of(record, fruit_columns()));
        table.rows.back().at = fruit.tree->at;
    }
    return table;
}

TableShape family_shape() {
    return shape_of<seed::FamilyScores>({"family_summary",
                                         "Families",
                                         "How the seedlings of each family have done so far, trait by trait.",
                                         false,
                                         {}},
                                        family_columns());
}

Table family_table(const std::vector<seed::FamilyScores>& families) {
    return table_of<seed::FamilyScores>(family_shape(), families, family_columns());
}

}  // namespace pipward::operation::detail
