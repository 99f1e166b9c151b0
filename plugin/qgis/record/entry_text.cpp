// SPDX-License-Identifier: GPL-2.0-or-later
#include "record/entry_text.h"

#include <QDate>
#include <QLocale>

#include "record/record_desk.h"
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
    if (entry.table == "bloom_observation") {
        return RecordDesk::tr("%1, BBCH %2, %3")
            .arg(value_of(entry, "tree"), value_of(entry, "bbch"), day_of(entry, "observed_on"));
    }
    if (entry.table == "pollination") {
        return RecordDesk::tr("%1, tag %2, %3 flowers pollinated, %4")
            .arg(value_of(entry, "tree"), value_of(entry, "tag"), value_of(entry, "flowers"),
                 day_of(entry, "pollinated_on"));
    }
    if (entry.table == "fruit") {
        return RecordDesk::tr("tag %1, %2 fruits harvested, %3")
            .arg(value_of(entry, "tag"), value_of(entry, "fruits"), day_of(entry, "harvested_on"));
    }
    return said(book::in_words(entry));
}

}  // namespace pipward::desktop
