// SPDX-License-Identifier: MIT
#include "pipward/place/part_of_book.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <map>
#include <set>

#include "pipward/place/detail/family_table.h"
#include "pipward/place/detail/field_table.h"
#include "pipward/place/detail/index_parts.h"
#include "pipward/place/detail/name_list.h"
#include "pipward/place/detail/name_sieve.h"
#include "pipward/place/detail/near_place.h"
#include "pipward/place/detail/query_text.h"
#include "pipward/place/tree_index.h"
#include "pipward/record/presence.h"

namespace pipward::place {
namespace {

using Names = std::set<std::string>;
using Fit = detail::NameSieve::Fit;

constexpr std::size_t many_names = 3000;   // of which each is asked about by itself
constexpr std::size_t most_alike = 20000;  // names that are taken at once

// Of too many, one more than enough tells that they are.
void note(Names& names, std::string_view name) {
    if (names.size() <= most_alike) {
        names.emplace(name);
    }
}

/// Names that a search text is a part of, alike in how much of them it is: the trees of such names rank by
/// what stands and by label alone, so that the first will do.
struct Alike {
    std::size_t names = 0;
    std::vector<std::string> first;  // in their order
};

/// The codes of a table, and how the search text fits them.
struct Codes {
    Names named;
    Names like;
};

void take_rows(OrchardShelf& shelf, std::string_view table, std::string_view column, Names values) {
    values.erase("");  // what is not known
    if (!values.empty() && !shelf.overfull()) {
        const Held held{column, std::move(values)};
        shelf.take(table, std::span(&held, 1));
    }
}

void take_parents(OrchardShelf& shelf) {
    Names parents;
    for (const auto& accession : shelf.taken().accessions) {
        parents.insert(accession.seed_parent.value_or(""));
        parents.insert(accession.pollen_parent.value_or(""));
    }
    take_rows(shelf, "accession", "name", parents);
    take_rows(shelf, "blend", "name", parents);
}

// What is told of the trees: their accessions with parents and grandparents, the rows that they stand in.
void take_told(OrchardShelf& shelf) {
    Names accessions;
    Names rows;
    for (const auto& tree : shelf.taken().trees) {
        accessions.insert(tree.accession.value_or(""));
        rows.insert(tree.row.value_or(""));
    }
    take_rows(shelf, "accession", "name", std::move(accessions));
    take_rows(shelf, "tree_row", "name", std::move(rows));
    take_parents(shelf);
    take_parents(shelf);
}

/// Takes what a search text leads to, way by way, as the index knows them (detail/index_parts.h).
class Taker {
  public:
    Taker(const FindWish& wish, OrchardShelf& shelf)
        : wish_(wish), shelf_(shelf), sieve_(wish.query), remarks_(wish.query) {}

    bool take() {
        if (const auto box = detail::box_sought(wish_.query, shelf_.taken().crs)) {
            shelf_.take_trees_within(box->low, box->high);
        }
        if (!detail::is_surely_place(wish_.query)) {
            take_codes(false);
            take_families();
            take_remarks(false);
            look_through_names();
            take_vocabulary();
            take_fields(detail::Effort::whole);
            complete();
            if (enough() && !TreeIndex(shelf_.taken()).is_named(wish_.query)) {
                take_what_may_be_meant();
            }
        }
        complete();
        return enough() && first_of_alike_suffice();
    }

  private:
    bool enough() const { return enough_ && !shelf_.overfull(); }

    void take_what_may_be_meant() {
        take_codes(true);
        take_remarks(true);
        enough_ = enough_ && like_labels_.size() <= most_alike;
        take_labels(like_labels_);
        take_trees_of(like_accessions_);
        take_vocabulary();
        take_fields(detail::Effort::abbreviated);
        take_fields(detail::Effort::misspelt);
    }

    void take_rows(std::string_view table, std::string_view column, const Names& values) {
        if (enough()) {
            place::take_rows(shelf_, table, column, values);
        }
    }

    void take_labels(const Names& labels) { take_rows("tree", "label", labels); }

