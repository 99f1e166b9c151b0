// SPDX-License-Identifier: GPL-2.0-or-later
#include "style/after_plan.h"

#include <qgisinterface.h>
#include <qgsmessagebar.h>
#include <qgsmessagebaritem.h>
#include <qgsproject.h>
#include <qgsreadwritecontext.h>
#include <qgsrulebasedrenderer.h>
#include <qgsvectorlayer.h>

#include <QCoreApplication>
#include <QDomDocument>
#include <QMainWindow>
#include <QPushButton>

#include "style/book_layers.h"
#include "style/book_opener.h"

namespace pipward::desktop {
namespace {

const QString windows = QStringLiteral("bloom_window");

QStringList filters_of(QgsRuleBasedRenderer& renderer) {
    QStringList filters;
    for (auto* rule : renderer.rootRule()->children()) {
        filters << rule->filterExpression();
    }
    return filters;
}

/// The stored style's renderer, if it goes by rules.
std::unique_ptr<QgsRuleBasedRenderer> stored_rules(const QgsVectorLayer& layer) {
    auto style = stored_style(layer);
    auto element = style.documentElement().firstChildElement(QStringLiteral("renderer-v2"));
    std::unique_ptr<QgsFeatureRenderer> renderer(
        element.isNull() ? nullptr : QgsFeatureRenderer::load(element, QgsReadWriteContext()));
    if (dynamic_cast<QgsRuleBasedRenderer*>(renderer.get()) == nullptr) {
        return nullptr;
    }
    return std::unique_ptr<QgsRuleBasedRenderer>(static_cast<QgsRuleBasedRenderer*>(renderer.release()));
}

void offer_map(QgisInterface& desktop, const QString& book) {
    auto* opener = desktop.mainWindow()->findChild<BookOpener*>(QStringLiteral("pipward_book_opener"));
    if (opener == nullptr) {
        return;
    }
    auto* item = QgsMessageBar::createMessage(
        QCoreApplication::translate("pipward::desktop", "Season"),
        QCoreApplication::translate("pipward::desktop", "The plan is in the book, but not on this map."));
    auto* button =
        new QPushButton(QCoreApplication::translate("pipward::desktop", "Open the book's map"), item);
    QObject::connect(button, &QPushButton::clicked, opener, [opener, item, book] {
        item->dismiss();
        opener->open(book);
    });
    item->layout()->addWidget(button);
    desktop.messageBar()->pushWidget(item, Qgis::MessageLevel::Info);
}

}  // namespace

bool renew_weeks(QgsVectorLayer& layer) {
    auto* shown = dynamic_cast<QgsRuleBasedRenderer*>(layer.renderer());
    const auto stored = stored_rules(layer);
    if (shown == nullptr || stored == nullptr ||
        shown->rootRule()->ruleKey() != stored->rootRule()->ruleKey() ||
        filters_of(*shown) == filters_of(*stored)) {
        return false;
    }
    layer.setRenderer(stored->clone());
    layer.triggerRepaint();
    return true;
}

void after_plan(QgisInterface& desktop, const QString& book) {
    bool shown = false;
    for (auto* layer : layers_of_book(book)) {
        if (book_table_of(*layer) == windows) {
            shown = true;
            renew_weeks(*layer);
        }
    }
    if (!shown) {
        offer_map(desktop, book);
    }
}

}  // namespace pipward::desktop
