// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/book/entry.h"
#include "pipward/book/schema_words.h"
#include "pipward/intake/entry_place.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/declare/parameter_text.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/field/detail/record_form.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {
namespace {

using book::BookColumn;
using book::BookTable;

struct Request {
    BookName book;
    Day as_of;
    bool complete = false;
    std::map<std::string, Cell> values{};  ///< by column
};

constexpr int most_counted = 1'000'000;
constexpr const char* unit_of_scores = "as stated";

std::string key_of(const BookColumn& column) {
    std::string key(column.name);
    std::ranges::replace(key, '_', '-');
    return key;
}

// A stage is looked for by its number.
std::string option_words(const BookColumn& column, const book::Choice& choice) {
    return column.role == book::ColumnRole::stage ? fmt::format("{:0>2}: {}", choice.value, choice.meaning)
                                                  : choice.meaning;
}

ParameterKind choice_kind(const BookColumn& column, const book::FieldDomain& domain) {
    ChoiceKind kind;
    for (const auto& choice : domain.choices) {
        kind.options.push_back({choice.value, option_words(column, choice)});
    }
    return kind;
}

ParameterKind whole_kind(const BookColumn& column, const book::FieldDomain* domain) {
    const double low = domain == nullptr ? 0 : domain->low;
    const double high = domain == nullptr ? most_counted : domain->high;
    return WholeKind{.unit = column.unit == "count" ? std::string{} : std::string(column.unit),
                     .least = static_cast<int>(low),
                     .most = static_cast<int>(std::min<double>(high, most_counted))};
}

ParameterKind number_kind(const BookColumn& column, const book::FieldDomain* domain) {
    NumberKind kind{
        .unit = column.unit.empty() ? unit_of_scores : std::string(column.unit), .least = {}, .most = {}};
    if (domain != nullptr) {
        kind.least = domain->low;
        kind.most = domain->high < book::no_upper_end ? std::optional{domain->high} : std::nullopt;
    }
    return kind;
}

ParameterKind kind_of_column(const BookColumn& column) {
    const auto* domain = book::find_domain(column.domain);
    if (domain != nullptr && !domain->choices.empty()) {
        return choice_kind(column, *domain);
    }
    switch (column.type) {
        case CellType::whole:
            return whole_kind(column, domain);
        case CellType::number:
            return number_kind(column, domain);
        case CellType::day:
            return DayKind{};
        case CellType::yes_no:
            return YesNoKind{};
        case CellType::text:
            break;
    }
    return TextKind{};
}

Cell cell_from(const std::string& text, CellType type) {
    switch (type) {
        case CellType::whole:
            return Cell{static_cast<std::int64_t>(*whole_from(text))};
        case CellType::number:
            return Cell{*number_from(text)};
        case CellType::day:
            return Cell{*parse_iso_day(text)};
        case CellType::yes_no:
            return Cell{*yes_no_from(text)};
        case CellType::text:
            break;
    }
    return Cell{text};
}

/// What a form makes of its table.
struct Recorder {
    RecordForm form;
    const BookTable& table;

