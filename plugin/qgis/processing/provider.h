// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgsprocessingprovider.h>

namespace pipward::desktop {

/// Every declared operation, offered to the Processing toolbox, the modeller, batch runs and scripts.
class Provider : public QgsProcessingProvider {
    Q_OBJECT
  public:
    explicit Provider(QObject* parent = nullptr);

    QString id() const override;
    QString name() const override;
    QString longName() const override;
    QIcon icon() const override;
    QString versionInfo() const override;
    void loadAlgorithms() override;
};

}  // namespace pipward::desktop
