// SPDX-License-Identifier: GPL-2.0-or-later
#include "expression/functions.h"

#include <qgsexpression.h>
#include <qgsexpressioncontext.h>
#include <qgsexpressionfunction.h>
#include <qgsexpressionnodeimpl.h>
#include <qgsfeature.h>

#include <QCoreApplication>
#include <QFileInfo>
#include <array>

#include "current_book.h"

namespace pipward::desktop {
namespace {

struct Source {
    std::shared_ptr<FactShelf> shelf;
    std::shared_ptr<LayerBooks> layers;
};

struct Asked {
    const BookFacts& facts;
    QString name;
    QDate from;
};

QString words(const char* text) {
    return QCoreApplication::translate("pipward::desktop::ExpressionFunctions", text);
}

/// What one function tells, as a row of a table.
struct Telling {
    const char* name;
    const char* help;
    bool takes_day;
    QVariant (*answer)(const Asked& asked);
};

QVariant full_bloom(const Asked& asked) {
    const QDate day = asked.facts.full_bloom.value(asked.name);
    return day.isValid() ? QVariant(day) : QVariant();
}

QVariant days_to_bloom(const Asked& asked) {
    const QDate day = asked.facts.full_bloom.value(asked.name);
    return day.isValid() ? QVariant(static_cast<int>(asked.from.daysTo(day))) : QVariant();
}

QVariant text_or_nothing(const QHash<QString, QString>& texts, const QString& name) {
    const auto found = texts.find(name);
    return found == texts.end() ? QVariant() : QVariant(*found);
}

QVariant address(const Asked& asked) {
    return text_or_nothing(asked.facts.address, asked.name);
}

QVariant lineage(const Asked& asked) {
    return text_or_nothing(asked.facts.lineage, asked.name);
}

constexpr std::array tellings{
    Telling{"orchard_full_bloom",
            QT_TRANSLATE_NOOP("pipward::desktop::ExpressionFunctions",
                              "Median date of full bloom of a tree or an accession, by the last season plan "
                              "of the book. Without a name: of the current feature."),
            false, full_bloom},
    Telling{"orchard_days_to_bloom",
            QT_TRANSLATE_NOOP("pipward::desktop::ExpressionFunctions",
                              "Days until the median date of full bloom of a tree or an accession, counted "
                              "from a day or from today; negative afterwards."),
            true, days_to_bloom},
    Telling{"orchard_address",
            QT_TRANSLATE_NOOP("pipward::desktop::ExpressionFunctions",
                              "Where a tree stands, in words: block, row and position."),
            false, address},
    Telling{"orchard_lineage",
            QT_TRANSLATE_NOOP("pipward::desktop::ExpressionFunctions",
                              "Seed parent and pollen parent of a tree or an accession."),
            false, lineage},
};

QgsExpressionFunction::ParameterList parameters_of(const Telling& telling) {
    using Parameter = QgsExpressionFunction::Parameter;
    QgsExpressionFunction::ParameterList list{Parameter(QStringLiteral("name"), true, QVariant())};
    if (telling.takes_day) {
        list << Parameter(QStringLiteral("day"), true, QVariant());
    }
    return list;
}

QString name_of_feature(const QgsExpressionContext& context) {
    const QgsFeature feature = context.feature();
    for (const auto* field : {"label", "tree", "accession", "name"}) {
        const int index = feature.fields().lookupField(QLatin1String(field));
        if (index >= 0 && !feature.attribute(index).toString().isEmpty()) {
            return feature.attribute(index).toString();
        }
    }
    return {};
}

QString why_not(const QString& book, FactShelf::State state) {
    if (book.isEmpty()) {
        return QCoreApplication::translate(
            "pipward::desktop::ExpressionFunctions",
            "This layer is of no orchard book, and none is chosen in the season panel.");
    }
    const QString name = QFileInfo(book).fileName();
    return state == FactShelf::State::reading
               ? QCoreApplication::translate("pipward::desktop::ExpressionFunctions",
                                             "The orchard book %1 is still being read: try again.")
                     .arg(name)
               : QCoreApplication::translate("pipward::desktop::ExpressionFunctions",
                                             "The orchard book %1 cannot be read.")
                     .arg(name);
}

class BookFunction : public QgsExpressionFunction {
  public:
    BookFunction(const Telling& telling, Source source)
        : QgsExpressionFunction(
              QLatin1String(telling.name), parameters_of(telling),
              QCoreApplication::translate("pipward::desktop::ExpressionFunctions", "Orchard"),
              words(telling.help), false, true),
          telling_(telling),
          source_(std::move(source)) {}

    bool isStatic(const QgsExpressionNodeFunction*, QgsExpression*,
                  const QgsExpressionContext*) const override {
        return false;
    }

    bool usesGeometry(const QgsExpressionNodeFunction*) const override { return false; }

    QSet<QString> referencedColumns(const QgsExpressionNodeFunction*) const override {
        return {QStringLiteral("label"), QStringLiteral("tree"), QStringLiteral("accession"),
                QStringLiteral("name")};
    }

    // An unknown is an answer and may be written into data; that the book could not be asked is none.
    QVariant func(const QVariantList& values, const QgsExpressionContext* context, QgsExpression* asking,
                  const QgsExpressionNodeFunction*) override {
        const QString given = values.value(0).toString();
        const QString name = given.isEmpty() && context != nullptr ? name_of_feature(*context) : given;
        const QDate day = values.value(1).toDate();
        const QString book = book_for(context);
        const auto shelved = book.isEmpty() ? FactShelf::Answer{FactShelf::State::failed, nullptr}
                                            : source_.shelf->facts_of(book);
        if (shelved.facts == nullptr) {
            asking->setEvalErrorString(why_not(book, shelved.state));
            return {};
        }
        return name.isEmpty()
                   ? QVariant()
                   : telling_.answer({*shelved.facts, name, day.isValid() ? day : QDate::currentDate()});
    }

  private:
    QString book_for(const QgsExpressionContext* context) const {
        const QString of_layer =
            context == nullptr
                ? QString()
                : source_.layers->book_of(context->variable(QStringLiteral("layer_id")).toString());
        return of_layer.isEmpty() ? current_book() : of_layer;
    }

    const Telling& telling_;
    Source source_;
};

}  // namespace

ExpressionFunctions::ExpressionFunctions()
    : shelf_(std::make_shared<FactShelf>()), layers_(std::make_shared<LayerBooks>()) {
    for (const auto& telling : tellings) {
        auto function = std::make_unique<BookFunction>(telling, Source{shelf_, layers_});
        if (QgsExpression::registerFunction(function.get(), false)) {
            functions_.push_back(std::move(function));
        }
    }
}

ExpressionFunctions::~ExpressionFunctions() {
    for (const auto& function : functions_) {
        QgsExpression::unregisterFunction(function->name());
    }
}

}  // namespace pipward::desktop
