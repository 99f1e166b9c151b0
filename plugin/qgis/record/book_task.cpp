// SPDX-License-Identifier: GPL-2.0-or-later
#include "record/book_task.h"

namespace pipward::desktop {

// Not to be cancelled: what is written is written, or not at all.
BookTask::BookTask(const QString& words, std::function<void()> work)
    : QgsTask(words, QgsTask::Flags()), work_(std::move(work)) {}

bool BookTask::run() {
    try {
        work_();
        return true;
    } catch (const Error& error) {
        findings_ = error.findings();
    } catch (const std::exception& surprise) {
        findings_ = {{Level::error, {}, {}, {}, {}, verbatim(surprise.what()), {}}};
    }
    return false;
}

void BookTask::finished(bool well) {
    if (well) {
        emit done();
    } else {
        emit failed(findings_);
    }
}

}  // namespace pipward::desktop
