// SPDX-License-Identifier: MIT
#include "pipward/book/detail/transaction.h"

#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include <algorithm>
#include <thread>

#include "pipward/book/detail/schema_version.h"
#include "pipward/book/detail/triggers.h"

namespace pipward::book {
namespace {

using Clock = std::chrono::steady_clock;
using std::chrono::milliseconds;

constexpr milliseconds pause_between_tries{100};

milliseconds left_until(Clock::time_point deadline) {
    return std::max(milliseconds{0}, std::chrono::duration_cast<milliseconds>(deadline - Clock::now()));
}

// A GeoPackage's transaction begins without a lock and then fails at once instead of waiting for one. A first
// statement that writes nothing takes the lock, and does wait.
void take_lock(detail::Session& session, milliseconds wait) {
    if (!session.server) {
        detail::run_sql(session, fmt::format("PRAGMA busy_timeout = {}", wait.count()));
    }
    const auto before = session.messages->failures();
    detail::expect_success(session, before, session.dataset->StartTransaction() != OGRERR_NONE,
                           "StartTransaction");
    if (!session.server) {
        detail::run_sql(session, "UPDATE gpkg_contents SET identifier = identifier WHERE 0");
    }
}

// Sizes, extents and dates of change belong into the same transaction as the rows.
void flush_layers(detail::Session& session) {
    const auto before = session.messages->failures();
    for (auto* layer : session.dataset->GetLayers()) {
        detail::expect_success(session, before, layer->SyncToDisk() != OGRERR_NONE, "SyncToDisk");
    }
}

void commit(detail::Session& session) {
    flush_layers(session);
    const auto before = session.messages->failures();
    detail::expect_success(session, before, session.dataset->CommitTransaction() != OGRERR_NONE,
                           "CommitTransaction");
}

void roll_back(detail::Session& session) {
    session.dataset->RollbackTransaction();
    session.dataset.reset();
}

void change_once(const std::string& location, milliseconds wait,
                 const std::function<void(detail::Session&)>& work) {
    auto session = detail::open_session(location, detail::Purpose::writing);
    try {
        take_lock(session, wait);
        work(session);
        commit(session);
    } catch (...) {
        roll_back(session);
        throw;
    }
}

Error not_written(const std::string& location, const detail::OgrTrouble& trouble, Patience patience) {
    if (trouble.locked()) {
        return detail::access_error(
            location,
            say("Another program is writing this book and did not finish within {:g} s.",
                static_cast<double>(patience.count()) / 1000.0),
            say("Save or cancel the edits there, then try again. Nothing was changed."));
    }
    const std::string said = trouble.what();
    if (said.find("readonly") != std::string::npos || said.find("read-only") != std::string::npos ||
        said.find("unable to open database file") != std::string::npos) {
        return detail::may_not_write(location);
    }
    return detail::access_error(location, say("The book could not be written: {}.", said),
                                say("Nothing was changed. Check that there is room on the disk and that the "
                                    "file is intact (book-check)."));
}

Error not_read(const std::string& location, const detail::OgrTrouble& trouble) {
    if (trouble.locked()) {
        return detail::access_error(location, say("Another program is writing this book."),
                                    say("Try again in a moment."));
    }
    return detail::access_error(location, say("The book could not be read: {}.", trouble.what()),
                                say("If the file is damaged, restore it from a backup."));
}

// Tries again while the trouble is a lock and time is left; then `give_up` makes the Error.
template <class Try, class GiveUp>
void patiently(Patience patience, const Try& attempt, const GiveUp& give_up) {
    const auto deadline = Clock::now() + patience;
    for (;;) {
        try {
            return attempt(left_until(deadline));
        } catch (const detail::OgrTrouble& trouble) {
            if (!trouble.locked() || Clock::now() + pause_between_tries >= deadline) {
                throw give_up(trouble);
            }
        }
        std::this_thread::sleep_for(pause_between_tries);
    }
}

}  // namespace

void detail::change_book(const std::string& location, const std::vector<std::string>& tables,
                         Patience patience, const std::function<void(detail::Session&)>& work) {
    change_any_book(location, patience, [&](detail::Session& session) {
        detail::expect_our_version(session, location);
        detail::refuse_foreign_triggers(session, location, tables);
        work(session);
    });
}

void detail::change_any_book(const std::string& location, Patience patience,
                             const std::function<void(detail::Session&)>& work) {
    patiently(
        patience, [&](milliseconds left) { change_once(location, left, work); },
        [&](const detail::OgrTrouble& trouble) { return not_written(location, trouble, patience); });
}

void detail::look_into_book(const std::string& location, Patience patience,
                            const std::function<void(detail::Session&)>& work) {
    patiently(
        patience,
        [&](milliseconds) {
            auto session = detail::open_session(location, detail::Purpose::reading);
            detail::expect_our_version(session, location);
            work(session);
        },
        [&](const detail::OgrTrouble& trouble) { return not_read(location, trouble); });
}

}  // namespace pipward::book
