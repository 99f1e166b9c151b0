// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>

#include "pipward/book/detail/ogr_session.h"

/// Which schema a book is of. GeoPackage keeps PRAGMA user_version for its own (OGC 12-128r18, requirement
/// 2), and a database server has none, so ours stands in a table of its own, a row with one number.
namespace pipward::book::detail {

inline constexpr std::string_view version_table = "book_version";

/// Of the books that this program makes, reads and writes. Counted up with every change of a user's table;
/// such a change brings its step into upgrade_steps().
inline constexpr int our_version = 2;

/// Nothing where the book does not say it.
std::optional<int> version_of(Session& session);

void write_version(Session& session, int version);

/// Throws Error (access) that names the version where a book is of another one, or is a book and says none.
/// What is no orchard book at all passes: reading tells that better.
void expect_our_version(Session& session, const std::string& location);

/// Turns a book of version `from` into one of the version after it.
struct UpgradeStep {
    int from = 0;
    std::function<void(Session& session)> run;
};

/// One for every version that there was before ours, the oldest first.
std::span<const UpgradeStep> upgrade_steps();

// upgrade_from_1.cpp
void upgrade_from_1(Session& session);

/// Runs the steps from the book's version to `wanted`, inside of the caller's transaction. Throws OgrTrouble
/// where a step is missing; the book is then as the caller's transaction leaves it.
void upgrade(Session& session, std::span<const UpgradeStep> steps, int wanted = our_version);

}  // namespace pipward::book::detail
