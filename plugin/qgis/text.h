// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QString>
#include <string>
#include <string_view>

#include "pipward/value/sentence.h"

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
inline QString translated(std::string_view text) {
    return text.empty() ? QString()
                        : QCoreApplication::translate("pipward::library", std::string(text).c_str());
}

/// How the library's sentences are said in the user's language; for any thread.
inline std::string host_wording(std::string_view form) {
    return from_qt(translated(form));
}

/// A sentence of the library in the user's language.
inline QString said(const Sentence& sentence) {
    return to_qt(sentence.in(host_wording));
}

}  // namespace pipward::desktop
