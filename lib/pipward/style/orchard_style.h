// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "pipward/record/table.h"
#include "pipward/style/layer_style.h"
#include "pipward/value/day.h"

/// What each layer of a book looks like.
namespace pipward::style {

/// The days that a table of bloom windows spans.
struct BloomSpan {
    Day first_bloom;   ///< earliest median first bloom
    Day first_full;    ///< earliest median full bloom
    Day last_full;     ///< latest median full bloom
    Day end_of_bloom;  ///< latest median end of bloom
};
/// Nothing where no row has all the days.
std::optional<BloomSpan> bloom_span(const Table& bloom_window);

/// In the words of a host, as all that follows from it.
LayerStyle style_of_layer(const book::BookTable& table, const Wording& wording = in_english);
/// `bloom` gives the weeks of a layer of bloom windows; it is not asked for others.
LayerStyle style_of_layer(const TableShape& result, const std::optional<BloomSpan>& bloom,
                          const Wording& wording = in_english);

}  // namespace pipward::style
