// SPDX-License-Identifier: MIT
#include "pipward/paper/typesetter.h"

#include <cmath>
#include <string_view>

#include "pipward/paper/detail/pango_text.h"

namespace pipward::paper {
namespace {

using Font = std::unique_ptr<PangoFontDescription, decltype(&pango_font_description_free)>;

Font font_of(const Face& face) {
    Font font(pango_font_description_new(), &pango_font_description_free);
    pango_font_description_set_family_static(font.get(), print_font);
    pango_font_description_set_weight(font.get(), face.bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
    pango_font_description_set_size(font.get(), static_cast<gint>(std::lround(face.points * PANGO_SCALE)));
    return font;
}

// Widths that grow evenly with the size, as on paper: nothing is fitted to a screen's pixels.
void set_for_paper(PangoContext* context) {
    const std::unique_ptr<cairo_font_options_t, decltype(&cairo_font_options_destroy)> options(
        cairo_font_options_create(), &cairo_font_options_destroy);
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_antialias(options.get(), CAIRO_ANTIALIAS_GRAY);
    pango_cairo_context_set_font_options(context, options.get());
    pango_cairo_context_set_resolution(context, 72);
    pango_context_set_round_glyph_positions(context, FALSE);
}

PangoAlignment alignment_of(Align side) {
    return side == Align::left     ? PANGO_ALIGN_LEFT
           : side == Align::centre ? PANGO_ALIGN_CENTER
                                   : PANGO_ALIGN_RIGHT;
}

Millimetres from_units(int units) {
    return from_points(static_cast<double>(units) / PANGO_SCALE);
}

}  // namespace

Layout laid_out(const Typesetter::Parts& parts, const std::string& text, const Face& face, Align side,
                std::optional<Millimetres> wrap) {
    Layout layout(pango_layout_new(parts.context.get()));
    pango_layout_set_font_description(layout.get(), font_of(face).get());
    pango_layout_set_text(layout.get(), text.data(), static_cast<int>(text.size()));
    pango_layout_set_auto_dir(layout.get(), TRUE);
    pango_layout_set_alignment(layout.get(), alignment_of(side));
    if (wrap) {
        pango_layout_set_width(layout.get(), static_cast<int>(std::lround(to_points(*wrap) * PANGO_SCALE)));
        pango_layout_set_wrap(layout.get(), PANGO_WRAP_WORD_CHAR);
    }
    return layout;
}

Typesetter::Typesetter() : parts_(std::make_unique<Parts>()) {
    parts_->fonts.reset(pango_cairo_font_map_new_for_font_type(CAIRO_FONT_TYPE_FT));
    parts_->context.reset(pango_font_map_create_context(parts_->fonts.get()));
    set_for_paper(parts_->context.get());
    // Not the user's: the same page everywhere.
    pango_context_set_language(parts_->context.get(), pango_language_from_string("en"));
    pango_context_set_base_dir(parts_->context.get(), PANGO_DIRECTION_LTR);
}

Typesetter::~Typesetter() = default;

TextSize Typesetter::measure(const std::string& text, const Face& face,
                             std::optional<Millimetres> wrap) const {
    const auto layout = laid_out(*parts_, text, face, Align::left, wrap);
    int width = 0;
    int height = 0;
    pango_layout_get_size(layout.get(), &width, &height);
    return {from_units(width), from_units(height), pango_layout_get_line_count(layout.get())};
}

TextRuler Typesetter::ruler() const {
    return [this](const std::string& text, const Face& face, std::optional<Millimetres> wrap) {
        return measure(text, face, wrap);
    };
}

bool Typesetter::has_print_font() const {
    const std::unique_ptr<PangoFont, ObjectEnd> font(
        pango_font_map_load_font(parts_->fonts.get(), parts_->context.get(), font_of({}).get()));
    if (!font) {
        return false;
    }
    const Font found(pango_font_describe(font.get()), &pango_font_description_free);
    const auto* family = pango_font_description_get_family(found.get());
    return family != nullptr && std::string_view(family) == print_font;
}

bool Typesetter::can_show(const std::string& text) const {
    const auto layout = laid_out(*parts_, text, {}, Align::left, {});
    return pango_layout_get_unknown_glyphs_count(layout.get()) == 0;
}

}  // namespace pipward::paper
