// SPDX-License-Identifier: GPL-2.0-or-later
#include "processing/parameters.h"

#include <qgsprocessingalgorithm.h>
#include <qgsprocessingparameters.h>

#include <QDate>
#include <QDateTime>

#include "compat.h"
#include "text.h"

namespace pipward::desktop {
namespace {

using Definition = std::unique_ptr<QgsProcessingParameterDefinition>;

QString label_of(const operation::Parameter& parameter, const QString& unit = {}) {
    const QString label = translated(parameter.label);
    return unit.isEmpty() ? label : QStringLiteral("%1 [%2]").arg(label, translated(from_qt(unit)));
}

QVariant default_of(const operation::Parameter& parameter) {
    return parameter.default_text.empty() ? QVariant() : QVariant(to_qt(parameter.default_text));
}

QStringList option_words(const operation::ChoiceKind& choice) {
    QStringList words;
    for (const auto& option : choice.options) {
        words << to_qt(option.word);
    }
    return words;
}

QStringList option_meanings(const operation::ChoiceKind& choice) {
    QStringList meanings;
    for (const auto& option : choice.options) {
        meanings << translated(option.meaning);
    }
    return meanings;
}

// One overload a kind: leaving one out does not compile.
struct Maker {
    const operation::Parameter& parameter;
    QString name = parameter_name(parameter);
    bool optional = !parameter.required;

    Definition operator()(const operation::YesNoKind&) const {
        return std::make_unique<QgsProcessingParameterBoolean>(name, label_of(parameter),
                                                               parameter.default_text == "yes", optional);
    }
    Definition operator()(const operation::WholeKind& kind) const {
        auto made = std::make_unique<QgsProcessingParameterNumber>(
            name, label_of(parameter, to_qt(kind.unit)), whole_number, default_of(parameter), optional);
        limit(*made, kind);
        return made;
    }
    Definition operator()(const operation::WholeListKind& kind) const {
        return std::make_unique<QgsProcessingParameterString>(name, label_of(parameter, to_qt(kind.unit)),
                                                              default_of(parameter), false, optional);
    }
    Definition operator()(const operation::NumberKind& kind) const {
        auto made = std::make_unique<QgsProcessingParameterNumber>(
            name, label_of(parameter, to_qt(kind.unit)), real_number, default_of(parameter), optional);
        limit(*made, kind);
        return made;
    }
    Definition operator()(const operation::DayKind& kind) const {
        const QVariant day = kind.today_if_absent ? QVariant(QDate::currentDate()) : default_of(parameter);
        return std::make_unique<QgsProcessingParameterDateTime>(name, label_of(parameter), day_only, day,
                                                                optional);
    }
    Definition operator()(const operation::ChoiceKind& kind) const {
        const auto chosen = static_cast<int>(option_words(kind).indexOf(to_qt(parameter.default_text)));
        return std::make_unique<QgsProcessingParameterEnum>(name, label_of(parameter), option_meanings(kind),
                                                            false, chosen < 0 ? QVariant() : QVariant(chosen),
                                                            optional);
    }
    Definition operator()(const operation::TextKind&) const {
        return std::make_unique<QgsProcessingParameterString>(name, label_of(parameter),
                                                              default_of(parameter), false, optional);
    }
    Definition operator()(const operation::BookKind&) const {
        return std::make_unique<QgsProcessingParameterFile>(
            name, label_of(parameter), file_behaviour, QString(), default_of(parameter), optional,
            QCoreApplication::translate("pipward::desktop", "Orchard books (*.gpkg);;All files (*)"));
    }
    Definition operator()(const operation::NewBookKind&) const {
        return std::make_unique<QgsProcessingParameterFileDestination>(
            name, label_of(parameter),
            QCoreApplication::translate("pipward::desktop", "Orchard books (*.gpkg)"), QVariant(), optional,
            true);
    }
    Definition operator()(const operation::FileKind& kind) const {
        return std::make_unique<QgsProcessingParameterFile>(
            name, label_of(parameter), file_behaviour, QString(), default_of(parameter), optional,
            QCoreApplication::translate("pipward::desktop", "Files (%1);;All files (*)")
                .arg(to_qt(kind.pattern)));
    }

    template <class Kind>
    static void limit(QgsProcessingParameterNumber& number, const Kind& kind) {
        if (kind.least) {
            number.setMinimum(static_cast<double>(*kind.least));
        }
        if (kind.most) {
            number.setMaximum(static_cast<double>(*kind.most));
        }
    }
};

QString day_text(const QVariant& value) {
    if (value.userType() == QMetaType::QString) {
        return value.toString().left(10);
    }
    return value.toDate().toString(Qt::ISODate);
}

// How each kind's value reads as text, whatever the desktop holds it as.
struct Reader {
    const QgsProcessingParameterDefinition* definition;
    const QVariantMap& values;
    QgsProcessingContext& context;

    using P = QgsProcessingParameters;

    QString operator()(const operation::YesNoKind&) const {
        return P::parameterAsBool(definition, values, context) ? QStringLiteral("yes") : QStringLiteral("no");
    }
    QString operator()(const operation::WholeKind&) const {
        return QString::number(P::parameterAsInt(definition, values, context));
    }
    QString operator()(const operation::WholeListKind&) const {
        return P::parameterAsString(definition, values, context);
    }
    QString operator()(const operation::NumberKind&) const {
        return QString::number(P::parameterAsDouble(definition, values, context), 'g', 17);
    }
    QString operator()(const operation::DayKind&) const {
        return day_text(P::parameterAsDateTime(definition, values, context).date());
    }
    QString operator()(const operation::ChoiceKind& kind) const {
        return option_words(kind).value(P::parameterAsEnum(definition, values, context));
    }
    QString operator()(const operation::TextKind&) const {
        return P::parameterAsString(definition, values, context);
    }
    QString operator()(const operation::BookKind&) const {
        return P::parameterAsString(definition, values, context);
    }
    QString operator()(const operation::NewBookKind&) const {
        return P::parameterAsFileOutput(definition, values, context);
    }
    QString operator()(const operation::FileKind&) const {
        return P::parameterAsFile(definition, values, context);
    }
};

}  // namespace

QString parameter_name(const operation::Parameter& parameter) {
    return to_qt(parameter.key).toUpper().replace('-', '_');
}

std::unique_ptr<QgsProcessingParameterDefinition> make_parameter(const operation::Parameter& parameter) {
    auto made = std::visit(Maker{parameter}, parameter.kind);
    made->setHelp(translated(parameter.help));
    if (parameter.advanced) {
        made->setFlags(made->flags() | advanced_flag);
    }
    return made;
}

QString value_text(const operation::Parameter& parameter, const QgsProcessingAlgorithm& algorithm,
                   const QVariantMap& values, QgsProcessingContext& context) {
    const auto* definition = algorithm.parameterDefinition(parameter_name(parameter));
    const QVariant given = values.value(definition->name(), definition->defaultValue());
    if (!given.isValid() || given.toString().isEmpty()) {
        return {};
    }
    return std::visit(Reader{definition, values, context}, parameter.kind);
}

}  // namespace pipward::desktop
