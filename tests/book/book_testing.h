// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>
#include <string>
#include <vector>

#include "bad-books/raw_book.h"
#include "days.h"
#include "pipward/book/book.h"

/// Helpers shared by the tests of the book.
namespace pipward::testing {

/// A folder of its own for each test, gone afterwards.
class BookTest : public ::testing::Test {
  protected:
    void SetUp() override {
        std::string form = (std::filesystem::temp_directory_path() / "pipward-XXXXXX").string();
        folder = mkdtemp(form.data());
        std::filesystem::permissions(folder, std::filesystem::perms(0755));
        book = (folder / "book.gpkg").string();
    }
    void TearDown() override { std::filesystem::remove_all(folder); }

    void make_book() { book::create_book(book, "EPSG:32632"); }

    std::vector<std::string> files() const {
        std::vector<std::string> names;
        for (const auto& entry : std::filesystem::directory_iterator(folder)) {
            names.push_back(entry.path().filename().string());
        }
        std::ranges::sort(names);
        return names;
    }

    std::filesystem::path folder;
    std::string book;
};

inline std::string bytes_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

inline Cell whole(std::int64_t number) {
    return number;
}
inline Cell text(const char* words) {
    return std::string(words);
}
inline const Cell unknown{};

inline Table rows_of(const std::string& table, const std::vector<std::string>& columns) {
    Table rows;
    rows.shape.name = table;
    for (const auto& column : columns) {
        rows.shape.columns.push_back(
            {.name = column, .type = {}, .unit = {}, .label = {}, .description = {}});
    }
    return rows;
}

inline void add(const std::string& book, const std::string& table, const std::vector<std::string>& columns,
                const std::vector<Row>& rows) {
    auto made = rows_of(table, columns);
    made.rows = rows;
    book::append_rows(book, made);
}

inline MapPoint at(double x, double y) {
    return {x, y, std::nullopt};
}

/// A finding's place, and words that its sentences hold.
struct WantedFinding {
    Level level = Level::error;
    std::string table;
    std::string row;
    std::string field;
    std::string value;
    std::string message;
    std::string remedy;
};

/// Whether one of the findings is about that place and says that word.
inline ::testing::AssertionResult has(const Findings& findings, const WantedFinding& wanted) {
    std::ostringstream all;
    for (const auto& finding : findings) {
        if (finding.level == wanted.level && finding.table == wanted.table && finding.row == wanted.row &&
            finding.field == wanted.field && finding.value == wanted.value &&
            finding.message.text().find(wanted.message) != std::string::npos &&
            finding.remedy.text().find(wanted.remedy) != std::string::npos) {
            return ::testing::AssertionSuccess();
        }
        all << "\n  " << to_text(finding);
    }
    return ::testing::AssertionFailure()
           << "no finding of " << wanted.table << " " << wanted.row << ", " << wanted.field << " = "
           << wanted.value << " that says \"" << wanted.message << "\" and \"" << wanted.remedy
           << "\" among:" << all.str();
}

/// The error that `work` throws; a test failure when it throws none.
template <class Work>
Error error_of(const Work& work) {
    try {
        work();
    } catch (const Error& error) {
        return error;
    }
    ADD_FAILURE() << "nothing was thrown";
    return {Trouble::usage, Finding{}};
}

/// Does something as an ordinary user, whom permissions bind; root they do not.
template <class Work>
void as_ordinary_user(const Work& work) {
    const bool root = geteuid() == 0;
    constexpr uid_t nobody = 65534;
    if (root) {
        ASSERT_EQ(seteuid(nobody), 0);
    }
    work();
    if (root) {
        ASSERT_EQ(seteuid(0), 0);
    }
}

inline bool has_validator() {
    return std::system("/usr/bin/python3 -c 'import osgeo_utils.samples.validate_gpkg' >/dev/null 2>&1") == 0;
}

/// What GDAL's GeoPackage validator complains of; empty when the file conforms.
inline std::string complaints_about(const std::string& path) {
    const auto report = path + ".report";
    const auto command =
        "/usr/bin/python3 -m osgeo_utils.samples.validate_gpkg -k '" + path + "' >'" + report + "' 2>&1";
    const int code = std::system(command.c_str());
    const auto words = bytes_of(report);
    std::filesystem::remove(report);
    return code == 0 ? std::string{} : "failed: " + words;
}

}  // namespace pipward::testing
