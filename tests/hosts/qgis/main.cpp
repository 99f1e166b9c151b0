// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>
#include <qgsapplication.h>

#include <QTemporaryDir>

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    const QTemporaryDir profile;
    QgsApplication desktop(argc, argv, true, profile.path());
    QgsApplication::setPrefixPath(QStringLiteral("/usr"), true);
    QgsApplication::initQgis();
    const int result = RUN_ALL_TESTS();
    QgsApplication::exitQgis();
    return result;
}
