// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/model_findings.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "pipward/math/robust.h"

namespace pipward::bloom::detail {
namespace {

// Observations of one spring that agree with each other are one question, asked once.
struct Unlikely {
    const Observation& observation;
    std::vector<std::size_t> which;
    double departure = 0;
};

std::string fids_of(const Unlikely& unlikely) {
    std::string fids;
    for (const auto which : unlikely.which) {
        fids += fmt::format("{}{}", fids.empty() ? "" : ", ", unlikely.observation.observations[which]);
    }
    return fids;
}

Sentence departs_alone(const Unlikely& unlikely) {
    const auto& accession = unlikely.observation.accession;
    return unlikely.departure < 0 ? say("By this observation full bloom of {} is {:.0f} days later than "
                                        "its other observations and the season's warmth suggest.",
                                        accession, -unlikely.departure)
                                  : say("By this observation full bloom of {} is {:.0f} days earlier than "
                                        "its other observations and the season's warmth suggest.",
                                        accession, unlikely.departure);
}

Sentence departs_together(const Unlikely& unlikely) {
    const auto& accession = unlikely.observation.accession;
    return unlikely.departure < 0
               ? say("By {} observations of this spring (fid {}) full bloom of {} is {:.0f} days later than "
                     "its other springs and the season's warmth suggest.",
                     unlikely.which.size(), fids_of(unlikely), accession, -unlikely.departure)
               : say("By {} observations of this spring (fid {}) full bloom of {} is {:.0f} days earlier "
                     "than "
                     "its other springs and the season's warmth suggest.",
                     unlikely.which.size(), fids_of(unlikely), accession, unlikely.departure);
}

// Of a spring's notes only those are unlikely that say so themselves.
double departure_of_note(const Observation& observation, std::size_t which, double departure) {
    return which < observation.told.size() ? departure + observation.full_bloom - observation.told[which]
                                           : departure;
}

Finding unlikely_observation(const Unlikely& unlikely) {
    const auto& observation = unlikely.observation;
    const auto farthest = std::ranges::max(unlikely.which, {}, [&](std::size_t which) {
        return std::abs(departure_of_note(observation, which, unlikely.departure));
    });
    Finding finding;
    finding.level = Level::warning;
    finding.table = "bloom_observation";
    finding.row = fmt::format("fid {}", observation.observations[farthest]);
    finding.field = "observed_on";
    finding.value =
        farthest < observation.observed_on.size() ? to_iso(observation.observed_on[farthest]) : "";
    finding.message = unlikely.which.size() == 1 ? departs_alone(unlikely) : departs_together(unlikely);
    finding.remedy = say(
        "Check the date, the stage and the tree; until then the observation has little weight in the fit.");
    return finding;
}

void add_unlikely_observations(Findings& findings, const FitTable& table, const RowFit& fitted) {
    for (std::size_t i = 0; i < fitted.rows.size(); ++i) {
        const double departure = fitted.apart[i];
        const double limit = std::max(unlikely_days, math::unlikely_deviations * fitted.scale);
        if (std::abs(departure) <= limit) {
            continue;
        }
        Unlikely unlikely{*table.rows[fitted.rows[i]].observation, {}, departure};
        for (std::size_t which = 0; which < unlikely.observation.observations.size(); ++which) {
            if (std::abs(departure_of_note(unlikely.observation, which, departure)) > limit) {
                unlikely.which.push_back(which);
            }
        }
        if (!unlikely.which.empty()) {
            findings.push_back(unlikely_observation(unlikely));
        }
    }
}

void add_few_seasons(Findings& findings, int seasons) {
    if (seasons >= few_seasons) {
        return;
    }
    findings.push_back(
        {Level::warning, "bloom_observation", "", "observed_on",
         (seasons == 1 ? say("1 season") : say("{} seasons", seasons)).text(),
         say("The observations cover too few seasons to tell a good model from a lucky one."),
         say("The prediction intervals stay wide; record bloom each spring and they will narrow.")});
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
            return say("No usable bloom observations ({}): their bloom is forecast between their parents'.",
                       accessions);
        case NeedSource::one_parent:
            return say(
                "No usable bloom observations ({}): their bloom is forecast between their one known parent's "
                "and the orchard's mean.",
                accessions);
        default:
            return say("No usable bloom observations ({}): their bloom is forecast at the orchard's mean.",
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
        {Level::notice, "accession", named(names), "", "",
         borrowed_by(names.size() == 1 ? say("1 accession") : say("{} accessions", names.size()), source),
         say("Record their bloom this spring.")});
}

}  // namespace

Findings model_findings(const FitTable& table, const RowFit& fitted,
                        const std::map<std::string, Need>& needs) {
    Findings findings;
    add_unlikely_observations(findings, table, fitted);
    add_few_seasons(findings, fitted.seasons);
    add_borrowed(findings, needs, NeedSource::mid_parent);
    add_borrowed(findings, needs, NeedSource::one_parent);
    add_borrowed(findings, needs, NeedSource::orchard_mean);
    return findings;
}

}  // namespace pipward::bloom::detail
