// SPDX-License-Identifier: MIT
// Prints how well bloom is forecast forward in time: the figures of the method description. Not a test: built
// with the tests, run by hand.
#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <set>
#include <span>
#include <string>
#include <tuple>
#include <vector>

#include "klein_altendorf.h"
#include "pipward/bloom/forward.h"
#include "pipward/bloom/observed_stages.h"
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

// Full bloom decade by decade: a bias that grows tells that the model does not follow the climate.
void print_decades(const std::vector<bloom::ForwardCase>& cases) {
    struct Sum {
        double errors = 0;
        double squares = 0;
        int n = 0;
    };
    std::map<std::tuple<std::string, bloom::DayOfYear, int>, Sum> sums;
    for (const auto& one : cases) {
        if (one.method == bloom::BloomMethod::averaged && one.stage == full_bloom) {
            auto& sum = sums[{one.species, one.issued, one.season.year / 10 * 10}];
            sum.errors += one.error;
            sum.squares += one.error * one.error;
            ++sum.n;
        }
    }
    for (const auto& [key, sum] : sums) {
        const auto& [species, issued, decade] = key;
        fmt::print("{:16} {:02}-{:02} {}s: n {:3} bias {:5.2f} RMSE {:5.2f}\n", species, issued.month,
                   issued.day, decade, sum.n, sum.errors / sum.n, std::sqrt(sum.squares / sum.n));
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

// A line between the days before and after takes the place of `length` days.
weather::SeasonWeather with_filled_gap(weather::SeasonWeather season, Day first, int length) {
    const auto begin = static_cast<std::size_t>(first - season.first);
    const auto end = begin + static_cast<std::size_t>(length);
    const auto before = season.days.at(begin - 1);
    const auto after = season.days.at(end);
    for (auto i = begin; i < end; ++i) {
        const double share = static_cast<double>(i - begin + 1) / (length + 1);
        season.days[i] = {before.t_min + (after.t_min - before.t_min) * share,
                          before.t_max + (after.t_max - before.t_max) * share};
    }
    return season;
}

double predicted(const bloom::BloomModel& model, const bloom::CurvesOf& curves,
                 const bloom::Observation& seen) {
    return bloom::predict(model, model.needs.at(seen.accession), curves.at({seen.season, 0.0}), {});
}

// What a gap that is filled costs, the weather known: change of the day, and of its error.
void print_gap(const KleinAltendorf& read, const std::vector<bloom::StageSeen>& stages, int month, int day,
               int length) {
    auto seasons = read.seasons;
    for (auto& season : seasons) {
        const int year = month >= 10 ? season.season.year - 1 : season.season.year;
        season = with_filled_gap(season, *make_day({year, month, day}), length);
    }
    const auto whole = bloom::curves_for_observations(stages, read.seasons, klein_altendorf_latitude);
    const auto gappy = bloom::curves_for_observations(stages, seasons, klein_altendorf_latitude);
    const auto seen = bloom::observe(read.orchard, read.station, Hemisphere::north, long_ago_over, whole);
    const auto model =
        bloom::fit(bloom::BloomMethod::averaged, seen.observations, whole, read.orchard.accessions);
    double moved = 0;
    double squares = 0;
    double gappy_squares = 0;
    for (const auto& one : seen.observations) {
        const double known = predicted(model, whole, one);
        const double filled = predicted(model, gappy, one);
        moved += std::abs(filled - known);
        squares += (known - one.full_bloom) * (known - one.full_bloom);
        gappy_squares += (filled - one.full_bloom) * (filled - one.full_bloom);
    }
    const auto n = static_cast<double>(seen.observations.size());
    fmt::print("gap of {:2} days from {:02}-{:02}: moves full bloom by {:.3f} d, RMSE {:.3f} to {:.3f} d\n",
               length, month, day, moved / n, std::sqrt(squares / n), std::sqrt(gappy_squares / n));
}

void print_gaps(const KleinAltendorf& read) {
    const auto stages =
        bloom::stages_seen(read.orchard, read.station, Hemisphere::north, long_ago_over).stages;
    for (const auto& [month, day] : {std::pair{10, 10}, {11, 1}, {11, 20}, {12, 10}, {1, 5}, {1, 20}}) {
        print_gap(read, stages, month, day, 10);
    }
    for (const auto& [month, day] : {std::pair{10, 10}, {12, 10}, {1, 15}}) {
        print_gap(read, stages, month, day, 14);
    }
    for (const auto& [month, day] : {std::pair{2, 5}, {2, 15}, {3, 10}, {4, 1}}) {
        print_gap(read, stages, month, day, 5);
    }
}

// Squared error of full bloom against that of the last springs' mean, spring by spring (a spring's accessions
// tell one thing): whether a difference is more than chance.
void print_against_recent_mean(const std::vector<bloom::ForwardCase>& cases) {
    using Key = std::tuple<std::string, bloom::DayOfYear, Season>;
    struct Pair {
        double gain = 0;
        int n = 0;
    };
    std::map<Key, Pair> springs;
    for (const auto& one : cases) {
        if (one.stage == full_bloom) {
            auto& pair = springs[{one.species, one.issued, one.season}];
            const double square = one.error * one.error;
            pair.gain += one.method == bloom::BloomMethod::averaged      ? square
                         : one.method == bloom::BloomMethod::recent_mean ? -square
                                                                         : 0;
            pair.n += one.method == bloom::BloomMethod::averaged ? 1 : 0;
        }
    }
    std::map<std::pair<std::string, bloom::DayOfYear>, std::vector<double>> by_issue;
    for (const auto& [key, pair] : springs) {
        by_issue[{std::get<0>(key), std::get<1>(key)}].push_back(pair.gain / pair.n);
    }
    for (const auto& [key, gains] : by_issue) {
        const auto n = static_cast<double>(gains.size());
        double mean = 0;
        double squares = 0;
        for (const double gain : gains) {
            mean += gain / n;
        }
        for (const double gain : gains) {
            squares += (gain - mean) * (gain - mean);
        }
        fmt::print(
            "{:16} {:02}-{:02} squared error less that of the recent mean: {:6.1f} +- {:.1f} ({} springs)\n",
            key.first, key.second.month, key.second.day, mean, std::sqrt(squares / (n - 1) / n),
            gains.size());
    }
}

// A young record in years in which springs grew no warmer, beside the plain means: what was chosen with later
// springs in view must hold here as well.
void print_early(KleinAltendorf read) {
    constexpr int first = 1966;
    constexpr int last = 1989;
    std::erase_if(read.seasons, [](const auto& season) { return season.season.year > last; });
    std::erase_if(read.orchard.bloom_observations,
                  [](const auto& seen) { return parts_of(seen.observed_on).year > last; });
    const bloom::ForwardGround ground{read.orchard, read.station, klein_altendorf_latitude, long_ago_over,
                                      read.seasons};
    const bloom::ForwardRequest request{
        issue_days,
        first,
        {bloom::BloomMethod::averaged, bloom::BloomMethod::mean_day, bloom::BloomMethod::recent_mean}};
    fmt::print("springs {} to {}, nothing known of later ones\n", first, last);
    const auto cases = bloom::forward_cases(ground, request);
    print(bloom::forward_scores(cases), false);
    print_against_recent_mean(cases);
}

struct Waited {
    double without = 0;  // sums of squares
    double with_note = 0;
    int n = 0;
};

double error_on_eve(const KleinAltendorf& read, const bloom::BloomModel& model, const bloom::Ladders& ladders,
                    std::span<const weather::SeasonWeather> past, const weather::SeasonWeather& spring,
                    const std::string& accession, Day day, std::span<const bloom::NotYet> looks,
                    double observed) {
    weather::CurrentSeason current{spring, 0, {}};
    current.weather.days.resize(static_cast<std::size_t>(day - spring.first));
    current.observed_days = static_cast<int>(current.weather.days.size());
    const auto forecast = bloom::forecast_bloom(model, {current,
                                                        day,
                                                        past,
                                                        klein_altendorf_latitude,
                                                        read.station,
                                                        read.orchard.trees,
                                                        read.orchard.accessions,
                                                        {},
                                                        looks,
                                                        ladders});
    const auto& window = forecast.windows[forecast.of_accession.at(accession)];
    return (window.full.p50 - anchor_of(spring.season, Hemisphere::north)) - observed;
}

// Walked on the usual day of first bloom, and nothing was open: the springs in which that was so, forecast
// without and with the note of it, the weather after that day hidden.
void print_not_yet(const KleinAltendorf& read, const std::vector<bloom::StageSeen>& stages,
                   const bloom::CurvesOf& curves, int first) {
    const auto observed = bloom::observed_stages(stages, Hemisphere::north);
    std::map<std::string, Waited> waited;
    for (const auto& spring : read.seasons) {
        if (spring.season.year < first) {
            continue;
        }
        std::vector<weather::SeasonWeather> past;
        std::ranges::copy_if(read.seasons, std::back_inserter(past),
                             [&](const auto& other) { return other.season < spring.season; });
        bloom::CurvesOf before;
        std::ranges::copy_if(curves, std::inserter(before, before.end()),
                             [&](const auto& entry) { return entry.first.season < spring.season; });
        const Day anchor = anchor_of(spring.season, Hemisphere::north);
        const auto seen =
            bloom::observe(read.orchard, read.station, Hemisphere::north, anchor + season_first - 1, before);
        const auto model =
            bloom::fit(bloom::BloomMethod::averaged, seen.observations, before, read.orchard.accessions);
        for (const auto& [key, days] : observed) {
            double sum = 0;
            int springs = 0;
            for (const auto& [other, other_days] : observed) {
                if (other.accession == key.accession && other.season < spring.season &&
                    other_days.contains(first_bloom)) {
                    sum += other_days.at(first_bloom);
                    ++springs;
                }
            }
            if (key.season != spring.season || springs < 3 || !days.contains(first_bloom) ||
                !days.contains(full_bloom)) {
                continue;
            }
            const auto usual = static_cast<int>(std::lround(sum / springs));
            if (days.at(first_bloom) <= usual) {
                continue;
            }
            const std::vector<bloom::NotYet> looks{{key.accession, {0}, spring.season, anchor + usual}};
            auto& of = waited[key.accession == "Alexander Lucas" ? "pear" : "apple"];
            const auto error = [&](std::span<const bloom::NotYet> told) {
                return error_on_eve(read, model, seen.ladders, past, spring, key.accession, anchor + usual,
                                    told, days.at(full_bloom));
            };
            of.without += std::pow(error({}), 2);
            of.with_note += std::pow(error(looks), 2);
            ++of.n;
        }
    }
    for (const auto& [kind, of] : waited) {
        fmt::print(
            "not yet in bloom on the usual day, {}: RMSE {:.2f} without the note, {:.2f} with it ({})\n",
            kind, std::sqrt(of.without / of.n), std::sqrt(of.with_note / of.n), of.n);
    }
}

int report(bool accessions, bool rivals, bool meetings, bool early) {
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
    const auto cases = bloom::forward_cases(ground, request);
    print(bloom::forward_scores(cases), accessions);
    print_decades(cases);
    if (rivals) {
        print_against_recent_mean(cases);
    }
    const auto stages =
        bloom::stages_seen(read->orchard, read->station, Hemisphere::north, long_ago_over).stages;
    const auto curves = bloom::curves_for_observations(stages, read->seasons, klein_altendorf_latitude);
    print_named(*read, curves);
    print_gaps(*read);
    if (meetings) {
        print_meetings(*read);
    }
    if (early) {
        print_not_yet(*read, stages, curves, 1966);
        print_early(*read);
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
    bool early = false;
    for (int i = 1; i < count; ++i) {
        accessions = accessions || std::string(words[i]) == "accessions";
        rivals = rivals || std::string(words[i]) == "rivals";
        meetings = meetings || std::string(words[i]) == "meetings";
        early = early || std::string(words[i]) == "early";
    }
    return pipward::testing::report(accessions, rivals, meetings, early);
}
