// SPDX-License-Identifier: MIT
#include "pipward/paper/paper_size.h"

#include <array>

namespace pipward::paper {

std::span<const Word<PaperSize>> words(PaperSize) {
    static constexpr std::array<Word<PaperSize>, 3> all{
        {{PaperSize::a4, "a4", "A4, 210 x 297 mm"},
         {PaperSize::a3, "a3", "A3, 297 x 420 mm"},
         {PaperSize::letter, "letter", "Letter, 8.5 x 11 inches"}}};
    return all;
}

PageSize size_of(PaperSize paper) {
    return paper == PaperSize::a4 ? a4_page : paper == PaperSize::a3 ? a3_page : letter_page;
}

}  // namespace pipward::paper
