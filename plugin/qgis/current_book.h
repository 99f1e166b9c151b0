// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>

namespace pipward::desktop {

/// The book that the desktop works with, as it was last remembered; empty where there is none or its file is
/// gone. May be asked from any thread.
QString current_book();
/// Remembers it over sessions.
void remember_book(const QString& book);

}  // namespace pipward::desktop
