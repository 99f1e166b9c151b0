// SPDX-License-Identifier: MIT
#include "pipward/lineage/value_list.h"

#include <algorithm>

#include "pipward/lineage/kinship_survey.h"
#include "pipward/record/orchard_index.h"

namespace pipward::lineage {
namespace {

Sentence remark_of(const PedigreeMember& member, const std::string& name, int own_scores) {
    if (!member.calculated) {
        return not_calculated_words(name, member);
    }
    std::vector<Sentence> remarks;
    if (member.name != name) {
        remarks.push_back(say("Combined with {}, of which it is a sport.", member.name));
    } else if (own_scores == 0) {
        remarks.push_back(say("From its relatives only."));
    }
    if (member.expected) {
        remarks.push_back(say("Expected: the pedigree has a pollen blend."));
    }
    return joined(remarks, verbatim(" "));
}

std::vector<ListedValue> rows_of(const Orchard& orchard, const PedigreeOrder& order,
                                 const TraitScores& scores, const BreedingValues& values) {
    const OrchardIndex book(orchard);
    std::vector<ListedValue> rows;
    for (const auto& [name, number] : order.number) {
        const auto& member = order.members[number];
        const auto own = scores.of.find(name);
        ListedValue row;
        row.accession = name;
        if (own != scores.of.end()) {
            row.scores = static_cast<int>(own->second.size());
            double sum = 0;
            for (const double score : own->second) {
                sum += score;
            }
            row.mean = sum / row.scores;
        }
        if (const auto* record = book.accession(name)) {
            row.kind = record->kind;
        }
        if (member.calculated) {
            row.value = values.values[number];
        }
        row.remark = remark_of(member, name, row.scores);
        rows.push_back(std::move(row));
    }
    return rows;
}

// The highest first; equal values share a rank, those without one come last.
void rank(std::vector<ListedValue>& rows) {
    std::ranges::stable_sort(rows, [](const ListedValue& a, const ListedValue& b) {
        return a.value && (!b.value || a.value->value > b.value->value);
    });
    for (std::size_t i = 0; i < rows.size() && rows[i].value; ++i) {
        const bool equal = i > 0 && rows[i].value->value == rows[i - 1].value->value;
        rows[i].rank = equal ? *rows[i - 1].rank : static_cast<int>(i) + 1;
    }
}

}  // namespace

ValueList value_list(const Orchard& orchard, const PedigreeOrder& order, const TraitScores& scores,
                     const BreedingValues& values) {
    ValueList list{rows_of(orchard, order, scores, values)};
    list.left_out = std::erase_if(list.listed, [](const ListedValue& row) {
        return row.scores == 0 && (!row.value || row.value->reliability < least_reliability);
    });
    rank(list.listed);
    return list;
}

}  // namespace pipward::lineage
