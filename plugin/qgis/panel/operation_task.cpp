// SPDX-License-Identifier: GPL-2.0-or-later
#include "panel/operation_task.h"

#include "finding_line.h"
#include "pipward/record/reader_days.h"
#include "pipward/value/finding.h"
#include "text.h"

namespace pipward::desktop {

OperationTask::OperationTask(const operation::Operation& operation, operation::Form form,
                             Afterwards afterwards)
    : QgsTask(translated(operation.about().title), QgsTask::CanCancel),
      operation_(operation),
      form_(std::move(form)),
      afterwards_(std::move(afterwards)) {}

bool OperationTask::run() {
    operation::Run lent;
    lent.progress = [this](double share, std::string_view) { setProgress(100 * share); };
    lent.cancelled = [this] { return isCanceled(); };
    lent.wording = with_reader_days(host_wording, {});
    try {
        outcome_ = operation_.run(form_, lent);
        if (afterwards_) {
            afterwards_(outcome_);
        }
        return true;
    } catch (const Error& error) {
        cancelled_ = error.trouble() == Trouble::cancelled;
        failures_ = error.findings();
    } catch (const std::exception& surprise) {
        failures_ = {{Level::error, {}, {}, {}, {}, verbatim(surprise.what()), {}}};
    }
    return false;
}

void OperationTask::finished(bool well) {
    if (well) {
        emit done(std::make_shared<const operation::Outcome>(std::move(outcome_)));
        return;
    }
    QStringList lines;
    for (const auto& finding : failures_) {
        if (finding.level == Level::error) {
            lines << finding_line(finding);
        }
    }
    emit failed(cancelled_ ? tr("Stopped.") : lines.join('\n'));
}

}  // namespace pipward::desktop
