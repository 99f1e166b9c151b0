// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "pipward/book/adopt_words.h"
#include "pipward/operation/note_file.h"
#include "pipward/value/nearest.h"

namespace pipward::operation {
namespace {

// "Cold at (degrees C)" is "Cold at".
std::string heading_word(std::string_view heading) {
    return book::field_word(heading.substr(0, heading.find_first_of("([")));
}

const book::BookColumn* column_headed(const book::BookTable& table, std::string_view heading) {
    const auto wanted = heading_word(heading);
    const auto by_name = std::ranges::find_if(table.columns, [&](const book::BookColumn& column) {
        return book::field_word(column.name) == wanted;
    });
    const auto found = by_name != table.columns.end()
                           ? by_name
                           : std::ranges::find_if(table.columns, [&](const book::BookColumn& column) {
                                 return book::field_word(column.label) == wanted;
                             });
    return wanted.empty() || found == table.columns.end() ? nullptr : &*found;
}

std::string columns_of(const book::BookTable& table) {
    std::vector<std::string_view> names;
    std::ranges::transform(table.columns, std::back_inserter(names), &book::BookColumn::name);
    return fmt::format("{}", fmt::join(names, ","));
}

struct Fit {
    NoteKind kind = NoteKind::bloom;
    int required = 0;
    int all = 0;

    auto operator<=>(const Fit& other) const {
        return std::pair{required, all} <=> std::pair{other.required, other.all};
    }
    bool operator==(const Fit& other) const { return (*this <=> other) == 0; }
};

Fit fit_of(NoteKind kind, const std::vector<std::string>& headings) {
    Fit fit{kind};
    for (const auto& heading : headings) {
        if (const auto* column = column_headed(table_of(kind), heading)) {
            fit.required += column->required ? 1 : 0;
            ++fit.all;
        }
    }
    return fit;
}

class HeaderReader {
  public:
    HeaderReader(const weather::CsvText& csv, const NoteFileOptions& options)
        : csv_(csv), headings_(csv.records.front().fields), options_(options) {}

    NoteHeader header() {
        if (find_kind()) {
            for (std::size_t i = 0; i < headings_.size(); ++i) {
                header_.columns.push_back(column_at(i));
            }
            judge_missing();
        }
        return std::move(header_);
    }

  private:
    void tell(std::string field, Sentence message, Sentence remedy) {
        header_.findings.push_back({Level::error, options_.file, say("line {}", csv_.records.front().line),
                                    std::move(field), "", std::move(message), std::move(remedy)});
    }

    bool find_kind() {
        std::vector<Fit> fits;
        for (const auto& word : words(NoteKind{})) {
            if (!options_.kind || *options_.kind == word.value) {
                fits.push_back(fit_of(word.value, headings_));
            }
        }
        const auto best = *std::ranges::max_element(fits);
        header_.kind = best.kind;
        if (best.all == 0) {
            tell({}, say("The first line does not name the columns of notes."),
                 options_.kind ? say("It should be: {}.", columns_of(table_of(best.kind)))
                               : say("Take the first line of a sheet made with note-template, and say with "
                                     "kind what the lines are."));
            return false;
        }
        if (std::ranges::count(fits, best) > 1) {
            tell({}, say("The columns fit several kinds of notes."), say("Say with kind which it is."));
            return false;
        }
        return true;
    }

    const book::BookColumn* column_at(std::size_t i) {
        const auto& heading = headings_[i];
        const auto& table = table_of(header_.kind);
        const auto* column = column_headed(table, heading);
        if (column != nullptr && std::ranges::find(header_.columns, column) != header_.columns.end()) {
            tell(heading, say("Two columns are headed {}.", column->name),
                 say("Remove or rename one of them."));
            return nullptr;
        }
        if (heading.empty() && has_cells(i)) {
            tell({}, say("Column {} has cells, but no heading.", i + 1), say("Head it, or remove it."));
        } else if (!heading.empty() && column == nullptr && book::field_word(heading) != where_column) {
            tell(heading, say("Notes of this kind have no such column."), instead_of(heading, table));
        }
        return column;
    }

    bool has_cells(std::size_t i) const {
        return std::ranges::any_of(csv_.records, [&](const weather::CsvRecord& record) {
            return record.fields.size() > i && !record.fields[i].empty();
        });
    }

    Sentence instead_of(const std::string& heading, const book::BookTable& table) const {
        std::vector<std::string> names;
        for (const auto& column : table.columns) {
            names.emplace_back(column.name);
        }
        const auto few = nearest_few(heading, names);
        return few.empty() ? say("Remove it, or rename it; the columns are: {}.", columns_of(table))
                           : say("Did you mean {}? Rename it, or remove the column.",
                                 fmt::format("{}", fmt::join(few, ", ")));
    }

    void judge_missing() {
        const auto& table = table_of(header_.kind);
        for (const auto& column : table.columns) {
            const bool is_there = std::ranges::find(header_.columns, &column) != header_.columns.end();
            const bool is_day = &column == day_column_of(table);
            if (!is_there && column.required && !(is_day && options_.day_if_blank)) {
                tell(std::string(column.name), say("The column {} is missing.", column.name),
                     is_day ? say("Add it, or give the day of all lines with day-if-blank.")
                            : say("Add it: {}", filled(column.description, {})));
            }
        }
    }

    const weather::CsvText& csv_;
    const std::vector<std::string>& headings_;
    const NoteFileOptions& options_;
    NoteHeader header_{};
};

}  // namespace

NoteHeader read_note_header(const weather::CsvText& csv, const NoteFileOptions& options) {
    return HeaderReader(csv, options).header();
}

}  // namespace pipward::operation
