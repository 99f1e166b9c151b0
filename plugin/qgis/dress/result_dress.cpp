// SPDX-License-Identifier: GPL-2.0-or-later
#include "dress/result_dress.h"

#include <qgsprocessingalgorithm.h>
#include <qgsvectorlayer.h>

#include <QDomDocument>

#include "pipward/dress/style_text.h"
#include "pipward/operation/book/dress_book.h"
#include "text.h"

namespace pipward::desktop {
namespace {

std::optional<std::string> style_of(const Table& table) {
    const auto dress = operation::find_dress(table.shape.name, dress::bloom_span(table), host_wording);
    return dress ? std::optional(dress::style_text(*dress)) : std::nullopt;
}

bool dress_with(QgsVectorLayer& layer, const std::string& text) {
    QDomDocument style;
    QString trouble;
    return style.setContent(to_qt(text)) && layer.importNamedStyle(style, trouble);
}

/// Processing owns it and calls it in the main thread.
class Dresser : public QgsProcessingLayerPostProcessorInterface {
  public:
    explicit Dresser(std::string text) : text_(std::move(text)) {}

    void postProcessLayer(QgsMapLayer* layer, QgsProcessingContext&, QgsProcessingFeedback*) override {
        if (auto* vector = qobject_cast<QgsVectorLayer*>(layer)) {
            dress_with(*vector, text_);
        }
    }

  private:
    std::string text_;
};

}  // namespace

bool dress_result(QgsVectorLayer& layer, const Table& table) {
    const auto text = style_of(table);
    return text && dress_with(layer, *text);
}

void dress_on_arrival(QgsProcessingContext& context, const QString& destination, const Table& table) {
    if (!context.willLoadLayerOnCompletion(destination)) {
        return;
    }
    if (auto text = style_of(table)) {
        context.layerToLoadOnCompletionDetails(destination).setPostProcessor(new Dresser(std::move(*text)));
    }
}

}  // namespace pipward::desktop
