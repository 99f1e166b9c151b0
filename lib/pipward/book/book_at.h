// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <functional>
#include <memory>
#include <string>

/// Where a book is, and the transaction that a piece of work on it belongs to.
namespace pipward::book {

namespace detail {
struct HeldBook;
}

/// How a write waits for another program that is writing the same book.
using Patience = std::chrono::milliseconds;
inline constexpr Patience default_patience{10000};  ///< ten seconds

/// A book by its location. Every function of this room that takes one opens the book for itself, unless it is
/// held by in_one_change(): then all of them work in that one transaction.
struct BookAt {
    std::string location{};                    ///< a file's path, or "PG:..."
    std::shared_ptr<detail::HeldBook> held{};  ///< null outside of in_one_change()

    /// No book.
    BookAt();
    /// Not held.
    BookAt(std::string location_);  // NOLINT(google-explicit-constructor): a location is a book
    /// Not held.
    BookAt(const char* location_);  // NOLINT(google-explicit-constructor): as above
};

/// Reads, judges and writes under one lock: nobody else can write to the book from before `work` first reads
/// it until all that it wrote is kept. `work` is given the held book and must use that one. What it throws
/// leaves the book as it was before. It may run more than once, each time on the book as it then is. Throws
/// Error (access) where the book cannot be written or stays locked by another program. False where a file was
/// left as it was because nothing was changed in it.
bool in_one_change(const BookAt& book, const std::function<void(const BookAt& held)>& work,
                   Patience patience = default_patience);

}  // namespace pipward::book
