// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "pipward/paper/millimetres.h"
#include "pipward/record/words.h"

namespace pipward::paper {

/// The sizes of paper that sheets and maps are made for.
enum class PaperSize { a4, a3, letter };
std::span<const Word<PaperSize>> words(PaperSize);

/// Upright.
PageSize size_of(PaperSize paper);

}  // namespace pipward::paper
