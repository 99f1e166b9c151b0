// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>
#include <vector>

#include "pipward/bloom/observation.h"

namespace pipward::bloom {

/// The curves of past seasons: those given, and those made from the seasons' weather when first wanted. What
/// is given must outlive the store.
class CurveStore {
  public:
    /// Curves in `given` are taken as they are; of the others `seasons` are the weather, at this latitude.
    CurveStore(const CurvesOf& given, std::span<const weather::SeasonWeather> seasons, Latitude latitude);

    /// The curves of a season at an offset from the station, kelvin; null for a season without curves and
    /// weather. Valid as long as the store.
    const SeasonCurves* at(Season season, double offset);
    /// The days of a season, null where there are none.
    const weather::SeasonWeather* weather(Season season) const;
    /// Every season that can lend its remainder, in order.
    std::span<const Season> seasons() const { return seasons_; }

  private:
    const CurvesOf* given_;
    std::map<Season, const weather::SeasonWeather*> weather_;
    std::vector<Season> seasons_;
    Latitude latitude_;
    CurvesOf made_;
};

}  // namespace pipward::bloom
