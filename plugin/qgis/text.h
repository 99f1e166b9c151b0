// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QString>
#include <string>
#include <string_view>

namespace pipward::desktop {

inline QString to_qt(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<int>(text.size()));
}

inline std::string from_qt(const QString& text) {
    return text.toStdString();
}

/// "12 Apr", as the user's language writes it.
inline QString short_day(const QDate& day) {
    //: day and month in Qt's notation: "d MMM" or "d. MMM"
    return QLocale().toString(day, QCoreApplication::translate("pipward::desktop", "d MMM"));
}

/// A text of the library in the user's language. All of them share one context in the translation files.
inline QString translated(const std::string& text) {
    return text.empty() ? QString() : QCoreApplication::translate("pipward::library", text.c_str());
}

}  // namespace pipward::desktop
