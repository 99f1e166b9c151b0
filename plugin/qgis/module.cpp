// SPDX-License-Identifier: GPL-2.0-or-later
// The functions that the desktop looks up by name when it loads the plugin.
#include <qgisplugin.h>

#include <QString>

#include "plugin.h"

extern "C" {

Q_DECL_EXPORT QgisPlugin* classFactory(QgisInterface* desktop) {
    return new pipward::desktop::Plugin(desktop);
}

Q_DECL_EXPORT const QString* name() {
    static const QString text = pipward::desktop::plugin_name();
    return &text;
}

Q_DECL_EXPORT const QString* description() {
    static const QString text = pipward::desktop::plugin_description();
    return &text;
}

Q_DECL_EXPORT const QString* category() {
    static const QString text = QStringLiteral("Orchard");
    return &text;
}

Q_DECL_EXPORT const QString* version() {
    static const QString text = QStringLiteral(PIPWARD_VERSION);
    return &text;
}

Q_DECL_EXPORT const QString* icon() {
    static const QString text = QStringLiteral(":/pipward/pip.svg");
    return &text;
}

Q_DECL_EXPORT int type() {
    return QgisPlugin::UI;
}

Q_DECL_EXPORT void unload(QgisPlugin* plugin) {
    plugin->unload();
}

/// For the Python bridge: the desktop's headless runner loads Python plugins only. 0: added; 1: the compiled
/// plugin has added it before; 2: the desktop refused it.
Q_DECL_EXPORT int pipward_register() {
    return pipward::desktop::register_provider();
}

/// For whoever was answered 0: what the compiled plugin has added is its own to take away.
Q_DECL_EXPORT void pipward_unregister() {
    pipward::desktop::unregister_provider();
}
}
