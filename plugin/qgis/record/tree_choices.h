// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"

namespace pipward::desktop {

/// One line of a value list: what is written, and what people read.
struct HarvestLine {
    QString value;
    QString words;
};

/// What may be noted at one tree on one day: the crosses of that season that its accession bears,
/// and the tags that hang on it.
struct TreeChoices {
    QString accession;
    std::vector<HarvestLine> crosses;
    std::vector<HarvestLine> tags;  ///< the latest first
    int season = 0;
};

TreeChoices choices_for(const Orchard& orchard, const std::string& label, Day day);

/// Lots that hold the pollen which the cross wants, then the others; those used up by then are left out.
std::vector<HarvestLine> lots_for(const Orchard& orchard, const std::string& cross, Day day);

/// The next tag of a cross that is not taken: its code and a letter, "26-04-a".
QString next_tag(const Orchard& orchard, const std::string& cross);

}  // namespace pipward::desktop
