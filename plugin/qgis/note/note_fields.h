// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QWidget>

#include "note/tree_choices.h"
#include "pipward/book/entry.h"

class QLabel;
class QLineEdit;
class QSpinBox;

namespace pipward::desktop {

class PickList;

/// The fields of a bloom note.
class BloomFields : public QWidget {
    Q_OBJECT
  public:
    BloomFields();
    book::Entry entry(const std::string& tree, Day day) const;

  private:
    PickList* stage_;
    QSpinBox* open_percent_;
    QLineEdit* remark_;
};

/// The fields of a pollination. Choosing a cross proposes its next tag and its pollen.
class PollinationFields : public QWidget {
    Q_OBJECT
  public:
    PollinationFields();
    void offer(const Orchard& orchard, const TreeChoices& choices, Day day);
    bool possible() const;
    book::Entry entry(const std::string& tree, Day day) const;

  private:
    void take_cross(int index);

    QLabel* none_;
    QWidget* fields_;
    PickList* cross_;
    QLineEdit* tag_;
    QSpinBox* flowers_;
    PickList* lot_;
    QLineEdit* remark_;
    QString proposed_;
    std::vector<QString> next_tags_;
    std::vector<std::vector<PickLine>> lots_;
};

/// The fields of a pick.
class PickFields : public QWidget {
    Q_OBJECT
  public:
    PickFields();
    void offer(const TreeChoices& choices);
    bool possible() const;
    book::Entry entry(Day day) const;

  private:
    QLabel* none_;
    QWidget* fields_;
    PickList* tag_;
    QSpinBox* fruits_;
    QSpinBox* sound_;
    QSpinBox* empty_;
    QLineEdit* remark_;
};

}  // namespace pipward::desktop
