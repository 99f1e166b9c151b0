// SPDX-License-Identifier: MIT
#include "pipward/paper/label_layout.h"

#include <algorithm>
#include <cmath>

#include "pipward/paper/text.h"

namespace pipward::paper {
namespace {

constexpr double comfortable_points = 6.5;
constexpr double tiniest_points = 1;
// Larger dots make a code no easier to read at arm's length (common practice, no source).
constexpr Millimetres easy_module{0.75};
constexpr Millimetres gap{0.7};         // between texts
constexpr Millimetres column_gap{1};    // between texts and code
constexpr Millimetres blank_width{19};  // a word and room for a date
constexpr Millimetres blank_height{7};  // handwriting (common practice, no source)
constexpr Millimetres least_blank{4.5};
constexpr Millimetres most_blank{11};

// One text at its wished size, and how far it may shrink to stay on one line.
struct Wish {
    std::string text;
    double points = 0;
    bool bold = false;
    double one_line_share = 1;
    TextSize line{};  ///< on one line at that size; it grows evenly with the size
};

struct Fitted {
    const Wish* wish = nullptr;
    double points = 0;
    TextSize size;
};

struct Rooms {
    Box text;
    Box qr;
};

// The code at the right of a broad label, at the foot of a tall one.
Rooms divided(const Box& room, const std::optional<QrCode>& code) {
    if (!code) {
        return {room, {}};
    }
    const auto enough = easy_module * (code->size + 2 * qr_free_zone);
    if (room.height > room.width * 1.2) {
        const auto side = std::min({room.width, room.height * 0.4, enough});
        return {{room.left, room.top, room.width, room.height - side - column_gap},
                {room.left + (room.width - side) / 2, room.bottom() - side, side, side}};
    }
    const auto side = std::min({room.height, room.width * 0.42, enough});
    return {{room.left, room.top, room.width - side - column_gap, room.height},
            {room.right() - side, room.top + (room.height - side) / 2, side, side}};
}

double within(double least, double points, double most) {
    return std::clamp(points, least, most);
}

std::vector<Wish> wishes_of(const LabelText& label, const Box& room, const TextRuler& ruler) {
    const double height = to_points(std::min(room.height, room.width));
    std::vector<Wish> wishes;
    if (!label.headline.empty()) {
        wishes.push_back({clean_text(label.headline), within(10, height * 0.33, 54), true, 0.5});
    }
    const double points = within(comfortable_points, height * 0.11, 14);
    for (const auto& line : label.lines) {
        wishes.push_back(
            {clean_text(line), points, false, std::min(1.0, std::max(0.6, comfortable_points / points))});
    }
    for (auto& wish : wishes) {
        wish.line = ruler(wish.text, {wish.points, wish.bold}, {});
    }
    return wishes;
}

// The size at which a text stands on one line of this width, but no smaller than it may shrink.
double one_line_points(const Wish& wish, double factor, Millimetres width) {
    const auto line = wish.line.width * factor;
    const double share = line <= width ? 1.0 : std::max(width / line * 0.995, wish.one_line_share);
    return wish.points * factor * share;
}

// The headline by itself; the lines below it all in one size.
std::vector<Fitted> fitted(const std::vector<Wish>& wishes, double factor, Millimetres width,
                           const TextRuler& ruler) {
    std::vector<Fitted> texts;
    double smallest = 1e9;
    for (const auto& wish : wishes) {
        texts.push_back({&wish, one_line_points(wish, factor, width), {}});
        smallest = wish.bold ? smallest : std::min(smallest, texts.back().points);
    }
    for (auto& text : texts) {
        text.points = text.wish->bold ? text.points : smallest;
        text.size = ruler(text.wish->text, {text.points, text.wish->bold}, width);
    }
    return texts;
}

// Blanks by the row in which they stand.
std::vector<std::vector<const Blank*>> rows_of(const std::vector<Blank>& blanks, Millimetres width) {
    const auto columns = static_cast<std::size_t>(std::max(1.0, std::floor(width / blank_width)));
    std::vector<std::vector<const Blank*>> rows;
    bool is_closed = true;
    for (const auto& blank : blanks) {
        if (is_closed || blank.is_wide || rows.back().size() == columns) {
            rows.emplace_back();
        }
        rows.back().push_back(&blank);
        is_closed = blank.is_wide;
    }
    return rows;
}

struct Attempt {
    std::vector<Fitted> texts;
    std::size_t blank_rows = 0;
    Millimetres blank_height;
    Millimetres height;
};

Attempt attempt(const LabelText& label, const std::vector<Wish>& wishes, const Box& room, double factor,
                const TextRuler& ruler) {
    Attempt tried;
    tried.texts = fitted(wishes, factor, room.width, ruler);
    for (const auto& text : tried.texts) {
        tried.height = tried.height + text.size.height + gap;
    }
    tried.height = tried.texts.empty() ? Millimetres{} : tried.height - gap;
    tried.blank_rows = rows_of(label.blanks, room.width).size();
    tried.blank_height = std::max(least_blank, blank_height * factor);
    tried.height = tried.height + tried.blank_height * static_cast<double>(tried.blank_rows);
    return tried;
}

// However it is wrapped, text covers no less than it does on one line: a look that costs nothing.
bool may_fit(const std::vector<Wish>& wishes, const Box& room, double factor) {
    double covered = 0;
    for (const auto& wish : wishes) {
        const double smallest = factor * wish.one_line_share;
        covered += (wish.line.width * smallest).value * (wish.line.height * smallest).value;
    }
    return covered <= room.width.value * room.height.value;
}

bool fits(const Attempt& tried, const Box& room) {
    return tried.height <= room.height && std::ranges::all_of(tried.texts, [&](const Fitted& text) {
               return text.size.width <= room.width;
           });
}

std::optional<Attempt> best_attempt(const LabelText& label, const std::vector<Wish>& wishes, const Box& room,
                                    const TextRuler& ruler) {
    double smallest = comfortable_points;
    for (const auto& wish : wishes) {
        smallest = std::min(smallest, wish.points);
    }
    for (double factor = 1; factor * smallest >= tiniest_points; factor *= 0.96) {
        if (!may_fit(wishes, room, factor)) {
            continue;
        }
        auto tried = attempt(label, wishes, room, factor, ruler);
        if (fits(tried, room)) {
            return tried;
        }
    }
    return std::nullopt;
}

// Large labels give the lines to write on more room.
Millimetres spread(const Attempt& tried, const Box& room) {
    const double rows = static_cast<double>(std::max<std::size_t>(1, tried.blank_rows));
    const auto more = (room.height - tried.height) / rows;
    return std::max(tried.blank_height, std::min(most_blank, tried.blank_height + more));
}

void put_blank(const Blank& blank, const Box& room, const TextRuler& ruler, LaidLabel& laid) {
    const Face face{std::min(comfortable_points, to_points(room.height) * 0.45), false};
    const auto word = clean_text(blank.word);
    const auto size = ruler(word, face, {});
    const auto line = room.bottom() - Millimetres{0.6};
    laid.pieces.push_back(TextPiece{word, {room.left, line - size.height, size.width, size.height}, face});
    laid.pieces.push_back(LinePiece{
        {{room.left + size.width + Millimetres{0.8}, line}, {room.right(), line}}, {0.15}, black_paint});
    laid.smallest_points = std::min(laid.smallest_points, face.points);
}

void put_blanks(const LabelText& label, Millimetres height, const Box& room, const TextRuler& ruler,
                LaidLabel& laid) {
    constexpr Millimetres between{1.5};
    const auto rows = rows_of(label.blanks, room.width);
    auto top = room.bottom() - height * static_cast<double>(rows.size());
    for (const auto& row : rows) {
        const auto width = (room.width + between) / static_cast<double>(row.size());
        auto left = room.left;
        for (const auto* blank : row) {
            put_blank(*blank, {left, top, width - between, height}, ruler, laid);
            left = left + width;
        }
        top = top + height;
    }
}

// Texts from the top; without blanks the block of them stands in the middle.
void put_texts(const Attempt& tried, const Box& room, LaidLabel& laid) {
    auto top = room.top;
    if (tried.blank_rows == 0) {
        top = top + (room.height - tried.height) / 2;
    }
    for (const auto& text : tried.texts) {
        laid.pieces.push_back(TextPiece{text.wish->text,
                                        {room.left, top, room.width, text.size.height},
                                        {text.points, text.wish->bold},
                                        Align::left,
                                        true});
        laid.smallest_points = std::min(laid.smallest_points, text.points);
        top = top + text.size.height + gap;
    }
}

}  // namespace

Millimetres least_small_letters(const PageSize& label) {
    constexpr double large_label = 8000;  // square millimetres
    return label.width.value * label.height.value < large_label ? Millimetres{0.9} : Millimetres{1.2};
}

LaidLabel lay_label(const LabelText& label, const Box& room, const TextRuler& ruler) {
    LaidLabel laid;
    const auto code = label.qr ? qr_code(*label.qr) : std::nullopt;
    laid.qr_fits = !label.qr || code.has_value();
    const auto rooms = divided(room, code);
    const auto wishes = wishes_of(label, rooms.text, ruler);
    const auto tried = best_attempt(label, wishes, rooms.text, ruler);
    if (!tried) {
        laid.fits = false;
        return laid;
    }
    if (code) {
        laid.qr_module = module_in(*code, rooms.qr.width);
        laid.pieces.push_back(QrPiece{rooms.qr, *code});
    }
    laid.headline_points = tried->texts.empty() ? 0 : tried->texts.front().points;
    laid.smallest_points = tried->texts.empty() ? comfortable_points : laid.headline_points;
    put_texts(*tried, rooms.text, laid);
    put_blanks(label, spread(*tried, rooms.text), rooms.text, ruler, laid);
    return laid;
}

}  // namespace pipward::paper
