// SPDX-License-Identifier: MIT
#include "pipward/style/detail/form_groups.h"

#include <algorithm>

namespace pipward::style::detail {
namespace {

/// A tab of a result's form.
struct Tab {
    std::string_view table;
    Sentence title;
    std::vector<std::string_view> columns;
};

const std::vector<Tab>& tabs() {
    static const std::vector<Tab> all{
        {"bloom_window",
         say("Full bloom"),
         {"tree", "accession", "season", "full_p10", "full_p50", "full_p90"}},
        {"bloom_window",
         say("First and end"),
         {"first_p10", "first_p50", "first_p90", "end_p10", "end_p50", "end_p90"}},
        {"bloom_window", say("How it is known"), {"as_of", "model", "observations_used", "warnings"}},
        {"cross_outlook",
         say("Cross"),
         {"cross", "season", "seed_parent", "pollen_parent", "donor", "way", "best", "second", "probability",
          "verdict", "why", "as_of"}},
        {"cross_outlook",
         say("Work"),
         {"collect_from", "collect_to", "collect_to_is_median", "balloon_from", "balloon_to", "store",
          "use_from", "use_to", "use_to_is_median", "flowers", "donor_flowers", "pollen_mg", "lot"}},
        {"cross_outlook", say("Match"), {"s_match", "kinship"}},
    };
    return all;
}

bool has(const std::vector<FormGroup>& groups, const std::string& column) {
    return std::ranges::any_of(groups, [&](const FormGroup& group) {
        return std::ranges::find(group.columns, column) != group.columns.end();
    });
}

void add(FormGroup& group, const book::BookColumn& column) {
    auto& columns = group.columns;
    columns.insert(std::ranges::find(columns, column.shown_before), std::string(column.name));
}

}  // namespace

std::vector<FormGroup> form_groups(const book::BookTable& table, const Wording& wording) {
    std::vector<FormGroup> groups;
    for (const auto& column : table.columns) {
        const auto title = column.tab.empty() ? std::string{} : column.tab.in(wording);
        auto group = title.empty() ? groups.begin() : std::ranges::find(groups, title, &FormGroup::title);
        if (group == groups.end()) {
            group = groups.insert(group, {title.empty() ? wording(table.title) : title, {}});
        }
        add(*group, column);
    }
    return groups;
}

std::vector<FormGroup> form_groups(const TableShape& result, const Wording& wording) {
    std::vector<FormGroup> groups;
    for (const auto& tab : tabs()) {
        if (tab.table == result.name) {
            groups.push_back({tab.title.in(wording), {tab.columns.begin(), tab.columns.end()}});
        }
    }
    if (groups.empty()) {
        groups.push_back({wording(result.title), {}});
    }
    for (const auto& column : result.columns) {
        if (!has(groups, column.name)) {
            groups.front().columns.push_back(column.name);
        }
    }
    return groups;
}

}  // namespace pipward::style::detail
