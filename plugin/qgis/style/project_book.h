// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>

namespace pipward::desktop {

/// The book whose trees the open project shows, as a plain path; of several, the one whose stored map it is,
/// or else the first by layer. Empty where it shows none.
QString book_of_project();

/// A map stored in a book belongs to that book wherever the file was copied to and however it is called now:
/// its own layers are pointed there. Returns how many looked elsewhere.
int point_stored_map_at_its_book();

}  // namespace pipward::desktop
