// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/book/detail/bind.h"

/// A table that no released book has, with a record of its own and a text column with a reference: what is
/// written here is all that such a table needs.
namespace pipward::testing {

struct Hive {
    std::int64_t fid = 0;
    std::string name;
    Day placed_on;
    std::optional<std::string> tree{};
    std::optional<std::string> serves{};
    std::optional<int> frames{};
    std::optional<std::string> remark{};
};

/// An orchard keeps no hives: they stand here.
inline std::vector<Hive>& hives() {
    static std::vector<Hive> kept;
    return kept;
}
struct Hives {
    std::vector<Hive>& operator()(const Orchard&) const { return hives(); }
};

inline book::BookTable hive_table() {
    using enum book::Language;
    using book::detail::column;
    return book::detail::bound_table<Hive, Hives>(
        {.name = "hive",
         .title = "Hives",
         .description = "Bees that are brought for the bloom.",
         .key = {"name"},
         .row_words = say("hive"),
         .entry_words = say("Hive"),
         .columns = {
             column(&Hive::name, "name", "Name", "What stands on the hive."),
             column(&Hive::placed_on, "placed_on", "Placed on", "Day on which it was brought."),
             column(&Hive::tree, "tree", "Tree", "The tree that it stands under.")
                 .refers_to({"tree", "label"})
                 .known_as(english, {"tree", "stands under"})
                 .known_as(german, {"Baum", "steht unter"})
                 .known_as(french, {"arbre"}),
             column(&Hive::serves, "serves", "Serves", "Whose pollen it shall carry.")
                 .refers_to({"accession", "name"})
                 .or_to({"blend", "name"}, say("accession or blend"))
                 .on_tab(say("Work")),
             column(&Hive::frames, "frames", "Frames", "Frames with bees.")
                 .within("count")
                 .known_as(german, {"Waben"}),
             column(&Hive::remark, "remark", "Note", "Anything else.").as_remark().shown_before("frames")}});
}

/// The released tables and that one.
inline book::Schema with_hives() {
    static const auto tables = [] {
        std::vector<book::BookTable> all(book::book_tables().begin(), book::book_tables().end());
        all.push_back(hive_table());
        return all;
    }();
    return tables;
}

}  // namespace pipward::testing
