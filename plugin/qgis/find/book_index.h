// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgstaskmanager.h>

#include <QString>
#include <memory>

#include "pipward/lineage/pedigree_text.h"
#include "pipward/place/tree_index.h"

namespace pipward::desktop {

/// A book's trees, ready to be looked up from any thread.
struct BookIndex {
    BookIndex(QString book_, Orchard orchard)
        : book(std::move(book_)),
          trees(std::move(orchard)),
          lineages(trees.orchard().accessions, trees.orchard().blend_members) {}

    QString book;
    place::TreeIndex trees;
    lineage::PedigreeText lineages;
};
using SharedIndex = std::shared_ptr<const BookIndex>;

/// One tree of a book.
struct ChosenTree {
    SharedIndex index;
    std::size_t number = 0;  ///< into the orchard's trees

    const Tree& tree() const { return index->trees.orchard().trees[number]; }
};

/// Reads a book's trees and collects their names in the background. The signals come in the main thread.
class IndexTask : public QgsTask {
    Q_OBJECT
  public:
    explicit IndexTask(const QString& book);

  signals:
    void done(const pipward::desktop::SharedIndex& index);
    void failed(const QString& what);

  protected:
    bool run() override;
    void finished(bool well) override;

  private:
    QString book_;
    SharedIndex index_;
    QString failure_;
};

}  // namespace pipward::desktop

Q_DECLARE_METATYPE(pipward::desktop::ChosenTree)
