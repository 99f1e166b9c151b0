// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "compat.h"

namespace pipward::desktop {

/// "Tree card" for a tree that was identified, in the tree layer of any book.
class CardAction : public FeatureAction {
    Q_OBJECT
  public:
    explicit CardAction(QObject* parent = nullptr);

  signals:
    void asked_for(const QString& book, qlonglong fid);

  protected:
    bool suits(const QgsMapLayer* layer) const override;
    void run_for(const QgsMapLayer* layer, const QgsFeature& feature) override;
};

}  // namespace pipward::desktop
