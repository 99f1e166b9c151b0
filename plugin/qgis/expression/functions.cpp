// SPDX-License-Identifier: GPL-2.0-or-later
#include "expression/functions.h"

#include <qgsexpression.h>
#include <qgsexpressioncontext.h>
#include <qgsexpressionfunction.h>
#include <qgsexpressionnodeimpl.h>
#include <qgsfeature.h>
#include <qgssettings.h>

#include <QCoreApplication>
#include <array>

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

    QVariant func(const QVariantList& values, const QgsExpressionContext* context, QgsExpression*,
                  const QgsExpressionNodeFunction*) override {
        const QString given = values.value(0).toString();
        const QString name = given.isEmpty() && context != nullptr ? name_of_feature(*context) : given;
        const QDate day = values.value(1).toDate();
        const auto facts = facts_for(context);
        return facts == nullptr || name.isEmpty()
                   ? QVariant()
                   : telling_.answer({*facts, name, day.isValid() ? day : QDate::currentDate()});
    }

  private:
    std::shared_ptr<const BookFacts> facts_for(const QgsExpressionContext* context) const {
        QString book;
        if (context != nullptr) {
            book = source_.layers->book_of(context->variable(QStringLiteral("layer_id")).toString());
        }
        if (book.isEmpty()) {
            book = QgsSettings().value(QStringLiteral("pipward/book")).toString();
        }
        return book.isEmpty() ? nullptr : source_.shelf->facts_of(book);
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
