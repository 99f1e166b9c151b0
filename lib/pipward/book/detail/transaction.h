// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <set>
#include <string>
#include <vector>

#include "pipward/book/book.h"
#include "pipward/book/detail/ogr_session.h"

/// Inside of the room: the one way in which a book is changed.
namespace pipward::book::detail {

/// The session of a book that in_one_change() holds; null once that is over.
struct HeldBook {
    Session* session = nullptr;
    bool large = false;               ///< a file of which only the tables that are written are checked
    std::set<std::string> checked{};  ///< of those
};

/// Runs `work` in one transaction: wholly done or not at all. While another program holds the lock, the whole
/// is tried again until `patience` is spent. `tables` are those that `work` writes; the book is refused when
/// one of them carries a trigger that is neither the GeoPackage standard's nor OGR's, because it would change
/// rows behind our back. `work` may run more than once. Of a held book the work becomes part of the change
/// that holds it. Throws Error.
void change_book(const BookAt& book, const std::vector<std::string>& tables, Patience patience,
                 const std::function<void(Session&)>& work);

/// The same of a book of whatever version, all tables of which may be changed.
void change_any_book(const std::string& location, Patience patience,
                     const std::function<void(Session&)>& work);

/// Reads with the same patience, and one state of the book from the first row to the last, whatever others
/// write meanwhile: `work` gets a session opened for reading, or that of a held book. May run more than once.
/// Throws Error.
void look_into_book(const BookAt& book, Patience patience, const std::function<void(Session&)>& work);

}  // namespace pipward::book::detail
