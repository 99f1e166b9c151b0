// SPDX-License-Identifier: GPL-2.0-or-later
#include "find/book_index.h"

#include "pipward/book/checked_reading.h"
#include "text.h"

namespace pipward::desktop {

IndexTask::IndexTask(const QString& book)
    : QgsTask(tr("Collecting the trees' names"), QgsTask::CanCancel), book_(book) {}

bool IndexTask::run() {
    try {
        auto reading = book::read_trees(from_qt(book_));
        if (!isCanceled()) {
            index_ = std::make_shared<const BookIndex>(book_, std::move(reading.orchard));
        }
        return index_ != nullptr;
    } catch (const std::exception& trouble) {
        failure_ = to_qt(trouble.what());
        return false;
    }
}

void IndexTask::finished(bool well) {
    if (well) {
        emit done(index_);
    } else {
        emit failed(failure_);
    }
}

}  // namespace pipward::desktop
