// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "pipward/book/heading.h"
#include "pipward/intake/detail/record_reading.h"
#include "pipward/value/nearest.h"

namespace pipward::intake::detail {
namespace {

using book::BookColumn;
using book::BookTable;

std::vector<std::string> names_of(const BookTable& table) {
    std::vector<std::string> names;
    std::ranges::transform(table.columns, std::back_inserter(names),
                           [](const BookColumn& column) { return std::string(column.name); });
    return names;
}

std::string listed(const BookTable& table) {
    return fmt::format("{}", fmt::join(names_of(table), ","));
}

/// How well a kind of record fits the headings; the greater fits better.
struct Fit {
    bool complete = false;  ///< whether no column is missing but a day that is given otherwise
    int required = 0;       ///< headings of columns that its records must have
    int known = 0;          ///< headings of any of its columns
    int absent = 0;  ///< less than 0: so many of its columns lack a heading; 0 where it is not complete

    friend auto operator<=>(const Fit&, const Fit&) = default;
};

Fit fit_of(RecordKind kind, const std::vector<std::string>& headings, bool day_given) {
    const auto& table = table_of(kind);
    Fit fit{.complete = true};
    for (const auto& column : table.columns) {
        const auto heads = [&](const auto& heading) {
            return book::column_headed(table, heading) == &column;
        };
        const auto headed = static_cast<int>(std::ranges::count_if(headings, heads));
        fit.known += headed;
        if (column.required) {
            fit.required += headed;
            fit.complete = fit.complete && (headed > 0 || (day_given && &column == day_column_of(table)));
        }
    }
    fit.absent = fit.complete ? fit.known - static_cast<int>(table.columns.size()) : 0;
    return fit;
}

class RecordColumnFinder {
  public:
    RecordColumnFinder(const Sheet& sheet, const RecordOptions& options)
        : sheet_(sheet), headings_(sheet.records.front().fields), options_(options) {}

    RecordColumns found() {
        if (find_kind()) {
            for (std::size_t i = 0; i < headings_.size(); ++i) {
                found_.columns.push_back(column_at(i));
            }
            judge_missing();
        }
        return std::move(found_);
    }

  private:
    const BookTable& table() const { return table_of(found_.kind); }

    bool tell(std::string field, Sentence message, Sentence remedy) {
        found_.findings.push_back({Level::error, sheet_.file, say("line {}", sheet_.records.front().line),
                                   std::move(field), "", std::move(message), std::move(remedy)});
        return false;
    }

    bool find_kind() {
        Fit best{.required = -1};
        int equals = 0;
        for (const auto& word : words(RecordKind{})) {
            const auto fit = fit_of(word.value, headings_, options_.date_if_blank.has_value());
            if ((options_.kind && *options_.kind != word.value) || fit < best) {
                continue;
            }
            found_.kind = fit > best ? word.value : found_.kind;
            equals = fit > best ? 1 : equals + 1;
            best = fit;
        }
        if (best.known == 0) {
            return tell({}, say("The first line does not name the columns of records."),
                        options_.kind
                            ? say("It should be: {}.", listed(table()))
                            : say("Use the first line of a sheet made with record-template, and give kind."));
        }
        return equals == 1 || tell({}, say("The columns fit several kinds of records."), say("Give kind."));
    }

    const BookColumn* column_at(std::size_t i) {
        const auto& heading = headings_[i];
        const auto* column = book::column_headed(table(), heading);
        if (column != nullptr && std::ranges::find(found_.columns, column) != found_.columns.end()) {
            tell(heading, say("Two columns are headed {}.", column->name),
                 say("Remove or rename one of them."));
            return nullptr;
        }
        const bool has_cells =
            std::ranges::any_of(sheet_.records, [&](const Record& record) { return !record.at(i).empty(); });
        if (heading.empty() && has_cells) {
            tell({}, say("Column {} has cells, but no heading.", i + 1),
                 say("Give it a heading, or remove it."));
        } else if (!heading.empty() && column == nullptr && book::field_word(heading) != where_column) {
            tell(heading, say("Records of this kind have no such column."), instead_of(heading));
        }
        return column;
    }

    Sentence instead_of(const std::string& heading) const {
        const auto few = nearest_few(heading, names_of(table()));
        return few.empty() ? say("Remove it, or rename it; the columns are: {}.", listed(table()))
                           : say("Did you mean {}? Rename it, or remove the column.",
                                 fmt::format("{}", fmt::join(few, ", ")));
    }

    void judge_missing() {
        for (const auto& column : table().columns) {
            const bool is_there = std::ranges::find(found_.columns, &column) != found_.columns.end();
            const bool is_day = &column == day_column_of(table());
            const bool there_already = options_.complete && &column != book::key_column(table());
            if (!is_there && column.required && !there_already && !(is_day && options_.date_if_blank)) {
                tell(std::string(column.name), say("The column {} is missing.", column.name),
                     is_day ? say("Add it, or give the date of such lines with date-if-blank.")
                            : say("Add it: {}", filled(column.description, {})));
            }
        }
    }

    const Sheet& sheet_;
    const std::vector<std::string>& headings_;
    const RecordOptions& options_;
    RecordColumns found_{};
};

}  // namespace

bool heads_records(std::string_view heading) {
    return std::ranges::any_of(words(RecordKind{}), [&](const auto& kind) {
        return book::column_headed(table_of(kind.value), heading) != nullptr;
    });
}

RecordColumns find_record_columns(const Sheet& sheet, const RecordOptions& options) {
    return RecordColumnFinder(sheet, options).found();
}

}  // namespace pipward::intake::detail
