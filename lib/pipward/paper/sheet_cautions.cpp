// SPDX-License-Identifier: MIT
#include <array>

#include "pipward/paper/html.h"
#include "pipward/paper/sheet_sections.h"
#include "pipward/paper/text.h"

namespace pipward {
namespace {

struct Caution {
    Sentence about;
    Sentence text;
};

// Amygdalin: Bolarinwa et al. 2015, Food Chemistry 170:437. Fire blight temperatures: WSU Tree Fruit, Fire
// Blight, 2019. Disinfectants: US Cooperative Extension, Apples. Re-entry: MSU Extension on bee safety in
// bloom. Breeder's exemption: UPOV 1991, Art. 15(1)(iii), 14(5). Pollen and budwood as carriers: EFSA Journal
// 2013, 3375. The rest is common practice, no source.
std::array<Caution, 8> cautions() {
    return {
        Caution{
            say("Seeds are poisonous."),
            say("Apple seed holds 1 to 4 mg of amygdalin a gram, which gives off cyanide when crushed or "
                "chewed; pear seed holds it too. Never eat or grind it; keep it from children and animals.")},
        Caution{say("Ladders."),
                say("A tripod on firm ground, never the top steps, three points of contact, the pollen kit "
                    "not in the climbing hand. Stay down in wind and near wires.")},
        Caution{say("Allergy."),
                say("Pollen and carrier dust irritate: mask and glasses, no flame near carrier dust.")},
        Caution{say("Sprays and bees."),
                say("The re-entry time on the label binds everyone, hive keepers too, even to tag one "
                    "flower. No insecticide on open bloom. Write down every spray.")},
        Caution{say("Fire blight."), say("It grows fastest near 27 °C. Keep out of wet trees in warm bloom; "
                                         "wipe brush and scissors from tree to tree.")},
        Caution{say("Tools."), say("Between cuts: 70 % isopropyl alcohol or 10 % household bleach. Bleach "
                                   "never meets acids or ammonia.")},
        Caution{
            say("Protected parents."),
            say("Breeding from a protected variety is often allowed, selling what is essentially derived "
                "from it is not; patents, contracts and club terms can forbid either. Ask before crossing.")},
        Caution{say("Moving material."),
                say("Budwood, and in places pollen and seed, can carry disease and may need a permit, a "
                    "health certificate or quarantine. Note giver, day and permit of all that comes in.")},
    };
}

}  // namespace

std::string cautions_section(const Speech& speech) {
    std::string items;
    for (const auto& caution : cautions()) {
        items += "<li>" + element("strong", "", speech.plain(caution.about)) + " " +
                 speech.plain(caution.text) + "</li>\n";
    }
    const auto first =
        say("The product's label, your own authority, local codes and licensed or trained people come before "
            "anything on this page.");
    return section_html("care", say("Take care"),
                        paragraph_html(first, speech) + "<ul class=\"care\">\n" + items + "</ul>\n", speech);
}

}  // namespace pipward
