// SPDX-License-Identifier: GPL-2.0-or-later
#include "translation/translation.h"

#include <QCoreApplication>
#include <QLocale>

namespace pipward::desktop {

Translation::Translation(const QString& language) {
    found_ = texts_.load(QLocale(language), QStringLiteral("pipward"), QStringLiteral("_"),
                         QStringLiteral(":/pipward/translation"));
    if (found_) {
        QCoreApplication::installTranslator(&texts_);
    }
}

Translation::~Translation() {
    if (found_) {
        QCoreApplication::removeTranslator(&texts_);
    }
}

}  // namespace pipward::desktop
