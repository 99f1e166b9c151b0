// SPDX-License-Identifier: MIT
#include "pipward/book/upgrade.h"

#include <fmt/format.h>

#include <filesystem>

#include "pipward/book/detail/schema_version.h"
#include "pipward/book/detail/transaction.h"

namespace pipward::book {
namespace {

namespace fs = std::filesystem;

int version_in(detail::Session& session, const std::string& location) {
    const auto version = detail::version_of(session);
    if (!version || *version > detail::our_version) {
        detail::expect_our_version(session, location);
    }
    return version.value_or(detail::our_version);
}

std::string copy_name(const std::string& location, int version) {
    const fs::path path(location);
    return (path.parent_path() / fmt::format("{}-version-{}.gpkg", path.stem().string(), version)).string();
}

void keep_copy(const std::string& location, const std::string& copy) {
    std::error_code trouble;
    if (!fs::copy_file(location, copy, trouble)) {
        throw detail::access_error(copy, say("No copy of the book can be made here."),
                                   say("Move what lies there, and check that there is room."));
    }
}

}  // namespace

BookUpgrade needed_upgrade(const std::string& location) {
    BookUpgrade upgrade{0, detail::our_version, {}};
    auto session = detail::open_session(location, detail::Purpose::reading);
    upgrade.from = version_in(session, location);
    if (upgrade.from < upgrade.to && !detail::is_server(location)) {
        upgrade.copy = copy_name(location, upgrade.from);
    }
    return upgrade;
}

BookUpgrade upgrade_book(const std::string& location, Patience patience) {
    const auto upgrade = needed_upgrade(location);
    if (upgrade.from == upgrade.to) {
        return upgrade;
    }
    if (!upgrade.copy.empty()) {
        keep_copy(location, upgrade.copy);
    }
    detail::change_any_book(location, patience, [](detail::Session& session) {
        detail::upgrade(session, detail::upgrade_steps());
    });
    return upgrade;
}

}  // namespace pipward::book
