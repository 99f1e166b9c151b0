// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgstaskmanager.h>

#include <functional>
#include <memory>

#include "pipward/operation/operation.h"

namespace pipward::desktop {

/// Runs one operation in the background, with progress and cancel in the desktop's task bar.
/// The signals come in the main thread.
class OperationTask : public QgsTask {
    Q_OBJECT
  public:
    /// Still in the background, with what the run came to: to make ready what the window will show.
    using Afterwards = std::function<void(operation::Outcome& outcome)>;

    OperationTask(const operation::Operation& operation, operation::Form form, Afterwards afterwards = {});

    const operation::Outcome& outcome() const { return outcome_; }
    const Findings& failures() const { return failures_; }

  signals:
    void done(std::shared_ptr<const operation::Outcome> outcome);
    void failed(const QString& what);

  protected:
    bool run() override;
    void finished(bool well) override;

  private:
    const operation::Operation& operation_;
    operation::Form form_;
    Afterwards afterwards_;
    operation::Outcome outcome_;
    Findings failures_;
    bool cancelled_ = false;
};

}  // namespace pipward::desktop
