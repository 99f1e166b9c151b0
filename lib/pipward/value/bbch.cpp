// SPDX-License-Identifier: MIT
#include "pipward/value/bbch.h"

#include <algorithm>
#include <array>

namespace pipward::value {
namespace {

constexpr std::array stages{
    BbchWords{{0}, "dormant: scales closed and dark"},
    BbchWords{{1}, "leaf buds begin to swell"},
    BbchWords{{3}, "leaf buds swollen: scales light, partly hairy"},
    BbchWords{{7}, "bud break: first green tips just seen"},
    BbchWords{{9}, "green leaf tips 5 mm out"},
    BbchWords{{10}, "mouse-ear: green tips 10 mm, leaves parting"},
    BbchWords{{11}, "first leaves open"},
    BbchWords{{15}, "more leaves open, not full size"},
    BbchWords{{19}, "first leaves full size"},
    BbchWords{{31}, "shoot growth begins"},
    BbchWords{{32}, "shoots 20 % of final length"},
    BbchWords{{33}, "shoots 30 % of final length"},
    BbchWords{{34}, "shoots 40 % of final length"},
    BbchWords{{35}, "shoots 50 % of final length"},
    BbchWords{{36}, "shoots 60 % of final length"},
    BbchWords{{37}, "shoots 70 % of final length"},
    BbchWords{{38}, "shoots 80 % of final length"},
    BbchWords{{39}, "shoots 90 % of final length"},
    BbchWords{{51}, "flower buds swell"},
    BbchWords{{52}, "flower buds swollen"},
    BbchWords{{53}, "bud burst: green tips around the flowers seen"},
    BbchWords{{54}, "mouse-ear on the flower bud"},
    BbchWords{{55}, "flower buds visible, still closed"},
    BbchWords{{56}, "green bud: flowers parting, closed"},
    BbchWords{{57}, "pink bud: petals just seen"},
    BbchWords{{59}, "balloon: most flowers are hollow balls"},
    BbchWords{{60}, "first flowers open"},
    BbchWords{{61}, "about 10 % of flowers open"},
    BbchWords{{62}, "about 20 % of flowers open"},
    BbchWords{{63}, "about 30 % of flowers open"},
    BbchWords{{64}, "about 40 % of flowers open"},
    BbchWords{{65}, "full bloom: half or more open, first petals fall"},
    BbchWords{{67}, "fading: most petals fallen"},
    BbchWords{{69}, "end of bloom: all petals fallen"},
    BbchWords{{71}, "fruit to 10 mm, first drop"},
    BbchWords{{72}, "fruit to 20 mm"},
    BbchWords{{73}, "second fruit drop"},
    BbchWords{{74}, "fruit to 40 mm, still upright"},
    BbchWords{{75}, "fruit half of final size"},
    BbchWords{{76}, "fruit 60 % of final size"},
    BbchWords{{77}, "fruit 70 % of final size"},
    BbchWords{{78}, "fruit 80 % of final size"},
    BbchWords{{79}, "fruit 90 % of final size"},
    BbchWords{{81}, "ripening begins: first colour"},
    BbchWords{{85}, "colour deepens"},
    BbchWords{{87}, "ripe for picking"},
    BbchWords{{89}, "ripe for eating"},
    BbchWords{{91}, "shoot growth ended, leaves green"},
    BbchWords{{92}, "leaves begin to turn"},
    BbchWords{{93}, "leaf fall begins"},
    BbchWords{{95}, "half the leaves turned or fallen"},
    BbchWords{{97}, "all leaves fallen"},
    BbchWords{{99}, "harvested and stored"},
};

}  // namespace

std::span<const BbchWords> bbch_stages() {
    return stages;
}

std::optional<Bbch> make_bbch(int code) {
    const auto found = std::ranges::find(stages, Bbch{code}, &BbchWords::stage);
    return found == stages.end() ? std::nullopt : std::optional{found->stage};
}

std::string_view words_of(Bbch stage) {
    const auto found = std::ranges::find(stages, stage, &BbchWords::stage);
    return found == stages.end() ? std::string_view{} : found->words;
}

}  // namespace pipward::value
