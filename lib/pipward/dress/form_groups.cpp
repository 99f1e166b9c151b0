// SPDX-License-Identifier: MIT
#include "pipward/dress/detail/form_groups.h"

#include <algorithm>

namespace pipward::dress::detail {
namespace {

struct Tab {
    std::string_view table;
    Sentence title;
    std::vector<std::string_view> columns;
};

const std::vector<Tab>& tabs() {
    static const std::vector<Tab> all{
        {"tree",
         say("Tree"),
         {"label", "accession", "purpose", "rootstock", "planted_on", "removed_on", "note"}},
        {"tree", say("Place"), {"block", "row", "position", "placed_by", "accuracy_m", "elevation_m"}},
        {"accession",
         say("Accession"),
         {"name", "kind", "species", "seed_parent", "pollen_parent", "sport_of", "note"}},
        {"accession",
         say("Breeding"),
         {"s_alleles", "ploidy", "seed_ripe_days", "chill_portions", "protected_until"}},
        {"seed_lot", say("Lot"), {"code", "cross", "seeds", "from_tags", "note"}},
        {"seed_lot",
         say("Treatment"),
         {"washed_on", "cold_from", "cold_to", "cold_c", "treatment", "medium"}},
        {"bloom_window",
         say("Full bloom"),
         {"label", "accession", "season", "full_p10", "full_p50", "full_p90"}},
        {"bloom_window",
         say("First and end"),
         {"first_p10", "first_p50", "first_p90", "end_p10", "end_p50", "end_p90"}},
        {"bloom_window", say("How it is known"), {"as_of", "model", "notes_used", "warnings"}},
        {"cross_outlook",
         say("Cross"),
         {"cross", "season", "seed_parent", "pollen_parent", "donor", "way", "best", "chance", "verdict",
          "why", "as_of"}},
        {"cross_outlook",
         say("Work"),
         {"gather_from", "gather_to", "store", "use_from", "use_to", "flowers", "donor_flowers", "pollen_mg",
          "lot"}},
        {"cross_outlook", say("Match"), {"s_match", "kinship"}},
    };
    return all;
}

bool has(const std::vector<FormGroup>& groups, const std::string& column) {
    return std::ranges::any_of(groups, [&](const FormGroup& group) {
        return std::ranges::find(group.columns, column) != group.columns.end();
    });
}

std::vector<FormGroup> known_groups(std::string_view table, const Wording& wording) {
    std::vector<FormGroup> groups;
    for (const auto& tab : tabs()) {
        if (tab.table == table) {
            groups.push_back({tab.title.in(wording), {tab.columns.begin(), tab.columns.end()}});
        }
    }
    return groups;
}

}  // namespace

std::vector<FormGroup> form_groups(std::string_view table, std::string_view title,
                                   const std::vector<FieldDress>& fields, const Wording& wording) {
    auto groups = known_groups(table, wording);
    if (groups.empty()) {
        groups.push_back({std::string(title), {}});
    }
    for (const auto& field : fields) {
        if (!std::holds_alternative<Hidden>(field.widget) && !has(groups, field.column)) {
            groups.front().columns.push_back(field.column);
        }
    }
    return groups;
}

}  // namespace pipward::dress::detail
