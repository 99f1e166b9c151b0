// SPDX-License-Identifier: MIT
#pragma once

#include <string>

/// Where the files lie that tests read. Only paths.cpp knows the project's folder, so that every other object
/// is the same in each copy of the project and a compiler cache serves them all.
namespace pipward::testing {

/// A path below the project's folder: project_file("docs/book.md").
std::string project_file(const std::string& path);
/// tests/oracles/NAME
std::string oracle_file(const std::string& name);
/// tests/regression/NAME
std::string regression_file(const std::string& name);
/// The made-up orchard's book.
std::string sample_book();
/// A fixture that lies beside the project; a test that needs it is skipped where it is absent.
std::string shared_file(const std::string& path);

}  // namespace pipward::testing
