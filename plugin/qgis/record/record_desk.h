// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QObject>
#include <QPointer>
#include <functional>
#include <vector>

#include "pipward/book/entry.h"

namespace pipward::desktop {

class RecordForm;

/// Carries entries from the form into the book, in the background, and remembers them so that they can be
/// taken back and noted again. Knows no map and no window: it tells by signals.
class RecordDesk : public QObject {
    Q_OBJECT
  public:
    explicit RecordDesk(RecordForm& form);

    void open_tree(const QString& book, const QString& label);
    void write(const book::Entry& entry);
    /// Takes back the last entry of this session that still stands.
    void undo();
    /// Notes again what was taken back last.
    void redo();

    bool can_undo() const { return !busy_ && !standing_.empty(); }
    bool can_redo() const { return !busy_ && !taken_.empty(); }

  signals:
    void recorded(const QString& what);
    /// The form's entry cannot be: the form shows why.
    void refused();
    void warned(const QString& what);
    void taken_back(const QString& what);
    void trouble(const QString& what);
    void book_changed(const QString& book);
    /// can_undo() or can_redo() may have changed.
    void history_changed();

  private:
    struct Kept {
        QString book;
        book::Entry entry;
        book::AddedRow row;
    };
    void read_book_for_form();
    void add(const QString& book, const book::Entry& entry, bool again);
    void finish_adding(const QString& book, const book::Entry& entry, const book::EntryAdded& added);
    void refuse(const Findings& findings);
    void tell_trouble(const Findings& findings);
    void keep_standing(const Findings& findings);
    void set_busy(bool busy);
    using Refusal = void (RecordDesk::*)(const Findings&);
    void run(const QString& words, std::function<void()> work, std::function<void()> then,
             Refusal refusal = &RecordDesk::refuse);

    QPointer<RecordForm> form_;
    QString book_;
    std::vector<Kept> standing_;
    std::vector<Kept> taken_;
    bool busy_ = false;
};

}  // namespace pipward::desktop
