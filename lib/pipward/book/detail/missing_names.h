// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/book/detail/check.h"
#include "pipward/value/finding.h"

/// Inside of the room: names that nothing in the book answers to, told so that one trouble is one line.
namespace pipward::book::detail {

/// What a column's names are names of.
struct Named {
    Sentence what;           ///< for people: "accession or blend"
    std::string_view table;  ///< whose rows they are; of several, one of which some could not be read
    std::vector<const std::set<std::string>*> lists{};  ///< of each table that it may be
    bool nothing_there = false;                         ///< the first of them holds nothing
    bool unread = false;                                ///< some rows could not be read

    bool answers_to(const std::string& name) const;
    std::set<std::string> all() const;
};

/// What the names of a column with references are names of. The names outlive it.
Named named_by(const BookColumn& column, const Names& names, Schema schema);

/// A name that nothing answers to, and the rows that give it.
struct Missing {
    std::string first_row;
    int rows = 0;
};
using MissingNames = std::map<std::string, Missing>;

/// The missing names of one column.
struct MissingInColumn {
    const BookTable& table;
    const BookColumn& column;
    const Named& named;
    MissingNames names;
};

/// Where a whole table is empty, every name of its rows is missing: that is one trouble, not hundreds.
struct Unanswered {
    Findings one_by_one;
    std::set<std::string> tables;  ///< that refer to it
};
using UnansweredTables = std::map<std::string, Unanswered>;  ///< by the empty table

/// Tells of the missing names of one column; those whose whole table is empty are kept for later.
void tell(const MissingInColumn& missing, UnansweredTables& unanswered, Findings& findings);
void tell_of_empty_tables(const UnansweredTables& unanswered, Findings& findings);

}  // namespace pipward::book::detail
