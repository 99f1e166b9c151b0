// SPDX-License-Identifier: GPL-2.0-or-later
#include "find/tree_finder.h"

#include <qgsapplication.h>

#include <QDateTime>
#include <QFileInfo>

namespace pipward::desktop {
namespace {

// The file is looked at, never opened: closing it would drop the locks that the desktop holds on it.
// While it is being edited, what is new stands in the log beside it.
QString stamp_of(const QString& book) {
    QString stamp;
    for (const auto* ending : {"", "-wal"}) {
        const QFileInfo file(book + QLatin1String(ending));
        if (file.exists() && file.size() > 0) {
            stamp += QStringLiteral("%1 %2 ").arg(file.lastModified().toMSecsSinceEpoch()).arg(file.size());
        }
    }
    return stamp;
}

}  // namespace

TreeFinder::TreeFinder(QObject* parent) : QObject(parent) {}

TreeFinder::~TreeFinder() {
    for (auto& [book, known] : known_) {
        if (known.running != nullptr) {
            disconnect(known.running, nullptr, this, nullptr);
            known.running->cancel();
        }
    }
}

void TreeFinder::use_book(const QString& book) {
    book_ = book;
    // While somebody types a path most of it is no file yet.
    if (!stamp_of(book).isEmpty()) {
        index_of(book);
    }
}

SharedIndex TreeFinder::index_of(const QString& book) {
    if (book.isEmpty()) {
        return nullptr;
    }
    auto& known = known_[book];
    if (known.running == nullptr && known.stamp != stamp_of(book)) {
        build(book, known);
    }
    return known.index;
}

bool TreeFinder::is_reading(const QString& book) const {
    const auto found = known_.find(book);
    return found != known_.end() && found->second.running != nullptr;
}

QString TreeFinder::failure_of(const QString& book) const {
    const auto found = known_.find(book);
    return found == known_.end() ? QString() : found->second.failure;
}

void TreeFinder::book_changed(const QString& book) {
    const auto found = known_.find(book);
    if (found == known_.end()) {
        return;
    }
    if (found->second.running != nullptr) {
        disconnect(found->second.running, nullptr, this, nullptr);
        found->second.running->cancel();
    }
    build(book, found->second);
}

void TreeFinder::build(const QString& book, Known& known) {
    const QString stamp = stamp_of(book);
    auto* task = new IndexTask(book);
    known.running = task;
    known.failure.clear();
    connect(task, &IndexTask::done, this, [this, book, stamp](const SharedIndex& index) {
        known_[book] = {index, stamp, {}, nullptr};
        emit ready(index);
    });
    // What failed is tried again when the file is another, not at every letter that is typed.
    connect(task, &IndexTask::failed, this, [this, book, stamp](const QString& what) {
        auto& tried = known_[book];
        tried.stamp = stamp;
        tried.failure = what;
        tried.running = nullptr;
        emit failed(book, what);
    });
    QgsApplication::taskManager()->addTask(task);
}

}  // namespace pipward::desktop
