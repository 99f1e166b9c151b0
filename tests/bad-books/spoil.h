// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <fstream>
#include <string>

#include "bad-books/raw_book.h"

/// Ways to spoil a good book. Each takes the path of a book that is closed.
namespace pipward::testing {

/// The first `size` bytes only, as after a copy that was broken off.
inline void cut_off(const std::string& path, std::streamoff size) {
    std::ifstream in(path, std::ios::binary);
    std::string bytes(static_cast<std::size_t>(size), '\0');
    in.read(bytes.data(), size);
    bytes.resize(static_cast<std::size_t>(in.gcount()));
    in.close();
    std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
}

/// Every byte changed by a fixed pattern, as encryption would.
inline void encrypt(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    std::string bytes{std::istreambuf_iterator<char>(in), {}};
    in.close();
    std::uint32_t state = 12345;
    for (auto& byte : bytes) {
        state = state * 1664525U + 1013904223U;
        byte = static_cast<char>(byte ^ static_cast<char>(state >> 24U));
    }
    std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
}

/// The last page that holds rows of `table` zeroed, as a bad sector would.
inline void zero_last_leaf(const std::string& path, const std::string& table) {
    std::string page;
    {
        RawBook raw(path);
        page = raw.text("SELECT max(pageno) FROM dbstat WHERE name = '" + table + "' AND pagetype = 'leaf'");
    }
    constexpr std::streamoff page_size = 4096;
    std::fstream file(path, std::ios::binary | std::ios::in | std::ios::out);
    file.seekp((std::stoll(page) - 1) * page_size);
    file << std::string(page_size, '\0');
}

/// A table replaced by one of another make with the same name, still registered.
inline void replace_table(const std::string& path, const std::string& table, const std::string& create) {
    RawBook raw(path);
    raw.run("DROP TABLE " + table);
    raw.run(create);
}

}  // namespace pipward::testing
