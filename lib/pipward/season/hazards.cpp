// SPDX-License-Identifier: MIT
#include "pipward/season/hazards.h"

namespace pipward::season {
namespace {

// Amygdalin: Bolarinwa et al. 2015, Food Chemistry 170:437. Fire blight temperatures: WSU Tree Fruit, Fire
// Blight, 2019. Disinfectants: US Cooperative Extension, Apples. Re-entry: MSU Extension on bee safety in
// bloom. Breeder's exemption: UPOV 1991, Art. 15(1)(iii), 14(5). Pollen and budwood as carriers: EFSA Journal
// 2013, 3375. The rest is common practice, no source.
std::vector<Caution> all_cautions() {
    return {
        {Hazard::seeds, say("Seeds are poisonous."),
         say("Apple seed holds 1 to 4 mg of amygdalin a gram, which gives off cyanide when crushed or "
             "chewed; pear seed holds it too. Never eat or grind it; keep it from children and animals.")},
        {Hazard::peroxide, say("Hydrogen peroxide."),
         say("3 % at most, gloves and goggles, a dark bottle that can vent; never with bleach, vinegar or "
             "metals. Stronger is for trained users.")},
        {Hazard::bleach, say("Bleach."), say("Never with acids or ammonia; rinse the seed well.")},
        {Hazard::ladders, say("Ladders."),
         say("A tripod on firm ground, never the top steps, three points of contact, the pollen kit not in "
             "the climbing hand. Stay down in wind and near wires.")},
        {Hazard::allergy, say("Allergy."),
         say("Pollen and carrier dust irritate: mask and glasses, no flame near carrier dust.")},
        {Hazard::sprays, say("Sprays and bees."),
         say("The re-entry time on the label binds everyone, hive keepers too, even to tag one flower. No "
             "insecticide on open bloom. Write down every spray.")},
        {Hazard::fire_blight, say("Fire blight."),
         say("It grows fastest near 27 °C. Keep out of wet trees in warm bloom; wipe brush and scissors from "
             "tree to tree.")},
        {Hazard::tools, say("Tools."),
         say("Between cuts: 70 % isopropyl alcohol or 10 % household bleach. Bleach never meets acids or "
             "ammonia.")},
        {Hazard::protected_parents, say("Protected parents."),
         say("Breeding from a protected variety is often allowed, selling what is essentially derived from "
             "it is not; patents, contracts and club terms can forbid either. Ask before crossing.")},
        {Hazard::moving, say("Moving material."),
         say("Budwood, and in places pollen and seed, can carry disease and may need a permit, a health "
             "certificate or quarantine. Record donor, date and permit of everything received.")},
    };
}

}  // namespace

std::vector<Caution> cautions_about(const std::set<Hazard>& hazards) {
    auto cautions = all_cautions();
    std::erase_if(cautions, [&](const Caution& caution) { return !hazards.contains(caution.hazard); });
    return cautions;
}

Sentence who_comes_first() {
    return say(
        "The product's label, your own authority, local codes and licensed or trained people come before "
        "anything on this page.");
}

}  // namespace pipward::season
