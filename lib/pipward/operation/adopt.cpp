// SPDX-License-Identifier: MIT
#include "pipward/operation/adopt.h"

#include <fmt/format.h>

#include <array>

#include "pipward/value/utf8.h"

namespace pipward::operation {

std::span<const Word<AdoptTable>> words(AdoptTable) {
    static constexpr std::array table{
        Word<AdoptTable>{AdoptTable::trees, "trees", "points, a tree each"},
        Word<AdoptTable>{AdoptTable::accessions, "accessions", "varieties and selections, without a place"},
        Word<AdoptTable>{AdoptTable::rows, "rows", "lines, a tree row each"},
        Word<AdoptTable>{AdoptTable::blocks, "blocks", "areas, a block each"},
    };
    return table;
}

std::string AdoptRow::text(const std::string& column) const {
    const auto cell = cells.find(column);
    return cell == cells.end() ? std::string{} : to_text(cell->second);
}

std::string Adoption::key() const {
    return table == "tree" ? "label" : "name";
}

std::string Adoption::name_of(const AdoptRow& row) const {
    constexpr std::size_t enough = 40;
    const auto name = row.text(key());
    return name.empty() ? row.feature : fmt::format("{} ({})", row.feature, one_line(name, enough));
}

void Adoption::complain(Level level, AdoptRow& row, std::string field, std::string value, Sentence message,
                        Sentence remedy) {
    if (level == Level::error && row.fate != Fate::refused) {
        row.fate = Fate::refused;
        row.why = message;
    }
    findings.push_back({level, layer, name_of(row), std::move(field), std::move(value), std::move(message),
                        std::move(remedy)});
}

void Adoption::complain(AdoptRow& row, Finding finding) {
    if (finding.level == Level::error && row.fate != Fate::refused) {
        row.fate = Fate::refused;
        row.why = finding.message;
    }
    finding.table = layer;
    finding.row = name_of(row);
    findings.push_back(std::move(finding));
}

void Adoption::tell(Level level, std::string field, std::string value, Sentence message, Sentence remedy) {
    findings.push_back(
        {level, layer, {}, std::move(field), std::move(value), std::move(message), std::move(remedy)});
}

}  // namespace pipward::operation
