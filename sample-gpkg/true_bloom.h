// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "parents.h"
#include "pipward/value/quantity.h"
#include "weather_story.h"

/// When the made-up trees truly bloomed: a rule that the book does not tell and that is none of the planner's
/// own, so that the planner has something to find out.
namespace pipward::larkfold {

/// Running sums of a spring at one place on the slope, read at each noon from 1 October on.
struct Spring {
    Day first;
    std::vector<double> chill;  ///< chill portions
    std::vector<double> heat;   ///< growing degree hours, ASYMCUR
    std::vector<double> open;   ///< degree-days above 4.5 °C: the pace of flowers
};

class TrueBloom {
  public:
    explicit TrueBloom(const TrueWeather& weather);

    /// Full bloom of an accession where the air is `warmer` than at the station by so much, as days after
    /// 1 January, noon being whole: ASYMCUR heat from the day on which its chill is met (1 March at the
    /// latest), then the luck of the season (sd 1.0 day, the whole orchard's) and its own (sd 0.9 day).
    double full_bloom(const Parent& parent, int year, double warmer);
    /// Degree-days after full bloom (negative before) at noon of `day`, at the accession's own pace.
    double after_full(const Parent& parent, Day day, double warmer);
    /// The day on which the accession stands nearest to `after_full` degree-days from full bloom.
    Day day_at(const Parent& parent, int year, double warmer, double after_full);

  private:
    const Spring& spring(int year, double warmer);

    const TrueWeather& weather_;
    struct SpringKey {
        int year = 0;
        int warmer = 0;  ///< than the station, in hundredths of a kelvin

        auto operator<=>(const SpringKey&) const = default;
    };
    std::map<SpringKey, Spring> springs_;
};

/// How much warmer than the station a tree stands, in kelvin: 6.5 a kilometre, to the hundredth.
double warmer_than_station(Metres elevation);

}  // namespace pipward::larkfold
