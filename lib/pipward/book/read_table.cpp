// SPDX-License-Identifier: MIT
#include "pipward/book/detail/read_table.h"

#include <cpl_string.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "pipward/book/detail/check_outline.h"
#include "pipward/book/detail/layers.h"
#include "pipward/book/detail/strange_cells.h"
#include "pipward/book/records.h"

namespace pipward::book::detail {
namespace {

Finding about_table(const BookTable& table, Level level, Sentence message, Sentence remedy) {
    return {.level = level,
            .table = std::string(table.name),
            .row = {},
            .field = {},
            .value = {},
            .message = std::move(message),
            .remedy = std::move(remedy)};
}

Sentence what_fails(CellType type) {
    switch (type) {
        case CellType::whole:
            return say("This is no integer, or one too large for the column.");
        case CellType::number:
            return say("This is no number.");
        case CellType::day:
            return say("This is no day of the calendar.");
        case CellType::yes_no:
            return say("This is neither yes nor no.");
        case CellType::text:
            break;
    }
    return say("This is no readable text, or it has more than 100000 characters.");
}

Sentence what_fits(CellType type) {
    switch (type) {
        case CellType::whole:
            return say("Write an integer.");
        case CellType::number:
            return say("Write a number with a decimal point.");
        case CellType::day:
            return say("Write the day as YYYY-MM-DD, for instance 2026-04-12.");
        case CellType::yes_no:
            return say("Write 1 or 0.");
        case CellType::text:
            break;
    }
    return say("Write it again as plain text (UTF-8).");
}

Sentence what_fits_or_nothing(CellType type) {
    switch (type) {
        case CellType::whole:
            return say("Write an integer, or clear the cell.");
        case CellType::number:
            return say("Write a number with a decimal point, or clear the cell.");
        case CellType::day:
            return say("Write the day as YYYY-MM-DD, for instance 2026-04-12, or clear the cell.");
        case CellType::yes_no:
            return say("Write 1 or 0, or clear the cell.");
        case CellType::text:
            break;
    }
    return say("Write it again as plain text (UTF-8), or clear the cell.");
}

Sentence what_to_write(const BookColumn& column) {
    return column.required ? what_fits(column.type) : what_fits_or_nothing(column.type);
}

// A column that a user made may be of a neighbouring type: whole numbers as reals, days as text.
Cell converted(Cell value, CellType wanted) {
    if (const auto* number = std::get_if<double>(&value); number != nullptr && wanted == CellType::whole &&
                                                          std::abs(*number) < 1e15 &&
                                                          std::floor(*number) == *number) {
        return static_cast<std::int64_t>(*number);
    }
    if (const auto* whole = std::get_if<std::int64_t>(&value); whole != nullptr) {
        if (wanted == CellType::number) {
            return static_cast<double>(*whole);
        }
        return wanted == CellType::text ? Cell{to_text(value)} : value;
    }
    if (const auto* text = std::get_if<std::string>(&value); text != nullptr && wanted == CellType::day) {
        const auto day = parse_iso_day(*text);
        return day ? Cell{*day} : value;
    }
    return value;
}

// Bytes that are no UTF-8 would spoil whatever prints them.
std::string printable(const std::string& text) {
    std::string shown;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        shown += byte < 0x20 || byte > 0x7e ? fmt::format("\\x{:02x}", byte) : std::string(1, c);
    }
    return shown;
}

bool is_utf8(const std::string& text) {
    return CPLIsUTF8(text.c_str(), static_cast<int>(text.size())) != 0;
}

bool is_finite(const OGRGeometry& geometry) {
    OGREnvelope3D box;
    geometry.getEnvelope(&box);
    const bool flat = std::isfinite(box.MinX) && std::isfinite(box.MaxX) && std::isfinite(box.MinY) &&
                      std::isfinite(box.MaxY);
    return flat && (geometry.Is3D() == 0 || (std::isfinite(box.MinZ) && std::isfinite(box.MaxZ)));
}

// In no unit of any system: the earth is 40,000 km round, and feet are a third of a metre.
bool is_of_the_earth(const OGRGeometry& geometry) {
    constexpr double farthest = 1e9;
    OGREnvelope3D box;
    geometry.getEnvelope(&box);
    const bool flat =
        std::max({std::abs(box.MinX), std::abs(box.MaxX), std::abs(box.MinY), std::abs(box.MaxY)}) < farthest;
    return flat && (geometry.Is3D() == 0 || std::max(std::abs(box.MinZ), std::abs(box.MaxZ)) < farthest);
}

// Lends a layer that shows only the rows that fulfil a condition.
class FilteredLayer {
  public:
    FilteredLayer(OGRLayer& layer, const std::string& condition) : layer_(layer) {
        layer_.SetAttributeFilter(condition.empty() ? nullptr : condition.c_str());
    }
    ~FilteredLayer() { layer_.SetAttributeFilter(nullptr); }
    FilteredLayer(const FilteredLayer&) = delete;
    FilteredLayer& operator=(const FilteredLayer&) = delete;

