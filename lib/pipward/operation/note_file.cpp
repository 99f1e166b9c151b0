// SPDX-License-Identifier: MIT
#include "pipward/operation/note_file.h"

#include <algorithm>

#include "pipward/book/adopt_value.h"
#include "pipward/operation/complaint.h"

namespace pipward::operation {
namespace {

class NoteReader {
  public:
    NoteReader(const weather::CsvText& csv, NoteHeader header, const NoteFileOptions& options)
        : csv_(csv), columns_(std::move(header.columns)), table_(table_of(header.kind)), options_(options) {
        file_.kind = header.kind;
        file_.findings = csv.findings;
    }

    NoteFile file() {
        for (std::size_t i = 0; i < columns_.size(); ++i) {
            if (columns_[i] != nullptr) {
                file_.headings.emplace(columns_[i]->name, csv_.records.front().fields[i]);
            }
        }
        for (std::size_t i = 1; i < csv_.records.size(); ++i) {
            read_line(csv_.records[i]);
        }
        for (std::size_t i = 0; i < columns_.size(); ++i) {
            if (columns_[i] != nullptr && columns_[i]->type == CellType::day) {
                read_days(*columns_[i], i);
            }
        }
        if (options_.day_if_blank) {
            fill_in_days();
        }
        for (auto& line : file_.lines) {
            judge_filling(line);
        }
        return std::move(file_);
    }

  private:
    void tell(NoteLine& line, const std::string& field, Finding finding) const {
        finding.table = options_.file;
        finding.row = say("line {}", line.line);
        finding.field = field;
        line.findings.push_back(std::move(finding));
    }

    const std::string& heading_of(const book::BookColumn& column) const {
        return file_.headings.find(column.name)->second;
    }

    void read_line(const weather::CsvRecord& record) {
        auto& line = file_.lines.emplace_back(
            NoteLine{.line = record.line, .entry = {std::string(table_.name), {}}, .filled = false});
        for (std::size_t i = 0; i < record.fields.size(); ++i) {
            if (i >= columns_.size()) {
                judge_surplus(line, record.fields[i]);
            } else if (columns_[i] != nullptr && columns_[i]->type != CellType::day) {
                read_cell(line, *columns_[i], record.fields[i]);
            }
        }
    }

    void judge_surplus(NoteLine& line, const std::string& text) const {
        if (!text.empty()) {
            tell(line, {},
                 {Level::error, "", "", "", text, say("The line has more cells than the header."),
                  say("Put quotes around a text that holds the separator, and do not part decimals with "
                      "it.")});
        }
    }

    void read_cell(NoteLine& line, const book::BookColumn& column, const std::string& text) const {
        auto read = read_note_cell(column, text);
        if (read.wrong) {
            tell(line, heading_of(column), std::move(*read.wrong));
        } else if (!std::holds_alternative<std::monostate>(read.cell)) {
            line.entry.values.emplace(column.name, std::move(read.cell));
        }
        line.filled = line.filled || (is_the_note_itself(column) && !book::says_nothing(text));
    }

    void read_days(const book::BookColumn& column, std::size_t at) {
        std::vector<NoteDayText> days;
        std::vector<NoteLine*> lines;
        for (std::size_t i = 0; i < file_.lines.size(); ++i) {
            const auto& fields = csv_.records[i + 1].fields;
            if (at < fields.size() && !book::says_nothing(fields[at])) {
                days.push_back({file_.lines[i].line, fields[at]});
                lines.push_back(&file_.lines[i]);
            }
        }
        for (auto& finding : read_note_days(days, options_.day_format)) {
            finding.table = options_.file;
            finding.field = heading_of(column);
            file_.findings.push_back(std::move(finding));
        }
        for (std::size_t i = 0; i < days.size(); ++i) {
            if (days[i].wrong) {
                // A formula is told as one, not as a day that cannot be read.
                auto formula = read_note_cell(column, days[i].text).wrong;
                tell(*lines[i], heading_of(column),
                     formula ? std::move(*formula) : std::move(*days[i].wrong));
            } else {
                lines[i]->entry.values.emplace(column.name, *days[i].day);
            }
        }
    }

    // A day that could not be read is not replaced.
    void fill_in_days() {
        const auto* column = day_column_of(table_);
        for (auto& line : file_.lines) {
            const bool is_wrong = std::ranges::any_of(line.findings, [&](const Finding& finding) {
                return column != nullptr && file_.headings.contains(column->name) &&
                       finding.field == heading_of(*column);
            });
            if (column != nullptr && !is_wrong) {
                line.entry.values.emplace(column->name, *options_.day_if_blank);
            }
        }
    }

    // A sheet made beforehand has lines that nobody came to; but a remark or a count of something else was
    // meant to be kept.
    void judge_filling(NoteLine& line) const {
        for (const auto& column : table_.columns) {
            const bool counted = column.type == CellType::whole || column.type == CellType::number;
            if (!line.filled && counted && line.entry.values.contains(std::string(column.name))) {
                line.filled = true;  // what it lacks is then told
            }
        }
        const auto remark = line.entry.values.find("note");
        if (!line.filled && remark != line.entry.values.end()) {
            tell(line, heading_of(*book::find_column(table_, "note")),
                 {Level::warning, "", "", "", to_text(remark->second),
                  say("The line has a remark, but nothing to note; it is passed over."),
                  say("Fill in the rest, or keep the remark elsewhere.")});
        }
    }

    const weather::CsvText& csv_;
    std::vector<const book::BookColumn*> columns_;
    const book::BookTable& table_;
    const NoteFileOptions& options_;
    NoteFile file_{};
};

NoteFile refused(Findings findings) {
    NoteFile file;
    file.findings = std::move(findings);
    return file;
}

}  // namespace

NoteFile read_note_file(std::string_view text, const NoteFileOptions& options) {
    if (auto findings = judge_note_bytes(text, options.file); !findings.empty()) {
        return refused(std::move(findings));
    }
    const auto csv = weather::read_csv(text, options.file);
    if (csv.records.empty()) {
        return refused({about_table(Level::error, options.file, say("The file is empty."),
                                    say("Make a sheet with note-template and fill it in."))});
    }
    auto header = read_note_header(csv, options);
    if (has_errors(csv.findings) || !header.findings.empty()) {
        auto findings = csv.findings;
        findings.insert(findings.end(), header.findings.begin(), header.findings.end());
        return refused(std::move(findings));
    }
    return NoteReader(csv, std::move(header), options).file();
}

}  // namespace pipward::operation
