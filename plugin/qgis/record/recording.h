// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QObject>
#include <memory>

class QgisInterface;

namespace pipward::desktop {

/// The recording of what is seen or done at trees, as part of the desktop: the map tool, the dock with the
/// form, the menu's entries. Deleting it takes them back.
class Recording : public QObject {
    Q_OBJECT
  public:
    /// Opens the form for a tree of a book.
    virtual void open_tree(const QString& book, const QString& label) = 0;

  signals:
    void book_changed(const QString& book);
};

std::unique_ptr<Recording> add_recording(QgisInterface& desktop);

}  // namespace pipward::desktop
