// SPDX-License-Identifier: GPL-2.0-or-later
#include "style/result_style.h"

#include <qgsprocessingalgorithm.h>
#include <qgsvectorlayer.h>

#include <QDomDocument>

#include "pipward/operation/book/style_book.h"
#include "pipward/style/style_text.h"
#include "text.h"

namespace pipward::desktop {
namespace {

std::optional<std::string> style_of(const Table& table) {
    const auto map_style = operation::find_style(table.shape.name, style::bloom_span(table), host_wording);
    return map_style ? std::optional(style::style_text(*map_style)) : std::nullopt;
}

bool style_with(QgsVectorLayer& layer, const std::string& text) {
    QDomDocument style;
    QString trouble;
    return style.setContent(to_qt(text)) && layer.importNamedStyle(style, trouble);
}

/// Processing owns it and calls it in the main thread.
class Styler : public QgsProcessingLayerPostProcessorInterface {
  public:
    explicit Styler(std::string text) : text_(std::move(text)) {}

    void postProcessLayer(QgsMapLayer* layer, QgsProcessingContext&, QgsProcessingFeedback*) override {
        if (auto* vector = qobject_cast<QgsVectorLayer*>(layer)) {
            style_with(*vector, text_);
        }
    }

  private:
    std::string text_;
};

}  // namespace

bool style_result(QgsVectorLayer& layer, const Table& table) {
    const auto text = style_of(table);
    return text && style_with(layer, *text);
}

void style_on_arrival(QgsProcessingContext& context, const QString& destination, const Table& table) {
    if (!context.willLoadLayerOnCompletion(destination)) {
        return;
    }
    if (auto text = style_of(table)) {
        context.layerToLoadOnCompletionDetails(destination).setPostProcessor(new Styler(std::move(*text)));
    }
}

}  // namespace pipward::desktop
