// SPDX-License-Identifier: GPL-2.0-or-later
#include "find/tree_card.h"

#include <QClipboard>
#include <QFormLayout>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "panel/table_view.h"
#include "pipward/place/address.h"
#include "pipward/place/geo_uri.h"
#include "pipward/place/tree_story.h"
#include "text.h"

namespace pipward::desktop {
namespace {

constexpr std::size_t events_told = 8;
constexpr int least_height = 320;  // the facts without the notes

QString day_text(Day day) {
    return QLocale().toString(to_qt(day), QLocale::ShortFormat);
}

QString planted_text(const Tree& tree) {
    if (!tree.planted_on) {
        return {};
    }
    return tree.rootstock ? TreeCard::tr("%1, on %2").arg(day_text(*tree.planted_on), to_qt(*tree.rootstock))
                          : day_text(*tree.planted_on);
}

QString distance_text(double metres) {
    return metres < 1000 ? TreeCard::tr("%1 m").arg(qRound(metres))
                         : TreeCard::tr("%1 km").arg(QLocale().toString(metres / 1000, 'f', 1));
}

QString way_text(const place::LonLat& tree, const LookingFrom& from) {
    const auto way = place::way_between(from.place, tree);
    const QString words = from.is_position ? TreeCard::tr("%1 %2 of your position (%3°)")
                                           : TreeCard::tr("%1 %2 of the map's middle (%3°)");
    return words.arg(distance_text(way.distance.value), said(place::compass_words(way.bearing_deg)))
        .arg(qRound(way.bearing_deg) % 360);
}

QString place_text(const Tree& tree, const QString& uri) {
    if (uri.isEmpty()) {
        return TreeCard::tr("not known");
    }
    const QString place = uri.mid(4).section(';', 0, 0).replace(QStringLiteral(","), QStringLiteral(", "));
    return tree.accuracy ? TreeCard::tr("%1 (± %2 m)").arg(place).arg(tree.accuracy->value) : place;
}

QLabel* make_words(const QString& words) {
    auto* label = new QLabel(words);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    label->setSizePolicy(policy);
    return label;
}

}  // namespace

TreeCard::TreeCard(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("pipward_tree_card"));
    setMinimumHeight(least_height);
    title_ = make_words(tr("No tree is chosen."));
    auto font = title_->font();
    font.setBold(true);
    font.setPointSizeF(1.2 * font.pointSizeF());
    title_->setFont(font);
    title_->setObjectName(QStringLiteral("pipward_card_title"));

    auto* inside = new QWidget;
    facts_ = new QFormLayout(inside);
    facts_->setContentsMargins(0, 0, 0, 0);
    facts_->setRowWrapPolicy(QFormLayout::DontWrapRows);
    facts_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(inside);

    show_ = new QPushButton(tr("Show on the map"));
    copy_ = new QPushButton(tr("Copy location"));
    line_ = new QPushButton(tr("Pedigree"));
    line_->setObjectName(QStringLiteral("pipward_pedigree_button"));
    line_->setToolTip(tr("Draws its ancestors and its descendants."));
    copy_->setToolTip(tr("Copies a link that opens on a telephone's map."));
    record_ = new QPushButton(tr("Record"));
    record_->setObjectName(QStringLiteral("pipward_card_record"));
    record_->setToolTip(tr("Records what is seen or done at this tree."));
    for (auto* button : {show_, copy_, line_, record_}) {
        button->setEnabled(false);
    }
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(record_);
    buttons->addWidget(show_);
    buttons->addWidget(copy_);
    buttons->addWidget(line_);
    buttons->addStretch(1);

    auto* all = new QVBoxLayout(this);
    all->addWidget(title_);
    all->addWidget(scroll, 1);
    all->addLayout(buttons);
    connect(show_, &QPushButton::clicked, this, [this] { emit asked_for(shown_); });
    connect(copy_, &QPushButton::clicked, this, &TreeCard::copy_place);
    connect(line_, &QPushButton::clicked, this, [this] { emit pedigree_asked_for(shown_); });
    connect(record_, &QPushButton::clicked, this, [this] { emit record_asked_for(shown_); });
}

void TreeCard::add(const QString& name, const QString& words) {
    if (!words.isEmpty()) {
        auto* label = new QLabel(name);
        label->setAlignment(Qt::AlignRight | Qt::AlignTop);
        facts_->addRow(label, make_words(words));
    }
}

void TreeCard::add_story(const ChosenTree& tree) {
    for (const auto& event : place::story_of(tree.index->trees.orchard(), tree.tree(), events_told)) {
        add(day_text(event.day), said(event.words));
    }
}

void TreeCard::show_tree(const ChosenTree& chosen, const std::optional<LookingFrom>& from) {
    shown_ = chosen;
    const auto& orchard = chosen.index->trees.orchard();
    const auto& tree = chosen.tree();
    const auto place = tree.at ? place::ToEarth(orchard.crs)(*tree.at) : std::nullopt;
    geo_uri_ = place ? to_qt(pipward::place::geo_uri(*place, tree.accuracy)) : QString();
    while (facts_->rowCount() > 0) {
        facts_->removeRow(0);
    }
    title_->setText(to_qt(tree.label));
    add(tr("Address"), said(place::address_of(tree, orchard.rows)));
    add(tr("From here"), place && from ? way_text(*place, *from) : QString());
    add(tr("Accession"), tree.accession ? to_qt(*tree.accession) : tr("not known"));
    add(tr("Pedigree"), said(chosen.index->lineages.of(tree.accession.value_or(""))));
    add(tr("Planted"), planted_text(tree));
    add(tr("Removed"), tree.removed_on ? day_text(*tree.removed_on) : QString());
    add(tr("Remark"), tree.remark ? to_qt(*tree.remark) : QString());
    add(tr("Location"), place_text(tree, geo_uri_));
    add_story(chosen);
    show_->setEnabled(tree.at.has_value());
    copy_->setEnabled(!geo_uri_.isEmpty());
    line_->setEnabled(tree.accession.has_value());
    record_->setEnabled(true);
}

void TreeCard::copy_place() {
    QGuiApplication::clipboard()->setText(geo_uri_);
}

}  // namespace pipward::desktop
