// SPDX-License-Identifier: MIT
#include "pipward/book/upgrade.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/detail/list.h"

namespace pipward::operation::detail {
namespace {

struct Request {
    BookName book;
    bool write = false;
};

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the book"));
    const auto shown = book::shown_location(request.book.location);
    const auto upgrade = request.write ? book::upgrade_book(request.book.location)
                                       : book::needed_upgrade(request.book.location);
    if (upgrade.from == upgrade.to) {
        return Outcome(say("{} is of schema version {} already: nothing was changed.", shown, upgrade.to));
    }
    if (!request.write) {
        return Outcome(
            say("{} is of schema version {} and would become one of version {}; nothing was written.", shown,
                upgrade.from, upgrade.to));
    }
    return Outcome(
        upgrade.copy.empty()
            ? say("{} was of schema version {} and is of version {} now.", shown, upgrade.from, upgrade.to)
            : say("{} was of schema version {} and is of version {} now. As it was it lies in {}.", shown,
                  upgrade.from, upgrade.to, upgrade.copy));
}

}  // namespace

std::unique_ptr<const Operation> book_upgrade() {
    return declare<Request>(
        {.about = {"book-upgrade", "Upgrade a book", "Book",
                   "Makes a book of an older version of the schema one of this program's: tables and columns "
                   "that it lacks are added, its rows stay. With write, a copy of the file is kept beside it "
                   "first."},
         .parameters = {book_parameter(&Request::book), write_parameter(&Request::write)},
         .results = {},
         .examples = {{"Whether a book needs it.", {{"book", "BOOK"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
