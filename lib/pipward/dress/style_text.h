// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/dress/layer_dress.h"

namespace pipward::dress {

/// A layer's dress as the desktop's style text (QML). The same dress gives the same bytes.
std::string style_text(const LayerDress& dress);

}  // namespace pipward::dress
