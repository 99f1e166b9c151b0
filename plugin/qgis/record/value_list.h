// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QComboBox>
#include <vector>

#include "record/tree_choices.h"

namespace pipward::desktop {

/// A list to choose from that may be narrower than its words: what does not fit is told by dots and in full
/// by the list itself and its tool tip.
class ValueList : public QComboBox {
    Q_OBJECT
  public:
    explicit ValueList(const char* name);

    void add(const QString& words, const QVariant& value);
    /// Puts other lines in place of the old; the chosen value stays chosen where it is still there.
    void fill(const std::vector<HarvestLine>& lines);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void showPopup() override;
};

}  // namespace pipward::desktop
