// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>

#include "pipward/value/finding.h"

namespace pipward::desktop {

/// A finding in one line, as to_text() tells it, in the user's language: tables and columns of the book by
/// their titles and labels.
QString finding_line(const Finding& finding);

}  // namespace pipward::desktop
