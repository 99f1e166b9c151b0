// SPDX-License-Identifier: GPL-2.0-or-later
#include "processing/algorithm.h"

#include <qgsfeaturesink.h>
#include <qgsprocessingcontext.h>
#include <qgsprocessingfeedback.h>
#include <qgsprocessingoutputs.h>
#include <qgsprocessingutils.h>
#include <qgsvectorlayer.h>

#include <QDir>
#include <QIcon>
#include <QSaveFile>
#include <algorithm>

#include "compat.h"
#include "finding_line.h"
#include "pipward/record/reader_days.h"
#include "pipward/value/finding.h"
#include "processing/parameters.h"
#include "processing/results.h"
#include "style/result_style.h"
#include "text.h"

namespace pipward::desktop {
namespace {

const QString files_folder = QStringLiteral("FOLDER");
const QString sheet_output = QStringLiteral("SHEET");

// Its tables stand in the book: layers of the same would only be copies.
bool keeps_results(const operation::Operation& operation) {
    return std::ranges::any_of(operation.parameters(), [](const auto& asked) { return asked.key == "keep"; });
}

QString joined(const Findings& findings) {
    QStringList lines;
    for (const auto& finding : findings) {
        lines << finding_line(finding);
    }
    return lines.join('\n');
}

void report(const Findings& findings, QgsProcessingFeedback& feedback) {
    for (const auto& finding : findings) {
        const QString line = finding_line(finding);
        if (finding.level == Level::notice) {
            feedback.pushInfo(line);
        } else {
            feedback.pushWarning(line);
        }
    }
}

operation::Run lent_run(QgsProcessingFeedback& feedback) {
    operation::Run run;
    run.progress = [&feedback](double share, std::string_view step) {
        feedback.setProgress(100 * share);
        feedback.setProgressText(to_qt(step));
    };
    run.cancelled = [&feedback] { return feedback.isCanceled(); };
    run.note = [&feedback](std::string_view line) { feedback.pushInfo(to_qt(line)); };
    run.wording = with_reader_days(host_wording, {});
    return run;
}

auto source_of(const TableShape& shape) {
    return shape.has_points ? point_source : shape.has_lines ? line_source : table_source;
}

auto geometry_of(const TableShape& shape) {
    return shape.has_points ? point_geometry : shape.has_lines ? line_geometry : no_geometry;
}

void write_file(const operation::MadeFile& file, const QString& folder) {
    QSaveFile out(QDir(folder).filePath(to_qt(file.name)));
    const auto bytes = QByteArray::fromStdString(file.content);
    if (!out.open(QIODevice::WriteOnly) || out.write(bytes) != bytes.size() || !out.commit()) {
        throw QgsProcessingException(
            QCoreApplication::translate("pipward::desktop", "Could not write %1: %2. Choose another folder.")
                .arg(out.fileName(), out.errorString()));
    }
}

}  // namespace

OperationAlgorithm::OperationAlgorithm(const operation::Operation& operation) : operation_(operation) {}

QString OperationAlgorithm::name() const {
    return to_qt(operation_.about().id).replace('-', '_');
}

QString OperationAlgorithm::displayName() const {
    return translated(operation_.about().title);
}

QString OperationAlgorithm::group() const {
    return translated(operation_.about().group);
}

QString OperationAlgorithm::groupId() const {
    return to_qt(operation_.about().group).toLower();
}

QString OperationAlgorithm::shortHelpString() const {
    return translated(operation_.about().help);
}

// What somebody may type who does not know the title: the console's name, in its parts too.
QStringList OperationAlgorithm::tags() const {
    const QString id = to_qt(operation_.about().id);
    return id.split('-') << id << to_qt(operation_.about().title);
}

QString OperationAlgorithm::shortDescription() const {
    return translated(operation_.about().help).section(QStringLiteral(". "), 0, 0);
}

QIcon OperationAlgorithm::icon() const {
    return QIcon(QStringLiteral(":/pipward/pip.svg"));
}

QgsProcessingAlgorithm* OperationAlgorithm::createInstance() const {
    return new OperationAlgorithm(operation_);
}

void OperationAlgorithm::initAlgorithm(const QVariantMap&) {
    for (const auto& parameter : operation_.parameters()) {
        addParameter(make_parameter(parameter).release());
    }
    for (const auto& shape : operation_.results()) {
        addParameter(new QgsProcessingParameterFeatureSink(result_name(shape), translated(shape.title),
                                                           source_of(shape), QVariant(), true,
                                                           !keeps_results(operation_)));
    }
    auto folder = std::make_unique<QgsProcessingParameterFolderDestination>(
        files_folder, QCoreApplication::translate("pipward::desktop", "Folder for sheets and other files"),
        QVariant(), true, true);
    addParameter(folder.release());
    addOutput(
        new QgsProcessingOutputHtml(sheet_output, QCoreApplication::translate("pipward::desktop", "Sheet")));
}

operation::Form OperationAlgorithm::form_of(const QVariantMap& parameters,
                                            QgsProcessingContext& context) const {
    operation::Form form;
    for (const auto& parameter : operation_.parameters()) {
        const QString text = value_text(parameter, *this, parameters, context);
        if (!text.isEmpty()) {
            form[parameter.key] = from_qt(text);
        }
    }
    return form;
}

bool OperationAlgorithm::checkParameterValues(const QVariantMap& parameters, QgsProcessingContext& context,
                                              QString* message) const {
    if (!QgsProcessingAlgorithm::checkParameterValues(parameters, context, message)) {
        return false;
    }
    const Findings wrong = operation_.check(form_of(parameters, context));
    if (has_errors(wrong) && message != nullptr) {
        *message = joined(wrong);
    }
    return !has_errors(wrong);
}

QVariantMap OperationAlgorithm::processAlgorithm(const QVariantMap& parameters, QgsProcessingContext& context,
                                                 QgsProcessingFeedback* feedback) {
    operation::Outcome outcome;
    try {
        outcome = operation_.run(form_of(parameters, context), lent_run(*feedback));
    } catch (const Error& error) {
        if (error.trouble() == Trouble::cancelled) {
            return {};
        }
        throw QgsProcessingException(joined(error.findings()));
    }
    report(outcome.findings, *feedback);
    return deliver(outcome, parameters, context, feedback);
}

QVariantMap OperationAlgorithm::deliver(const operation::Outcome& outcome, const QVariantMap& parameters,
                                        QgsProcessingContext& context, QgsProcessingFeedback* feedback) {
    QVariantMap results;
    for (const auto& table : outcome.tables) {
        const QgsFields fields = fields_of(table.shape);
        QString destination;
        const std::unique_ptr<QgsFeatureSink> sink(
            parameterAsSink(parameters, result_name(table.shape), context, destination, fields,
                            geometry_of(table.shape), QgsCoordinateReferenceSystem(to_qt(outcome.crs))));
        if (!sink) {
            continue;
        }
        for (const auto& row : table.rows) {
            QgsFeature feature = feature_of(row, table.shape, fields);
            if (!sink->addFeature(feature, QgsFeatureSink::FastInsert)) {
                throw QgsProcessingException(
                    writeFeatureError(sink.get(), parameters, result_name(table.shape)));
            }
        }
        results[result_name(table.shape)] = destination;
        style_on_arrival(context, destination, table);
    }
    const QString folder = parameterAsString(parameters, files_folder, context);
    if (!folder.isEmpty() && !outcome.files.empty()) {
        QDir().mkpath(folder);
        for (const auto& file : outcome.files) {
            write_file(file, folder);
            if (file.name.ends_with(".html")) {
                results[sheet_output] = QDir(folder).filePath(to_qt(file.name));
            }
        }
        results[files_folder] = folder;
    }
    feedback->pushInfo(said(outcome.summary));
    return results;
}

}  // namespace pipward::desktop