    // Of trees that rank alike but for standing and label, or for where they are.
    void take_ranked(std::span<const Held> all_of) {
        if (!enough()) {
            return;
        }
        if (wish_.from) {
            shelf_.take("tree", all_of);
        } else {
            shelf_.take_first_trees(all_of, wish_.as_of, wish_.limit);
        }
    }

    void take_trees_of(const Names& accessions) {
        enough_ = enough_ && accessions.size() <= many_names;
        for (const auto& accession : accessions) {
            if (enough() && !accession.empty()) {
                const Held held{"accession", {accession}};
                take_ranked(std::span(&held, 1));
            }
        }
    }

    Codes codes_of(std::string_view table, std::string_view column) {
        Codes codes;
        detail::ComparedName name;
        shelf_.each_name(table, column, [&](std::string_view code) {
            name.set(code);
            const auto fit = sieve_.of_name(name);
            if (fit != Fit::none) {
                note(fit == Fit::like ? codes.like : codes.named, code);
            }
        });
        return codes;
    }

    // Tags, crosses and lots.
    void take_codes(bool like) {
        const auto chosen = [&](std::string_view table, std::string_view column) {
            auto codes = codes_of(table, column);
            auto names = std::move(like ? codes.like : codes.named);
            enough_ = enough_ && names.size() <= many_names;
            return enough_ ? names : Names{};
        };
        take_rows("pollination", "tag", chosen("pollination", "tag"));
        const auto lots = chosen("pollen_lot", "code");
        take_rows("pollen_lot", "code", lots);
        take_rows("pollination", "lot", lots);
        take_rows("pollination", "lot", chosen("pollination", "lot"));
        const auto seed = chosen("seed_lot", "code");
        take_rows("seed_lot", "code", seed);
        auto crosses = chosen("cross_goal", "code");
        Names donors;
        for (const auto& lot : shelf_.taken().seed_lots) {
            crosses.insert(seed.contains(lot.code) ? lot.cross : std::string{});
        }
        for (const auto& lot : shelf_.taken().pollen_lots) {
            donors.insert(lots.contains(lot.code) ? lot.donor : std::string{});
        }
        take_crosses(crosses);
        take_trees_of(donors);
    }

    // With their seedlings, the trees worked for them and those of the seed parents.
    void take_crosses(const Names& codes) {
        take_rows("cross_goal", "code", codes);
        take_rows("pollination", "cross", codes);
        for (const auto& goal : std::vector(shelf_.taken().goals)) {
            if (codes.contains(goal.code) && crosses_.insert(goal.code).second) {
                beginnings_.insert(detail::parts_key(detail::folded_text(goal.code)));
                take_children(
                    {Held{"seed_parent", {goal.seed_parent}}, Held{"pollen_parent", {goal.pollen_parent}}});
                take_trees_of({goal.seed_parent});
            }
        }
    }

    // Trees of the accessions whose parents are of these.
    void take_children(const std::array<Held, 2>& parents) {
        if (!enough() || shelf_.take("accession", parents) == 0) {
            return;
        }
        Names children;
        for (const auto& accession : shelf_.taken().accessions) {
            const auto holds = [&](const Held& held) {
                return held.values.contains(
                    (held.column == "seed_parent" ? accession.seed_parent : accession.pollen_parent)
                        .value_or(""));
            };
            if (std::ranges::all_of(parents, holds)) {
                children.insert(accession.name);
            }
        }
        take_rows("tree", "accession", children);
    }

    void take_families() {
        if (const auto code = detail::code_sought(wish_.query); !code.empty()) {
            Names crosses;
            shelf_.each_name("cross_goal", "code", [&](std::string_view name) {
                if (detail::squeezed(detail::folded_text(name)) == code) {
                    crosses.emplace(name);
                }
            });
            take_crosses(crosses);
        }
        for (const auto& sought : detail::parents_sought(wish_.query)) {
            take_family(sought);
        }
    }

