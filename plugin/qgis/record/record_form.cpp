// SPDX-License-Identifier: GPL-2.0-or-later
#include "record/record_form.h"

#include <QDateEdit>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>

#include "panel/table_view.h"
#include "record/field_widgets.h"
#include "record/finding_text.h"
#include "record/record_fields.h"

namespace pipward::desktop {
namespace {

Day day_of(const QDate& date) {
    return make_day({date.year(), date.month(), date.day()}).value_or(Day{});
}

}  // namespace

RecordForm::RecordForm(QWidget* parent) : QWidget(parent) {
    build();
    show_tree({}, {});
}

void RecordForm::build() {
    setObjectName(QStringLiteral("pipward_record_form"));
    title_ = make_words();
    title_->setObjectName(QStringLiteral("pipward_record_tree"));
    QFont large = title_->font();
    large.setBold(true);
    large.setPointSizeF(1.2 * large.pointSizeF());
    title_->setFont(large);
    subtitle_ = make_words();
    day_ = new QDateEdit(QDate::currentDate());
    day_->setObjectName(QStringLiteral("pipward_record_day"));
    day_->setCalendarPopup(true);
    day_->setDisplayFormat(typed_date_format());
    day_->setMaximumDate(QDate::currentDate());
    pages_ = new QTabWidget;
    pages_->setObjectName(QStringLiteral("pipward_record_pages"));
    pages_->addTab(bloom_ = new BloomFields, tr("Bloom"));
    pages_->addTab(pollination_ = new PollinationFields, tr("Pollination"));
    pages_->addTab(harvest_ = new HarvestFields, tr("Harvest"));
    note_ = new QPushButton(tr("Record"));
    note_->setObjectName(QStringLiteral("pipward_record_button"));
    findings_ = make_words();
    findings_->setObjectName(QStringLiteral("pipward_record_findings"));

    auto* day_row = new QHBoxLayout;
    auto* day_label = new QLabel(tr("Date"));
    day_label->setBuddy(day_);
    day_row->addWidget(day_label);
    day_row->addWidget(day_, 1);
    auto* all = new QVBoxLayout(this);
    all->addWidget(title_);
    all->addWidget(subtitle_);
    all->addLayout(day_row);
    all->addWidget(pages_);
    all->addWidget(note_);
    all->addWidget(findings_);
    all->addStretch();

    connect(note_, &QPushButton::clicked, this, &RecordForm::give);
    connect(day_, &QDateEdit::dateChanged, this, &RecordForm::offer_choices);
    connect(pages_, &QTabWidget::currentChanged, this, [this] {
        findings_->clear();
        set_busy(false);
    });
}

void RecordForm::show_tree(const QString& book, const QString& label) {
    book_name_ = QFileInfo(book).fileName();
    tree_ = label;
    orchard_.reset();
    title_->setText(label.isEmpty() ? tr("No tree") : tr("Tree %1").arg(label));
    subtitle_->setText(label.isEmpty() ? tr("Click a tree on the map.") : tr("Reading the book …"));
    findings_->clear();
    pages_->setVisible(!label.isEmpty());
    set_busy(true);
}

void RecordForm::show_book(std::shared_ptr<const Orchard> orchard) {
    orchard_ = std::move(orchard);
    offer_choices();
    set_busy(false);
}

void RecordForm::offer_choices() {
    if (orchard_ == nullptr) {
        return;
    }
    const auto day = day_of(day_->date());
    const auto choices = choices_for(*orchard_, from_qt(tree_), day);
    const QString accession = choices.accession.isEmpty() ? tr("of no known accession") : choices.accession;
    subtitle_->setText(QStringLiteral("%1 · %2").arg(accession, book_name_));
    pollination_->offer(*orchard_, choices, day);
    harvest_->offer(choices);
    set_busy(false);
}

void RecordForm::set_busy(bool busy) {
    const bool possible = pages_->currentWidget() == pollination_ ? pollination_->possible()
                          : pages_->currentWidget() == harvest_   ? harvest_->possible()
                                                                  : true;
    note_->setEnabled(!busy && orchard_ != nullptr && possible);
}

void RecordForm::set_day(const QDate& day) {
    day_->setDate(day);
}

void RecordForm::show_findings(const Findings& findings) {
    findings_->setText(entry_findings_html(findings));
}

void RecordForm::show_trouble(const QString& words) {
    findings_->setText(words.toHtmlEscaped());
}

QWidget* RecordForm::findings_place() const {
    return findings_;
}

book::Entry RecordForm::entry() const {
    const auto tree = from_qt(tree_);
    const auto day = day_of(day_->date());
    if (pages_->currentWidget() == pollination_) {
        return pollination_->entry(tree, day);
    }
    return pages_->currentWidget() == harvest_ ? harvest_->entry(day) : bloom_->entry(tree, day);
}

void RecordForm::give() {
    findings_->clear();
    emit given(entry());
}

}  // namespace pipward::desktop
