// SPDX-License-Identifier: MIT
#include "pipward/intake/record_sheet.h"

#include <algorithm>

#include "pipward/intake/cells.h"
#include "pipward/intake/detail/record_reading.h"

namespace pipward::intake {
namespace {

using book::BookColumn;

class RecordReader {
  public:
    RecordReader(const Sheet& sheet, detail::RecordColumns found, const RecordOptions& options)
        : rows_(sheet.rows()),
          columns_(std::move(found.columns)),
          table_(table_of(found.kind)),
          completes_(options.complete || completes_rows(found.kind)),
          options_(options) {
        sheet_ = {sheet.file, found.kind, {}, {}, sheet.findings};
        for (std::size_t i = 0; i < columns_.size(); ++i) {
            if (columns_[i] != nullptr) {
                sheet_.headings.emplace(columns_[i]->name, sheet.records.front().fields[i]);
            }
        }
    }

    RecordSheet read() {
        for (const auto& record : rows_) {
            read_line(record);
        }
        for (std::size_t i = 0; i < columns_.size(); ++i) {
            if (columns_[i] != nullptr && columns_[i]->type == CellType::day) {
                read_days(*columns_[i], i);
            }
        }
        std::ranges::for_each(sheet_.lines, [this](RecordLine& line) {
            judge_filling(line);
            fill_in_day(line);
        });
        return std::move(sheet_);
    }

  private:
    void tell(RecordLine& line, const std::string& field, Finding finding) const {
        finding.table = sheet_.file;
        finding.row = say("line {}", line.line);
        finding.field = field;
        line.findings.push_back(std::move(finding));
    }

    void read_line(const Record& record) {
        auto& line = sheet_.lines.emplace_back(
            RecordLine{record.line, {std::string(table_.name), {}, {}, completes_}});
        for (std::size_t i = 0; i < record.fields.size(); ++i) {
            const auto& text = record.fields[i];
            if (i >= columns_.size() && !text.empty()) {
                tell(line, {},
                     {Level::error, "", "", "", text, say("The line has more cells than the header."),
                      say("Put quotes around a text that holds the separator, and do not part decimals with "
                          "it.")});
            } else if (i < columns_.size() && columns_[i] != nullptr && columns_[i]->type != CellType::day) {
                read_cell(line, *columns_[i], text);
            }
        }
    }

    void read_cell(RecordLine& line, const BookColumn& column, const std::string& text) const {
        auto read = detail::read_record_cell(column, text);
        if (read.wrong) {
            tell(line, sheet_.heading_of(column.name), std::move(*read.wrong));
        } else if (!std::holds_alternative<std::monostate>(read.cell)) {
            line.entry.values.emplace(column.name, std::move(read.cell));
        }
        line.filled = line.filled || (is_the_record_itself(column) && !says_nothing(text));
    }

    void read_days(const BookColumn& column, std::size_t at) {
        std::vector<std::string> texts;
        std::vector<RecordLine*> lines;
        for (std::size_t i = 0; i < rows_.size(); ++i) {
            if (!says_nothing(rows_[i].at(at))) {
                texts.push_back(rows_[i].at(at));
                lines.push_back(&sheet_.lines[i]);
            }
        }
        const auto order = order_of(texts);
        for (std::size_t i = 0; i < texts.size(); ++i) {
            if (const auto day = day_of(texts[i], order)) {
                lines[i]->entry.values.emplace(column.name, *day);
            } else {
                tell(*lines[i], sheet_.heading_of(column.name), wrong_day(texts[i], order, lines));
            }
        }
        if (!options_.date_format && order.in_doubt && order.proved()) {
            tell_order(column, texts, lines, order);
        }
    }

    std::optional<Day> day_of(const std::string& text, const DayOrder& order) const {
        const auto day_first = read_day(text, DateFormat::day_month_year);
        const auto month_first = read_day(text, DateFormat::month_day_year);
        if (options_.date_format) {
            return *options_.date_format == DateFormat::month_day_year ? month_first : day_first;
        }
        if (!day_first || !month_first || *day_first == *month_first) {
            return day_first ? day_first : month_first;
        }
        const auto proved = order.proved();
        return !proved ? std::nullopt : *proved == DateFormat::day_month_year ? day_first : month_first;
    }