    void take_family(const detail::ParentsSought& sought) {
        const auto like = [&](std::string_view column,
                              bool (detail::ParentsSought::*is)(const std::string&) const) {
            Held held{column, {}};
            shelf_.each_name("accession", column, [&](std::string_view name) {
                if ((sought.*is)(detail::squeezed(detail::folded_text(name)))) {
                    held.values.emplace(name);
                }
            });
            return held;
        };
        const auto seed = &detail::ParentsSought::is_seed;
        const auto pollen = &detail::ParentsSought::is_pollen;
        take_children({like("seed_parent", seed), like("pollen_parent", pollen)});
        take_children({like("pollen_parent", seed), like("seed_parent", pollen)});
    }

    void take_remarks(bool like) {
        std::map<std::string_view, Names> remarks;
        for (const auto* table :
             {"tree", "accession", "bloom_observation", "pollination", "trait_score", "cross_goal"}) {
            remarks[table] = remarks_of(table, like);
            take_rows(table, "remark", remarks[table]);
        }
        const auto has = [&](const char* table, const std::optional<std::string>& remark) {
            return remark && remarks.at(table).contains(*remark);
        };
        const auto part = shelf_.taken();
        Names labels;
        Names accessions;
        Names crosses;
        for (const auto& accession : part.accessions) {
            accessions.insert(has("accession", accession.remark) ? accession.name : std::string{});
        }
        for (const auto& seen : part.bloom_observations) {
            labels.insert(seen.tree.value_or(""));
            accessions.insert(seen.tree ? std::string{} : seen.accession.value_or(""));
        }
        for (const auto& score : part.trait_scores) {
            labels.insert(score.tree);
        }
        for (const auto& goal : part.goals) {
            crosses.insert(has("cross_goal", goal.remark) ? goal.code : std::string{});
        }
        take_crosses(crosses);
        take_labels(labels);
        take_trees_of(accessions);
    }

    Names remarks_of(std::string_view table, bool like) {
        Names remarks;
        shelf_.each_name(table, "remark", [&](std::string_view remark) {
            if (like ? remarks_.holds_like(remark) : remarks_.holds(remark)) {
                note(remarks, remark);
            }
        });
        enough_ = enough_ && remarks.size() <= many_names;
        return remarks;
    }

    // A label's letters before its number may be the code of a block.
    void note_code(std::string_view label, std::string& last) {
        const auto goes_on = [](char c) { return c != '-' && !(c >= '0' && c <= '9'); };
        const bool same =
            label.starts_with(last) && (label.size() == last.size() || !goes_on(label[last.size()]));
        if (same && !last.empty()) {
            return;
        }
        last = label.substr(
            0, static_cast<std::size_t>(std::ranges::find_if_not(label, goes_on) - label.begin()));
        if (!last.empty() && sieve_.has_run(detail::squeezed(detail::folded_text(last)))) {
            codes_.insert(last);
        }
    }

    void look_through_names() {
        look_through_labels();
        detail::ComparedName name;
        Names named;
        shelf_.each_name("tree", "accession", [&](std::string_view accession) {
            name.set(accession);
            const auto fit = sieve_.of_accession(name);
            if (fit == Fit::named || fit == Fit::part || is_of_crosses(name.parts())) {
                note(named, accession);
            } else if (fit == Fit::like) {
                note(like_accessions_, accession);
            }
        });
        take_trees_of(named);
    }

    bool is_of_crosses(std::string_view parts) const {
        return std::ranges::any_of(beginnings_, [&](const std::string& beginning) {
            return parts.starts_with(beginning) &&
                   (parts.size() == beginning.size() || parts[beginning.size()] == ' ');
        });
    }

    void look_through_labels() {
        detail::ComparedName name;
        std::string last;
        Names named;
        const auto most = 3 * wish_.limit + 50;  // some do not stand
        shelf_.each_name("tree", "label", [&](std::string_view label) {
            note_code(label, last);
            name.set(label);
            const auto fit = sieve_.of_name(name);
            if (fit == Fit::named) {
                note(named, label);
            } else if (fit == Fit::part) {
                auto& alike = alike_[{name.key().size(), sieve_.begun_by(name)}];
                if (++alike.names <= (wish_.from ? most_alike : most)) {
                    alike.first.emplace_back(label);
                }
            } else if (fit == Fit::like) {
                note(like_labels_, label);
            }
        });
        for (const auto& [form, alike] : alike_) {
            named.insert(alike.first.begin(), alike.first.end());
        }
        enough_ = enough_ && named.size() <= 2 * most_alike;
        take_labels(named);
    }

