// SPDX-License-Identifier: GPL-2.0-or-later
#include "record/record_desk.h"

#include <qgsapplication.h>
#include <qgstaskmanager.h>

#include <QFileInfo>
#include <memory>

#include "panel/table_view.h"
#include "record/book_task.h"
#include "record/entry_text.h"
#include "record/finding_text.h"
#include "record/open_layers.h"
#include "record/record_form.h"
#include "text.h"

namespace pipward::desktop {
RecordDesk::RecordDesk(RecordForm& form) : form_(&form) {
    connect(&form, &RecordForm::given, this, &RecordDesk::write);
}

void RecordDesk::run(const QString& words, std::function<void()> work, std::function<void()> then,
                     Refusal refusal) {
    auto* task = new BookTask(words, std::move(work));
    connect(task, &BookTask::done, this, std::move(then));
    connect(task, &BookTask::failed, this, refusal);
    QgsApplication::taskManager()->addTask(task);
}

void RecordDesk::open_tree(const QString& book, const QString& label) {
    book_ = book;
    form_->show_tree(book, label);
    read_book_for_form();
}

// Read again for each tree: someone else may have written since.
void RecordDesk::read_book_for_form() {
    const auto read = std::make_shared<Orchard>();
    const auto label = form_->tree();
    run(
        tr("Reading the book"),
        [read, book = from_qt(book_)] {
            *read = book::read_book(book).orchard;
            read->weather.clear();
        },
        [this, read, label] {
            if (form_ != nullptr && form_->tree() == label) {
                form_->show_book(read);
            }
        });
}

void RecordDesk::write(const book::Entry& entry) {
    add(book_, entry, false);
}

void RecordDesk::add(const QString& book, const book::Entry& entry, bool again) {
    if (const auto why = held_by_edits(book, entry.table); !why.isEmpty()) {
        form_->show_trouble(why);
        emit trouble(why);
        return;
    }
    set_busy(true);
    const auto added = std::make_shared<book::EntryAdded>();
    run(
        tr("Writing the record"), [=] { *added = book::add_entry(from_qt(book), entry, today()); },
        [=, this] {
            if (again) {
                taken_.pop_back();
            } else {
                taken_.clear();
            }
            finish_adding(book, entry, *added);
        });
}

void RecordDesk::finish_adding(const QString& book, const book::Entry& entry, const book::EntryAdded& added) {
    standing_.push_back({book, entry, added.row});
    set_busy(false);
    form_->show_findings(added.findings);
    read_book_for_form();
    emit book_changed(book);
    emit recorded(tr("%1 (%2)").arg(entry_text(entry), QFileInfo(book).fileName()));
    if (const auto line = entry_findings_line(added.findings, Level::warning); !line.isEmpty()) {
        emit warned(line);
    }
}

void RecordDesk::refuse(const Findings& findings) {
    set_busy(false);
    form_->show_findings(findings);
    emit refused();
}

void RecordDesk::tell_trouble(const Findings& findings) {
    set_busy(false);
    emit trouble(entry_findings_line(findings, Level::error));
}

void RecordDesk::undo() {
    if (!can_undo()) {
        return;
    }
    const auto last = standing_.back();
    if (const auto why = held_by_edits(last.book, last.row.table); !why.isEmpty()) {
        emit trouble(why);
        return;
    }
    set_busy(true);
    run(
        tr("Undoing a record"), [last] { book::take_back(from_qt(last.book), last.row); },
        [this, last] {
            taken_.push_back(last);
            standing_.pop_back();
            set_busy(false);
            read_book_for_form();
            emit book_changed(last.book);
            emit taken_back(entry_text(last.entry));
        },
        &RecordDesk::keep_standing);
}

// What someone else has changed or built upon is no longer ours to take back; what came before it still is.
void RecordDesk::keep_standing(const Findings& findings) {
    if (findings.front().table == standing_.back().row.table) {
        standing_.pop_back();
    }
    tell_trouble(findings);
}

void RecordDesk::redo() {
    if (can_redo()) {
        add(taken_.back().book, taken_.back().entry, true);
    }
}

void RecordDesk::set_busy(bool busy) {
    busy_ = busy;
    form_->set_busy(busy);
    emit history_changed();
}

}  // namespace pipward::desktop
