// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>

#include "pipward/book/entry.h"

namespace pipward::desktop {

/// What was noted, short enough for a line of the message bar: "LO-04-07, BBCH 61, 12 May 2026".
QString entry_text(const book::Entry& entry);

}  // namespace pipward::desktop
