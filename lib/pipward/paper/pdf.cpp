// SPDX-License-Identifier: MIT
#include "pipward/paper/pdf.h"

#include <cairo-pdf.h>

#include <memory>
#include <numbers>

#include "pipward/paper/detail/pango_text.h"
#include "pipward/value/finding.h"
#include "pipward/value/sentence.h"

namespace pipward::paper {
namespace {

using Surface = std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)>;
using Pen = std::unique_ptr<cairo_t, decltype(&cairo_destroy)>;

// Units of the drawing library are points of print.
struct Drawing {
    cairo_t* pen;
    const Typesetter::Parts* text;

    void choose(const Paint& paint) const {
        cairo_set_source_rgb(pen, paint.red / 255.0, paint.green / 255.0, paint.blue / 255.0);
    }
    void fill_and_edge(const Paint& fill, const Paint& edge, Millimetres width) const {
        choose(fill);
        cairo_fill_preserve(pen);
        if (width.value > 0) {
            choose(edge);
            cairo_set_line_width(pen, to_points(width));
            cairo_stroke_preserve(pen);
        }
        cairo_new_path(pen);
    }
    void path(const std::vector<PaperSpot>& spots) const {
        cairo_new_path(pen);
        for (const auto& spot : spots) {
            cairo_line_to(pen, to_points(spot.x), to_points(spot.y));
        }
    }

    void operator()(const TextPiece& piece) const;
    void operator()(const LinePiece& piece) const;
    void operator()(const ShapePiece& piece) const;
    void operator()(const DiscPiece& piece) const;
    void operator()(const QrPiece& piece) const;
};

void Drawing::operator()(const TextPiece& piece) const {
    // On one line the width only tells where the sides are.
    const bool sided = piece.wraps || piece.side != Align::left;
    const auto layout = laid_out(*text, piece.text, piece.face, piece.side,
                                 sided ? std::optional{piece.box.width} : std::nullopt);
    cairo_move_to(pen, to_points(piece.box.left), to_points(piece.box.top));
    if (piece.halo) {
        pango_cairo_layout_path(pen, layout.get());
        choose(white_paint);
        cairo_set_line_width(pen, 0.22 * piece.face.points);
        cairo_set_line_join(pen, CAIRO_LINE_JOIN_ROUND);
        cairo_stroke(pen);
        cairo_move_to(pen, to_points(piece.box.left), to_points(piece.box.top));
    }
    choose(piece.paint);
    pango_cairo_show_layout(pen, layout.get());
    cairo_new_path(pen);
}

void Drawing::operator()(const LinePiece& piece) const {
    path(piece.through);
    choose(piece.paint);
    cairo_set_line_width(pen, to_points(piece.width));
    cairo_set_line_join(pen, CAIRO_LINE_JOIN_MITER);
    std::vector<double> dashes;
    for (const auto length : piece.dashes) {
        dashes.push_back(to_points(length));
    }
    cairo_set_dash(pen, dashes.data(), static_cast<int>(dashes.size()), 0);
    cairo_stroke(pen);
    cairo_set_dash(pen, nullptr, 0, 0);
}

void Drawing::operator()(const ShapePiece& piece) const {
    path(piece.corners);
    cairo_close_path(pen);
    fill_and_edge(piece.fill, piece.edge, piece.edge_width);
}

void Drawing::operator()(const DiscPiece& piece) const {
    cairo_new_path(pen);
    cairo_arc(pen, to_points(piece.middle.x), to_points(piece.middle.y), to_points(piece.diameter / 2), 0,
              2 * std::numbers::pi);
    fill_and_edge(piece.fill, piece.edge, piece.edge_width);
}

// Dark modules of a row that touch become one rectangle, and all of them one shape: no hair lines between.
void Drawing::operator()(const QrPiece& piece) const {
    const auto& code = piece.code;
    const double module = to_points(module_in(code, piece.box.width));
    const double left = to_points(piece.box.left) + qr_free_zone * module;
    const double top = to_points(piece.box.top) + qr_free_zone * module;
    cairo_new_path(pen);
    for (int row = 0; row < code.size; ++row) {
        for (int column = 0; column < code.size;) {
            int end = column;
            while (end < code.size && code.is_dark(row, end)) {
                ++end;
            }
            if (end > column) {
                cairo_rectangle(pen, left + column * module, top + row * module, (end - column) * module,
                                module);
            }
            column = end + 1;
        }
    }
    choose(black_paint);
    cairo_fill(pen);
}

cairo_status_t keep(void* text, const unsigned char* bytes, unsigned int count) {
    static_cast<std::string*>(text)->append(reinterpret_cast<const char*>(bytes), count);
    return CAIRO_STATUS_SUCCESS;
}

void require(cairo_status_t status) {
    if (status != CAIRO_STATUS_SUCCESS) {
        throw Error(Trouble::access, {Level::error, "", "", "", cairo_status_to_string(status),
                                      say("The pages cannot be drawn."), say("Draw fewer at a time.")});
    }
}

void tell_about(cairo_surface_t* surface, const PdfAbout& about) {
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_TITLE, about.title.c_str());
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATOR, "Pipward");
    const auto made = to_iso(about.made_on) + "T00:00:00Z";
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATE_DATE, made.c_str());
}

}  // namespace

std::string pdf_of(std::span<const Page> pages, const PdfAbout& about, const Typesetter& typesetter,
                   const std::function<void(double share)>& tell) {
    std::string text;
    const auto first = pages.empty() ? a4_page : pages.front().size;
    const Surface surface(
        cairo_pdf_surface_create_for_stream(&keep, &text, to_points(first.width), to_points(first.height)),
        &cairo_surface_destroy);
    tell_about(surface.get(), about);
    double done = 0;
    for (const auto& page : pages) {
        cairo_pdf_surface_set_size(surface.get(), to_points(page.size.width), to_points(page.size.height));
        const Pen pen(cairo_create(surface.get()), &cairo_destroy);
        const Drawing drawing{pen.get(), &typesetter.parts()};
        for (const auto& piece : page.pieces) {
            std::visit(drawing, piece);
        }
        cairo_show_page(pen.get());
        require(cairo_status(pen.get()));
        tell(++done / static_cast<double>(pages.size()));
    }
    cairo_surface_finish(surface.get());
    require(cairo_surface_status(surface.get()));
    return text;
}

}  // namespace pipward::paper
