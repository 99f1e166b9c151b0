// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <stdexcept>
#include <string>

#include "paths.h"
#include "pipward/operation/operation.h"

/// Helpers of the walks: a scratch copy of the sample, an operation run, a table's cells by name.
namespace pipward::testing {

/// A folder of its own, gone with the object.
class Scratch {
  public:
    Scratch()
        : folder_(std::filesystem::temp_directory_path() /
                  ("pipward-walk-" +
                   std::string(::testing::UnitTest::GetInstance()->current_test_info()->name()))) {
        std::filesystem::remove_all(folder_);
        std::filesystem::create_directories(folder_);
    }
    ~Scratch() { std::filesystem::remove_all(folder_); }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;

    std::string path(const std::string& name) const { return (folder_ / name).string(); }
    std::string sample() const {
        std::filesystem::copy_file(sample_book(), folder_ / "larkfold.gpkg",
                                   std::filesystem::copy_options::overwrite_existing);
        return path("larkfold.gpkg");
    }

  private:
    std::filesystem::path folder_;
};

inline operation::Outcome run(const std::string& id, const operation::Form& form) {
    const auto* operation = operation::find_operation(id);
    if (operation == nullptr) {
        throw std::runtime_error("no operation " + id);
    }
    return operation->run(form, operation::Run{});
}

inline const Table& table_of(const operation::Outcome& outcome, const std::string& name) {
    const auto found =
        std::ranges::find_if(outcome.tables, [&](const Table& table) { return table.shape.name == name; });
    if (found == outcome.tables.end()) {
        throw std::runtime_error("no table " + name);
    }
    return *found;
}

inline const Cell& cell_of(const Table& table, const Row& row, const std::string& column) {
    const auto found = std::ranges::find(table.shape.columns, column, &Column::name);
    if (found == table.shape.columns.end()) {
        throw std::runtime_error("no column " + column);
    }
    return row.cells[static_cast<std::size_t>(found - table.shape.columns.begin())];
}

inline std::string text_of(const Table& table, const Row& row, const std::string& column) {
    return to_text(cell_of(table, row, column));
}

inline double number_of(const Table& table, const Row& row, const std::string& column) {
    const auto& cell = cell_of(table, row, column);
    if (const auto* whole = std::get_if<std::int64_t>(&cell)) {
        return static_cast<double>(*whole);
    }
    return std::get<double>(cell);
}

}  // namespace pipward::testing
