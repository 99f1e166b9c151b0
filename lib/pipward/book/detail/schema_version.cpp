// SPDX-License-Identifier: MIT
#include "pipward/book/detail/schema_version.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdlib>

#include "pipward/book/schema.h"

namespace pipward::book::detail {
namespace {

bool table_exists(Session& session, std::string_view name) {
    const auto sql = session.server ? "SELECT 1 FROM information_schema.tables WHERE table_schema = ANY "
                                      "(current_schemas(false)) AND table_name = {}"
                                    : "SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = {}";
    return !query(session, fmt::format(fmt::runtime(sql), quoted_text(name))).empty();
}

bool is_a_book(Session& session) {
    return std::ranges::any_of(book_tables(),
                               [&](const BookTable& table) { return table_exists(session, table.name); });
}

bool has_step_from(int version) {
    const auto steps = upgrade_steps();
    return std::ranges::find(steps, version, &UpgradeStep::from) != steps.end();
}

Error of_another_version(const std::string& location, int version) {
    return version > our_version
               ? access_error(location,
                              say("This book is of schema version {}; this program knows version {}.",
                                  version, our_version),
                              say("Use a newer release of Pipward."))
               : access_error(
                     location,
                     say("This book is of schema version {}; this program needs version {}.", version,
                         our_version),
                     has_step_from(version)
                         ? say("Upgrade it with book-upgrade; a copy is made first.")
                         : say("Use the release of Pipward that made it, or copy its rows into a new book."));
}

}  // namespace

std::optional<int> version_of(Session& session) {
    if (!table_exists(session, version_table)) {
        return std::nullopt;
    }
    const auto rows = query(session, fmt::format("SELECT MAX(version) FROM {}", version_table));
    if (rows.empty() || rows.front().empty() || !rows.front().front()) {
        return std::nullopt;
    }
    return std::atoi(rows.front().front()->c_str());
}

void write_version(Session& session, int version) {
    run_sql(session, fmt::format("CREATE TABLE IF NOT EXISTS {} (version INTEGER NOT NULL PRIMARY KEY)",
                                 version_table));
    run_sql(session, fmt::format("DELETE FROM {}", version_table));
    run_sql(session, fmt::format("INSERT INTO {} (version) VALUES ({})", version_table, version));
}

void expect_our_version(Session& session, const std::string& location) {
    const auto version = version_of(session);
    if (!version && is_a_book(session)) {
        throw access_error(location, say("This book does not say which version of the schema it is of."),
                           say("Make a new book with book-new and copy its rows into it."));
    }
    if (version && *version != our_version) {
        throw of_another_version(location, *version);
    }
}

std::span<const UpgradeStep> upgrade_steps() {
    static const std::array steps{UpgradeStep{1, upgrade_from_1}};
    return steps;
}

void upgrade(Session& session, std::span<const UpgradeStep> steps, int wanted) {
    for (auto version = version_of(session); version && *version < wanted; version = version_of(session)) {
        const auto step = std::ranges::find(steps, *version, &UpgradeStep::from);
        if (step == steps.end()) {
            throw OgrTrouble(fmt::format("there is no step from schema version {} on", *version));
        }
        step->run(session);
        write_version(session, *version + 1);
    }
}

}  // namespace pipward::book::detail
