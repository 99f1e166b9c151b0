// SPDX-License-Identifier: MIT
#pragma once

#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include "paths.h"

namespace pipward::testing {

/// A folder of the test's own with a copy of the sample book in it; gone afterwards.
class SampleCopy {
  public:
    SampleCopy()
        : folder_(std::filesystem::temp_directory_path() / ("pipward-test-" + std::to_string(getpid()))) {
        std::filesystem::remove_all(folder_);
        std::filesystem::create_directories(folder_);
        if (exists()) {
            std::filesystem::copy_file(sample_book(), folder_ / "book.gpkg");
        }
    }
    ~SampleCopy() { std::filesystem::remove_all(folder_); }
    SampleCopy(const SampleCopy&) = delete;
    SampleCopy& operator=(const SampleCopy&) = delete;

    static bool exists() { return std::filesystem::exists(sample_book()); }
    std::string book() const { return path("book.gpkg"); }
    std::string path(const std::string& name) const { return (folder_ / name).string(); }
    std::string put(const std::string& name, const std::string& text) const {
        std::ofstream(path(name), std::ios::binary) << text;
        return path(name);
    }
    std::string bytes() const {
        std::ifstream file(book(), std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }

  private:
    std::filesystem::path folder_;
};

}  // namespace pipward::testing

#define NEED_SAMPLE()                                                                            \
    if (!pipward::testing::SampleCopy::exists()) {                                               \
        GTEST_SKIP() << "The sample book is not there yet: " << pipward::testing::sample_book(); \
    }                                                                                            \
    static_assert(true)
