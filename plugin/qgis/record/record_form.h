// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QDate>
#include <QWidget>
#include <memory>

#include "pipward/book/entry.h"

class QDateEdit;
class QLabel;
class QPushButton;
class QTabWidget;

namespace pipward::desktop {

class BloomFields;
class HarvestFields;
class PollinationFields;

/// What is seen or done at one tree, ready to be written down: its stage, flowers pollinated, fruit
/// harvested. The form knows no map and writes nothing itself.
class RecordForm : public QWidget {
    Q_OBJECT
  public:
    explicit RecordForm(QWidget* parent = nullptr);

    /// Shows another tree, and of which book it is; the choices come with show_book().
    void show_tree(const QString& book, const QString& label);
    /// What the book holds, for the value lists.
    void show_book(std::shared_ptr<const Orchard> orchard);
    void show_findings(const Findings& findings);
    void show_trouble(const QString& words);
    void set_busy(bool busy);
    void set_day(const QDate& day);

    QString tree() const { return tree_; }
    QWidget* findings_place() const;
    /// What the open page says.
    book::Entry entry() const;

  signals:
    void given(const pipward::book::Entry& entry);

  private:
    void build();
    void offer_choices();
    void give();

    QString book_name_;
    QString tree_;
    std::shared_ptr<const Orchard> orchard_;
    QLabel* title_ = nullptr;
    QLabel* subtitle_ = nullptr;
    QDateEdit* day_ = nullptr;
    QTabWidget* pages_ = nullptr;
    BloomFields* bloom_ = nullptr;
    PollinationFields* pollination_ = nullptr;
    HarvestFields* harvest_ = nullptr;
    QPushButton* note_ = nullptr;
    QLabel* findings_ = nullptr;
};

}  // namespace pipward::desktop
