// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/adopt_ground.h"

#include "pipward/place/whereabouts_check.h"

namespace pipward::intake::detail {
namespace {

void tell_outside(Adoption& adoption, AdoptRow& row, const MapPoint& point, const std::string& book_crs) {
    auto [message, remedy] =
        place::words_of_outside(place::ToEarth(adoption.crs)(point).value_or(place::LonLat{}), book_crs);
    adoption.complain(row, {Level::error, {}, {}, std::move(message), std::move(remedy)});
}

void tell_doubt(Adoption& adoption, AdoptRow& row, const MapPoint& point, place::PlaceDoubt doubt,
                const place::PlaceJudge& judge, const std::string& book_crs) {
    switch (doubt) {
        case place::PlaceDoubt::none:
            return;
        case place::PlaceDoubt::far:
            return adoption.complain(row, {Level::warning,
                                           {},
                                           {},
                                           say("It lies {:.0f} km from everything else in the book.",
                                               judge.away(point).value_or(Metres{}).value / 1000),
                                           say("Check the coordinates and their system.")});
        case place::PlaceDoubt::degrees:
            return adoption.complain(
                row, {Level::error,
                      {},
                      {},
                      say("These numbers look like degrees, but {} counts metres.",
                          place::system_name(adoption.crs)),
                      say("Give their coordinate system: for GNSS degrees, layer-crs EPSG:4326.")});
        case place::PlaceDoubt::exchanged:
            return adoption.complain(
                row, {Level::error,
                      {},
                      {},
                      judge.words_of_exchange(),
                      say("If all of them are, give swap-axes yes; else correct it in the layer.")});
        case place::PlaceDoubt::nowhere:
            return adoption.complain(
                row, {Level::error,
                      {},
                      {},
                      say("This is no location on the earth in {}.", place::system_name(adoption.crs)),
                      say("Check the coordinates and their system.")});
        case place::PlaceDoubt::outside:
            return tell_outside(adoption, row, point, book_crs);
    }
}

}  // namespace

bool judge_whereabouts(Adoption& adoption, std::span<const place::LonLat> known,
                       const std::string& book_crs) {
    const place::PlaceJudge judge(adoption.crs, known, book_crs);
    bool sound = true;
    for (auto& row : adoption.rows) {
        for (const auto& point : row.fate == Fate::left_out ? std::vector<MapPoint>{} : row.points) {
            if (const auto doubt = judge(point); doubt != place::PlaceDoubt::none) {
                tell_doubt(adoption, row, point, doubt, judge, book_crs);
                sound = sound && doubt == place::PlaceDoubt::far;
                break;
            }
        }
    }
    return sound;
}

namespace {

Sentence accuracy_words(const std::optional<Metres>& accuracy) {
    return accuracy ? say("{} m", accuracy->value) : say("not known");
}

}  // namespace

void tell_transformation(Adoption& adoption, const place::TransformationFacts& facts,
                         const std::string& book_crs) {
    if (facts.name.empty()) {
        return;
    }
    const auto way = say("Transformed from {} to {} by \"{}\".", place::system_name(adoption.crs),
                         place::system_name(book_crs), facts.name);
    if (facts.ballpark) {
        adoption.tell(Level::warning, {}, {},
                      way + verbatim(" ") +
                          say("It ignores the difference of the two datums: positions may be off by hundreds "
                              "of metres."),
                      say("Check them on the map, or transform the layer with better parameters first."));
    } else if (!facts.accuracy) {
        adoption.tell(Level::warning, {}, {}, way + verbatim(" ") + say("Its accuracy is not known."),
                      say("Check some positions on the map."));
    } else {
        adoption.tell(Level::notice, {}, {},
                      way + verbatim(" ") + say("Its accuracy is {}.", accuracy_words(facts.accuracy)), {});
    }
    if (facts.missed_accuracy) {
        adoption.tell(
            Level::warning, {}, {},
            say("A better transformation, accurate to {}, needs the file {}, which is not installed.",
                accuracy_words(facts.missed_accuracy), facts.missed_grid),
            say("Install it for PROJ if positions are needed with this accuracy."));
    }
}

}  // namespace pipward::intake::detail
