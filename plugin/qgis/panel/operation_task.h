// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgstaskmanager.h>

#include <QDate>
#include <memory>

#include "pipward/operation/operation.h"

namespace pipward::desktop {

/// Runs one operation in the background, with progress and cancel in the desktop's task bar.
/// The signals come in the main thread.
class OperationTask : public QgsTask {
    Q_OBJECT
  public:
    OperationTask(const Operation& operation, Form form);

    const Outcome& outcome() const { return outcome_; }
    const Findings& failures() const { return failures_; }

  signals:
    void done(std::shared_ptr<const Outcome> outcome);
    void failed(const QString& what);

  protected:
    bool run() override;
    void finished(bool well) override;

  private:
    const Operation& operation_;
    Form form_;
    Outcome outcome_;
    Findings failures_;
    bool cancelled_ = false;
};

}  // namespace pipward::desktop
