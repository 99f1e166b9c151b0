// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "find/book_index.h"

namespace pipward::desktop {

/// A tree that was found, as two lines of a list.
struct FoundLine {
    QString title;   ///< "UP-05-04, 17-01-04"
    QString detail;  ///< where it stands, how it was found, whether it still stands
    double score = 0;
    std::size_t number = 0;  ///< into the orchard's trees
};

/// From any thread. Of equals those that stand today come first, then the nearer ones where `from` is known.
std::vector<FoundLine> found_lines(const BookIndex& index, const QString& query,
                                   const std::optional<place::LonLat>& from, std::size_t limit);

}  // namespace pipward::desktop
