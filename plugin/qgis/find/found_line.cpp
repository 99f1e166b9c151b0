// SPDX-License-Identifier: GPL-2.0-or-later
#include "find/found_line.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include "panel/table_view.h"
#include "pipward/place/address.h"
#include "pipward/record/presence.h"
#include "text.h"

namespace pipward::desktop {
namespace {

QString titled(const Tree& tree) {
    return tree.accession ? QStringLiteral("%1, %2").arg(to_qt(tree.label), to_qt(*tree.accession))
                          : to_qt(tree.label);
}

// Of whole labels nothing is told: the title says it.
QString detailed(const Orchard& orchard, const Tree& tree, const place::Match& match) {
    QStringList parts;
    if (removed_by(tree, today())) {
        parts << QCoreApplication::translate("pipward::desktop::FindBox", "removed %1")
                     .arg(QLocale().toString(to_qt(*tree.removed_on), QLocale::ShortFormat));
    }
    parts << said(place::address_of(tree, orchard.rows));
    const bool said_already =
        match.kind == place::MatchKind::address ||
        (match.extent == place::Extent::whole &&
         (match.kind == place::MatchKind::label || match.kind == place::MatchKind::accession));
    if (!said_already) {
        parts << said(place::to_text(match));
    }
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" · "));
}

}  // namespace

std::vector<FoundLine> found_lines(const BookIndex& index, const QString& query,
                                   const std::optional<place::LonLat>& from, std::size_t limit) {
    const auto& orchard = index.trees.orchard();
    const auto stand = from ? place::own_position(*from, orchard.crs) : std::nullopt;
    std::vector<FoundLine> lines;
    for (const auto& found : index.trees.find(from_qt(query), limit, stand, today())) {
        const auto& tree = orchard.trees[found.tree];
        lines.push_back({titled(tree), detailed(orchard, tree, found.match), found.score, found.tree});
    }
    return lines;
}

}  // namespace pipward::desktop
