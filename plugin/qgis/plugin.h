// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgisplugin.h>

#include <QObject>
#include <QPointer>
#include <memory>

class QgisInterface;
class QgsDockWidget;

namespace pipward::desktop {

class BookOpener;
class ExpressionFunctions;
class FindDesk;
class LastingKeeper;
class Recording;
class SeasonPanel;
class Translation;

/// The plugin as the desktop sees it. Without an interface (headless runs, tests) only what needs no window
/// is added. unload() takes back everything; the desktop never deletes the plugin and may load it again.
class Plugin : public QObject, public QgisPlugin {
    Q_OBJECT
  public:
    explicit Plugin(QgisInterface* desktop);
    ~Plugin() override;

    void initGui() override;
    Q_INVOKABLE void unload() override;

  private:
    void follow_project(SeasonPanel& panel);

    QgisInterface* desktop_;
    std::unique_ptr<Translation> translation_;
    std::unique_ptr<ExpressionFunctions> functions_;
    std::unique_ptr<LastingKeeper> lasting_;
    QPointer<BookOpener> opener_;
    QPointer<QgsDockWidget> dock_;
    std::unique_ptr<Recording> recording_;
    QPointer<FindDesk> find_;
};

/// Adds the operations to Processing once; 0 added, 1 there already, 2 refused.
int register_provider();
void unregister_provider();

QString plugin_name();
QString plugin_description();

}  // namespace pipward::desktop
