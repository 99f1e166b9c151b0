// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/style/layer_style.h"

namespace pipward::style {

/// A layer's style as the desktop's style text (QML). The same style gives the same bytes.
std::string style_text(const LayerStyle& style);

}  // namespace pipward::style
