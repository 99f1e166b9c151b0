// SPDX-License-Identifier: MIT
#pragma once

#include <sqlite3.h>

#include <stdexcept>
#include <string>
#include <vector>

/// A book opened beside OGR, by the database library alone, to put into it what no honest program would.
namespace pipward::testing {

class RawBook {
  public:
    explicit RawBook(const std::string& path) {
        if (sqlite3_open(path.c_str(), &database_) != SQLITE_OK) {
            throw std::runtime_error("cannot open " + path);
        }
        // Feature tables have triggers that call these; answering "empty" keeps the spatial index out of it.
        sqlite3_create_function(database_, "ST_IsEmpty", 1, SQLITE_UTF8, nullptr, always_true, nullptr,
                                nullptr);
        for (const auto* name : {"ST_MinX", "ST_MaxX", "ST_MinY", "ST_MaxY"}) {
            sqlite3_create_function(database_, name, 1, SQLITE_UTF8, nullptr, always_null, nullptr, nullptr);
        }
    }
    ~RawBook() { sqlite3_close(database_); }
    RawBook(const RawBook&) = delete;
    RawBook& operator=(const RawBook&) = delete;

    void run(const std::string& sql) {
        char* words = nullptr;
        if (sqlite3_exec(database_, sql.c_str(), nullptr, nullptr, &words) != SQLITE_OK) {
            const std::string said = words == nullptr ? "failed" : words;
            sqlite3_free(words);
            throw std::runtime_error(said + ": " + sql);
        }
    }

    /// The first column of a query, as text.
    std::vector<std::string> texts(const std::string& sql) {
        std::vector<std::string> found;
        const auto keep = [](void* list, int, char** values, char**) {
            static_cast<std::vector<std::string>*>(list)->emplace_back(values[0] == nullptr ? "" : values[0]);
            return 0;
        };
        sqlite3_exec(database_, sql.c_str(), keep, &found, nullptr);
        return found;
    }
    std::string text(const std::string& sql) {
        const auto found = texts(sql);
        return found.empty() ? std::string{} : found.front();
    }

  private:
    static void always_true(sqlite3_context* context, int, sqlite3_value**) {
        sqlite3_result_int(context, 1);
    }
    static void always_null(sqlite3_context* context, int, sqlite3_value**) { sqlite3_result_null(context); }

    sqlite3* database_ = nullptr;
};

}  // namespace pipward::testing