    bool first_of_alike_suffice() {
        std::set<std::string_view> standing;
        for (const auto& tree : shelf_.taken().trees) {
            if (stands_on(tree, wish_.as_of)) {
                standing.insert(tree.label);
            }
        }
        return std::ranges::all_of(alike_, [&](const auto& entry) {
            const auto& alike = entry.second;
            const auto stand = static_cast<std::size_t>(std::ranges::count_if(
                alike.first, [&](const std::string& label) { return standing.contains(label); }));
            return alike.first.size() == alike.names || (!wish_.from && stand >= wish_.limit);
        });
    }

    // One tree for every name that words of the search text may be, so that it is understood as in the whole
    // book.
    void take_vocabulary() {
        const auto one_each = [&](std::string_view column, const Names& names) {
            for (const auto& name : names) {
                const Held held{column, {name}};
                shelf_.take("tree", std::span(&held, 1), 1);
            }
        };
        Names blocks;
        shelf_.each_name("tree", "block", [&](std::string_view name) { blocks.emplace(name); });
        one_each("block", blocks);
        Names stocks;
        shelf_.each_name("tree", "rootstock", [&](std::string_view name) { stocks.emplace(name); });
        one_each("rootstock", stocks);
        one_each("row", rows_called());
        take_codes_of(blocks);
    }

    Names rows_called() {
        detail::NameList rows;
        shelf_.each_name("tree", "row", [&](std::string_view name) { rows.add(std::string(name)); });
        Names called;
        for (const auto& run : sieve_.runs()) {
            for (const auto& value : rows.called_exactly(run)) {
                called.merge(rows.written(value.id));
            }
        }
        return called;
    }

    void take_codes_of(const Names& blocks) {
        std::vector<Held> where{{"block", {}, {}, true}};
        for (const auto& block : blocks) {
            where.push_back({"block", {block}});
        }
        for (const auto& code : codes_) {
            for (const auto& block : where) {
                for (const auto& [low, high] :
                     {std::pair{code + "-", code + "."}, std::pair{code + "0", code + ":"},
                      std::pair{code, code + '\x01'}}) {
                    const std::array held{block, Held{"label", {}, std::pair{low, high}}};
                    shelf_.take("tree", held, 1);
                }
            }
        }
    }

    void take_fields(detail::Effort effort) {
        if (!enough()) {
            return;
        }
        const auto part = shelf_.taken();
        detail::NamePool names;
        detail::FamilyTable families;
        detail::RemarkPool remarks;
        detail::fill_index(part, names, families, remarks);
        detail::FieldTable fields(part.trees, names);
        fields.fill();
        for (const auto& sought : fields.sought(wish_.query, effort)) {
            take_fields(sought);
        }
    }

    void take_fields(const detail::FieldTable::FieldsSought& sought) {
        using detail::Facet;
        if (sought.contains(Facet::label)) {
            return;  // taken already
        }
        std::vector<std::vector<Held>> all{{}};
        for (const auto& [facet, names] : sought) {
            if (facet == Facet::position) {
                for (auto& held : all) {
                    held.push_back({"position", names});
                }
                continue;
            }
            std::vector<std::vector<Held>> more;
            for (const auto& held : all) {
                for (const auto& name : names) {
                    more.push_back(held);
                    more.back().push_back(held_in(facet, name));
                }
            }
            all = std::move(more);
            enough_ = enough_ && all.size() <= many_names;
            if (!enough_) {
                return;
            }
        }
        for (const auto& held : all) {
            take_ranked(held);
        }
    }

