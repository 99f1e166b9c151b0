// SPDX-License-Identifier: MIT
#include "pipward/paper/page_svg.h"

#include <fmt/format.h>

#include "pipward/paper/text.h"
#include "pipward/paper/typesetter.h"

namespace pipward::paper {
namespace {

// From the top of a line of print_font to the feet of its letters, in em (read off the font).
constexpr double ascent = 0.928;

std::string colour(const Paint& paint) {
    return fmt::format("#{:02x}{:02x}{:02x}", paint.red, paint.green, paint.blue);
}

std::string points_of(const std::vector<PaperSpot>& spots) {
    std::string text;
    for (const auto& spot : spots) {
        text += fmt::format("{}{:.2f},{:.2f}", text.empty() ? "" : " ", spot.x.value, spot.y.value);
    }
    return text;
}

struct Writer {
    std::string svg{};

    void operator()(const TextPiece& piece) {
        const double x = piece.side == Align::left     ? piece.box.left.value
                         : piece.side == Align::centre ? piece.box.middle().x.value
                                                       : piece.box.right().value;
        const auto* const anchor = piece.side == Align::left     ? "start"
                                   : piece.side == Align::centre ? "middle"
                                                                 : "end";
        const double size = from_points(piece.face.points).value;
        svg += fmt::format(
            R"(<text x="{:.2f}" y="{:.2f}" font-size="{:.3f}" text-anchor="{}" fill="{}"{}>{}</text>)", x,
            piece.box.top.value + ascent * size, size, anchor, colour(piece.paint),
            piece.face.bold ? R"( font-weight="700")" : "", escape_markup(piece.text));
        svg += "\n";
    }

    void operator()(const LinePiece& piece) {
        std::string dashes;
        for (const auto length : piece.dashes) {
            dashes += fmt::format("{}{:.2f}", dashes.empty() ? "" : " ", length.value);
        }
        svg += fmt::format(R"(<polyline points="{}" fill="none" stroke="{}" stroke-width="{:.2f}"{}/>)",
                           points_of(piece.through), colour(piece.paint), piece.width.value,
                           dashes.empty() ? "" : fmt::format(R"( stroke-dasharray="{}")", dashes));
        svg += "\n";
    }

    void operator()(const ShapePiece& piece) {
        svg += fmt::format(R"(<polygon points="{}" fill="{}"{}/>)", points_of(piece.corners),
                           colour(piece.fill), edge(piece.edge, piece.edge_width));
        svg += "\n";
    }

    void operator()(const DiscPiece& piece) {
        svg += fmt::format(R"(<circle cx="{:.2f}" cy="{:.2f}" r="{:.2f}" fill="{}"{}/>)",
                           piece.middle.x.value, piece.middle.y.value, piece.diameter.value / 2,
                           colour(piece.fill), edge(piece.edge, piece.edge_width));
        svg += "\n";
    }

    void operator()(const QrPiece& /*left out*/) {}

    static std::string edge(const Paint& paint, Millimetres width) {
        return width.value > 0
                   ? fmt::format(R"( stroke="{}" stroke-width="{:.2f}")", colour(paint), width.value)
                   : std::string{};
    }
};

}  // namespace

std::string page_svg(const Page& page, const std::string& title) {
    Writer writer;
    for (const auto& piece : page.pieces) {
        std::visit(writer, piece);
    }
    return fmt::format(
               R"(<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {0:g} {1:g}" width="{0:g}mm" height="{1:g}mm" font-family="{2}, sans-serif">)",
               page.size.width.value, page.size.height.value, print_font) +
           "\n<title>" + escape_markup(title) + "</title>\n" +
           R"(<rect width="100%" height="100%" fill="#ffffff"/>)" + "\n" + writer.svg + "</svg>\n";
}

}  // namespace pipward::paper
