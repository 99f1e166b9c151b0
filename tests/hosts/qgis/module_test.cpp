// SPDX-License-Identifier: GPL-2.0-or-later
// The module as the desktop loads it, without an interface.
#include <gtest/gtest.h>
#include <qgisplugin.h>
#include <qgsapplication.h>
#include <qgsprocessingprovider.h>
#include <qgsprocessingregistry.h>

#include <QLibrary>

#include "pipward/operation/operation.h"

namespace {

QgsProcessingProvider* provider() {
    return QgsApplication::processingRegistry()->providerById(QStringLiteral("pipward"));
}

template <class Function>
Function* resolved(QLibrary& module, const char* name) {
    return reinterpret_cast<Function*>(module.resolve(name));
}

using Factory = QgisPlugin*(QgisInterface*);
using Words = const QString*();
using Number = int();

TEST(Module, AddsItsProviderAndTakesEverythingBackTwiceOver) {
    QLibrary module(QStringLiteral(PIPWARD_MODULE));
    ASSERT_TRUE(module.load()) << module.errorString().toStdString();
    auto* factory = resolved<Factory>(module, "classFactory");
    ASSERT_NE(factory, nullptr);
    for (int time = 0; time < 2; ++time) {
        const std::unique_ptr<QgisPlugin> plugin(factory(nullptr));
        EXPECT_EQ(provider(), nullptr);
        plugin->initGui();
        ASSERT_NE(provider(), nullptr);
        EXPECT_EQ(provider()->algorithms().size(), static_cast<int>(pipward::operation::operations().size()));
        plugin->unload();
        EXPECT_EQ(provider(), nullptr);
    }
}

TEST(Module, TellsTheDesktopWhatItIs) {
    QLibrary module(QStringLiteral(PIPWARD_MODULE));
    ASSERT_TRUE(module.load());
    for (const auto* name : {"name", "description", "category", "version"}) {
        auto* words = resolved<Words>(module, name);
        ASSERT_NE(words, nullptr) << name;
        EXPECT_FALSE(words()->isEmpty()) << name;
    }
    EXPECT_EQ(resolved<Number>(module, "type")(), QgisPlugin::UI);
}

TEST(Module, RegistersForTheBridgeOnceHoweverOftenItIsAsked) {
    QLibrary module(QStringLiteral(PIPWARD_MODULE));
    ASSERT_TRUE(module.load());
    auto* add = resolved<Number>(module, "pipward_register");
    EXPECT_EQ(add(), 0);
    EXPECT_EQ(add(), 1);
    resolved<void()>(module, "pipward_unregister")();
    EXPECT_EQ(provider(), nullptr);
}

}  // namespace
