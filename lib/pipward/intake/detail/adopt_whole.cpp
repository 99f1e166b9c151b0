// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <set>

#include "pipward/book/added_records.h"
#include "pipward/book/schema.h"
#include "pipward/intake/detail/adopt_known.h"
#include "pipward/intake/detail/adopting.h"
#include "pipward/value/utf8.h"

namespace pipward::intake::detail {
namespace {

book::AddedRecord record_of(const MadeRow& made) {
    book::AddedRecord record{made.table, made.cells};
    const auto kind = book::find_book_table(made.table)->geometry;
    if (kind == book::GeometryKind::point && !made.points.empty()) {
        record.at = made.points.front();
    } else if (kind == book::GeometryKind::line) {
        record.line = made.points;
    }
    return record;
}

bool has_required(const MadeRow& row) {
    return std::ranges::all_of(book::find_book_table(row.table)->columns,
                               [&](const book::BookColumn& column) {
                                   return !column.required || row.cells.contains(std::string(column.name));
                               });
}

bool has_required(const Adoption& adoption, const AdoptRow& row) {
    return has_required({adoption.table, row.cells, {}});
}

// Refused rows are looked at as well: everything that is wrong with them is to be told at once. But a name
// that the layer has twice, or the book already, was told: it must not make others look wrong.
std::vector<book::AddedRecord> records_of(const Adoption& adoption, const Orchard& orchard) {
    const auto known = known_things(adoption.table, orchard);
    std::set<std::string> seen;
    const auto is_judged = [&](const AdoptRow& row) {
        const auto key = key_of(adoption, row);
        return (row.fate == Fate::added || row.fate == Fate::refused) && has_required(adoption, row) &&
               !row.text(adoption.key()).empty() && !known.contains(key) && seen.insert(key).second;
    };
    std::vector<book::AddedRecord> records;
    for (const auto& made : rows_to_add(adoption, is_judged)) {
        if (has_required(made)) {
            records.push_back(record_of(made));
        }
    }
    return records;
}

std::set<std::string> names_made(const Adoption& adoption, const std::string& table) {
    std::set<std::string> names;
    for (const auto& made : adoption.made) {
        const auto cell = made.cells.find("name");
        if (made.table == table && cell != made.cells.end()) {
            names.insert(to_text(cell->second));
        }
    }
    return names;
}

// Names that the book lacks were told one by one already; here they count as if they were there.
Orchard with_missing_names(const Adoption& adoption, Orchard orchard) {
    if (adoption.table != "tree" && adoption.table != "tree_row") {
        return orchard;
    }
    auto accessions = names_made(adoption, "accession");
    auto blocks = names_made(adoption, "block");
    std::set<std::pair<std::string, std::string>> rows;
    accessions.insert({});
    blocks.insert({});
    for (const auto& accession : orchard.accessions) {
        accessions.insert(accession.name);
    }
    for (const auto& block : orchard.blocks) {
        blocks.insert(block.name);
    }
    for (const auto& row : orchard.rows) {
        rows.insert({row.block, row.name});
    }
    for (const auto& row : adoption.rows) {
        const auto block = row.text("block");
        const auto name = row.text("row");
        if (accessions.insert(row.text("accession")).second) {
            Accession accession;
            accession.name = row.text("accession");
            orchard.accessions.push_back(std::move(accession));
        }
        if (blocks.insert(block).second) {
            orchard.blocks.push_back({.name = block, .remark = {}});
        }
        if (!block.empty() && !name.empty() && rows.insert({block, name}).second) {
            orchard.rows.push_back({.block = block, .name = name, .spacing = {}, .remark = {}});
        }
    }
    return orchard;
}

bool is_named(const Adoption& adoption, const AdoptRow& row, const std::string& name) {
    constexpr std::size_t as_findings_name_it = 40;
    const auto own = row.text(adoption.key());
    return own == name || (own.size() > as_findings_name_it && one_line(own, as_findings_name_it) == name);
}

}  // namespace

std::string key_of(const Adoption& adoption, const AdoptRow& row) {
    const auto name = row.text(adoption.key());
    return adoption.table == "tree_row" ? row.text("block") + "\n" + name : name;
}

std::string field_of(const Adoption& adoption, const std::string& column) {
    const auto* goal = adoption.mapping.to(adoption.table + "." + column);
    return goal == nullptr ? column : goal->field;
}

std::vector<MadeRow> rows_to_add(const Adoption& adoption,
                                 const std::function<bool(const AdoptRow&)>& wanted) {
    std::vector<MadeRow> rows;
    for (const std::string table : {"block", "tree_row", "accession", "tree"}) {
        std::ranges::copy_if(adoption.made, std::back_inserter(rows),
                             [&](const MadeRow& row) { return row.table == table; });
        for (const auto& row : adoption.rows) {
            if (adoption.table == table && wanted(row)) {
                rows.push_back({table, row.cells, row.points});
            }
        }
    }
    return rows;
}

void judge_whole(Adoption& adoption, const AdoptOptions& options, const Orchard& orchard) {
    for (auto& finding : book::check_added(with_missing_names(adoption, orchard),
                                           records_of(adoption, orchard), options.as_of)) {
        const auto row = std::ranges::find_if(adoption.rows, [&](const AdoptRow& candidate) {
            return finding.table == adoption.table && is_named(adoption, candidate, finding.row);
        });
        if (row == adoption.rows.end()) {
            adoption.findings.push_back(std::move(finding));
        } else {
            adoption.complain_of(*row, std::move(finding));
        }
    }
}

}  // namespace pipward::intake::detail
