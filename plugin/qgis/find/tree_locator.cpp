// SPDX-License-Identifier: GPL-2.0-or-later
#include "find/tree_locator.h"

#include <qgsfeedback.h>

#include <algorithm>

#include "compat.h"
#include "find/found_line.h"

namespace pipward::desktop {
namespace {

constexpr std::size_t most_results = 20;
// The bar asks every filter for everything that is typed: one or two letters are never meant for trees.
constexpr int shortest_without_prefix = 3;

}  // namespace

TreeLocator::TreeLocator(TreeFinder* finder, QObject* parent) : QgsLocatorFilter(parent), finder_(finder) {}

TreeLocator* TreeLocator::clone() const {
    return new TreeLocator(finder_);
}

QString TreeLocator::description() const {
    return tr("Finds a tree by label, tag, cross and number, accession, row and position, or a remark.");
}

QStringList TreeLocator::prepare(const QString&, const QgsLocatorContext&) {
    index_ = finder_ == nullptr ? nullptr : finder_->index_of(finder_->book());
    return {};
}

void TreeLocator::fetchResults(const QString& query, const QgsLocatorContext& context,
                               QgsFeedback* feedback) {
    const bool too_short = !context.usingPrefix && query.size() < shortest_without_prefix;
    if (index_ == nullptr || too_short) {
        return;
    }
    for (const auto& line : found_lines(*index_, query, {}, most_results)) {
        if (feedback->isCanceled()) {
            return;
        }
        QgsLocatorResult result;
        result.filter = this;
        result.displayString = line.title;
        result.description = line.detail;
        result.icon = QIcon(QStringLiteral(":/pipward/pip.svg"));
        result.score = line.score;
        const auto fid = static_cast<qlonglong>(index_->trees.orchard().trees[line.number].fid);
        set_data(result, QVariantList{index_->book, fid});
        emit resultFetched(result);
    }
}

void TreeLocator::triggerResult(const QgsLocatorResult& result) {
    const auto data = data_of(result).toList();
    const auto index =
        finder_ == nullptr || data.size() != 2 ? nullptr : finder_->index_of(data[0].toString());
    if (index == nullptr) {
        return;
    }
    const auto& trees = index->trees.orchard().trees;
    const auto found = std::ranges::find(trees, data[1].toLongLong(), &Tree::fid);
    if (found != trees.end()) {
        emit chosen({index, static_cast<std::size_t>(found - trees.begin())});
    }
}

}  // namespace pipward::desktop
