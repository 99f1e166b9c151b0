// SPDX-License-Identifier: GPL-2.0-or-later
// Every declared operation as a Processing algorithm: same keys, same limits, same results.
#include <gtest/gtest.h>
#include <qgsprocessingcontext.h>
#include <qgsprocessingfeedback.h>
#include <qgsprocessingparameters.h>
#include <qgsproject.h>
#include <qgsvectorlayer.h>

#include <QFile>
#include <QTemporaryDir>
#include <algorithm>

#include "compat.h"
#include "paths.h"
#include "processing/algorithm.h"
#include "processing/parameters.h"
#include "processing/results.h"
#include "text.h"

namespace pipward::desktop {
namespace {

std::unique_ptr<QgsProcessingAlgorithm> algorithm_of(const operation::Operation& operation) {
    const OperationAlgorithm made(operation);
    return std::unique_ptr<QgsProcessingAlgorithm>(made.create());
}

/// A copy of the sample that goes with the object, and the season plan's parameters for it.
struct Desk {
    QTemporaryDir folder;
    QgsProcessingContext context;
    QgsProcessingFeedback feedback;

    QVariantMap plan_parameters() const {
        const QString book = folder.filePath(QStringLiteral("book.gpkg"));
        QFile::copy(to_qt(testing::sample_book()), book);
        return {{QStringLiteral("BOOK"), book},
                {QStringLiteral("AS_OF"), QStringLiteral("2026-03-20")},
                {QStringLiteral("BLOOM_WINDOW"), QStringLiteral("memory:")},
                {QStringLiteral("CROSS_OUTLOOK"), QStringLiteral("memory:")},
                {QStringLiteral("POLLEN_TASK"), QStringLiteral("memory:")},
                {QStringLiteral("FOLDER"), folder.filePath(QStringLiteral("out"))}};
    }
};

TEST(Adapter, GivesEveryOperationItsDeclaredParametersAndResults) {
    for (const auto& operation : operation::operations()) {
        const auto algorithm = algorithm_of(*operation);
        EXPECT_EQ(algorithm->name(), to_qt(operation->about().id).replace('-', '_'));
        EXPECT_FALSE(algorithm->shortHelpString().isEmpty());
        for (const auto& parameter : operation->parameters()) {
            const auto* definition = algorithm->parameterDefinition(parameter_name(parameter));
            ASSERT_NE(definition, nullptr) << operation->about().id << " " << parameter.key;
            EXPECT_FALSE(definition->help().isEmpty()) << parameter.key;
            EXPECT_EQ((definition->flags() & advanced_flag) != 0, parameter.advanced) << parameter.key;
        }
        for (const auto& shape : operation->results()) {
            EXPECT_NE(algorithm->parameterDefinition(result_name(shape)), nullptr) << shape.name;
        }
    }
}

TEST(Adapter, KeepsTheLimitsOfNumbers) {
    const auto algorithm = algorithm_of(*operation::find_operation("season-plan"));
    const auto* risk = dynamic_cast<const QgsProcessingParameterNumber*>(
        algorithm->parameterDefinition(QStringLiteral("RISK")));
    ASSERT_NE(risk, nullptr);
    EXPECT_GT(risk->minimum(), 0);
    EXPECT_LT(risk->maximum(), 1);
    EXPECT_DOUBLE_EQ(risk->defaultValue().toDouble(), 0.1);
}

TEST(Adapter, RunsTheSeasonPlanAndHandsOverItsTables) {
    Desk desk;
    bool well = false;
    const auto results = algorithm_of(*operation::find_operation("season-plan"))
                             ->run(desk.plan_parameters(), desk.context, &desk.feedback, &well);
    ASSERT_TRUE(well) << desk.feedback.textLog().toStdString();
    std::unique_ptr<QgsMapLayer> kept(
        desk.context.takeResultLayer(results[QStringLiteral("BLOOM_WINDOW")].toString()));
    auto* windows = qobject_cast<QgsVectorLayer*>(kept.get());
    ASSERT_NE(windows, nullptr);
    EXPECT_GT(windows->featureCount(), 100);
    EXPECT_EQ(windows->crs().authid(), QStringLiteral("EPSG:25832"));
    const int median = windows->fields().lookupField(QStringLiteral("full_p50"));
    ASSERT_GE(median, 0);
    QgsFeature first;
    ASSERT_TRUE(windows->getFeatures().nextFeature(first));
    EXPECT_EQ(first.attribute(median).toDate().year(), 2026);
    EXPECT_TRUE(QFile::exists(desk.folder.filePath(QStringLiteral("out/season-sheet.html"))));
}

TEST(Adapter, TakesAChoiceByItsCodeOrItsWordsNeverByItsPlaceInTheList) {
    const auto& operation = *operation::find_operation("record-bloom");
    const auto algorithm = algorithm_of(operation);
    const auto stage = std::ranges::find(operation.parameters(), "bbch", &operation::Parameter::key);
    ASSERT_NE(stage, operation.parameters().end());
    const auto* list = dynamic_cast<const QgsProcessingParameterEnum*>(
        algorithm->parameterDefinition(QStringLiteral("BBCH")));
    ASSERT_NE(list, nullptr);
    QgsProcessingContext context;
    const auto read = [&](const QVariant& value) {
        return value_text(*stage, *algorithm, {{QStringLiteral("BBCH"), value}}, context);
    };
    const auto& options = std::get<operation::ChoiceKind>(stage->kind).options;
    ASSERT_EQ(list->options().size(), static_cast<int>(options.size()));
    for (std::size_t i = 0; i < options.size(); ++i) {
        EXPECT_EQ(read(to_qt(options[i].word)), to_qt(options[i].word));
        EXPECT_EQ(read(list->options()[static_cast<int>(i)]), to_qt(options[i].word));
    }
    EXPECT_EQ(read(61), QStringLiteral("61"));
    EXPECT_EQ(read(2), QStringLiteral("2")) << "no stage, and not the third of the list";
    EXPECT_TRUE(list->checkValueIsAcceptable(61, &context));
}

TEST(Adapter, MakesNoLayersOfWhatStandsInTheBook) {
    const auto makes_layer = [](const char* operation, const char* table) {
        const auto algorithm = algorithm_of(*operation::find_operation(operation));
        const auto* sink = dynamic_cast<const QgsProcessingDestinationParameter*>(
            algorithm->parameterDefinition(QString::fromLatin1(table)));
        EXPECT_NE(sink, nullptr);
        return sink != nullptr && sink->createByDefault();
    };
    EXPECT_FALSE(makes_layer("season-plan", "BLOOM_WINDOW"));
    EXPECT_TRUE(makes_layer("tree-find", "FOUND"));
}

TEST(Adapter, LendsTheSheetToTheDesktopsViewer) {
    Desk desk;
    const auto results = algorithm_of(*operation::find_operation("season-plan"))
                             ->run(desk.plan_parameters(), desk.context, &desk.feedback);
    EXPECT_TRUE(QFile::exists(results[QStringLiteral("SHEET")].toString()));
}

TEST(Adapter, SaysWhatIsWrongWithAValueBeforeAnythingRuns) {
    Desk desk;
    auto parameters = desk.plan_parameters();
    parameters[QStringLiteral("RISK")] = 0.9;
    QString message;
    EXPECT_FALSE(algorithm_of(*operation::find_operation("season-plan"))
                     ->checkParameterValues(parameters, desk.context, &message));
    EXPECT_FALSE(message.isEmpty());
}

TEST(Adapter, TellsTheFindingsOfABookThatIsNotThere) {
    Desk desk;
    auto parameters = desk.plan_parameters();
    parameters[QStringLiteral("BOOK")] = desk.folder.filePath(QStringLiteral("nowhere.gpkg"));
    bool well = true;
    algorithm_of(*operation::find_operation("season-plan"))
        ->run(parameters, desk.context, &desk.feedback, &well);
    EXPECT_FALSE(well);
    EXPECT_TRUE(desk.feedback.textLog().contains(QStringLiteral("There is no such file")))
        << desk.feedback.textLog().toStdString();
}

TEST(Adapter, StopsWhenTheUserDoesAndLeavesTheBookAlone) {
    Desk desk;
    const auto parameters = desk.plan_parameters();
    QFile book(parameters[QStringLiteral("BOOK")].toString());
    ASSERT_TRUE(book.open(QIODevice::ReadOnly));
    const auto before = book.readAll();
    book.close();
    desk.feedback.cancel();
    bool well = true;
    const auto results = algorithm_of(*operation::find_operation("season-plan"))
                             ->run(parameters, desk.context, &desk.feedback, &well);
    EXPECT_TRUE(results.isEmpty());
    ASSERT_TRUE(book.open(QIODevice::ReadOnly));
    EXPECT_EQ(book.readAll(), before);
}

}  // namespace
}  // namespace pipward::desktop
