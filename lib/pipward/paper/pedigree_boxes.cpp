// SPDX-License-Identifier: MIT
#include "pipward/paper/pedigree_boxes.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/paper/millimetres.h"
#include "pipward/paper/text.h"

namespace pipward::paper {
namespace {

constexpr double side_padding = 1.2;   // millimetres, on either side
constexpr double bold_is_wider = 1.1;  // than estimated_width() tells
constexpr int most_name_lines = 3;
constexpr int most_detail_lines = 6;

double room_in_em(const BoxFace& face) {
    return (face.width - 2 * side_padding) / from_points(face.points).value;
}

Sentence kind_words(AccessionKind kind) {
    switch (kind) {
        case AccessionKind::cultivar:
            return say("cultivar");
        case AccessionKind::selection:
            return say("selection");
        case AccessionKind::seedling:
            return say("seedling");
        case AccessionKind::species:
            return say("species");
        case AccessionKind::unknown:
            break;
    }
    return {};
}

class BoxText {
  public:
    BoxText(const lineage::PedigreeBox& box, const lineage::PedigreeView& view, const PedigreeFacts& facts,
            const BoxFace& face, const Wording& wording)
        : box_(box), view_(view), facts_(facts), graph_(*facts.graph), face_(face), wording_(wording) {
        if (box.is_unknown()) {
            add(say("unknown"));
        } else if (box.node < 0) {
            add(say("{} more", box.more));
        } else if (graph_.nodes[box.node].is_blend) {
            add_blend();
        } else {
            add_accession();
        }
    }

    std::vector<BoxLine> lines;

  private:
    void add(const Sentence& words) { add_text(words.in(wording_), false, most_detail_lines); }

    void add_text(const std::string& text, bool is_bold, int most) {
        const double room = room_in_em(face_) / (is_bold ? bold_is_wider : 1.0);
        for (auto& line : wrap_lines(text, room, most)) {
            lines.push_back({std::move(line), is_bold});
        }
    }

    std::string name() const {
        const auto& nodes = graph_.nodes;
        return box_.family.empty() ? nodes[box_.node].name
                                   : nodes[box_.family.front()].name + " … " + nodes[box_.family.back()].name;
    }

    // With dots where the line is known further: behind it on the way to ancestors, else before it.
    std::string share() const {
        if (box_.side == lineage::PedigreeSide::subject) {
            return box_.goes_on ? "…" : "";
        }
        const bool is_ancestor = box_.side == lineage::PedigreeSide::ancestor;
        const auto& shares = is_ancestor ? facts_.of_ancestor : facts_.of_subject;
        return fmt::format("{}{}{:.3g} %{}", box_.goes_on && !is_ancestor ? "… " : "",
                           box_.is_shared ? "◆ " : "", 100 * shares[box_.node],
                           box_.goes_on && is_ancestor ? " …" : "");
    }

    Sentence kind() const {
        if (!box_.family.empty()) {
            return say("{} seedlings", box_.family.size());
        }
        const auto* record = graph_.nodes[box_.node].record;
        return record == nullptr ? Sentence{} : kind_words(record->kind);
    }

    void add_accession() {
        const auto detail = share();
        const auto told = kind().in(wording_);
        const double together = bold_is_wider * estimated_width(name() + "  ") + estimated_width(detail);
        const bool needs_kind = !face_.is_compact || !box_.family.empty();
        if (!needs_kind && !detail.empty() && together <= room_in_em(face_)) {
            lines.push_back({name() + "\t" + detail, true});
        } else {
            add_text(name(), true, most_name_lines);
            const auto between = detail.empty() || told.empty() || !needs_kind ? "" : ", ";
            if (const auto text = detail + between + (needs_kind ? told : ""); !text.empty()) {
                add_text(text, false, most_detail_lines);
            }
        }
        add_other_parent();
        const auto more = facts_.more.find(box_.node);
        if (more != facts_.more.end() && box_.family.empty()) {
            for (const auto& words : more->second) {
                add(words);
            }
        }
    }

    // Of a descendant, who is not drawn.
    void add_other_parent() {
        if (box_.side != lineage::PedigreeSide::descendant) {
            return;
        }
        for (const auto& link : graph_.parents[box_.node]) {
            const bool is_drawn = std::ranges::any_of(
                view_.boxes, [&](const lineage::PedigreeBox& other) { return other.node == link.parent; });
            if (!is_drawn && lineage::generations_of(link) == 1) {
                add(say("with {}", graph_.nodes[link.parent].name));
            }
        }
    }

    void add_blend() {
        add_text(name(), true, most_name_lines);
        add(say("blend of pollen"));
        double told = 0;
        for (const auto& link : graph_.parents[box_.node]) {
            add(verbatim(fmt::format("{} {:.3g} %", graph_.nodes[link.parent].name, 100 * link.share)));
            told += link.share;
        }
        constexpr double rounding = 0.005;
        if (told < 1 - rounding) {
            add(say("unknown {:.3g} %", 100 * (1 - told)));
        }
    }

    const lineage::PedigreeBox& box_;
    const lineage::PedigreeView& view_;
    const PedigreeFacts& facts_;
    const lineage::PedigreeGraph& graph_;
    const BoxFace& face_;
    const Wording& wording_;
};

}  // namespace

PedigreeFacts pedigree_facts(const lineage::PedigreeGraph& graph, int subject,
                         const std::vector<lineage::AncestorShare>& shares) {
    PedigreeFacts facts{&graph,
                        subject,
                        std::vector<double>(graph.nodes.size()),
                        lineage::shares_of_ancestor(graph, subject),
                        {}};
    for (const auto& share : shares) {
        facts.of_ancestor[share.node] = share.share;
    }
    return facts;
}

std::vector<BoxLine> box_lines(const lineage::PedigreeBox& box, const lineage::PedigreeView& view,
                               const PedigreeFacts& facts, const BoxFace& face, const Wording& wording) {
    return BoxText(box, view, facts, face, wording).lines;
}

double line_height(double points) {
    constexpr double leading = 1.2;  // em
    return from_points(points * leading).value;
}

double box_height(const std::vector<BoxLine>& lines, double points) {
    return static_cast<double>(lines.size()) * line_height(points) + 2 * box_padding;
}

}  // namespace pipward::paper
