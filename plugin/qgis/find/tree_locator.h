// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgslocatorfilter.h>

#include <QPointer>

#include "find/tree_finder.h"

namespace pipward::desktop {

/// Trees in the desktop's own search bar: "pip UP-05-04". Looks in the finder's book.
class TreeLocator : public QgsLocatorFilter {
    Q_OBJECT
  public:
    explicit TreeLocator(TreeFinder* finder, QObject* parent = nullptr);

    TreeLocator* clone() const override;
    QString name() const override { return QStringLiteral("pipward_trees"); }
    QString displayName() const override { return tr("Trees of the orchard book"); }
    QString description() const override;
    Priority priority() const override { return Medium; }
    QString prefix() const override { return QStringLiteral("pip"); }
    QStringList prepare(const QString& query, const QgsLocatorContext& context) override;
    void fetchResults(const QString& query, const QgsLocatorContext& context, QgsFeedback* feedback) override;
    void triggerResult(const QgsLocatorResult& result) override;

  signals:
    void chosen(const pipward::desktop::ChosenTree& tree);

  private:
    QPointer<TreeFinder> finder_;
    SharedIndex index_;  // taken in the main thread, looked up in another
};

}  // namespace pipward::desktop
