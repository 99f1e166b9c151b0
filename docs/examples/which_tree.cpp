// SPDX-License-Identifier: MIT
// Which tree is this? which_tree BOOK Search text: a label, a tag, "A x B no. 17", "Upper 3 9" ...
#include <fmt/format.h>
#include <pipward/book/book.h>
#include <pipward/place/address.h>
#include <pipward/place/tree_index.h>

using namespace pipward;

int main(int count, char** words) {
    if (count != 3) {
        fmt::print(stderr, "which_tree BOOK Search text\n");
        return 2;
    }
    try {
        const place::TreeIndex index(book::read_book(words[1]).orchard);
        const auto& orchard = index.orchard();
        for (const auto& found : index.find(words[2], 5)) {
            const auto& tree = orchard.trees[found.tree];
            fmt::print("{}: {} ({})\n", tree.label, place::address_of(tree, orchard.rows).text(),
                       to_text(found.match).text());
        }
    } catch (const Error& error) {
        for (const auto& finding : error.findings()) {
            fmt::print(stderr, "{}\n", to_text(finding));
        }
        return 1;
    }
}
