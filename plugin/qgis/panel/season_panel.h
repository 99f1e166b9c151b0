// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QDate>
#include <QWidget>
#include <memory>

#include "panel/season_view.h"

class QDateEdit;
class QLabel;
class QPushButton;
class QTreeWidget;
class QgsFileWidget;

namespace pipward::desktop {

class BloomChart;
class OperationTask;
class TaskTree;

/// The season at a glance: which book and which day, the bloom of each accession, the work that is due and
/// the outlook of the crosses. Planning runs in the background; the panel knows no map and tells by signals
/// what to show on it.
class SeasonPanel : public QWidget {
    Q_OBJECT
  public:
    explicit SeasonPanel(QWidget* parent = nullptr);
    ~SeasonPanel() override;

    /// Shows the plan that stands in the book; another book's goes at once.
    void set_book(const QString& path);
    QString book() const;
    /// Puts another part above everything else.
    void put_on_top(QWidget* part);
    void set_as_of(const QDate& day);
    /// Plans again in the background; a run that is still going is stopped first.
    void refresh();
    void show_season(const SeasonView& season);
    /// The button then says that it stops.
    void set_playing(bool playing);
    /// The day that the map shows; an invalid date for none.
    void mark_day(const QDate& day);

  signals:
    void book_chosen(const QString& book);
    void trees_asked_for(const std::vector<pipward::desktop::TreePlace>& trees, const QString& crs);
    void trouble(const QString& what);
    void planned(const QString& book);
    void bloom_asked_for();

  private:
    void build();
    void take_book(const QString& path);
    void show_stored(const QString& path);
    operation::Form form() const;
    void set_busy(bool busy);
    void show_crosses(const operation::Outcome& outcome);
    void ask_for(const QStringList& labels);

    QgsFileWidget* book_ = nullptr;
    QDateEdit* as_of_ = nullptr;
    QPushButton* refresh_ = nullptr;
    BloomChart* chart_ = nullptr;
    TaskTree* tasks_ = nullptr;
    QTreeWidget* crosses_ = nullptr;
    QLabel* summary_ = nullptr;
    QHash<QString, TreePlace> places_;
    QString crs_;
    OperationTask* running_ = nullptr;
    QPushButton* play_ = nullptr;
};

}  // namespace pipward::desktop
