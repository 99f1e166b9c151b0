// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

namespace pipward::bloom {

/// What was found in one year.
struct YearValue {
    int year = 0;      ///< the calendar year
    double value = 0;  ///< in the unit of the record
};

/// A steady change that may be, and how likely it is beforehand.
struct YearlyTrend {
    double a_year = 0;  ///< in the unit of the values
    double weight = 1;  ///< above 0; those of all trends together need not be 1
};

/// The level of a year as it is known.
struct UsualLevel {
    double mean = 0;  ///< expected, in the unit of the values
    double sd = 0;    ///< how uncertain that is, at least 0
};

/// What is usual in a year, where the usual itself may wander: value = level + noise, the level a random walk
/// from year to year (the local level model: Harvey 1989, Forecasting, Structural Time Series Models and the
/// Kalman Filter). How fast it wanders is learned: fixed paces from standing still on are averaged by how
/// well each forecasts the values one by one, so that a record that stands still keeps its plain mean and one
/// that wanders forgets what is long past.
class WanderingLevel {
  public:
    /// Nothing is known: level 0 without spread.
    WanderingLevel() = default;
    /// `values` in any order, a year once. `usual_noise` is the noise expected, worth three values. `trends`
    /// are averaged in the same way; none is no trend. Range of `still`: 0..1, how likely it is beforehand
    /// that the level does not wander.
    WanderingLevel(std::vector<YearValue> values, double usual_noise, double still,
                   std::span<const YearlyTrend> trends = {});

    /// The level of a year by the values of all other years, before and after.
    UsualLevel at(int year) const;
    /// Mean pace: the variance of a year's step over that of the noise.
    double pace() const;

  private:
    struct Paced {
        double trend = 0;  // a year
        double pace = 0;
        double noise = 1;  // variance
        double weight = 0;
    };

    UsualLevel at(int year, const Paced& paced) const;

    std::vector<YearValue> values_;  // about their mean
    double middle_ = 0;
    double middle_year_ = 0;
    std::vector<Paced> paces_;
};

}  // namespace pipward::bloom
