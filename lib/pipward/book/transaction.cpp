// SPDX-License-Identifier: MIT
#include "pipward/book/detail/transaction.h"

#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include <algorithm>
#include <iterator>
#include <stdexcept>
#include <thread>

#include "pipward/book/detail/file_check.h"
#include "pipward/book/detail/lookup_indexes.h"
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

// Writers of one book on a server follow each other. The lock must come before the transaction: its snapshot
// would otherwise be of a time before the wait.
void take_lock_on_server(detail::Session& session, milliseconds wait) {
    detail::run_sql(session, fmt::format("SET lock_timeout = {}", std::max<long>(1, wait.count())));
    detail::query(session, "SELECT pg_advisory_lock(hashtext('orchard book ' || current_schema()))::text");
}

void begin(detail::Session& session) {
    const auto before = session.messages->failures();
    detail::expect_success(session, before, session.dataset->StartTransaction() != OGRERR_NONE,
                           "StartTransaction");
}

// A GeoPackage's transaction begins without a lock and then fails at once instead of waiting for one. A first
// statement that writes nothing takes the lock, and does wait.
void take_lock(detail::Session& session, milliseconds wait) {
    if (session.server) {
        take_lock_on_server(session, wait);
        begin(session);
        detail::run_sql(session, "SET TRANSACTION ISOLATION LEVEL REPEATABLE READ");
        return;
    }
    detail::run_sql(session, fmt::format("PRAGMA busy_timeout = {}", wait.count()));
    begin(session);
    detail::run_sql(session, "UPDATE gpkg_contents SET identifier = identifier WHERE 0");
}

// Every query of the session then sees one state of the book.
void begin_snapshot(detail::Session& session) {
    begin(session);
    if (session.server) {
        detail::run_sql(session, "SET TRANSACTION ISOLATION LEVEL REPEATABLE READ, READ ONLY");
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

// By the file's own count: a change that changes nothing is to leave it as it was, byte by byte.
std::string changes_so_far(detail::Session& session) {
    return session.server
               ? std::string{}
               : detail::query(session, "SELECT total_changes() AS number").at(0).at(0).value_or("");
}

bool change_once(const std::string& location, milliseconds wait,
                 const std::function<void(detail::Session&, bool checked)>& work, bool any_table = false) {
    auto session = detail::open_session(location, detail::Purpose::writing);
    try {
        take_lock(session, wait);
        const bool check_all = any_table || !detail::is_large_file(session);
        if (check_all) {
            detail::refuse_damaged_file(session, location);
        }
        const auto before = changes_so_far(session);
        work(session, check_all);
        if (!session.server && changes_so_far(session) == before) {
            roll_back(session);
            return false;
        }
        detail::ensure_lookup_indexes(session);
        commit(session);
        return true;
    } catch (...) {
        roll_back(session);
        throw;
    }
}

void look_once(const std::string& location, const std::function<void(detail::Session&)>& work) {
    auto session = detail::open_session(location, detail::Purpose::reading);
    begin_snapshot(session);
    detail::expect_our_version(session, location);
    work(session);
}

// Lends a session for as long as it lives, however it ends.
class Lending {
  public:
    Lending(detail::Session& session, bool checked) : held_(std::make_shared<detail::HeldBook>()) {
        held_->session = &session;
        held_->large = !checked;
    }
    ~Lending() { held_->session = nullptr; }
    Lending(const Lending&) = delete;
    Lending& operator=(const Lending&) = delete;
    const std::shared_ptr<detail::HeldBook>& held() const { return held_; }

  private:
    std::shared_ptr<detail::HeldBook> held_;
};

detail::Session& session_of(const BookAt& book) {
    if (book.held->session == nullptr) {
        throw std::logic_error("a book is used as held after its change has ended");
    }
    return *book.held->session;
}

// Once for each table of a change.
void check_tables(const BookAt& book, const std::vector<std::string>& tables) {
    std::vector<std::string> fresh;
    std::ranges::copy_if(tables, std::back_inserter(fresh), [&](const std::string& table) {
        return book.held->large && book.held->checked.insert(table).second;
    });
    detail::refuse_damaged_tables(session_of(book), book.location, fresh);
}

// The server's words name the table.
Error not_entitled(const std::string& location, const std::string& said) {
    return detail::access_error(
        location, say("This user of the database may not do that: {}.", said),
        say("Ask the owner of the database for the right to read or write that table. Nothing was changed."));
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
    if (said.find("permission denied") != std::string::npos ||
        said.find("must be owner") != std::string::npos) {
        return not_entitled(location, said);
    }
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
    const std::string said = trouble.what();
    if (said.find("permission denied") != std::string::npos) {
        return not_entitled(location, said);
    }
    return detail::access_error(location, say("The book could not be read: {}.", said),
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

void detail::change_any_book(const std::string& location, Patience patience,
                             const std::function<void(detail::Session&)>& work) {
    patiently(
        patience,
        [&](milliseconds left) {
            change_once(
                location, left, [&](detail::Session& session, bool) { work(session); }, true);
        },
        [&](const detail::OgrTrouble& trouble) { return not_written(location, trouble, patience); });
}

BookAt::BookAt() = default;
BookAt::BookAt(std::string location_) : location(std::move(location_)) {}
BookAt::BookAt(const char* location_) : location(location_) {}

bool in_one_change(const BookAt& book, const std::function<void(const BookAt&)>& work, Patience patience) {
    if (book.held) {
        work(book);
        return true;
    }
    bool changed = false;
    patiently(
        patience,
        [&](milliseconds left) {
            changed = change_once(book.location, left, [&](detail::Session& session, bool checked) {
                detail::expect_our_version(session, book.location);
                const Lending lending(session, checked);
                BookAt held(book.location);
                held.held = lending.held();
                work(held);
            });
        },
        [&](const detail::OgrTrouble& trouble) { return not_written(book.location, trouble, patience); });
    return changed;
}

void detail::change_book(const BookAt& book, const std::vector<std::string>& tables, Patience patience,
                         const std::function<void(detail::Session&)>& work) {
    in_one_change(
        book,
        [&](const BookAt& held) {
            auto& session = session_of(held);
            check_tables(held, tables);
            detail::refuse_foreign_triggers(session, book.location, tables);
            work(session);
        },
        patience);
}

void detail::look_into_book(const BookAt& book, Patience patience,
                            const std::function<void(detail::Session&)>& work) {
    if (book.held) {
        work(session_of(book));
        return;
    }
    patiently(
        patience, [&](milliseconds) { look_once(book.location, work); },
        [&](const detail::OgrTrouble& trouble) { return not_read(book.location, trouble); });
}

}  // namespace pipward::book
