// SPDX-License-Identifier: MIT
#include "pipward/paper/cautions.h"
#include "pipward/paper/detail/sheet_sections.h"

namespace pipward::paper::detail {

std::string cautions_section(const Speech& speech) {
    using enum season::Hazard;
    return cautions_html({seeds, ladders, allergy, sprays, fire_blight, tools, protected_parents, moving},
                         speech);
}

}  // namespace pipward::paper::detail
