// SPDX-License-Identifier: MIT
#include "pipward/operation/reference.h"
#include "asked.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "book/hive_table.h"
#include "paths.h"
#include "pipward/book/schema.h"
#include "pipward/operation/operation.h"
#include "pipward/operation/season/result_tables.h"

namespace pipward::operation {
namespace {

using testing::has;

TEST(Reference, NamesEveryOperationParameterAndResult) {
    const auto text = operation_reference();
    for (const auto& operation : operations()) {
        EXPECT_TRUE(has(text, "`" + operation->about().id + "`"));
        for (const auto& parameter : operation->parameters()) {
            EXPECT_TRUE(has(text, "| `" + parameter.key + "` |")) << parameter.key;
        }
        for (const auto& shape : operation->results()) {
            EXPECT_TRUE(has(text, "Table `" + shape.name + "`")) << shape.name;
        }
    }
}

TEST(Reference, ShowsAnExampleAsACallOfTheConsole) {
    EXPECT_TRUE(has(operation_reference(), "\n    pipward book-new NEW --crs EPSG:25832\n"));
}

TEST(BookReference, NamesEveryTableAndColumn) {
    const auto text = book_reference();
    for (const auto& table : book::book_tables()) {
        EXPECT_TRUE(has(text, "### `" + std::string(table.name) + "`"));
        for (const auto& column : table.columns) {
            EXPECT_TRUE(has(text, "| `" + std::string(column.name) + "` |")) << column.name;
        }
    }
    for (const auto& shape : book_result_shapes()) {
        EXPECT_TRUE(has(text, "### `" + shape.name + "`"));
    }
}

TEST(BookReference, TellsOfATableThatIsBoundAndNothingElse) {
    const auto text = book_reference(testing::with_hives());
    EXPECT_TRUE(
        has(text, "### `hive`: Hives\n\nBees that are brought for the bloom. A row is known by its `name`."));
    EXPECT_TRUE(
        has(text, "| `tree` | text |  |  | The tree that it stands under. Must answer to `tree.label`. |"));
    EXPECT_TRUE(has(text, "Must answer to `accession.name` or `blend.name`. |"));
}

TEST(BookReference, EveryResultTableMayBeWrittenToABook) {
    const auto names = book::result_table_names();
    for (const auto& shape : book_result_shapes()) {
        EXPECT_NE(std::find(names.begin(), names.end(), shape.name), names.end()) << shape.name;
    }
}

void expect_written(const std::string& name, const std::string& text) {
    const auto path = testing::project_file("docs/" + name);
    if (!std::filesystem::exists(path)) {
        GTEST_SKIP() << "docs/" << name << " is not there yet: build the target reference";
    }
    std::ifstream file(path);
    std::ostringstream kept;
    kept << file.rdbuf();
    EXPECT_EQ(kept.str(), text) << "docs/" << name << " is stale: build the target reference";
}

TEST(Reference, EqualsItsPageInDocs) {
    expect_written("operations.md", operation_reference());
}

TEST(BookReference, EqualsItsPageInDocs) {
    expect_written("book.md", book_reference());
}

}  // namespace
}  // namespace pipward::operation
