// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "find/book_index.h"

class QFormLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace pipward::desktop {

/// From where the way to a tree is told.
struct LookingFrom {
    place::LonLat place;
    bool is_position = false;  ///< a GPS's, not the middle of the map
};

/// All that a book tells of one tree, on a card: where it stands and how to get there, what it is and came
/// of, what was noted last.
class TreeCard : public QWidget {
    Q_OBJECT
  public:
    explicit TreeCard(QWidget* parent = nullptr);

    void show_tree(const ChosenTree& tree, const std::optional<LookingFrom>& from);
    /// Null before the first tree.
    const ChosenTree* shown() const { return shown_.index == nullptr ? nullptr : &shown_; }
    /// Of the tree shown; empty where it has no place on the earth.
    const QString& geo_uri() const { return geo_uri_; }

  signals:
    void asked_for(const pipward::desktop::ChosenTree& tree);
    void pedigree_asked_for(const pipward::desktop::ChosenTree& tree);
    void record_asked_for(const pipward::desktop::ChosenTree& tree);

  private:
    void add(const QString& name, const QString& words);
    void add_story(const ChosenTree& tree);
    void copy_place();

    QLabel* title_ = nullptr;
    QFormLayout* facts_ = nullptr;
    QPushButton* show_ = nullptr;
    QPushButton* copy_ = nullptr;
    QPushButton* line_ = nullptr;
    QPushButton* record_ = nullptr;
    ChosenTree shown_;
    QString geo_uri_;
};

}  // namespace pipward::desktop
