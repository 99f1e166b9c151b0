// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/why.h"

#include <fmt/format.h>

#include <cmath>

#include "pipward/cross/detail/forcing.h"
#include "pipward/record/descent.h"

namespace pipward::cross::detail {
namespace {

constexpr double half_sibs = 0.125;
constexpr double full_sibs = 0.25;

// Of every course, what is over included.
struct Medians {
    std::optional<SeasonDay> seed_first;
    std::optional<SeasonDay> seed_last;
    std::optional<SeasonDay> donor_first;
    std::optional<SeasonDay> donor_last;

    bool all() const { return seed_first && seed_last && donor_first && donor_last; }
};

Medians medians_of(const Crossing& crossing, const DonorTree& donor) {
    constexpr double half = 0.5;
    return {first_day(*crossing.seed_whole, &BloomCourse::working, half),
            last_day(*crossing.seed_whole, &BloomCourse::working, half),
            first_day(*donor.whole, &BloomCourse::balloon, half),
            last_day(*donor.whole, &BloomCourse::balloon, half)};
}

// One or both of two.
Sentence and_between(const std::vector<Sentence>& parts) {
    return parts.size() == 2 ? say("{} and {}", parts.front(), parts.back()) : joined(parts, {});
}

std::string iso(const Crossing& crossing, SeasonDay day) {
    return to_iso(crossing.day(day));
}

bool over(const Crossing& crossing, const DonorTree& donor) {
    return !crossing.next_season && share_with(*donor.left, &BloomCourse::balloon) == 0;
}

Sentence over_text(const Crossing& crossing, const Medians& medians) {
    return say("The balloon stage of {} has been over since about {}.", crossing.donor,
               iso(crossing, *medians.donor_last));
}

std::string alleles_text(const Bench& bench, const std::string& name) {
    const auto* accession = bench.book.accession(name);
    return accession != nullptr ? accession->s_alleles.value_or("") : "";
}

Sentence unknown_alleles_text(const Bench& bench, const Crossing& crossing) {
    std::vector<Sentence> names;
    for (const auto& name : {crossing.goal->seed_parent, crossing.donor}) {
        const auto alleles = lineage::parse_s_alleles(alleles_text(bench, name));
        if (!alleles || alleles->size() < 2) {
            names.push_back(verbatim(name));
        }
    }
    return say("S-alleles of {} are not known: the style may refuse this pollen.", and_between(names));
}

Sentence half_text(const Crossing& crossing) {
    return say("Semi-compatible: the style accepts {} of the pollen, so bring more.",
               percent_text(crossing.compatibility.pollen_share.value));
}

void add_ploidy(std::vector<Sentence>& sentences, const Crossing& crossing) {
    if (crossing.ploidy.triploid) {
        sentences.push_back(
            say("A parent is triploid: such crosses gave about {:.2g} % of the seedlings of diploids (Sato & "
                "Kanbe 2007), so the flowers are scaled up and the outlook is doubtful at best.",
                100 * crossing.ploidy.factor));
    } else if (!crossing.ploidy.known) {
        sentences.emplace_back(
            say("A parent is neither diploid nor triploid: no figures are known, so it counts as diploid."));
    }
}

void add_kinship(std::vector<Sentence>& sentences, const Crossing& crossing) {
    if (crossing.kinship && *crossing.kinship >= half_sibs) {
        sentences.push_back(
            *crossing.kinship >= full_sibs
                ? say("Parents are related like full sibs or closer: kinship {:.3g}.", *crossing.kinship)
                : say("Parents are related like half sibs or closer: kinship {:.3g}.", *crossing.kinship));
    }
}

Sentence lent_text(const std::string& name, bloom::NeedSource source) {
    switch (source) {
        case bloom::NeedSource::mid_parent:
            return say("{} (from its parents)", name);
        case bloom::NeedSource::one_parent:
            return say("{} (from one parent)", name);
        case bloom::NeedSource::own_observations:
        case bloom::NeedSource::orchard_mean:
            break;
    }
    return say("{} (from the orchard's mean)", name);
}

std::optional<Sentence> refused_text(const Bench& bench, const Crossing& crossing) {
    if (crossing.selfed) {
        return say("{} on itself: the style refuses its own pollen, expect no seed.", crossing.donor);
    }
    if (crossing.compatibility.match != lineage::SMatch::none) {
        return std::nullopt;
    }
    return say("Every S-allele of {} ({}) stands in {} ({}) too: expect no seed. Choose another donor.",
               crossing.donor, alleles_text(bench, crossing.donor), crossing.goal->seed_parent,
               alleles_text(bench, crossing.goal->seed_parent));
}

void add_genera(std::vector<Sentence>& sentences, const Bench& bench, const Crossing& crossing) {
    const auto seed = genus_of(bench.book, crossing.goal->seed_parent);
    const auto donor = genus_of(bench.book, crossing.donor);
    if (!seed.empty() && !donor.empty() && seed != donor) {
        sentences.push_back(
            say("{} ({}) and {} ({}) are of different genera: hardly any seed is to be expected.",
                crossing.goal->seed_parent, seed, crossing.donor, donor));
    }
}

}  // namespace

Sentence days_text(int days) {
    return days == 1 ? say("1 day") : say("{} days", days);
}

Sentence percent_text(double share) {
    return verbatim(fmt::format("{:.0f} %", 100 * share));
}

Sentence store_text(Store store) {
    switch (store) {
        case Store::room:
            return say("a room");
        case Store::refrigerator:
            return say("the refrigerator");
        case Store::freezer:
            return say("the freezer");
        case Store::deep_freezer:
            break;
    }
    return say("the deep freezer");
}

Sentence way_text(PollenWay way) {
    switch (way) {
        case PollenWay::same_day:
            return say("same day");
        case PollenWay::kept_this_spring:
            return say("stored this spring");
        case PollenWay::kept_from_last_year:
            return say("stored from last year");
        case PollenWay::forced_branch:
            break;
    }
    return say("forced branch");
}

std::optional<Sentence> blocked_text(const Bench& bench, const Crossing& crossing) {
    const auto& seed = crossing.goal->seed_parent;
    if (auto refused = refused_text(bench, crossing)) {
        return refused;
    }
    if (crossing.seed_whole == nullptr) {
        return say("{} has no living tree to seed this cross.", seed);
    }
    if (share_with(*crossing.seed_whole, &BloomCourse::working) == 0) {
        return say(
            "Too cold while {} is open: pollen tubes would reach the ovules too late in every calculated "
            "spring.",
            seed);
    }
    if (share_with(*crossing.seed_left, &BloomCourse::working) == 0) {
        const auto last = last_day(*crossing.seed_whole, &BloomCourse::working, 0.5);
        return say("Flowers of {} have not been receptive since about {}.", seed, iso(crossing, *last));
    }
    return std::nullopt;
}

Sentence too_late_text(const Crossing& crossing, const DonorTree& donor) {
    const auto medians = medians_of(crossing, donor);
    if (!medians.all()) {
        return say("{} does not reach balloon stage in time.", crossing.donor);
    }
    if (over(crossing, donor)) {
        return over_text(crossing, medians);
    }
    const int late = *medians.donor_first + drying_days - *medians.seed_last;
    if (late > 0) {
        return say("Dried pollen of {} is available about {} after the last receptive flower of {} ({}).",
                   crossing.donor, days_text(late), crossing.goal->seed_parent,
                   iso(crossing, *medians.seed_last));
    }
    return say("{} reaches balloon stage about {}; {} is receptive until about {}.", crossing.donor,
               iso(crossing, *medians.donor_first), crossing.goal->seed_parent,
               iso(crossing, *medians.seed_last));
}

Sentence meeting_text(const Crossing& crossing, const DonorTree& donor) {
    const auto medians = medians_of(crossing, donor);
    if (!medians.all() || over(crossing, donor)) {
        return too_late_text(crossing, donor);
    }
    const int late = *medians.donor_first + fresh_from_days - *medians.seed_last;
    const int early = *medians.seed_first - *medians.donor_last - fresh_to_days;
    if (late > 0) {
        return say("{} opens about {} after the last receptive flower of {} ({}).", crossing.donor,
                   days_text(late), crossing.goal->seed_parent, iso(crossing, *medians.seed_last));
    }
    if (early > 0) {
        return say(
            "Fresh pollen of {} ends about {} before the first flower of {} is receptive ({}): it must be "
            "stored.",
            crossing.donor, days_text(early), crossing.goal->seed_parent, iso(crossing, *medians.seed_first));
    }
    return say("Fresh pollen of {} is available about {} to {}; {} is receptive about {} to {}.",
               crossing.donor, iso(crossing, *medians.donor_first + fresh_from_days),
               iso(crossing, *medians.donor_last + fresh_to_days), crossing.goal->seed_parent,
               iso(crossing, *medians.seed_first), iso(crossing, *medians.seed_last));
}

Sentence lot_text(const LotOutlook& lot, Day use, Share usable) {
    const auto collected = to_iso(lot.lot->collected_on);
    const auto store = store_text(lot.store);
    const auto share = percent_text(lot.at_use.mean);
    auto text = lot.tested
                    ? say("Lot {}, collected {}, in {}: about {} should germinate on {} (tested {}).",
                          lot.lot->code, collected, store, share, to_iso(use), to_iso(*lot.tested))
                    : say("Lot {}, collected {}, in {}: about {} should germinate on {} (never tested).",
                          lot.lot->code, collected, store, share, to_iso(use));
    if (lot.at_use.mean < usable.value) {
        text += verbatim(" ") + say("That is less than the {} to plan on.", percent_text(usable.value));
    }
    return text;
}

std::optional<Sentence> borrowed_text(const Bench& bench, const Crossing& crossing) {
    const auto& forecast = *bench.forecast;
    std::vector<Sentence> texts;
    for (const auto& name : {crossing.goal->seed_parent, crossing.donor}) {
        const auto standing = forecast.of_accession.find(name);
        const bool own = standing == forecast.of_accession.end() ||
                         forecast.windows[standing->second].source == bloom::NeedSource::own_observations;
        if (!own) {
            texts.push_back(lent_text(name, forecast.windows[standing->second].source));
        }
    }
    if (texts.empty()) {
        return std::nullopt;
    }
    return say("An estimate: no bloom observations of {}.", and_between(texts));
}

Sentence no_lot_text(const Bench& bench, const Crossing& crossing) {
    return say("No lot of {} from an earlier year in stock on {}.", crossing.donor,
               to_iso(bench.stock.as_of));
}

std::vector<Sentence> parentage_sentences(const Bench& bench, const Crossing& crossing) {
    std::vector<Sentence> sentences;
    if (crossing.compatibility.match == lineage::SMatch::half) {
        sentences.push_back(half_text(crossing));
    } else if (crossing.compatibility.match == lineage::SMatch::unknown) {
        sentences.push_back(unknown_alleles_text(bench, crossing));
    }
    add_genera(sentences, bench, crossing);
    add_ploidy(sentences, crossing);
    add_kinship(sentences, crossing);
    if (crossing.seed_whole != nullptr && crossing.seed_whole->too_cold >= 0.05) {
        sentences.push_back(say("In {} of the calculated springs it is too cold for seed set.",
                                percent_text(crossing.seed_whole->too_cold)));
    }
    if (crossing.next_season) {
        sentences.push_back(say("Dates of {} are approximate, from the bloom order of {}.",
                                crossing.goal->season.year, bench.forecast->season.year));
    }
    return sentences;
}

}  // namespace pipward::cross::detail
