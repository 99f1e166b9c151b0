// SPDX-License-Identifier: MIT
#include "pipward/book/part_reading.h"

#include "pipward/book/detail/book_crs.h"
#include "pipward/book/detail/book_shelf.h"
#include "pipward/book/detail/lookup_indexes.h"
#include "pipward/book/detail/transaction.h"

namespace pipward::book {

std::optional<BookReading> read_part(const BookAt& book,
                                     const std::function<bool(OrchardShelf& shelf)>& choose) {
    std::optional<BookReading> part;
    detail::look_into_book(book, default_patience, [&](detail::Session& session) {
        part.reset();
        if (!detail::has_lookup_indexes(session)) {
            return;
        }
        detail::BookShelf shelf(session);
        if (choose(shelf) && !shelf.overfull()) {
            part = shelf.reading();
        }
    });
    return part;
}

}  // namespace pipward::book
