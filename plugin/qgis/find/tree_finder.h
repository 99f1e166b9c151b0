// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QObject>
#include <QPointer>
#include <map>
#include <optional>

#include "find/book_index.h"

namespace pipward::desktop {

/// Keeps an index of each book that trees are looked for in, and builds it again in the background when the
/// book has changed. Main thread only; the indexes themselves may go to any.
class TreeFinder : public QObject {
    Q_OBJECT
  public:
    explicit TreeFinder(QObject* parent = nullptr);
    ~TreeFinder() override;

    /// The book that find boxes look in.
    void use_book(const QString& book);
    const QString& book() const { return book_; }

    /// The index as it is at once, maybe none yet; builds it where there is none or the book has changed.
    SharedIndex index_of(const QString& book);
    bool is_reading(const QString& book) const;
    /// Why there is no index; empty while there is one or it is being built.
    QString failure_of(const QString& book) const;
    /// Builds it again whatever the file's time says.
    void book_changed(const QString& book);

  signals:
    void ready(const pipward::desktop::SharedIndex& index);
    void failed(const QString& book, const QString& what);

  private:
    struct Known {
        SharedIndex index;
        std::optional<QString> stamp;  // of the file when reading it began
        QString failure;               // why it could not be read
        QPointer<IndexTask> running;
    };
    void build(const QString& book, Known& known);

    QString book_;
    std::map<QString, Known> known_;
};

}  // namespace pipward::desktop
