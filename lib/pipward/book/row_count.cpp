// SPDX-License-Identifier: MIT
#include "pipward/book/detail/row_count.h"

#include <cstdlib>

namespace pipward::book::detail {

std::int64_t rows_in(Session& session, const std::string& table) {
    // Written so that OGR does not answer it by itself, from what the file has registered.
    const auto rows = query(session, "SELECT 0 + COUNT(*) AS number FROM " + quoted_name(table));
    return std::strtoll(rows.at(0).at(0).value_or("0").c_str(), nullptr, 10);
}

Error swallowed(const std::string& location, const std::string& table) {
    return access_error(
        location,
        say("The table {} does not hold what was written to it: a trigger or a constraint that is not "
            "of this program drops or replaces rows.",
            table),
        say("Remove it, or copy the tables into a new book. Nothing was changed."));
}

void expect_rows(Session& session, const std::string& location, const std::string& table,
                 std::int64_t wanted) {
    if (rows_in(session, table) != wanted) {
        throw swallowed(location, table);
    }
}

}  // namespace pipward::book::detail
