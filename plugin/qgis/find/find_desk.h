// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QObject>
#include <QPointer>
#include <optional>

#include "find/tree_card.h"
#include "find/tree_finder.h"

class QgisInterface;
class QgsDockWidget;
class QgsMapLayer;

namespace pipward::desktop {

class CardAction;
class SeasonPanel;
class TreeLocator;

/// Finding trees in the desktop: the search bar's filter, the season panel's find box, the identify tool's
/// action, and the card that each of them opens. Takes everything back when it is deleted. Without a desktop
/// the finder and the action are there, and nothing that needs a window.
class FindDesk : public QObject {
    Q_OBJECT
  public:
    FindDesk(QgisInterface* desktop, SeasonPanel* panel, QObject* parent = nullptr);
    ~FindDesk() override;

    TreeFinder& finder() { return finder_; }
    /// Shows the map where the tree stands, and its card.
    void open(const ChosenTree& tree);
    /// Reads the book again, for a card that is open too.
    void book_changed(const QString& book);

  signals:
    void record_asked_for(const QString& book, const QString& tree);

  private:
    void add_find_box(SeasonPanel& panel);
    void watch_layers();
    void watch(QgsMapLayer* layer);
    void open_feature(const QString& book, qlonglong fid);
    bool open_waiting(const SharedIndex& index);
    void give_up_waiting();
    void show_card(const ChosenTree& tree);
    void renew_card(const SharedIndex& index);
    void show_on_map(const ChosenTree& tree);
    void draw_pedigree(const ChosenTree& tree);
    TreeCard& card();
    std::optional<LookingFrom> looking_from() const;

    QgisInterface* desktop_;
    TreeFinder finder_;
    CardAction* action_ = nullptr;
    TreeLocator* locator_ = nullptr;
    QPointer<QgsDockWidget> dock_;
    QPointer<TreeCard> card_;
    struct Waiting {
        QString book;
        qlonglong tree = 0;
    };
    std::optional<Waiting> waiting_;  // a tree whose book is being read
};

}  // namespace pipward::desktop
