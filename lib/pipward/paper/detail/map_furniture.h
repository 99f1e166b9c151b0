// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/paper/field_plan.h"
#include "pipward/paper/typesetter.h"
#include "pipward/value/sentence.h"

/// What stands around a map.
namespace pipward::paper::detail {

/// A length of 1, 2 or 5 times a power of ten metres that is 30 to 75 mm long on paper.
struct ScaleBar {
    double metres = 0;
    int parts = 4;
    Millimetres length;
};
ScaleBar scale_bar(int denominator);

struct PageNumber {
    int page = 1;
    int of = 1;
    bool is_index = false;
};

std::vector<PagePiece> map_furniture(const FieldMap& map, const MapWindow& window, const PageNumber& number,
                                     const TextRuler& ruler, const Wording& wording);

}  // namespace pipward::paper::detail