    const BookColumn* key() const { return book::key_column(table); }
    bool is_day(const BookColumn& column) const { return column.name == table.day_column; }
    bool is_needed(const BookColumn& column) const {
        return column.required && column.initial.empty() && !is_day(column);
    }
};

Bound<Request> column_parameter(const Recorder& recorder, const BookColumn& column) {
    const auto* help = recorder.is_day(column) && !intake::completes_rows(recorder.form.kind)
                           ? "Date of the observation or of the work; the reference date where not given."
                           : nullptr;
    Parameter words(key_of(column), column.label, help != nullptr ? help : column.description,
                    kind_of_column(column));
    words.required = recorder.is_needed(column) && (!recorder.form.may_complete || &column == recorder.key());
    return {std::move(words),
            [name = std::string(column.name), type = column.type](const std::string& text, Request& request) {
                request.values[name] = cell_from(text, type);
            },
            [](const Request&) { return std::string{}; }};
}

// What is needed comes first, then the day, then the rest in the table's order.
std::vector<Bound<Request>> parameters_of(const Recorder& recorder) {
    std::vector<Bound<Request>> all{book_parameter(&Request::book)};
    const auto add = [&](const auto& wanted) {
        for (const auto& column : recorder.table.columns) {
            if (wanted(column)) {
                all.push_back(column_parameter(recorder, column));
            }
        }
    };
    add([&](const BookColumn& column) { return recorder.is_needed(column); });
    add([&](const BookColumn& column) { return recorder.is_day(column); });
    add([&](const BookColumn& column) { return !recorder.is_needed(column) && !recorder.is_day(column); });
    if (recorder.form.may_complete) {
        all.emplace_back(
            parameter(&Request::complete, "complete", "Complete a row",
                      "Whether the row of this name, which the book has, gets what it lacks; only "
                      "empty cells are filled."));
    }
    all.push_back(as_of_parameter(&Request::as_of));
    return all;
}

Findings missing_values(const Recorder& recorder, const Request& request) {
    Findings findings;
    for (const auto& column : recorder.table.columns) {
        const bool given = request.values.contains(std::string(column.name));
        if (!request.complete && recorder.is_needed(column) && !given) {
            findings.push_back(about_parameter(key_of(column), "", say("{} is missing.", key_of(column)),
                                               say("Give {}.", what_fits(kind_of_column(column)))));
        }
    }
    return findings;
}

// The day that is not given is the one on which it is recorded; a row that is completed keeps its own.
book::Entry entry_of(const Recorder& recorder, const Request& request) {
    book::Entry entry{std::string(recorder.table.name), request.values};
    entry.completes = request.complete || intake::completes_rows(recorder.form.kind);
    if (!recorder.table.day_column.empty() && !request.complete) {
        entry.values.try_emplace(std::string(recorder.table.day_column), request.as_of);
    }
    return entry;
}

void place(book::Entry& entry, const Request& request) {
    const bool placed = entry.values.contains(std::string(intake::latitude_column)) ||
                        entry.values.contains(std::string(intake::longitude_column));
    if (placed) {
        expect_no_errors(intake::place_entry(entry, book::read_tables(request.book, {"tree"}).orchard.crs));
    }
}

// As given: in the book it stands in the book's own coordinates.
Sentence place_words(const Request& request) {
    const auto latitude = request.values.find(std::string(intake::latitude_column));
    const auto longitude = request.values.find(std::string(intake::longitude_column));
    if (latitude == request.values.end() || longitude == request.values.end()) {
        return {};
    }
    return say(", latitude {}, longitude {}", to_text(latitude->second), to_text(longitude->second));
}

Outcome run(const Recorder& recorder, const Request& request, const Run& lent) {
    lent.step(0, say("Reading the book"));
    auto entry = entry_of(recorder, request);
    place(entry, request);
    auto added = book::add_entry(request.book, entry, request.as_of);
    Outcome outcome;
    outcome.findings = std::move(added.findings);
    const auto written = book::in_words(entry) + place_words(request);
    outcome.summary = say("{}. Written to {} as {}; record-undo reverts it.", written,
                          book::shown_location(request.book.location), book::name_of(added.row));
    return outcome;
}

std::vector<RecordForm> all_forms() {
    auto forms = spring_records();
    for (auto& more : {seed_records(), master_records()}) {
        forms.insert(forms.end(), more.begin(), more.end());
    }
    return forms;
}

}  // namespace

std::unique_ptr<const Operation> recording(intake::RecordKind kind) {
    const auto forms = all_forms();
    const Recorder recorder{*std::ranges::find(forms, kind, &RecordForm::kind), intake::table_of(kind)};
    return declare<Request>(
        {.about = recorder.form.about,
         .parameters = parameters_of(recorder),
         .results = {},
         .examples = recorder.form.examples,
         .check = [recorder](const Request& request) { return missing_values(recorder, request); },
         .run = [recorder](const Request& request,
                           const Run& lent) { return detail::run(recorder, request, lent); }});
}

}  // namespace pipward::operation::detail
