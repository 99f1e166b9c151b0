// SPDX-License-Identifier: MIT
#include "pipward/book/detail/book_shelf.h"

#include <fmt/format.h>
#include <ogrsf_frmts.h>
#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <memory>

#include "pipward/book/detail/book_crs.h"
#include "pipward/book/detail/read_table.h"
#include "pipward/book/records.h"

namespace pipward::book::detail {
namespace {

constexpr std::size_t most_rows = 40000;  // to read more than these takes as long as one has patience for

/// A statement of OGR's own connection, and so of its transaction: OGR would make a feature of each of a
/// million names.
class Statement {
  public:
    Statement(Session& session, const std::string& sql)
        : database_(static_cast<sqlite3*>(session.dataset->GetInternalHandle("SQLITE_HANDLE"))) {
        sqlite3_stmt* made = nullptr;
        expect(database_ != nullptr &&
               sqlite3_prepare_v2(database_, sql.c_str(), static_cast<int>(sql.size()), &made, nullptr) ==
                   SQLITE_OK);
        statement_.reset(made);
    }

    bool next() {
        const int state = sqlite3_step(statement_.get());
        expect(state == SQLITE_ROW || state == SQLITE_DONE);
        return state == SQLITE_ROW;
    }
    std::int64_t number() const { return sqlite3_column_int64(statement_.get(), 0); }
    std::string_view text() const {
        const auto* text = reinterpret_cast<const char*>(sqlite3_column_text(statement_.get(), 0));
        return text == nullptr
                   ? std::string_view{}
                   : std::string_view(text,
                                      static_cast<std::size_t>(sqlite3_column_bytes(statement_.get(), 0)));
    }

  private:
    struct Closer {
        void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
    };

    void expect(bool fine) const {
        if (!fine) {
            throw OgrTrouble(database_ == nullptr ? "no SQLite" : sqlite3_errmsg(database_));
        }
    }

