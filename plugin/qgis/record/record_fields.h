// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QWidget>

#include "pipward/book/entry.h"
#include "record/tree_choices.h"

class QLabel;
class QLineEdit;
class QSpinBox;

namespace pipward::desktop {

class ValueList;

/// The fields of a bloom observation.
class BloomFields : public QWidget {
    Q_OBJECT
  public:
    BloomFields();
    book::Entry entry(const std::string& tree, Day day) const;

  private:
    ValueList* stage_;
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
    ValueList* cross_;
    QLineEdit* tag_;
    QSpinBox* flowers_;
    ValueList* lot_;
    QLineEdit* remark_;
    QString proposed_;
    std::vector<QString> next_tags_;
    std::vector<std::vector<HarvestLine>> lots_;
};

/// The fields of a pick.
class HarvestFields : public QWidget {
    Q_OBJECT
  public:
    HarvestFields();
    void offer(const TreeChoices& choices);
    bool possible() const;
    book::Entry entry(Day day) const;

  private:
    QLabel* none_;
    QWidget* fields_;
    ValueList* tag_;
    QSpinBox* fruits_;
    QSpinBox* sound_;
    QSpinBox* empty_;
    QLineEdit* remark_;
};

}  // namespace pipward::desktop
