// SPDX-License-Identifier: GPL-2.0-or-later
#include "note/entry_text.h"

#include <QDate>
#include <QLocale>

#include "note/note_desk.h"
#include "text.h"

namespace pipward::desktop {
namespace {

QString value_of(const book::Entry& entry, const char* column) {
    const auto found = entry.values.find(column);
    return found == entry.values.end() ? QString() : to_qt(to_text(found->second));
}

QString day_of(const book::Entry& entry, const char* column) {
    return QLocale().toString(QDate::fromString(value_of(entry, column), Qt::ISODate),
                              QCoreApplication::translate("pipward::desktop", "d MMM yyyy"));
}

}  // namespace

QString entry_text(const book::Entry& entry) {
    if (entry.table == "bloom_note") {
        return NoteDesk::tr("%1, BBCH %2, %3")
            .arg(value_of(entry, "tree"), value_of(entry, "bbch"), day_of(entry, "noted_on"));
    }
    if (entry.table == "pollination") {
        return NoteDesk::tr("%1, tag %2, %3 flowers worked, %4")
            .arg(value_of(entry, "tree"), value_of(entry, "tag"), value_of(entry, "flowers"),
                 day_of(entry, "worked_on"));
    }
    if (entry.table == "fruit") {
        return NoteDesk::tr("tag %1, %2 fruits picked, %3")
            .arg(value_of(entry, "tag"), value_of(entry, "fruits"), day_of(entry, "picked_on"));
    }
    return said(book::in_words(entry));
}

}  // namespace pipward::desktop
