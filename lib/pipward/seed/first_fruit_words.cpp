// SPDX-License-Identifier: MIT
#include <array>

#include "pipward/seed/first_fruiting.h"

namespace pipward::seed {
namespace {

Sentence sown_words(const FirstFruit& fruit) {
    switch (fruit.sown_by) {
        case SownBy::lot_counts:
            return say("Seed of cross {} germinated in {}.", fruit.cross, fruit.sown);
        case SownBy::cross:
            return say("The cross is of {}, its seed was sown the year after.", fruit.sown - 1);
        case SownBy::planting:
            break;
    }
    return say("The cross is not known; it was planted in {}.", fruit.sown);
}

}  // namespace

std::span<const Word<FruitState>> words(FruitState) {
    static constexpr std::array<Word<FruitState>, 6> all{
        {{FruitState::bloomed, "bloomed", "has bloomed"},
         {FruitState::young, "young", "too young"},
         {FruitState::possible, "possible", "may fruit"},
         {FruitState::due, "due", "should fruit this year"},
         {FruitState::waiting, "waiting", "fruit was expected"},
         {FruitState::overdue, "overdue", "longer than most"}}};
    return all;
}

Sentence fruit_reason(const FirstFruit& fruit) {
    auto why = sown_words(fruit);
    why += verbatim(" ");
    why += fruit.pear ? say("Pear: {} years to the first fruit as a rule, {} to {} are known.", pear_years,
                            fewest_years, most_years)
                      : say("Apple: {} years to the first fruit as a rule, {} to {} are known.", apple_years,
                            fewest_years, most_years);
    if (fruit.dwarfed) {
        why += verbatim(" ");
        why += say("On a dwarfing stock about {} years sooner.", years_off_on_dwarfing_stock);
    }
    return why;
}

}  // namespace pipward::seed
