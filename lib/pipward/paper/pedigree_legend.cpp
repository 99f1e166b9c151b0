// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include "pipward/paper/detail/pedigree_marks.h"
#include "pipward/paper/text.h"

namespace pipward::paper::detail {
namespace {

constexpr double margin = 10;  // millimetres, all of them
constexpr double words_points = 7;

Sentence words_of(lineage::PedigreeRole role) {
    switch (role) {
        case lineage::PedigreeRole::seed:
            return say("to the seed parent");
        case lineage::PedigreeRole::pollen:
            return say("to the pollen parent");
        case lineage::PedigreeRole::member:
            return say("to a member of the blend");
        case lineage::PedigreeRole::sport:
            break;
    }
    return say("to its original");
}

// Words of the legend in a row, broken where the page ends.
class Legend {
  public:
    Legend(Page& page, const Wording& wording)
        : page_(page), wording_(wording), y_(page.size.height.value - margin - 12) {}

    void sample(lineage::PedigreeRole role) {
        const auto words = words_of(role).in(wording_);
        constexpr double length = 9;
        break_before(length + 2 + width_of(words));
        const double y = y_ + line_height(words_points) / 2;
        auto pen = line_pen(role);
        pen.through = {{{x_}, {y}}, {{x_ + length}, {y}}};
        page_.pieces.push_back(std::move(pen));
        x_ += length + 1.5;
        write(words);
    }

    void say_it(const Sentence& sentence) {
        const auto words = sentence.in(wording_);
        break_before(width_of(words));
        write(words);
    }

  private:
    static double width_of(const std::string& words) {
        return estimated_width(words) * from_points(words_points).value;
    }

    void break_before(double width) {
        if (x_ > margin && x_ + width > page_.size.width.value - margin) {
            x_ = margin;
            y_ += line_height(words_points) + 0.4;
        }
    }

    void write(const std::string& words) {
        page_.pieces.push_back(TextPiece{
            words, {{x_}, {y_}, {width_of(words)}, {line_height(words_points)}}, {words_points, false}});
        x_ += width_of(words) + 5;
    }

    Page& page_;
    const Wording& wording_;
    double x_ = margin;
    double y_ = 0;
};

void put_title(const PedigreeSheet& sheet, const Wording& wording, Page& page) {
    const Millimetres width{page.size.width.value - 2 * margin};
    const auto line = [&](const Sentence& sentence, double top, Face face, double wider) {
        const double room = width / from_points(face.points) / wider;
        page.pieces.push_back(TextPiece{wrap_lines(sentence.in(wording), room, 1).front(),
                                        {{margin}, {top}, width, {line_height(face.points)}},
                                        face});
    };
    line(sheet.title, margin - 1, {14, true}, 1.1);
    if (!sheet.subtitle.empty()) {
        line(sheet.subtitle, margin + 6, {8, false}, 1.0);
    }
}

bool any_of(const lineage::PedigreeView& view, bool (*is_so)(const lineage::PedigreeBox&)) {
    return std::ranges::any_of(view.boxes, is_so);
}

}  // namespace

void put_words(const PedigreeSheet& sheet, const lineage::PedigreeView& view, const PedigreeFacts& facts,
               const Wording& wording, Page& page) {
    put_title(sheet, wording, page);
    Legend legend(page, wording);
    for (const auto role : {lineage::PedigreeRole::seed, lineage::PedigreeRole::pollen,
                            lineage::PedigreeRole::member, lineage::PedigreeRole::sport}) {
        if (std::ranges::find(view.links, role, &lineage::BoxLink::role) != view.links.end()) {
            legend.sample(role);
        }
    }
    const auto& name = facts.graph->nodes[facts.subject].name;
    if (any_of(view, [](const lineage::PedigreeBox& box) { return box.is_shared; })) {
        legend.say_it(say("◆, double edge: occurs more than once in the pedigree, drawn once"));
    }
    if (any_of(view, [](const lineage::PedigreeBox& box) { return box.goes_on; })) {
        legend.say_it(say("…: more ancestors are known"));
    }
    if (any_of(view,
               [](const lineage::PedigreeBox& box) { return box.side == lineage::PedigreeSide::ancestor; })) {
        legend.say_it(say("% of an ancestor: its expected genetic contribution to {}", name));
    }
    if (any_of(view, [](const lineage::PedigreeBox& box) {
            return box.side == lineage::PedigreeSide::descendant;
        })) {
        legend.say_it(say("% of a descendant: expected genetic contribution of {}", name));
    }
}

}  // namespace pipward::paper::detail
