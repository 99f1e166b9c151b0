// SPDX-License-Identifier: GPL-2.0-or-later
#include "find/card_action.h"

#include <qgsfeature.h>

#include "find/book_layer.h"

namespace pipward::desktop {

CardAction::CardAction(QObject* parent)
    : FeatureAction(tr("Tree record"), parent, QIcon(QStringLiteral(":/pipward/pip.svg"))) {
    setObjectName(QStringLiteral("pipward_card_action"));
}

bool CardAction::suits(const QgsMapLayer* layer) const {
    return !book_of_trees(layer).isEmpty();
}

void CardAction::run_for(const QgsMapLayer* layer, const QgsFeature& feature) {
    emit asked_for(book_of_trees(layer), feature.id());
}

}  // namespace pipward::desktop
