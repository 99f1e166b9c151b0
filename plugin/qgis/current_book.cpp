// SPDX-License-Identifier: GPL-2.0-or-later
#include "current_book.h"

#include <qgssettings.h>

#include <QFileInfo>

namespace pipward::desktop {
namespace {

const QString setting = QStringLiteral("pipward/book");

}  // namespace

QString current_book() {
    const QString book = QgsSettings().value(setting).toString();
    return QFileInfo::exists(book) || book.startsWith(QStringLiteral("PG:")) ? book : QString();
}

void remember_book(const QString& book) {
    QgsSettings().setValue(setting, book);
}

}  // namespace pipward::desktop
