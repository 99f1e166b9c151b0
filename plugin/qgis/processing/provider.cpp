// SPDX-License-Identifier: GPL-2.0-or-later
#include "processing/provider.h"

#include <QIcon>

#include "pipward/operation/operation.h"
#include "processing/algorithm.h"

namespace pipward::desktop {

Provider::Provider(QObject* parent) : QgsProcessingProvider(parent) {}

QString Provider::id() const {
    return QStringLiteral("pipward");
}

QString Provider::name() const {
    return QStringLiteral("Pipward");
}

QString Provider::longName() const {
    return tr("Pipward: orchard map and bloom planner");
}

QIcon Provider::icon() const {
    return QIcon(QStringLiteral(":/pipward/pip.svg"));
}

QString Provider::versionInfo() const {
    return QStringLiteral(PIPWARD_VERSION);
}

void Provider::loadAlgorithms() {
    for (const auto& operation : operation::operations()) {
        addAlgorithm(new OperationAlgorithm(*operation));
    }
}

}  // namespace pipward::desktop
