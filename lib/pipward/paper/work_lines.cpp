// SPDX-License-Identifier: MIT
#include "pipward/paper/work_lines.h"

namespace pipward::paper {
namespace {

Sentence to_write_down(const season::FieldWorkItem& item) {
    switch (item.kind) {
        case season::WorkKind::pollen:
            return say("lot, flowers");
        case season::WorkKind::flowers:
            return say("flowers, tag, by whom");
        case season::WorkKind::fruit:
            return say("fruits, sound and empty seed");
        case season::WorkKind::seed:
            break;
    }
    return say("count, day");
}

}  // namespace

WorkLine work_line(const season::WorkStop& work) {
    const auto& item = work.item;
    return {.title = item.title,
            .from = item.from,
            .to = item.to,
            .late = item.late,
            .address = work.address,
            .label = item.tree,
            .tags = item.tags.empty() ? Sentence{} : say("Tags: {}.", item.tags),
            .with = item.with,
            .amount = item.amount,
            .mind = item.mind,
            .write_down = to_write_down(item)};
}

WorkLine work_line(const season::Picking& picking) {
    return {.title = say("Cross {}: pick the fruit", picking.tag.work->cross),
            .from = picking.tag.days.from,
            .to = picking.tag.days.to,
            .address = picking.address,
            .label = picking.tag.work->tree,
            .tags = say("Tag {}.", picking.tag.work->tag),
            .with = {},
            .amount = picking.tag.work->flowers == 1 ? say("1 flower worked")
                                                     : say("{} flowers worked", picking.tag.work->flowers),
            .mind = seed::picking_caution(picking.tag),
            .write_down = say("fruits, sound and empty seed")};
}

}  // namespace pipward::paper
