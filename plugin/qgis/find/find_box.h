// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QStringList>
#include <QThreadPool>
#include <QWidget>
#include <atomic>
#include <functional>
#include <memory>
#include <optional>

#include "find/found_line.h"

class QLineEdit;
class QListWidget;

namespace pipward::desktop {

class TreeFinder;

/// Where somebody looks from: the desktop's map centre or its GPS.
using Whereabouts = std::function<std::optional<place::LonLat>()>;

/// A line to type a search text of a tree's record into, and under it what it leads to, as one types. Enter
/// takes the first, or the one that the arrow keys chose. Looking up goes on in a thread of its own.
class FindBox : public QWidget {
    Q_OBJECT
  public:
    explicit FindBox(TreeFinder& finder, Whereabouts whereabouts = {}, QWidget* parent = nullptr);
    ~FindBox() override;

    void look_for(const QString& query);

  signals:
    void chosen(const pipward::desktop::ChosenTree& tree);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void look();
    void show_lines(const SharedIndex& index, const std::vector<FoundLine>& lines, const QStringList& names);
    void say(const QString& words);
    void take(int row);

    TreeFinder& finder_;
    Whereabouts whereabouts_;
    QLineEdit* query_ = nullptr;
    QListWidget* list_ = nullptr;
    SharedIndex shown_;
    std::vector<FoundLine> lines_;
    bool take_first_ = false;  // Enter came before the answer
    std::shared_ptr<std::atomic<int>> newest_ = std::make_shared<std::atomic<int>>(0);
    QThreadPool pool_;
};

}  // namespace pipward::desktop
