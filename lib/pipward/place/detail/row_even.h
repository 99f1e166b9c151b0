// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "pipward/place/detail/row_reading.h"
#include "pipward/place/detail/row_spacing.h"

/// Inside of the room: what even positions rows keep to, and how well.
namespace pipward::place::detail {

/// Metres along each row, rising.
using Alongs = std::vector<std::vector<double>>;

/// That of most rows; nothing where they keep to none.
std::optional<FoundSpacing> common_spacing(const Alongs& along, const RecoveryRule& rule);

/// Rows may have a spacing of their own; then their trees keep to it much better than to that of most. Rows
/// that may have one or another are doubted.
void find_own_spacings(RowReading& rows, const Alongs& along, const RecoveryRule& rule);

/// By how well pieces of rows keep to their spacings.
void find_noise_along(RowReading& rows, const Alongs& along);

/// Where positions lie along each row, and beyond which places they do not go on. False where spacings wander
/// and noise hides how.
bool find_phases(RowReading& rows, const Alongs& along);

}  // namespace pipward::place::detail
