// SPDX-License-Identifier: MIT
#include "pipward/bloom/curve_store.h"

namespace pipward::bloom {

CurveStore::CurveStore(const CurvesOf& given, std::span<const weather::SeasonWeather> seasons,
                       Latitude latitude)
    : given_(&given), latitude_(latitude) {
    for (const auto& weather : seasons) {
        weather_.emplace(weather.season, &weather);
    }
    for (const auto& [season, weather] : weather_) {
        seasons_.push_back(season);
    }
}

const weather::SeasonWeather* CurveStore::weather(Season season) const {
    const auto found = weather_.find(season);
    return found == weather_.end() ? nullptr : found->second;
}

const SeasonCurves* CurveStore::at(Season season, double offset) {
    const CurvesKey key{season, offset};
    if (const auto found = given_->find(key); found != given_->end()) {
        return &found->second;
    }
    if (const auto found = made_.find(key); found != made_.end()) {
        return &found->second;
    }
    const auto* of_season = weather(season);
    if (of_season == nullptr) {
        return nullptr;
    }
    auto curves = season_curves(of_season->days, of_season->first, latitude_, {offset});
    return &made_.emplace(key, std::move(curves)).first->second;
}

}  // namespace pipward::bloom
