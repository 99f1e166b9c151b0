// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgstaskmanager.h>

#include <functional>

#include "pipward/value/finding.h"

namespace pipward::desktop {

/// Does one short piece of work on a book in the background. The signals come in the main thread.
class BookTask : public QgsTask {
    Q_OBJECT
  public:
    BookTask(const QString& words, std::function<void()> work);

  signals:
    void done();
    void failed(const pipward::Findings& findings);

  protected:
    bool run() override;
    void finished(bool well) override;

  private:
    std::function<void()> work_;
    Findings findings_;
};

}  // namespace pipward::desktop
