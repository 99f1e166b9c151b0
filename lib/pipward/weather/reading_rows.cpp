// SPDX-License-Identifier: MIT
#include "pipward/weather/reading_rows.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace pipward::weather {
namespace {

constexpr int findings_of_a_kind = 20;

const Sentence reversed = say("The day's minimum lies above its maximum; the day is left out.");
const Sentence unbelievable = say("No orchard's air is this cold or hot; the day is left out.");

std::string both(const RawReading& reading) {
    return fmt::format("{}, {}", reading.t_min, reading.t_max);
}

bool believable(Celsius t) {
    return t >= coldest_believable && t <= hottest_believable;
}

/// Says so and returns false where the reading cannot be a day's extremes.
bool passes(const RawReading& reading, TemperatureUnit unit, LineFindings& lines) {
    if (!believable(to_celsius(reading.t_min, unit)) || !believable(to_celsius(reading.t_max, unit))) {
        lines.add(Level::warning, reading.line, "t_min, t_max", both(reading), unbelievable,
                  say("Correct it, or state the unit: the file was read in {}.", to_text(unit)));
        return false;
    }
    if (reading.t_min > reading.t_max) {
        lines.add(Level::warning, reading.line, "t_min, t_max", both(reading), reversed,
                  say("Correct the day's two temperatures."));
        return false;
    }
    return true;
}

void refuse_if_common(const Sentence& kind, std::size_t of, const WeatherFileOptions& options,
                      Sentence message, Sentence remedy, LineFindings& lines, Findings& findings) {
    const int count = lines.count(kind);
    if (static_cast<std::size_t>(count) * 10 <= of) {
        return;
    }
    lines.forget(kind);
    findings.push_back({.level = Level::error,
                        .table = options.file,
                        .row = {},
                        .field = "t_min, t_max",
                        .value = fmt::format("{} of {} days", count, of),
                        .message = std::move(message),
                        .remedy = std::move(remedy)});
}

void note_repeated(const RawReading& first, const RawReading& again, LineFindings& lines) {
    const bool alike = first.t_min == again.t_min && first.t_max == again.t_max;
    if (alike) {
        lines.add(Level::note, again.line, "day", to_iso(again.day),
                  say("The day stands twice alike; it is kept once."), {});
        return;
    }
    lines.add(Level::error, again.line, "day", fmt::format("{} (line {})", to_iso(again.day), first.line),
              say("The day already stands on an earlier line with other temperatures."),
              say("Keep the right one of the two, or name the column that tells the stations apart (option "
                  "station_column)."));
}

std::vector<RawReading> one_a_day(std::vector<RawReading> readings, LineFindings& lines) {
    std::ranges::stable_sort(readings, {}, &RawReading::day);
    std::vector<RawReading> kept;
    for (const RawReading& reading : readings) {
        if (!kept.empty() && kept.back().day == reading.day) {
            note_repeated(kept.back(), reading, lines);
        } else {
            kept.push_back(reading);
        }
    }
    return kept;
}

Sentence days_sentence(const std::vector<WeatherDay>& days) {
    if (days.empty()) {
        return say("No day was read.");
    }
    return say("{} days were read, from {} to {}.", days.size(), to_iso(days.front().day),
               to_iso(days.back().day));
}

}  // namespace

void LineFindings::add(Level level, int line, std::string field, std::string value, Sentence message,
                       Sentence remedy) {
    Kind& kind = kinds_[message.text()];
    kind.level = level;
    kind.message = message;
    if (++kind.count > findings_of_a_kind) {
        return;
    }
    findings_.push_back({.level = level,
                         .table = file_,
                         .row = say("line {}", line),
                         .field = std::move(field),
                         .value = std::move(value),
                         .message = std::move(message),
                         .remedy = std::move(remedy)});
}

void LineFindings::finish() {
    for (const auto& [text, kind] : kinds_) {
        if (const int untold = kind.count - findings_of_a_kind; untold > 0) {
            findings_.push_back({.level = kind.level,
                                 .table = file_,
                                 .row = {},
                                 .field = {},
                                 .value = fmt::format("{}", untold),
                                 .message = say("{} more lines like this: {}", untold, kind.message),
                                 .remedy = say("Mend the lines named first, then read the file again.")});
        }
    }
}

int LineFindings::count(const Sentence& message) const {
    const auto found = kinds_.find(message.text());
    return found == kinds_.end() ? 0 : found->second.count;
}

void LineFindings::forget(const Sentence& message) {
    std::erase_if(findings_, [&](const Finding& finding) { return finding.message == message; });
    kinds_.erase(message.text());
}

void take_readings(std::span<const RawReading> readings, TemperatureUnit unit,
                   const WeatherFileOptions& options, LineFindings& lines, WeatherImport& import) {
    std::vector<RawReading> good;
    std::ranges::copy_if(readings, std::back_inserter(good),
                         [&](const RawReading& reading) { return passes(reading, unit, lines); });
    for (const RawReading& reading : one_a_day(std::move(good), lines)) {
        import.days.push_back({.fid = 0,
                               .station = options.station,
                               .day = reading.day,
                               .t_min = to_celsius(reading.t_min, unit),
                               .t_max = to_celsius(reading.t_max, unit),
                               .source = options.source});
    }
    refuse_if_common(reversed, readings.size(), options,
                     say("On so many days the minimum lies above the maximum that the columns seem swapped."),
                     say("Name them with the options t_min_column and t_max_column."), lines,
                     import.findings);
    refuse_if_common(
        unbelievable, readings.size(), options,
        say("So many temperatures are beyond belief in {} that the unit seems wrong.", to_text(unit)),
        say("State the right unit with the option unit."), lines, import.findings);
    import.understood += verbatim(" ") + days_sentence(import.days);
}

}  // namespace pipward::weather
