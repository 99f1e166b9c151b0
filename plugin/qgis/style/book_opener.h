// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <memory>

class QAction;
class QgisInterface;

namespace pipward::desktop {

/// The address under which the desktop opens the map that is stored in a book.
QString stored_map_address(const QString& book);

/// The menu entry that opens a book: its stored map, brought up to date in the background first.
class BookOpener : public QObject {
    Q_OBJECT
  public:
    explicit BookOpener(QgisInterface& desktop);
    ~BookOpener() override;

    Q_INVOKABLE void open(const QString& book);

  signals:
    void opened(const QString& book);

  private:
    void choose();
    void show(const QString& book);
    void show_as_it_is(const QString& book, const QString& trouble);

    QgisInterface& desktop_;
    std::unique_ptr<QAction> action_;
};

}  // namespace pipward::desktop
