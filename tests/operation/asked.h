// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <utility>

#include "pipward/operation/operation.h"
#include "pipward/record/table.h"
#include "sample_copy.h"

/// Operations asked of a copy of the sample, and what they answer.
namespace pipward::testing {

inline bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

/// As of the sample's day, where the operation has one and the form does not say.
inline operation::Outcome run(const SampleCopy& sample, const std::string& id, operation::Form form) {
    form["book"] = sample.book();
    const auto* asked = operation::find_operation(id);
    if (std::ranges::find(asked->parameters(), "as-of", &operation::Parameter::key) !=
        asked->parameters().end()) {
        form.emplace("as-of", "2026-03-20");
    }
    return asked->run(form, {});
}

/// What the request is refused for; nothing where it is not. The book must be as it was.
inline Findings complaints(const SampleCopy& sample, const std::string& id, operation::Form form) {
    const auto before = sample.bytes();
    Findings findings;
    try {
        run(sample, id, std::move(form));
    } catch (const Error& error) {
        findings = error.findings();
    }
    EXPECT_EQ(sample.bytes(), before) << "a refused request must not touch the book";
    return findings;
}

/// The last of them as text.
inline std::string complaint(const SampleCopy& sample, const std::string& id, operation::Form form) {
    const auto findings = complaints(sample, id, std::move(form));
    return findings.empty() ? "nothing" : to_text(findings.back());
}

inline Cell cell_of(const Table& table, std::size_t row, const std::string& column) {
    const auto at =
        std::ranges::find(table.shape.columns, column, &Column::name) - table.shape.columns.begin();
    return table.rows.at(row).cells.at(static_cast<std::size_t>(at));
}

/// Its text; "no row" behind the last.
inline std::string value(const Table& table, std::size_t row, const std::string& column) {
    return row < table.rows.size() ? to_text(cell_of(table, row, column)) : "no row";
}

}  // namespace pipward::testing
