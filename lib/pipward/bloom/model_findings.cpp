// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/model_findings.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "pipward/math/robust.h"

namespace pipward::bloom::detail {
namespace {

Finding unlikely_note(const Observation& observation, std::size_t which, double departure) {
    Finding finding;
    finding.level = Level::warning;
    finding.table = "bloom_note";
    finding.row = fmt::format("fid {}", observation.notes[which]);
    finding.field = "noted_on";
    finding.value = which < observation.noted_on.size() ? to_iso(observation.noted_on[which]) : "";
    finding.message = departure < 0 ? say("The note puts full bloom of {} {:.0f} days later than its other "
                                          "notes and the season's warmth lead to expect.",
                                          observation.accession, -departure)
                                    : say("The note puts full bloom of {} {:.0f} days earlier than its other "
                                          "notes and the season's warmth lead to expect.",
                                          observation.accession, departure);
    finding.remedy =
        say("Check the date, the stage and the tree; until then the note counts for little in the fit.");
    return finding;
}

// Of a spring's notes only those are unlikely that say so themselves.
double departure_of_note(const Observation& observation, std::size_t which, double departure) {
    return which < observation.told.size() ? departure + observation.full_bloom - observation.told[which]
                                           : departure;
}

void add_unlikely_notes(Findings& findings, const FitTable& table, const RowFit& fitted) {
    for (std::size_t i = 0; i < fitted.rows.size(); ++i) {
        const double departure = fitted.apart[i];
        const double limit = std::max(unlikely_days, math::unlikely_deviations * fitted.scale);
        if (std::abs(departure) <= limit) {
            continue;
        }
        const auto& observation = *table.rows[fitted.rows[i]].observation;
        for (std::size_t which = 0; which < observation.notes.size(); ++which) {
            if (std::abs(departure_of_note(observation, which, departure)) > limit) {
                findings.push_back(unlikely_note(observation, which, departure));
            }
        }
    }
}

void add_few_seasons(Findings& findings, int seasons) {
    if (seasons >= few_seasons) {
        return;
    }
    findings.push_back({Level::warning, "bloom_note", "", "noted_on",
                        (seasons == 1 ? say("1 season") : say("{} seasons", seasons)).text(),
                        say("The notes cover too few seasons to tell a good model from a lucky one."),
                        say("Bloom windows are kept wide; note bloom each spring and they will narrow.")});
}

Sentence named(const std::vector<std::string>& names) {
    constexpr std::size_t most = 5;
    std::string text;
    for (std::size_t i = 0; i < names.size() && i < most; ++i) {
        text += (i > 0 ? ", " : "") + names[i];
    }
    return names.size() <= most ? verbatim(text) : say("{} and {} more", text, names.size() - most);
}

Sentence borrowed_by(const Sentence& accessions, NeedSource source) {
    switch (source) {
        case NeedSource::mid_parent:
            return say("No usable bloom notes ({}): their bloom is reckoned between their parents'.",
                       accessions);
        case NeedSource::one_parent:
            return say(
                "No usable bloom notes ({}): their bloom is reckoned between their one known parent's and "
                "the orchard's mean.",
                accessions);
        default:
            return say("No usable bloom notes ({}): their bloom is reckoned at the orchard's mean.",
                       accessions);
    }
}

void add_borrowed(Findings& findings, const std::map<std::string, Need>& needs, NeedSource source) {
    std::vector<std::string> names;
    for (const auto& [name, need] : needs) {
        if (need.source == source) {
            names.push_back(name);
        }
    }
    if (names.empty()) {
        return;
    }
    findings.push_back(
        {Level::note, "accession", named(names), "", "",
         borrowed_by(names.size() == 1 ? say("1 accession") : say("{} accessions", names.size()), source),
         say("Note their bloom this spring.")});
}

}  // namespace

Findings model_findings(const FitTable& table, const RowFit& fitted,
                        const std::map<std::string, Need>& needs) {
    Findings findings;
    add_unlikely_notes(findings, table, fitted);
    add_few_seasons(findings, fitted.seasons);
    add_borrowed(findings, needs, NeedSource::mid_parent);
    add_borrowed(findings, needs, NeedSource::one_parent);
    add_borrowed(findings, needs, NeedSource::orchard_mean);
    return findings;
}

}  // namespace pipward::bloom::detail