    static Held held_in(detail::Facet facet, const std::string& name) {
        switch (facet) {
            case detail::Facet::block:
                return {"block", {name}};
            case detail::Facet::row:
                return {"row", {name}};
            case detail::Facet::rootstock:
                return {"rootstock", {name}};
            case detail::Facet::year: {
                int year = 0;
                std::from_chars(name.data(), name.data() + name.size(), year);
                return {"planted_on", {}, std::pair{fmt::format("{}-", year), fmt::format("{}-", year + 1)}};
            }
            default:
                return {"accession", {name}};
        }
    }

    // What is known of the trees besides, and the crosses that their accessions came of.
    void complete() {
        if (!enough()) {
            return;
        }
        Names labels;
        for (const auto& work : shelf_.taken().pollinations) {
            labels.insert(work.tree);
        }
        take_labels(labels);
        take_told(shelf_);
        take_crosses_behind();
    }

    void take_crosses_behind() {
        std::set<std::string, std::less<>> beginnings;
        std::map<std::string, Names> bred;  // by seed parent the pollen parents
        for (const auto& accession : shelf_.taken().accessions) {
            auto parts = detail::parts_key(detail::folded_text(accession.name));
            for (auto at = parts.size(); at != std::string::npos; at = parts.rfind(' ')) {
                parts.resize(at);
                beginnings.insert(parts);
            }
            if (accession.kind == AccessionKind::seedling || accession.kind == AccessionKind::selection) {
                bred[accession.seed_parent.value_or("")].insert(accession.pollen_parent.value_or(""));
            }
        }
        Names codes;
        detail::ComparedName name;
        shelf_.each_name("cross_goal", "code", [&](std::string_view code) {
            name.set(code);
            if (beginnings.contains(name.parts())) {
                codes.emplace(code);
            }
        });
        take_rows("cross_goal", "code", codes);
        for (const auto& [seed, pollen] : bred) {
            const std::array parents{Held{"seed_parent", {seed}}, Held{"pollen_parent", pollen}};
            shelf_.take("cross_goal", parents);
        }
    }

    const FindWish& wish_;
    OrchardShelf& shelf_;
    detail::NameSieve sieve_;
    detail::RemarkSieve remarks_;
    Names crosses_;                     // whose seedlings are wanted
    std::set<std::string> beginnings_;  // of their seedlings' names, as compared
    Names like_labels_;
    Names like_accessions_;
    Names codes_;  // that labels begin with and the search text holds
    std::map<std::pair<std::size_t, unsigned>, Alike> alike_;
    bool enough_ = true;
};

}  // namespace

bool take_for(const FindWish& wish, OrchardShelf& shelf) {
    return Taker(wish, shelf).take();
}

bool take_nearest(const OwnPosition& from, std::size_t limit, OrchardShelf& shelf) {
    constexpr int doublings = 16;  // from some metres to some hundred kilometres
    const double first = from.x_shrink < 1 ? 1e-4 : 10.0;
    for (int i = 0; i < doublings && !shelf.overfull(); ++i) {
        const double distance = std::ldexp(first, i);
        const auto box = detail::box_around(from, distance);
        shelf.take_trees_within(box.low, box.high);
        const auto near = std::ranges::count_if(shelf.taken().trees, [&](const Tree& tree) {
            return tree.at && from.plain_distance(*tree.at) <= distance;
        });
        if (static_cast<std::size_t>(near) >= limit) {
            take_told(shelf);
            return true;
        }
    }
    return false;
}

std::vector<std::string> names_like(std::string_view query, OrchardShelf& shelf, std::size_t how_many) {
    detail::MostLike best(query, how_many);
    detail::ComparedName name;
    const auto show = [&](std::string_view shown) {
        name.set(shown);
        best.show(name.key(), shown);
    };
    shelf.each_name("tree", "label", show);
    shelf.each_name("tree", "accession", show);
    shelf.each_name("pollination", "tag", show);
    for (const auto* table : {"cross_goal", "pollen_lot", "seed_lot"}) {
        shelf.each_name(table, "code", show);
    }
    return best.names();
}

}  // namespace pipward::place
