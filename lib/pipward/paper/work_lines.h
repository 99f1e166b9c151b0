// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/paper/work_sheet.h"
#include "pipward/season/picking_walk.h"
#include "pipward/season/work_walk.h"

/// Lines of a work sheet from the season's work.
namespace pipward::paper {

WorkLine work_line(const season::WorkStop& work);
/// It is not late; that depends on the day of the sheet.
WorkLine work_line(const season::Harvest& harvest);

}  // namespace pipward::paper
