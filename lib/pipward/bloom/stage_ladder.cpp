// SPDX-License-Identifier: MIT
#include "pipward/bloom/stage_ladder.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pipward::bloom {
namespace {

// Close to the means of those springs (apples -46 and 102, the pear -37 and 89 degree-days), with which they
// were joined as means over other cultivars of the orchard. A book's own staged observations move them
// further.
constexpr StageLadder apple_ladder{{-52}, {108}, 2.4, 2.7};
constexpr StageLadder pear_ladder{{-38}, {86}, 2.0, 2.7};

constexpr double noting_sd = 1.0;  // days, of a note of full bloom

struct Rung {
    Bbch stage;
    double after_full;  // degree-days above ladder_base
    double sd_days;
};

// Before first bloom the rungs are set so that, at usual spring temperatures, bud burst stands a month
// before full bloom (31 days on average, 17 to 50: Michigan State University, McIntosh on the Peach Ridge
// since 1976), pink some nine days and balloon a week: common practice, no source. A note is the less
// certain the farther its stage stands from full bloom, and where the stage lasts for days.
constexpr std::array early_rungs{
    Rung{{51}, -400, 7.5}, Rung{{52}, -350, 6.5}, Rung{{53}, -300, 5.5}, Rung{{54}, -245, 4.5},
    Rung{{55}, -190, 4.0}, Rung{{56}, -155, 3.5}, Rung{{57}, -120, 3.2}, Rung{{59}, -85, 2.9},
};

constexpr Bbch falling_petals{67};
constexpr double fallen_by_67 = 0.73;  // of the way from full bloom to the end: common practice, no source

// 61 to 64 are the tenths of the scale's own definition, 65 is half; 60, the first flowers, is put at one in
// twenty (common practice, no source).
struct OpenShare {
    Bbch stage;
    double open;  // share of flowers, 0..1
};

constexpr std::array open_shares{
    OpenShare{{60}, 0.05}, OpenShare{{61}, 0.10}, OpenShare{{62}, 0.20},
    OpenShare{{63}, 0.30}, OpenShare{{64}, 0.40}, OpenShare{{65}, 0.50},
};

// From 5 % open at first bloom to half open at 0, on the scale of the logit; share_opened() is its inverse.
double degree_days_per_logit(const StageLadder& ladder) {
    return -ladder.first.value / std::log(0.95 / 0.05);
}

// A part of the way to the end of bloom has that part of its noise.
LadderPlace between(double after_full, double whole_way, double whole_sd) {
    return {{after_full}, std::hypot(noting_sd, whole_sd * after_full / whole_way)};
}

LadderPlace late_place(double part, const StageLadder& ladder) {
    return between(part * ladder.end.value, ladder.end.value, ladder.end_sd_days);
}

}  // namespace

StageLadder usual_ladder(std::string_view species) {
    return species.substr(0, species.find(' ')) == "Pyrus" ? pear_ladder : apple_ladder;
}

DegreeDays ladder_place_of_share(Share open, const StageLadder& ladder) {
    const double share = std::clamp(open.value, 0.01, 0.99);
    return {degree_days_per_logit(ladder) * std::log(share / (1 - share))};
}

Share share_opened(DegreeDays after_full, const StageLadder& ladder) {
    return {1 / (1 + std::exp(-after_full.value / degree_days_per_logit(ladder)))};
}

std::optional<LadderPlace> ladder_place(Bbch stage, const StageLadder& ladder) {
    if (const auto* const open = std::ranges::find(open_shares, stage, &OpenShare::stage);
        open != open_shares.end()) {
        const double place = ladder_place_of_share({open->open}, ladder).value;
        return between(place, ladder.first.value, ladder.first_sd_days);
    }
    if (const auto* const early = std::ranges::find(early_rungs, stage, &Rung::stage);
        early != early_rungs.end()) {
        return LadderPlace{{early->after_full}, early->sd_days};
    }
    if (stage == falling_petals || stage == bloom_end) {
        return late_place(stage == bloom_end ? 1 : fallen_by_67, ladder);
    }
    return std::nullopt;
}

}  // namespace pipward::bloom
