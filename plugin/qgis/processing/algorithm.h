// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgsprocessingalgorithm.h>

#include "pipward/operation/operation.h"

namespace pipward::desktop {

/// The one adapter: any declared operation as a Processing algorithm.
/// Names are the operation's and its parameters' keys with underscores; parameters in capitals.
class OperationAlgorithm : public QgsProcessingAlgorithm {
  public:
    explicit OperationAlgorithm(const operation::Operation& operation);

    QString name() const override;
    QString displayName() const override;
    QString group() const override;
    QString groupId() const override;
    QString shortHelpString() const override;
    QString shortDescription() const override;
    QStringList tags() const override;
    QIcon icon() const override;
    QgsProcessingAlgorithm* createInstance() const override;
    void initAlgorithm(const QVariantMap& configuration = QVariantMap()) override;
    bool checkParameterValues(const QVariantMap& parameters, QgsProcessingContext& context,
                              QString* message) const override;

  protected:
    QVariantMap processAlgorithm(const QVariantMap& parameters, QgsProcessingContext& context,
                                 QgsProcessingFeedback* feedback) override;

  private:
    operation::Form form_of(const QVariantMap& parameters, QgsProcessingContext& context) const;
    QVariantMap deliver(const operation::Outcome& outcome, const QVariantMap& parameters,
                        QgsProcessingContext& context, QgsProcessingFeedback* feedback);

    const operation::Operation& operation_;
};

}  // namespace pipward::desktop
