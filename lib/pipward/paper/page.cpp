// SPDX-License-Identifier: MIT
#include "pipward/paper/page.h"

namespace pipward::paper {

LinePiece outline_of(const Box& box, Millimetres width, Paint paint) {
    const PaperSpot start{box.left, box.top};
    return {{start, {box.right(), box.top}, {box.right(), box.bottom()}, {box.left, box.bottom()}, start},
            width,
            paint,
            {}};
}

}  // namespace pipward::paper
