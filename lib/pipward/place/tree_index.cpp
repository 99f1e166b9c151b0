// SPDX-License-Identifier: MIT
#include "pipward/place/tree_index.h"

#include <utility>

#include "pipward/place/detail/field_table.h"
#include "pipward/place/detail/index_parts.h"
#include "pipward/place/detail/near_place.h"
#include "pipward/place/detail/query_text.h"

namespace pipward::place {

struct TreeIndex::Parts {
    explicit Parts(Orchard book) : orchard(std::move(book)), fields(orchard.trees, names), places(orchard) {
        detail::fill_index(orchard, names, families, remarks);
        fields.fill();
    }

    const Orchard orchard;  // first: the others point into it
    detail::NamePool names;
    detail::FieldTable fields;
    detail::NearTable places;
    detail::FamilyTable families;
    detail::RemarkPool remarks;

    Sentence what(const detail::Hit& hit) const {
        switch (hit.kind) {
            case MatchKind::parents:
                return families.shown(hit.source, hit.tree);
            case MatchKind::address:
            case MatchKind::record:
                return fields.shown(hit, orchard);
            case MatchKind::remark:
                return verbatim(remarks.shown(hit.source));
            case MatchKind::nearness:
                return {};
            default:
                return verbatim(names.shown(hit.source));
        }
    }

    // What is there as it was asked for.
    void find_named(std::string_view query, detail::Hits& hits) const {
        const auto folded = detail::folded_text(query);
        names.find_whole(query, hits);
        names.find_part(query, hits);
        if (const auto name = detail::without_sort(folded); name != folded) {
            names.find_whole(name, hits);
            names.find_part(name, hits);
        }
        fields.find(query, detail::Effort::whole, hits);
        families.find(query, hits);
        places.find(query, hits);
    }

    static constexpr float good = 0.7F;

    void find_misread(std::string_view query, detail::Hits& hits) const {
        constexpr float whole = 0.9F;
        if (hits.best_score() < whole) {
            const auto folded = detail::folded_text(query);
            names.find_misread(detail::without_sort(folded), hits);
        }
    }

    // What may have been meant, the likelier way first: the next is tried where the last has found nothing
    // good.
    void find_meant(std::string_view query, detail::Hits& hits) const {
        const auto folded = detail::folded_text(query);
        const auto name = detail::without_sort(folded);
        find_misread(query, hits);
        if (hits.best_score() < good) {
            fields.find(query, detail::Effort::abbreviated, hits);
        }
        if (hits.best_score() < good) {
            names.find_like(name, hits);
            fields.find(query, detail::Effort::misspelt, hits);
        }
        remarks.find(query, hits);
        if (hits.empty()) {
            remarks.find_like(query, hits);
        }
    }

    std::vector<FoundTree> found(const std::vector<detail::Hit>& hits) const {
        std::vector<FoundTree> trees;
        for (const auto& hit : hits) {
            trees.push_back({hit.tree, hit.score, {hit.kind, hit.extent, hit.slips, what(hit)}});
        }
        return trees;
    }
};

TreeIndex::TreeIndex(Orchard orchard) : parts_(std::make_shared<const Parts>(std::move(orchard))) {}

const Orchard& TreeIndex::orchard() const {
    return parts_->orchard;
}

std::vector<FoundTree> TreeIndex::find(std::string_view query, std::size_t limit,
                                       const std::optional<OwnPosition>& from,
                                       const std::optional<Day>& as_of) const {
    detail::Hits hits(parts_->orchard.trees.size());
    if (detail::folded_text(query).empty()) {
        return {};
    }
    if (detail::is_surely_place(query)) {
        parts_->places.find(query, hits);
    } else {
        parts_->find_named(query, hits);
        parts_->find_meant(query, hits);
    }
    return parts_->found(std::move(hits).ranked(parts_->orchard, limit, from, as_of));
}

bool TreeIndex::is_named(std::string_view query) const {
    detail::Hits hits(parts_->orchard.trees.size());
    if (!detail::folded_text(query).empty()) {
        parts_->find_named(query, hits);
        parts_->find_misread(query, hits);
    }
    return hits.best_score() >= Parts::good;
}

std::vector<FoundTree> TreeIndex::nearest(const OwnPosition& from, std::size_t limit) const {
    std::vector<FoundTree> found;
    for (const auto tree : parts_->places.nearest(from, limit)) {
        found.push_back({tree, 1.0, {MatchKind::nearness, Extent::whole, 0, {}}});
    }
    return found;
}

std::vector<std::string> TreeIndex::names_like(std::string_view query, std::size_t how_many) const {
    return parts_->names.most_like(query, how_many);
}

}  // namespace pipward::place