    sqlite3* database_;
    std::unique_ptr<sqlite3_stmt, Closer> statement_;
};

std::string condition(const Held& held) {
    const auto column = quoted_name(held.column);
    if (held.unknown) {
        return column + " IS NULL";
    }
    if (held.range) {
        return fmt::format("{0} >= {1} AND {0} < {2}", column, quoted_text(held.range->first),
                           quoted_text(held.range->second));
    }
    std::string values;
    for (const auto& value : held.values) {
        values += (values.empty() ? "" : ", ") + quoted_text(value);
    }
    return fmt::format("{} IN ({})", column, values);
}

std::string condition(std::span<const Held> all_of) {
    std::string all;
    for (const auto& held : all_of) {
        all += (all.empty() ? "" : " AND ") + condition(held);
    }
    return all;
}

// A column with few names at many trees: from each name the index leads to the next.
bool has_few_names(std::string_view table, std::string_view column) {
    constexpr std::array columns{"block", "row", "rootstock"};
    return table == "tree" && std::ranges::find(columns, column) != columns.end();
}

std::string names_sql(std::string_view table, std::string_view column) {
    const auto from = quoted_name(table);
    const auto name = quoted_name(column);
    if (has_few_names(table, column)) {
        return fmt::format(
            "WITH RECURSIVE one(name) AS (SELECT min({1}) FROM {0} UNION ALL SELECT (SELECT min({1}) FROM "
            "{0} WHERE {1} > name) FROM one WHERE name IS NOT NULL) SELECT name FROM one WHERE name IS NOT "
            "NULL",
            from, name);
    }
    return fmt::format("SELECT {2} {1} FROM {0} WHERE {1} IS NOT NULL ORDER BY {1}", from, name,
                       column == "label" ? "" : "DISTINCT");
}

}  // namespace

BookShelf::BookShelf(Session& session) : session_(session) {
    BookReading reading;
    find_crs(session, book_tables(), reading);
    taken_.crs = reading.orchard.crs;
    findings_ = std::move(reading.findings);
}

// A book may lack columns; what they would hold is unknown.
bool BookShelf::has_column(std::string_view table, std::string_view column) {
    auto* layer = session_.dataset->GetLayerByName(std::string(table).c_str());
    return layer != nullptr && layer->GetLayerDefn()->GetFieldIndex(std::string(column).c_str()) >= 0;
}

void BookShelf::each_name(std::string_view table, std::string_view column,
                          const std::function<void(std::string_view)>& use) {
    if (!has_column(table, column)) {
        return;
    }
    Statement names(session_, names_sql(table, column));
    while (names.next()) {
        use(names.text());
    }
}

std::size_t BookShelf::want(std::string_view table, const std::string& sql) {
    std::size_t rows = 0;
    auto& known = known_[std::string(table)];
    Statement numbers(session_, sql);
    for (; !overfull_ && numbers.next(); ++rows) {
        if (known.insert(numbers.number()).second) {
            wanted_[std::string(table)].insert(numbers.number());
            overfull_ = ++count_ > most_rows;
        }
    }
    return rows;
}

std::size_t BookShelf::take(std::string_view table, std::span<const Held> all_of, std::size_t most) {
    for (const auto& held : all_of) {
        if (overfull_ || !has_column(table, held.column) ||
            (held.values.empty() && !held.range && !held.unknown)) {
            return 0;
        }
    }
    const auto limit = most == no_limit ? std::string{} : fmt::format(" LIMIT {}", most);
    return want(table, fmt::format("SELECT rowid FROM {}{}{}{}", quoted_name(table),
                                   all_of.empty() ? "" : " WHERE ", condition(all_of), limit));
}

std::size_t BookShelf::take_first_trees(std::span<const Held> all_of, Day as_of, std::size_t most) {
    const auto day = quoted_text(to_iso(as_of));
    const auto standing = fmt::format(
        "(\"planted_on\" IS NULL OR \"planted_on\" <= {0}) AND (\"removed_on\" IS NULL OR \"removed_on\" > "
        "{0})",
        day);
    const auto first = [&](const std::string& stand, std::size_t number) {
        return overfull_ ? 0
                         : want("tree", fmt::format("SELECT rowid FROM \"tree\" WHERE {} AND {} ORDER BY "
                                                    "\"label\" LIMIT {}",
                                                    condition(all_of), stand, number));
    };
    const auto stand = first(standing, most);
    return stand < most ? stand + first("NOT (" + standing + ")", most - stand) : stand;
}

std::size_t BookShelf::take_trees_within(const MapPoint& low, const MapPoint& high) {
    if (!has_table(session_, "rtree_tree_geom")) {
        overfull_ = true;
        return 0;
    }
    return want("tree", fmt::format("SELECT id FROM rtree_tree_geom WHERE maxx >= {} AND minx <= {} AND maxy "
                                    ">= {} AND miny <= {}",
                                    low.x, high.x, low.y, high.y));
}

void BookShelf::read_wanted(const BookTable& table, const Numbers& numbers) {
    constexpr std::size_t at_once = 1000;
    auto* layer = session_.dataset->GetLayerByName(std::string(table.name).c_str());
    const auto number = quoted_name(layer == nullptr ? "fid" : layer->GetFIDColumn());
    auto& rows = rows_[std::string(table.name)];
    for (auto at = numbers.begin(); at != numbers.end();) {
        std::string list;
        for (std::size_t i = 0; i < at_once && at != numbers.end(); ++i, ++at) {
            list += fmt::format("{}{}", list.empty() ? "" : ", ", *at);
        }
        read_rows(session_, table, fmt::format("{} IN ({})", number, list), findings_,
                  [&](const BookRow& row) { rows.emplace(row.fid, row); });
    }
}

void BookShelf::read_wanted() {
    for (const auto& [table, numbers] : wanted_) {
        read_wanted(*find_book_table(table), numbers);
    }
    wanted_.clear();
}

const Orchard& BookShelf::taken() {
    if (wanted_.empty()) {
        return taken_;
    }
    read_wanted();
    Orchard all;
    all.crs = taken_.crs;
    for (const auto& [table, rows] : rows_) {
        for (const auto& [number, row] : rows) {
            add_record(all, *find_book_table(table), row);
        }
    }
    taken_ = std::move(all);
    return taken_;
}

BookReading BookShelf::reading() {
    taken();
    return {std::move(taken_), std::move(findings_)};
}

}  // namespace pipward::book::detail
