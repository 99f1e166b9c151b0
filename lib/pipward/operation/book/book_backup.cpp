// SPDX-License-Identifier: MIT
#include "pipward/book/back_up.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/declare.h"

namespace pipward::operation::detail {
namespace {

struct Request {
    BookName book;
    NewBookName to;
};

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Copying the book"));
    const auto tables = book::back_up(request.book, request.to.path);
    std::int64_t rows = 0;
    for (const auto& table : tables) {
        rows += table.rows;
    }
    return Outcome(say("{} was copied to {}: {} tables with {} rows, read back and found whole.",
                       book::shown_location(request.book.location), request.to.path, tables.size(), rows));
}

}  // namespace

std::unique_ptr<const Operation> book_backup() {
    return declare<Request>(
        {.about = {"book-backup", "Back up a book", "Book",
                   "Copies the book as it stands at one moment to a new file, even while others work in it, "
                   "with what is not yet in the file itself; then checks the copy. A file that is there "
                   "already is never overwritten."},
         .parameters = {book_parameter(&Request::book),
                        parameter(&Request::to, "to", "Copy",
                                  "The path of the copy, ending with .gpkg; nothing may be there yet.")
                            .required()},
         .results = {},
         .examples = {{"A copy before the spring's work.", {{"book", "BOOK"}, {"to", "NEW"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
