// SPDX-License-Identifier: MIT
#pragma once

#include <pango/pangocairo.h>

#include <memory>

#include "pipward/paper/typesetter.h"

/// For the typesetter and the PDF writer only: text as the layout library sees it.
namespace pipward::paper {

struct ObjectEnd {
    void operator()(gpointer object) const { g_object_unref(object); }
};
using Layout = std::unique_ptr<PangoLayout, ObjectEnd>;

struct Typesetter::Parts {
    std::unique_ptr<PangoFontMap, ObjectEnd> fonts;
    std::unique_ptr<PangoContext, ObjectEnd> context;
};

/// The text laid out; its units are points.
Layout laid_out(const Typesetter::Parts& parts, const std::string& text, const Face& face, Align side,
                std::optional<Millimetres> wrap);

}  // namespace pipward::paper
