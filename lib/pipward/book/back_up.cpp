// SPDX-License-Identifier: MIT
#include "pipward/book/back_up.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/book/detail/file_check.h"
#include "pipward/book/detail/new_file.h"
#include "pipward/book/detail/no_network.h"
#include "pipward/book/detail/ogr_session.h"
#include "pipward/book/detail/row_count.h"

namespace pipward::book {
namespace {

std::vector<BackedUpTable> tables_in(detail::Session& session) {
    std::vector<BackedUpTable> tables;
    for (const auto& row :
         detail::query(session, "SELECT table_name FROM gpkg_contents ORDER BY table_name")) {
        const auto name = row.at(0).value_or("");
        tables.push_back({name, detail::rows_in(session, name)});
    }
    return tables;
}

Error damaged(const std::string& location, const Sentence& what) {
    return detail::access_error(
        location, what,
        say("Copy the file as it is, together with its \"-wal\" or \"-journal\", and restore the last good "
            "backup."));
}

// The copy is made from one state of the book in one statement, without a lock that others would wait for.
// Returns what is wrong with the file all the same: a spatial index can be mended later.
Findings copy(const std::string& location, const std::string& made) {
    auto session = detail::open_session(location, detail::Purpose::reading);
    detail::run_sql(session, fmt::format("PRAGMA busy_timeout = {}", default_patience.count()));
    auto findings = detail::check_file(session);
    const bool whole =
        std::ranges::none_of(findings, [](const Finding& finding) { return finding.table.empty(); });
    if (!whole) {
        throw damaged(location, say("The file is damaged, and so would be its copy."));
    }
    detail::run_sql(session, "VACUUM INTO " + detail::quoted_text(made));
    return findings;
}

std::vector<BackedUpTable> checked(const std::string& location, const std::string& made,
                                   const Findings& before) {
    auto session = detail::open_session(made, detail::Purpose::reading);
    if (detail::check_file(session).size() > before.size()) {
        throw damaged(location, say("The copy does not pass the check of the file, and is not kept."));
    }
    return tables_in(session);
}

}  // namespace

std::vector<BackedUpTable> back_up(const BookAt& book, const std::string& to) {
    const auto& location = book.location;
    if (is_on_server(location)) {
        throw Error(
            Trouble::usage,
            Finding{.level = Level::error,
                    .table = shown_location(location),
                    .row = {},
                    .field = "book",
                    .value = {},
                    .message = say("A book on a server is backed up by the server."),
                    .remedy = say("Ask whoever keeps it, or dump its schema with the server's own tools.")});
    }
    detail::refuse_what_is_not_at_hand(to);
    std::vector<BackedUpTable> tables;
    detail::make_whole_file(to, "to", [&](const std::string& made) {
        const auto findings = copy(location, made);
        tables = checked(location, made, findings);
    });
    return tables;
}

}  // namespace pipward::book
