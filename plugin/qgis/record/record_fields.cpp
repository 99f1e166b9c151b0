// SPDX-License-Identifier: GPL-2.0-or-later
#include "record/record_fields.h"

#include <QVBoxLayout>

#include "pipward/value/bbch.h"
#include "record/field_widgets.h"

namespace pipward::desktop {
namespace {

constexpr int ladder_begins = 51;
constexpr int ladder_ends = 69;
constexpr int most_flowers = 100000;
constexpr int most_fruits = 10000;

bool is_of_flowering(const BbchWords& stage) {
    return stage.stage.code >= ladder_begins && stage.stage.code <= ladder_ends;
}

void add_stage(ValueList& list, const BbchWords& stage) {
    list.add(QStringLiteral("%1   %2")
                 .arg(stage.stage.code, 2, 10, QLatin1Char('0'))
                 .arg(translated(std::string(stage.words))),
             stage.stage.code);
}

// What is noted in spring comes first; the rest of the year stands below a line.
void fill_stages(ValueList& list) {
    for (const auto& stage : bbch_stages()) {
        if (is_of_flowering(stage)) {
            add_stage(list, stage);
        }
    }
    list.insertSeparator(list.count());
    for (const auto& stage : bbch_stages()) {
        if (!is_of_flowering(stage)) {
            add_stage(list, stage);
        }
    }
    list.setCurrentIndex(list.findData(first_bloom.code));
    list.setMaxVisibleItems(20);
}

}  // namespace

BloomFields::BloomFields()
    : stage_(new ValueList("pipward_record_stage")),
      open_percent_(make_optional_count("pipward_record_open", 100, tr("not counted"))),
      remark_(make_text("pipward_record_bloom_remark")) {
    fill_stages(*stage_);
    open_percent_->setSuffix(QStringLiteral(" %"));
    auto* rows = make_rows(this);
    rows->addRow(tr("Stage"), stage_);
    rows->addRow(tr("Flowers open"), open_percent_);
    rows->addRow(tr("Remark"), remark_);
}

book::Entry BloomFields::entry(const std::string& tree, Day day) const {
    return {"bloom_observation",
            {{"tree", tree},
             {"observed_on", day},
             {"bbch", std::int64_t{stage_->currentData().toInt()}},
             {"open_percent", number_of(*open_percent_)},
             {"remark", text_of(*remark_)}}};
}

PollinationFields::PollinationFields()
    : none_(make_words()),
      fields_(new QWidget),
      cross_(new ValueList("pipward_record_cross")),
      tag_(make_text("pipward_record_tag")),
      flowers_(make_count("pipward_record_flowers", 1, most_flowers)),
      lot_(new ValueList("pipward_record_lot")),
      remark_(make_text("pipward_record_work_remark")) {
    flowers_->setValue(20);
    auto* rows = make_rows(fields_);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->addRow(tr("Cross"), cross_);
    rows->addRow(tr("Tag"), tag_);
    rows->addRow(tr("Flowers pollinated"), flowers_);
    rows->addRow(tr("Pollen"), lot_);
    rows->addRow(tr("Remark"), remark_);
    auto* all = new QVBoxLayout(this);
    all->addWidget(none_);
    all->addWidget(fields_);
    all->addStretch();
    connect(cross_, qOverload<int>(&QComboBox::currentIndexChanged), this, &PollinationFields::take_cross);
}

void PollinationFields::offer(const Orchard& orchard, const TreeChoices& choices, Day day) {
    next_tags_.clear();
    lots_.clear();
    for (const auto& cross : choices.crosses) {
        next_tags_.push_back(next_tag(orchard, from_qt(cross.value)));
        lots_.push_back({{QString(), tr("fresh, from no lot")}});
        const auto kept = lots_for(orchard, from_qt(cross.value), day);
        lots_.back().insert(lots_.back().end(), kept.begin(), kept.end());
    }
    cross_->fill(choices.crosses);
    fields_->setVisible(possible());
    none_->setVisible(!possible());
    none_->setText(tr("No cross of %1 has %2 as its seed parent.")
                       .arg(choices.season)
                       .arg(choices.accession.isEmpty() ? tr("this tree") : choices.accession));
    take_cross(cross_->currentIndex());
}

// A tag that was typed by hand stays.
void PollinationFields::take_cross(int index) {
    if (index < 0) {
        return;
    }
    const auto chosen = static_cast<std::size_t>(index);
    if (tag_->text().isEmpty() || tag_->text() == proposed_) {
        proposed_ = next_tags_.at(chosen);
        tag_->setText(proposed_);
    }
    lot_->fill(lots_.at(chosen));
}

bool PollinationFields::possible() const {
    return cross_->count() > 0;
}

book::Entry PollinationFields::entry(const std::string& tree, Day day) const {
    return {"pollination",
            {{"tag", text_of(*tag_)},
             {"cross", text_of(*cross_)},
             {"tree", tree},
             {"pollinated_on", day},
             {"flowers", count_of(*flowers_)},
             {"lot", text_of(*lot_)},
             {"remark", text_of(*remark_)}}};
}

HarvestFields::HarvestFields()
    : none_(make_words()),
      fields_(new QWidget),
      tag_(new ValueList("pipward_record_harvested_tag")),
      fruits_(make_count("pipward_record_fruits", 0, most_fruits)),
      sound_(make_optional_count("pipward_record_sound", most_flowers, tr("not counted"))),
      empty_(make_optional_count("pipward_record_empty", most_flowers, tr("not counted"))),
      remark_(make_text("pipward_record_harvest_remark")) {
    fruits_->setValue(1);
    none_->setText(tr("This tree has no tag: record the pollination first."));
    auto* rows = make_rows(fields_);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->addRow(tr("Tag"), tag_);
    rows->addRow(tr("Fruits"), fruits_);
    rows->addRow(tr("Sound seeds"), sound_);
    rows->addRow(tr("Empty seeds"), empty_);
    rows->addRow(tr("Remark"), remark_);
    auto* all = new QVBoxLayout(this);
    all->addWidget(none_);
    all->addWidget(fields_);
    all->addStretch();
}

void HarvestFields::offer(const TreeChoices& choices) {
    tag_->fill(choices.tags);
    fields_->setVisible(possible());
    none_->setVisible(!possible());
}

bool HarvestFields::possible() const {
    return tag_->count() > 0;
}

book::Entry HarvestFields::entry(Day day) const {
    return {"fruit",
            {{"tag", text_of(*tag_)},
             {"harvested_on", day},
             {"fruits", count_of(*fruits_)},
             {"seeds_sound", count_of(*sound_)},
             {"seeds_empty", count_of(*empty_)},
             {"remark", text_of(*remark_)}}};
}

}  // namespace pipward::desktop
