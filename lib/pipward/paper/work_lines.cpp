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
            .by_median = item.by_median,
            .late = item.late,
            .address = work.address,
            .label = item.tree,
            .tags = item.tags.empty() ? Sentence{} : say("Tags: {}.", item.tags),
            .with = item.with,
            .amount = item.amount,
            .mind = item.mind,
            .write_down = to_write_down(item)};
}

WorkLine work_line(const season::Harvest& harvest) {
    return {.title = say("Cross {}: harvest the fruit", harvest.tag.work->cross),
            .from = harvest.tag.days.from,
            .to = harvest.tag.days.to,
            .address = harvest.address,
            .label = harvest.tag.work->tree,
            .tags = say("Tag {}.", harvest.tag.work->tag),
            .with = {},
            .amount = harvest.tag.work->flowers == 1
                          ? say("1 flower pollinated")
                          : say("{} flowers pollinated", harvest.tag.work->flowers),
            .mind = seed::harvest_caution(harvest.tag),
            .write_down = say("fruits, sound and empty seed")};
}

}  // namespace pipward::paper
