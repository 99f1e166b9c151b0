// SPDX-License-Identifier: MIT
#include "pipward/bloom/stage_ladder.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pipward::bloom {
namespace {

// From 10 % open at -35 degree-days to half open at 0: 35 / ln 9.
const double degree_days_per_logit = 35.0 / std::log(9.0);

struct Rung {
    Bbch stage;
    double after_full;  // degree-days above ladder_base
    double sd_days;
};

// Before first bloom the rungs are set so that, at usual spring temperatures, bud burst stands a month
// before full bloom (31 days on average, 17 to 50: Michigan State University, McIntosh on the Peach Ridge
// since 1976), pink some nine days and balloon some five days: common practice, no source. A note is the less
// certain the farther its stage stands from full bloom, and where the stage lasts for days.
constexpr std::array early_rungs{
    Rung{{51}, -235, 7.0}, Rung{{52}, -215, 6.0}, Rung{{53}, -195, 5.0}, Rung{{54}, -165, 4.0},
    Rung{{55}, -130, 3.0}, Rung{{56}, -105, 2.5}, Rung{{57}, -80, 2.0},  Rung{{59}, -55, 1.5},
};
constexpr std::array late_rungs{Rung{{67}, 55, 2.0}, Rung{{69}, 75, 2.5}};

// 61 to 64 are the tenths of the scale's own definition, 65 is half; 60, the first flowers, is put at one in
// twenty (common practice, no source).
struct OpenShare {
    Bbch stage;
    double open;  // share of flowers, 0..1
    double sd_days;
};

constexpr std::array open_shares{
    OpenShare{{60}, 0.05, 1.2}, OpenShare{{61}, 0.10, 1.0}, OpenShare{{62}, 0.20, 1.0},
    OpenShare{{63}, 0.30, 1.0}, OpenShare{{64}, 0.40, 1.0}, OpenShare{{65}, 0.50, 1.0},
};

template <class Rungs>
std::optional<LadderPlace> place_on(const Rungs& rungs, Bbch stage) {
    const auto found = std::ranges::find(rungs, stage, &Rung::stage);
    return found == rungs.end() ? std::nullopt
                                : std::optional{LadderPlace{{found->after_full}, found->sd_days}};
}

}  // namespace

// The logit and its inverse, share_opened(): at 0 half are open.
DegreeDays ladder_place_of_share(Share open) {
    const double share = std::clamp(open.value, 0.01, 0.99);
    return {degree_days_per_logit * std::log(share / (1 - share))};
}

Share share_opened(DegreeDays after_full) {
    return {1 / (1 + std::exp(-after_full.value / degree_days_per_logit))};
}

std::optional<LadderPlace> ladder_place(Bbch stage) {
    const auto* const found = std::ranges::find(open_shares, stage, &OpenShare::stage);
    if (found != open_shares.end()) {
        return LadderPlace{ladder_place_of_share({found->open}), found->sd_days};
    }
    return stage < first_bloom ? place_on(early_rungs, stage) : place_on(late_rungs, stage);
}

}  // namespace pipward::bloom
