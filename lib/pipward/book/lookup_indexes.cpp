// SPDX-License-Identifier: MIT
#include "pipward/book/detail/lookup_indexes.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>
#include <string>
#include <string_view>

namespace pipward::book::detail {
namespace {

/// `columns` as SQL has them.
struct LookupIndex {
    std::string_view name;
    std::string_view table;
    std::string_view columns;
    std::string_view condition{};
    bool needed = false;
};

// The label behind a column gives the trees that share it in the order in which they are shown. Remarks are
// few, and only those that are there are held.
constexpr std::array indexes{
    LookupIndex{"tree_by_accession", "tree", "\"accession\", \"label\"", "", true},
    LookupIndex{"tree_by_block", "tree", "\"block\", \"label\"", "", true},
    LookupIndex{"tree_by_place", "tree", "\"row\", \"position\", \"block\"", "", true},
    LookupIndex{"tree_by_rootstock", "tree", "\"rootstock\", \"label\"", "", true},
    LookupIndex{"tree_by_remark", "tree", "\"remark\"", "\"remark\" IS NOT NULL", true},
    LookupIndex{"accession_by_parents", "accession", "\"seed_parent\", \"pollen_parent\"", "", true},
    LookupIndex{"accession_by_pollen_parent", "accession", "\"pollen_parent\"", "", true},
    LookupIndex{"accession_by_remark", "accession", "\"remark\"", "\"remark\" IS NOT NULL", true},
    LookupIndex{"bloom_observation_by_tree", "bloom_observation", "\"tree\""},
    LookupIndex{"bloom_observation_by_accession", "bloom_observation", "\"accession\""},
    LookupIndex{"pollination_by_tree", "pollination", "\"tree\""},
    LookupIndex{"pollination_by_cross", "pollination", "\"cross\""},
    LookupIndex{"pollination_by_lot", "pollination", "\"lot\""},
    LookupIndex{"trait_score_by_tree", "trait_score", "\"tree\""},
    LookupIndex{"trait_score_by_remark", "trait_score", "\"remark\"", "\"remark\" IS NOT NULL"}};

std::set<std::string> names_there(Session& session) {
    std::set<std::string> names;
    for (const auto& row : query(session, "SELECT name FROM sqlite_master WHERE type = 'index'")) {
        names.insert(row[0].value_or(""));
    }
    return names;
}

// A table that someone made or changed may lack columns; it is read as it is, and needs no index.
bool has_columns(Session& session, const LookupIndex& index) {
    std::string wanted(index.columns);
    std::set<std::string> there;
    for (const auto& row :
         query(session, fmt::format("SELECT name FROM pragma_table_info({})", quoted_text(index.table)))) {
        there.insert(quoted_name(row[0].value_or("")));
    }
    for (std::size_t at = 0; at < wanted.size();) {
        const auto end = std::min(wanted.find(", ", at), wanted.size());
        if (!there.contains(wanted.substr(at, end - at))) {
            return false;
        }
        at = end + 2;
    }
    return true;
}

}  // namespace

void ensure_lookup_indexes(Session& session) {
    if (session.server) {
        return;
    }
    const auto there = names_there(session);
    for (const auto& index : indexes) {
        if (!there.contains(std::string(index.name)) && has_columns(session, index)) {
            run_sql(session, fmt::format("CREATE INDEX {} ON {} ({}){}{}", quoted_name(index.name),
                                         quoted_name(index.table), index.columns,
                                         index.condition.empty() ? "" : " WHERE ", index.condition));
        }
    }
}

bool has_lookup_indexes(Session& session) {
    if (session.server) {
        return false;
    }
    const auto there = names_there(session);
    return std::ranges::all_of(indexes, [&](const LookupIndex& index) {
        return !index.needed || there.contains(std::string(index.name));
    });
}

}  // namespace pipward::book::detail
