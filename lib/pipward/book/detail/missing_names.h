// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>

#include "pipward/value/finding.h"

/// Inside of the room: names that nothing in the book answers to, told so that one trouble is one line.
namespace pipward::book::detail {

/// What a column's names are names of: `what` for people, the rows of `table`.
struct Named {
    const std::set<std::string>* known;
    Sentence what;
    std::string_view table;
    bool nothing_there;  ///< the table holds nothing
    bool unread;         ///< some of its rows could not be read
};

/// A name that nothing answers to, and the rows that give it.
struct Missing {
    std::string first_row;
    int rows = 0;
};
using MissingNames = std::map<std::string, Missing>;

/// Where a whole table is empty, every name of its rows is missing: that is one trouble, not hundreds.
struct Unanswered {
    Findings one_by_one;
    std::set<std::string> tables;  ///< that refer to it
};
using UnansweredTables = std::map<std::string, Unanswered>;  ///< by the empty table

/// Tells of the missing names of one column; those whose whole table is empty are kept for later.
void tell(const MissingNames& missing, std::string_view table, std::string_view field, const Named& named,
          UnansweredTables& unanswered, Findings& findings);
void tell_of_empty_tables(const UnansweredTables& unanswered, Findings& findings);

}  // namespace pipward::book::detail
