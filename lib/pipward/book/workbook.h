// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Workbooks of spreadsheets, XLSX and ODS, as the texts of their cells.
namespace pipward::book {

/// A line in which something stands.
struct WorkbookLine {
    int number = 0;                  ///< as the spreadsheet counts them, from 1
    std::vector<std::string> cells;  ///< UTF-8, from the first column on; empty ones between are kept
};

/// One sheet of a workbook.
struct WorkbookSheet {
    std::string name;                 ///< on its tab
    std::vector<WorkbookLine> lines;  ///< those in which something stands
};

/// Every sheet in which something stands. Nothing where the bytes are no such workbook. Days come as
/// 2026-05-12 or 2026/05/12, formulas as what they last gave.
std::optional<std::vector<WorkbookSheet>> read_workbook(std::string_view bytes);

}  // namespace pipward::book
