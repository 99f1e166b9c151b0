// SPDX-License-Identifier: MIT
// Prints how well bloom is forecast forward in time: the figures of the method description. Not a test: built
// with the tests, run by hand.
#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <string>
#include <vector>

#include "klein_altendorf.h"
#include "pipward/bloom/forward.h"
#include "pipward/season/pipeline.h"

namespace pipward::testing {
namespace {

constexpr Day long_ago_over{1000000};
const std::vector<bloom::DayOfYear> issue_days{{2, 15}, {3, 1}, {3, 15}, {4, 1}, {4, 15}};

std::string name_of(const bloom::ForwardScore& score) {
    return score.accession.empty() ? "all" : score.accession;
}

void print(const std::vector<bloom::ForwardScore>& scores, bool accessions) {
    fmt::print("{:16} {:18} {:>5} {:>6} {:>4} {:>6} {:>6} {:>6} {:>6} {:>7} {:>7}\n", "method", "of", "stage",
               "issued", "n", "rmse", "mae", "bias", "crps", "inside", "length");
    for (const auto& score : scores) {
        if (score.of_species || score.accession.empty() || accessions) {
            fmt::print(
                "{:16} {:18} {:5} {:02}-{:02}  {:4} {:6.2f} {:6.2f} {:6.2f} {:6.2f} {:6.0f}% {:7.2f}\n",
                bloom::to_text(score.method), name_of(score), score.stage.code, score.issued.month,
                score.issued.day, score.n, score.rmse, score.mae, score.bias, score.crps,
                100 * score.inside_80, score.length_bias.value_or(0));
        }
    }
}

// Weather known, one accession noted in `noted` springs only (those before the one forecast), the others in
// all.
double error_when_noted(const KleinAltendorf& read, const bloom::CurvesOf& curves,
                        const std::vector<bloom::Observation>& all, const bloom::Observation& target,
                        std::size_t noted) {
    std::vector<bloom::Observation> known;
    std::vector<bloom::Observation> own;
    for (const auto& other : all) {
        if (other.accession != target.accession && other.season != target.season) {
            known.push_back(other);
        } else if (other.accession == target.accession && other.season < target.season) {
            own.push_back(other);
        }
    }
    known.insert(known.end(), own.end() - static_cast<std::ptrdiff_t>(std::min(noted, own.size())),
                 own.end());
    const auto model = bloom::fit(bloom::BloomMethod::averaged, known, curves, read.orchard.accessions);
    const double day =
        bloom::predict(model, model.needs.at(target.accession), curves.at({target.season, 0.0}), {});
    return day - model.drift.at(target.season.year).mean - target.full_bloom;
}

void print_borrowed(const KleinAltendorf& read, const bloom::CurvesOf& curves,
                    const std::vector<bloom::Observation>& all) {
    for (const std::size_t noted : {0, 1, 3}) {
        for (const std::string genus : {"apple", "pear"}) {
            double squares = 0;
            int count = 0;
            for (const auto& one : all) {
                const bool is_pear = one.accession == "Alexander Lucas";
                if (one.season.year >= 1990 && (is_pear || one.season.year % 3 == 0) &&
                    is_pear == (genus == "pear")) {
                    const double error = error_when_noted(read, curves, all, one, noted);
                    squares += error * error;
                    ++count;
                }
            }
            fmt::print("{} noted springs, {}: RMSE {:.2f} ({})\n", noted, genus, std::sqrt(squares / count),
                       count);
        }
    }
}

bool asks_to_check_the_date(const Finding& finding) {
    return finding.table == "bloom_observation" && finding.field == "observed_on" &&
           finding.level == Level::warning;
}

std::set<std::string> named_as_unlikely(const KleinAltendorf& read, const bloom::CurvesOf& curves) {
    const auto seen = bloom::observe(read.orchard, read.station, Hemisphere::north, long_ago_over, curves);
    const auto model =
        bloom::fit(bloom::BloomMethod::averaged, seen.observations, curves, read.orchard.accessions);
    std::set<std::string> rows;
    for (const auto* findings : {&seen.findings, &model.findings}) {
        for (const auto& finding : *findings) {
            if (asks_to_check_the_date(finding)) {
                rows.insert(finding.row.text());
            }
        }
    }
    return rows;
}

// How many observations are named as unlikely, of the right ones and of some moved by two weeks.
void print_named(KleinAltendorf read, const bloom::CurvesOf& curves) {
    const auto right = named_as_unlikely(read, curves);
    fmt::print("of {} observations {} are named as unlikely\n", read.orchard.bloom_observations.size(),
               right.size());
    int moved = 0;
    std::set<std::string> planted;
    for (std::size_t i = 7; i < read.orchard.bloom_observations.size(); i += 29) {
        auto& seen = read.orchard.bloom_observations[i];
        seen.observed_on = seen.observed_on + (++moved % 2 == 0 ? 14 : -14);
        planted.insert(fmt::format("fid {}", seen.fid));
    }
    const auto named = named_as_unlikely(read, curves);
    const auto found =
        std::ranges::count_if(planted, [&](const std::string& row) { return named.contains(row); });
    fmt::print("of {} observations moved by 14 days {} are named, and {} others\n", moved, found,
               std::ssize(named) - found);
}

void print_meetings(const KleinAltendorf& read) {
    season::Place place;
    place.orchard = read.orchard;
    place.station = read.station;
    place.latitude = klein_altendorf_latitude;
    place.as_of = long_ago_over;
    season::Past past;
    past.seasons = read.seasons;
    for (const auto& score : season::score_meetings(place, past, {issue_days, 1990, {}})) {
        fmt::print(
            "{:9} {:02}-{:02} {:.1f} to {:.1f} n {:4} probability {:.3f} came {:.3f} Brier {:.4f} ({:.4f})\n",
            cross::to_text(score.way), score.issued.month, score.issued.day, score.probability_from,
            score.probability_to, score.n, score.mean_probability, score.observed_share, score.brier,
            score.brier_climatology);
    }
}

int report(bool accessions, bool rivals, bool meetings) {
    const auto read = read_klein_altendorf();
    if (!read) {
        fmt::print("The shared files bloom/klein-altendorf-*.csv are not here.\n");
        return 3;
    }
    bloom::ForwardRequest request{issue_days, 1990, {}};
    if (!rivals) {
        request.methods = {bloom::BloomMethod::averaged};
    }
    const bloom::ForwardGround ground{read->orchard, read->station, klein_altendorf_latitude, long_ago_over,
                                      read->seasons};
    print(bloom::forward_scores(bloom::forward_cases(ground, request)), accessions);
    const auto stages =
        bloom::stages_seen(read->orchard, read->station, Hemisphere::north, long_ago_over).stages;
    const auto curves = bloom::curves_for_observations(stages, read->seasons, klein_altendorf_latitude);
    print_named(*read, curves);
    if (meetings) {
        print_meetings(*read);
    }
    if (accessions) {
        const auto seen =
            bloom::observe(read->orchard, read->station, Hemisphere::north, long_ago_over, curves);
        print_borrowed(*read, curves, seen.observations);
    }
    return 0;
}

}  // namespace
}  // namespace pipward::testing

int main(int count, char** words) {
    bool accessions = false;
    bool rivals = false;
    bool meetings = false;
    for (int i = 1; i < count; ++i) {
        accessions = accessions || std::string(words[i]) == "accessions";
        rivals = rivals || std::string(words[i]) == "rivals";
        meetings = meetings || std::string(words[i]) == "meetings";
    }
    return pipward::testing::report(accessions, rivals, meetings);
}
