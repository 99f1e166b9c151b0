// SPDX-License-Identifier: GPL-2.0-or-later
#include "processing/parameters.h"

#include <qgsprocessingalgorithm.h>
#include <qgsprocessingparameters.h>

#include <QDate>
#include <QDateTime>
#include <algorithm>

#include "compat.h"
#include "current_book.h"
#include "text.h"

namespace pipward::desktop {
namespace {

using Definition = std::unique_ptr<QgsProcessingParameterDefinition>;
using Option = operation::ChoiceKind::Option;

QString label_of(const operation::Parameter& parameter, const QString& unit = {}) {
    const QString label = translated(parameter.label);
    return unit.isEmpty() ? label : QStringLiteral("%1 [%2]").arg(label, translated(from_qt(unit)));
}

QVariant default_of(const operation::Parameter& parameter) {
    return parameter.default_text.empty() ? QVariant() : QVariant(to_qt(parameter.default_text));
}

// A code that is a number stands before its meaning: people know the stages by it.
QString shown(const operation::ChoiceKind::Option& option) {
    const QString word = to_qt(option.word);
    const QString meaning = translated(option.meaning);
    return word.at(0).isDigit() && !meaning.startsWith(word) ? QStringLiteral("%1: %2").arg(word, meaning)
                                                             : meaning;
}

QStringList options_shown(const operation::ChoiceKind& choice) {
    QStringList texts;
    for (const auto& option : choice.options) {
        texts << shown(option);
    }
    return texts;
}

/// The word of what was chosen from the list, in any language, or typed as a word. What is no choice stays as
/// it is: the operation says which choices there are.
QString word_of(const operation::ChoiceKind& choice, const QString& given) {
    const auto found = std::ranges::find_if(choice.options, [&](const auto& option) {
        return given == to_qt(option.word) || given == shown(option) || given == to_qt(option.meaning);
    });
    return found == choice.options.end() ? given : to_qt(found->word);
}

/// A list whose values are texts or the words of the console, never places in the list: a stage 61 must not
/// be read as the sixty-second choice, nor 10 as the eleventh.
class ChoiceParameter : public QgsProcessingParameterEnum {
  public:
    ChoiceParameter(const QString& name, const QString& label, const operation::ChoiceKind& kind,
                    const QVariant& chosen, bool optional)
        : QgsProcessingParameterEnum(name, label, options_shown(kind), false, chosen, optional, true) {}

    QgsProcessingParameterDefinition* clone() const override { return new ChoiceParameter(*this); }
    bool checkValueIsAcceptable(const QVariant& value, QgsProcessingContext*) const override {
        return value.isValid() ? value.canConvert<QString>() && !value.toString().isEmpty()
                               : (flags() & optional_flag) != 0;
    }
};

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
        const auto chosen = std::ranges::find(kind.options, parameter.default_text, &Option::word);
        return std::make_unique<ChoiceParameter>(
            name, label_of(parameter), kind,
            chosen == kind.options.end() ? QVariant() : QVariant(shown(*chosen)), optional);
    }
    Definition operator()(const operation::TextKind&) const {
        return std::make_unique<QgsProcessingParameterString>(name, label_of(parameter),
                                                              default_of(parameter), false, optional);
    }
    // Offered by the dialog only: a script that forgets the book must not write into the one looked at last.
    Definition operator()(const operation::BookKind&) const {
        auto made = std::make_unique<QgsProcessingParameterFile>(
            name, label_of(parameter), file_behaviour, QString(), default_of(parameter), optional,
            QCoreApplication::translate("pipward::desktop", "Orchard books (*.gpkg);;All files (*)"));
        if (const QString book = current_book(); !book.isEmpty()) {
            made->setGuiDefaultValueOverride(book);
        }
        return made;
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
        return word_of(kind, values.value(definition->name(), definition->defaultValue()).toString());
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
