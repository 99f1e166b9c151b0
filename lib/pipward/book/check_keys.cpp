// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <map>
#include <vector>

#include "pipward/book/detail/check.h"
#include "pipward/book/records.h"
#include "pipward/value/utf8.h"

namespace pipward::book::detail {
namespace {

// Nobody writes more on a tag. Common practice, no source.
constexpr std::size_t longest_name = 250;

using Spellings = std::map<std::string, int>;  // rows by the name as it is written

void check_double(std::string_view table, std::string_view field, const std::string& name, int rows,
                  Findings& findings) {
    if (rows > 1) {
        findings.push_back(error({table, name, field, name},
                                 say("{} rows have this name; it must be one row's alone.", rows),
                                 say("Rename or remove all but one.")));
    }
}

// Names that people would take for the same.
void check_likeness(std::string_view table, std::string_view field, const Spellings& spellings,
                    Findings& findings) {
    if (spellings.size() > 1) {
        findings.push_back(
            warning({table, spellings.begin()->first, field, spellings.rbegin()->first},
                    say("Two names differ only by capitals or spaces."),
                    say("If they mean the same, write both alike; else make them more different.")));
    }
}

void check_key(std::string_view table, std::string_view field, const std::vector<std::string>& names,
               Findings& findings) {
    std::map<std::string, Spellings> seen;
    for (const auto& name : names) {
        ++seen[folded(name)][name];
    }
    for (const auto& [fold, spellings] : seen) {
        for (const auto& [name, rows] : spellings) {
            check_writing(table, field, name, findings);
            check_double(table, field, name, rows, findings);
        }
        check_likeness(table, field, spellings, findings);
    }
}

// A name within the rest of the key is told with it: "North / 4".
std::vector<std::string> names_in(const BookTable& table, const Orchard& orchard) {
    std::vector<std::string> names;
    for (const auto& row : rows_of(table, orchard)) {
        auto& name = names.emplace_back();
        for (const auto key : table.key) {
            name += (name.empty() ? "" : " / ") + to_text(cell_of(table, row, key));
        }
    }
    return names;
}

// Where the key ends otherwise than with a name (the member of a blend, the day of a station), rows of the
// same name are told by rules of their own.
bool ends_with_name(const BookTable& table) {
    const auto* name = name_column(table);
    return name != nullptr && table.key.back() == name->name;
}

}  // namespace

void check_writing(std::string_view table, std::string_view field, const std::string& name,
                   Findings& findings) {
    if (has_unseen_characters(name)) {
        findings.push_back(warning({table, name, field, name},
                                   say("The name has invisible characters, a line end perhaps."),
                                   say("Type it again: a name that looks the same will not be found.")));
    }
    if (code_points_of(name).size() > longest_name) {
        findings.push_back(error({table, one_line(name, 40), field, one_line(name, 40)},
                                 say("The name has more than {} characters.", longest_name),
                                 say("Shorten it, and keep the rest in a remark.")));
    }
}

void check_keys(const Orchard& orchard, Schema schema, Findings& findings) {
    for (const auto& table : schema) {
        if (ends_with_name(table)) {
            check_key(table.name, name_column(table)->name, names_in(table, orchard), findings);
        }
    }
}

}  // namespace pipward::book::detail