  private:
    OGRLayer& layer_;
};

class TableReader {
  public:
    TableReader(Session& session, const BookTable& table, Findings& findings, OGRLayer& layer,
                const std::string& condition)
        : session_(session), table_(table), findings_(findings), layer_(layer), condition_(condition) {}

    void read(const std::function<void(const BookRow&)>& use);

  private:
    bool is_readable();
    bool find_fields();
    void report_missing(Level level, const std::string& columns, Sentence message);
    bool read_row(const OGRFeature& feature, BookRow& row);
    Cell read_cell(const OGRFeature& feature, std::size_t column, const StrangeRow* strange, Findings& wrong);
    std::optional<Finding> check_place(const OGRGeometry* geometry) const;
    void read_rows(const std::function<void(const BookRow&)>& use);
    void check_count(std::int64_t rows, const std::string& said);
    void report_damage(const Sentence& extent, const std::string& said);

    Session& session_;
    const BookTable& table_;
    Findings& findings_;
    OGRLayer& layer_;
    const std::string& condition_;
    std::vector<int> fields_;  // of the layer, in the order of the schema
    std::map<std::int64_t, StrangeRow> strange_;
};

// A view may never end, and rows without a number of their own cannot be distinguished.
bool TableReader::is_readable() {
    if (session_.server) {
        return true;
    }
    const auto kind =
        query(session_, "SELECT type FROM sqlite_master WHERE lower(name) = " + quoted_text(table_.name) +
                            " AND type IN ('table', 'view')");
    if (kind.empty() || kind[0][0] != "table") {
        findings_.push_back(about_table(table_, Level::error, say("A view stands where the table should be."),
                                        say("Keep the rows in a table of this name.")));
        return false;
    }
    if (layer_.GetFIDColumn()[0] == '\0') {
        findings_.push_back(about_table(table_, Level::error, say("The table has no integer primary key."),
                                        say("Copy its rows into the table of a new book.")));
        return false;
    }
    return true;
}

bool TableReader::find_fields() {
    std::string needed;
    std::string others;
    for (const auto& column : table_.columns) {
        const int field = layer_.GetLayerDefn()->GetFieldIndex(std::string(column.name).c_str());
        fields_.push_back(field);
        if (field < 0) {
            auto& names = column.required ? needed : others;
            names += (names.empty() ? "" : ", ") + std::string(column.name);
        }
    }
    report_missing(Level::error, needed,
                   say("The table lacks columns that it needs; none of its rows was read."));
    report_missing(Level::notice, others, say("The table lacks columns; their values count as unknown."));
    return needed.empty();
}

void TableReader::report_missing(Level level, const std::string& columns, Sentence message) {
    if (!columns.empty()) {
        auto finding =
            about_table(table_, level, std::move(message), say("Add them; docs/book.md lists their types."));
        finding.field = columns;
        findings_.push_back(std::move(finding));
    }
}

Cell TableReader::read_cell(const OGRFeature& feature, std::size_t column, const StrangeRow* strange,
                            Findings& wrong) {
    const auto& form = table_.columns[column];
    const int field = fields_[column];
    if (field < 0) {
        return {};
    }
    const auto complain = [&](std::string value) {
        wrong.push_back({.level = Level::error,
                         .table = {},
                         .row = {},
                         .field = std::string(form.name),
                         .value = std::move(value),
                         .message = what_fails(form.type),
                         .remedy = what_to_write(form)});
        return Cell{};
    };
    if (strange != nullptr && strange->contains(field)) {
        return complain(printable(strange->at(field)));
    }
    auto value = converted(get_field(feature, field), form.type);
    if (const auto* text = std::get_if<std::string>(&value); text != nullptr && !is_utf8(*text)) {
        return complain(printable(*text));
    }
    if (auto finding = check_cell(form, value)) {
        wrong.push_back(std::move(*finding));
        return {};
    }
    return value;
}

std::optional<Finding> TableReader::check_place(const OGRGeometry* geometry) const {
    if (table_.geometry == GeometryKind::none) {
        return std::nullopt;
    }
    auto finding = about_table(table_, Level::error, {}, say("Draw it again."));
    finding.field =
        layer_.GetGeometryColumn() == nullptr ? "" : const_cast<OGRLayer&>(layer_).GetGeometryColumn();
    if (geometry == nullptr || geometry->IsEmpty() != 0) {
        finding.level = table_.needs_place ? Level::error : Level::warning;
        finding.message = say("It has no location on the map, or one that cannot be read.");
        finding.remedy = say("Draw it on the map.");
        return finding;
    }
    if (wkbFlatten(geometry->getGeometryType()) != wanted_type(table_.geometry)) {
        finding.value = geometry->getGeometryName();
        finding.message = say("The geometry is no {}.", to_text(table_.geometry));
        return finding;
    }
    if (!is_finite(*geometry)) {
        finding.message = say("The geometry has a coordinate that is no finite number.");
        return finding;
    }
    if (!is_of_the_earth(*geometry)) {
        finding.message = say("The geometry has a coordinate that lies nowhere on the earth.");
        return finding;
    }
    if (table_.geometry == GeometryKind::polygon) {
        if (auto faulty = check_outline(*geometry->toPolygon())) {
            faulty->field = finding.field;
            return faulty;
        }
    }
    return std::nullopt;
}

bool TableReader::read_row(const OGRFeature& feature, BookRow& row) {
    row = {.fid = feature.GetFID(), .cells = {}};
    const auto found = strange_.find(row.fid);
    Findings wrong;
    bool complete = true;
    for (std::size_t column = 0; column < table_.columns.size(); ++column) {
        row.cells.push_back(
            read_cell(feature, column, found == strange_.end() ? nullptr : &found->second, wrong));
        complete = complete && !(table_.columns[column].required &&
                                 std::holds_alternative<std::monostate>(row.cells.back()));
    }
    if (auto finding = check_place(feature.GetGeometryRef())) {
        wrong.push_back(std::move(*finding));
    } else {
        row.at = to_map_point(feature.GetGeometryRef());
        row.line = to_map_line(feature.GetGeometryRef());
    }
    for (auto& finding : wrong) {
        finding.table = table_.name;
        finding.row = name_of(table_, row);
        findings_.push_back(std::move(finding));
    }
    return complete;
}

// OGR ends early on a damaged page as if the table ended there.
void TableReader::check_count(std::int64_t rows, const std::string& said) {
    const auto where = condition_.empty() ? std::string{} : " WHERE " + condition_;
    const auto counted = query(session_, "SELECT count(*) FROM " + quoted_name(layer_.GetName()) + where);
    const auto expected = std::strtoll(counted.at(0).at(0).value_or("0").c_str(), nullptr, 10);
    // What OGR says of a geometry is a finding of that row already.
    if (rows != expected || (!said.empty() && said.find("geometry") == std::string::npos)) {
        report_damage(say("{} of {} rows", rows, expected), said);
    }
}

void TableReader::report_damage(const Sentence& extent, const std::string& said) {
    const auto message =
        said.empty() ? say("The table could be read only in part: {}.", extent)
                     : say("The table could be read only in part: {}; the database says: {}.", extent, said);
    findings_.push_back(
        about_table(table_, Level::error, message, say("The file is damaged: restore it from a backup.")));
}

void TableReader::read_rows(const std::function<void(const BookRow&)>& use) {
    strange_ = find_strange_cells(session_, layer_, condition_);
    const FilteredLayer filtered(layer_, condition_);
    const auto before = session_.messages->failures();
    std::int64_t rows = 0;
    BookRow row;
    for (const auto& feature : layer_) {
        ++rows;
        if (read_row(*feature, row)) {
            use(row);
        }
    }
    check_count(rows, session_.messages->failures_since(before));
}

void TableReader::read(const std::function<void(const BookRow&)>& use) {
    if (!is_readable() || !find_fields()) {
        return;
    }
    try {
        read_rows(use);
    } catch (const OgrTrouble& trouble) {
        if (trouble.locked()) {
            throw;
        }
        report_damage(say("its rows cannot be gone through"), trouble.what());
    }
}

}  // namespace

void read_table(Session& session, const BookTable& table, Findings& findings,
                const std::function<void(const BookRow&)>& use) {
    read_rows(session, table, {}, findings, use);
}

void read_rows(Session& session, const BookTable& table, const std::string& condition, Findings& findings,
               const std::function<void(const BookRow&)>& use) {
    OGRLayer* layer = session.dataset->GetLayerByName(std::string(table.name).c_str());
    if (layer == nullptr) {
        findings.push_back(about_table(table, Level::error, say("The book has no such table."),
                                       say("Make a new book with book-new and copy the tables into it.")));
        return;
    }
    TableReader(session, table, findings, *layer, condition).read(use);
}

}  // namespace pipward::book::detail
