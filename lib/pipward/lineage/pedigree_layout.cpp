// SPDX-License-Identifier: MIT
#include "pipward/lineage/pedigree_layout.h"

#include <algorithm>

#include "pipward/lineage/detail/pedigree_columns.h"
#include "pipward/lineage/detail/pedigree_tracks.h"

namespace pipward::lineage {
namespace {

class Routing {
  public:
    Routing(const PedigreeView& view, const detail::PedigreeColumns& columns,
            const std::vector<PlacedBox>& boxes, const PedigreeSpace& space)
        : between_tracks(space.between_columns),
          view_(view),
          columns_(columns),
          boxes_(boxes),
          space_(space) {
        set_doors();
    }

    std::vector<PlacedLink> links() {
        std::vector<PlacedLink> placed;
        for (std::size_t i = 0; i < view_.links.size(); ++i) {
            placed.push_back({static_cast<int>(i), {}});
        }
        for (int column = 0; column + 1 < view_.column_count; ++column) {
            route_gap(column, placed);
        }
        for (auto& link : placed) {
            const auto& parent = boxes_[view_.links[link.link].parent];
            link.through.push_back({parent.left, in_[link.link]});
        }
        return placed;
    }

    double between_tracks;

  private:
    // Links leave a child and enter a parent one below the other, in the order of where they come from.
    void set_doors() {
        out_.resize(view_.links.size());
        in_.resize(view_.links.size());
        for (std::size_t box = 0; box < boxes_.size(); ++box) {
            spread(static_cast<int>(box), true);
            spread(static_cast<int>(box), false);
        }
    }

    double first_height(std::size_t link, bool from_child) const {
        const auto& lanes = columns_.lanes[link];
        if (!lanes.empty()) {
            return columns_.items[from_child ? lanes.front() : lanes.back()].middle;
        }
        const auto& end = boxes_[from_child ? view_.links[link].parent : view_.links[link].child];
        return end.top + end.height / 2;
    }

    void spread(int box, bool from_child) {
        std::vector<std::size_t> links;
        for (std::size_t i = 0; i < view_.links.size(); ++i) {
            if ((from_child ? view_.links[i].child : view_.links[i].parent) == box) {
                links.push_back(i);
            }
        }
        std::ranges::stable_sort(links, {}, [&](std::size_t i) { return first_height(i, from_child); });
        const auto& placed = boxes_[box];
        for (std::size_t i = 0; i < links.size(); ++i) {
            const double part = (static_cast<double>(i) + 1) / (static_cast<double>(links.size()) + 1);
            (from_child ? out_ : in_)[links[i]] = placed.top + placed.height * part;
        }
    }

    // The heights at which a link crosses the gap right of a column; nothing where it does not.
    std::optional<detail::LinkRun> run_of(int link, int column) const {
        const auto& ends = view_.links[link];
        const int first = view_.columns[ends.child];
        const int last = view_.columns[ends.parent];
        if (column < first || column >= last) {
            return std::nullopt;
        }
        const auto& lanes = columns_.lanes[link];
        const auto passed = static_cast<std::size_t>(column - first);
        detail::LinkRun run{link, out_[link], in_[link], 0};
        if (passed > 0) {
            run.from = columns_.items[lanes[passed - 1]].middle;
        }
        if (passed < lanes.size()) {
            run.to = columns_.items[lanes[passed]].middle;
        }
        return run;
    }

    void route_gap(int column, std::vector<PlacedLink>& placed) {
        std::vector<detail::LinkRun> runs;
        for (std::size_t i = 0; i < view_.links.size(); ++i) {
            if (const auto run = run_of(static_cast<int>(i), column)) {
                runs.push_back(*run);
            }
        }
        const int tracks = detail::give_tracks(runs);
        between_tracks = std::min(between_tracks, space_.between_columns / (tracks + 1));
        const double width = column_width(view_, space_);
        const double left = column * (width + space_.between_columns) + width;
        for (const auto& run : runs) {
            const double x = left + space_.between_columns * (run.track + 1) / (tracks + 1);
            auto& through = placed[run.link].through;
            if (through.empty()) {
                through.push_back({left, run.from});
            }
            through.push_back({x, run.from});
            through.push_back({x, run.to});
        }
    }

    const PedigreeView& view_;
    const detail::PedigreeColumns& columns_;
    const std::vector<PlacedBox>& boxes_;
    const PedigreeSpace& space_;
    std::vector<double> out_;  // heights at which links leave their child
    std::vector<double> in_;   // and enter their parent
};

}  // namespace

double column_width(const PedigreeView& view, const PedigreeSpace& space) {
    const double gaps = space.between_columns * (view.column_count - 1);
    return std::min(space.widest_box, std::max(0.0, space.width - gaps) / view.column_count);
}

double height_needed(const PedigreeView& view, const std::vector<double>& heights,
                     const PedigreeSpace& space) {
    const auto columns = detail::pedigree_columns(view, heights, space);
    double most = 0;
    for (const auto& column : columns.columns) {
        most = std::max(most, detail::column_height(columns, column, space));
    }
    return most;
}

std::optional<PedigreeLayout> pedigree_layout(const PedigreeView& view, const std::vector<double>& heights,
                                              const PedigreeSpace& space) {
    if (height_needed(view, heights, space) > space.height) {
        return std::nullopt;
    }
    auto columns = detail::pedigree_columns(view, heights, space);
    detail::order_columns(view, columns, space);
    PedigreeLayout layout;
    const double width = column_width(view, space);
    for (std::size_t i = 0; i < view.boxes.size(); ++i) {
        const auto& item = columns.items[i];
        layout.boxes.push_back({view.columns[i] * (width + space.between_columns),
                                item.middle - item.height / 2, width, item.height});
    }
    Routing routing(view, columns, layout.boxes, space);
    layout.links = routing.links();
    layout.between_tracks = routing.between_tracks;
    return layout;
}

}  // namespace pipward::lineage
