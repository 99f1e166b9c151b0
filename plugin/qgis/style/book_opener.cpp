// SPDX-License-Identifier: GPL-2.0-or-later
#include "style/book_opener.h"

#include <qgisinterface.h>
#include <qgsapplication.h>
#include <qgsmessagebar.h>
#include <qgssettings.h>
#include <qgstaskmanager.h>

#include <QAction>
#include <QFileDialog>
#include <QFileInfo>
#include <QIcon>
#include <QMainWindow>
#include <QUrl>
#include <QUrlQuery>

#include "panel/operation_task.h"
#include "pipward/style/project_style.h"
#include "text.h"

namespace pipward::desktop {
namespace {

const QString menu = QStringLiteral("Pipward");
const QString folder_setting = QStringLiteral("pipward/folder");

}  // namespace

QString stored_map_address(const QString& book) {
    QUrl address;
    address.setScheme(QStringLiteral("geopackage"));
    address.setPath(QFileInfo(book).absoluteFilePath());
    QUrlQuery query;
    query.addQueryItem(QStringLiteral("projectName"), to_qt(style::season_map_name));
    address.setQuery(query);
    return QString::fromUtf8(address.toEncoded());
}

BookOpener::BookOpener(QgisInterface& desktop)
    : desktop_(desktop),
      action_(std::make_unique<QAction>(QIcon(QStringLiteral(":/pipward/pip.svg")),
                                        tr("Open an Orchard Book …"))) {
    setObjectName(QStringLiteral("pipward_book_opener"));
    setParent(desktop.mainWindow());
    action_->setObjectName(QStringLiteral("pipward_open_book"));
    action_->setStatusTip(tr("Opens the map that is stored in an orchard book"));
    connect(action_.get(), &QAction::triggered, this, &BookOpener::choose);
    desktop_.addPluginToMenu(menu, action_.get());
}

BookOpener::~BookOpener() {
    desktop_.removePluginMenu(menu, action_.get());
}

void BookOpener::choose() {
    const QString book = QFileDialog::getOpenFileName(desktop_.mainWindow(), tr("Choose an orchard book"),
                                                      QgsSettings().value(folder_setting).toString(),
                                                      tr("Orchard books (*.gpkg);;All files (*)"));
    if (!book.isEmpty()) {
        QgsSettings().setValue(folder_setting, QFileInfo(book).absolutePath());
        open(book);
    }
}

void BookOpener::open(const QString& book) {
    auto* task =
        new OperationTask(operation::operation_for(operation::Role::style_book), {{"book", from_qt(book)}});
    connect(task, &OperationTask::done, this, [this, book] { show(book); });
    connect(task, &OperationTask::failed, this,
            [this, book](const QString& trouble) { show_as_it_is(book, trouble); });
    QgsApplication::taskManager()->addTask(task);
}

void BookOpener::show(const QString& book) {
    if (desktop_.newProject(true)) {
        desktop_.addProject(stored_map_address(book));
        emit opened(book);
    }
}

// A book that may not be written can have been styled before.
void BookOpener::show_as_it_is(const QString& book, const QString& trouble) {
    bool styled = false;
    try {
        styled = book::look_at_book(from_qt(book)).styled;
    } catch (const Error&) {
        styled = false;
    }
    if (styled) {
        show(book);
    }
    desktop_.messageBar()->pushMessage(tr("Orchard book"), trouble, Qgis::MessageLevel::Warning);
}

}  // namespace pipward::desktop
