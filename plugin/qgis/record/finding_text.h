// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>

#include "pipward/value/finding.h"

namespace pipward::desktop {

/// A finding about an entry for people: the field by its label, what is wrong, what to do. No raw names.
QString entry_finding_text(const Finding& finding);
/// All of them as rich text, errors first.
QString entry_findings_html(const Findings& findings);
/// As entry_finding_text(), those of one level, for a line of the message bar.
QString entry_findings_line(const Findings& findings, Level level);

}  // namespace pipward::desktop
