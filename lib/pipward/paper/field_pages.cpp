// SPDX-License-Identifier: MIT
#include "pipward/paper/field_pages.h"

#include <algorithm>

#include "pipward/paper/detail/map_drawing.h"
#include "pipward/paper/detail/map_furniture.h"

#include "pipward/value/complaint.h"

namespace pipward::paper {
namespace {

// Marks keep apart from their neighbours in the row.
Millimetres mark_size(const FieldMap& map, int denominator) {
    constexpr double share = 0.5;
    const double spacing = usual_spacing(map.trees) * 1000 / denominator;
    return {std::clamp(spacing * share, 0.8, 2.6)};
}

class PageMaker {
  public:
    PageMaker(const FieldMap& map, const FieldPlan& plan, const TextRuler& ruler, const Wording& wording)
        : map_(map), plan_(plan), ruler_(ruler), wording_(wording) {}

    void make_overview() {
        detail::MapDrawing drawing(map_, *plan_.overview, ruler_, wording_);
        drawing.put_row_lines();
        drawing.put_marks(mark_size(map_, plan_.overview->denominator));
        drawing.put_block_names();
        drawing.put_page_frames(plan_.windows, 2);
        keep(drawing, *plan_.overview, true);
    }
    void make(const MapWindow& window) {
        detail::MapDrawing drawing(map_, window, ruler_, wording_);
        const auto mark = mark_size(map_, window.denominator);
        drawing.put_row_lines();
        drawing.put_marks(mark);
        if (window.block.empty()) {
            drawing.put_block_names();
        }
        drawing.put_row_names();
        drawing.put_numbers(mark);
        keep(drawing, window, false);
    }
    FieldPages take() { return std::move(made_); }

  private:
    int pages() const { return static_cast<int>(plan_.windows.size()) + (plan_.overview ? 1 : 0); }

    void keep(detail::MapDrawing& drawing, const MapWindow& window, bool is_overview) {
        const int number = static_cast<int>(made_.pages.size()) + 1;
        made_.trees.push_back(drawing.trees());
        made_.denominators.push_back(window.denominator);
        made_.numbers_left_out += drawing.numbers_left_out();
        Page page{window.page, drawing.take()};
        std::ranges::move(
            detail::map_furniture(map_, window, {number, pages(), is_overview}, ruler_, wording_),
            std::back_inserter(page.pieces));
        made_.pages.push_back(std::move(page));
    }

    const FieldMap& map_;
    const FieldPlan& plan_;
    const TextRuler& ruler_;
    const Wording& wording_;
    FieldPages made_;
};

}  // namespace

FieldPages field_pages(const FieldMap& map, const FieldPlan& plan, const TextRuler& ruler,
                       const Wording& wording, const std::function<void(double share)>& tell) {
    PageMaker maker(map, plan, ruler, wording);
    if (plan.overview) {
        maker.make_overview();
    }
    double done = 0;
    for (const auto& window : plan.windows) {
        maker.make(window);
        tell(++done / static_cast<double>(plan.windows.size()));
    }
    return maker.take();
}

Findings findings_on(const FieldPlan& plan, const FieldPages& pages) {
    Findings findings;
    if (!plan.is_legible) {
        findings.push_back(about_table(Level::warning, "tree",
                                       say("At this scale neighbours are less than 3 mm apart: marks touch."),
                                       say("Choose a larger scale or larger paper.")));
    }
    if (pages.numbers_left_out > 0) {
        findings.push_back(about_table(
            Level::notice, "tree",
            say("For want of room {} numbers of trees or names of rows and blocks are left out.",
                pages.numbers_left_out),
            say("Choose a larger scale, or number the trees: positions are shorter than labels.")));
    }
    return findings;
}

}  // namespace pipward::paper