    Finding wrong_day(const std::string& text, const DayOrder& order,
                      const std::vector<RecordLine*>& lines) const {
        if (auto formula = formula_or_error(text)) {
            return std::move(*formula);
        }
        const auto day_first = read_day(text, DateFormat::day_month_year);
        const auto month_first = read_day(text, DateFormat::month_day_year);
        if (options_.date_format || !day_first || !month_first) {
            return wrong_cell(text, say("This is no day of the calendar."),
                              say("Write it as in 2026-04-12."));
        }
        return wrong_cell(
            text,
            order.day_first ? say("Line {} has the day first and line {} the month, so this may be {} or {}.",
                                  lines[*order.day_first]->line, lines[*order.month_first]->line,
                                  to_iso(*day_first), to_iso(*month_first))
                            : say("With the day first this is {}, with the month first {}.",
                                  to_iso(*day_first), to_iso(*month_first)),
            say("Give date-format, or write it as in 2026-04-12."));
    }

    void tell_order(const BookColumn& column, const std::vector<std::string>& texts,
                    const std::vector<RecordLine*>& lines, const DayOrder& order) {
        const auto shown = order.day_first ? *order.day_first : *order.month_first;
        sheet_.findings.push_back(
            {Level::notice, sheet_.file, "", sheet_.heading_of(column.name), texts[shown],
             order.day_first
                 ? say("The days are read with the day first, as line {} shows.", lines[shown]->line)
                 : say("The days are read with the month first, as line {} shows.", lines[shown]->line),
             say("Give date-format if that is wrong.")});
    }

    // A day that could not be read is not replaced.
    void fill_in_day(RecordLine& line) const {
        const auto* column = day_column_of(table_);
        if (column == nullptr || !options_.date_if_blank) {
            return;
        }
        const bool is_wrong = sheet_.headings.contains(column->name) &&
                              std::ranges::find(line.findings, sheet_.heading_of(column->name),
                                                &Finding::field) != line.findings.end();
        if (!is_wrong) {
            line.entry.values.emplace(column->name, *options_.date_if_blank);
        }
    }

    bool has_counted_column() const {
        return !completes_ && std::ranges::any_of(table_.columns, is_the_record_itself);
    }

    // Of what is not counted the day tells that it was done; a row without a day is written for itself, but
    // not where its name, as the sheet had it, stands alone and more is needed.
    bool says_something(const RecordLine& line) const {
        if (const auto* day = day_column_of(table_)) {
            return line.entry.values.contains(std::string(day->name));
        }
        const auto needed = std::ranges::count_if(table_.columns, &BookColumn::required);
        return line.entry.values.size() > 1 || (needed <= 1 && !line.entry.values.empty());
    }

    // A sheet made beforehand has lines that nobody came to; but a remark or a count of something else was
    // meant to be kept.
    void judge_filling(RecordLine& line) const {
        line.filled =
            line.filled ||
            std::ranges::any_of(table_.columns,
                                [&](const BookColumn& column) {
                                    const bool counted =
                                        column.type == CellType::whole || column.type == CellType::number;
                                    return counted && line.entry.values.contains(std::string(column.name));
                                }) ||
            (!has_counted_column() && says_something(line));
        const auto remark = line.entry.values.find("remark");
        if (!line.filled && remark != line.entry.values.end()) {
            tell(line, sheet_.heading_of("remark"),
                 {Level::warning, "", "", "", to_text(remark->second),
                  say("The line has a remark, but no record; it is skipped."),
                  say("Fill in the rest, or keep the remark elsewhere.")});
        }
    }

    std::span<const Record> rows_;
    std::vector<const BookColumn*> columns_;
    const book::BookTable& table_;
    bool completes_;
    const RecordOptions& options_;
    RecordSheet sheet_{};
};

}  // namespace

std::string RecordSheet::heading_of(std::string_view column) const {
    const auto heading = headings.find(column);
    return heading == headings.end() ? std::string(column) : heading->second;
}

RecordSheet read_record_sheet(std::string_view bytes, const RecordOptions& options) {
    const auto sheet = read_sheet(bytes, options.file, detail::heads_records);
    RecordSheet refused{sheet.file, {}, {}, {}, sheet.findings};
    if (sheet.records.empty()) {
        if (!sheet.is_refused()) {
            refused.findings.push_back(
                about_file(sheet.file, 0,
                           {Level::error,
                            {},
                            {},
                            say("The file is empty."),
                            say("Make a sheet with record-template and fill it in.")}));
        }
        return refused;
    }
    auto found = detail::find_record_columns(sheet, options);
    if (sheet.is_refused() || !found.findings.empty()) {
        refused.findings.insert(refused.findings.end(), found.findings.begin(), found.findings.end());
        return refused;
    }
    return RecordReader(sheet, std::move(found), options).read();
}

}  // namespace pipward::intake
