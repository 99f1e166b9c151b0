// SPDX-License-Identifier: GPL-2.0-or-later
#include "record/finding_text.h"

#include <QCoreApplication>
#include <QStringList>

#include "pipward/book/schema.h"
#include "text.h"

namespace pipward::desktop {
namespace {

QString label_of(const Finding& finding) {
    const auto* table = book::find_book_table(finding.table);
    const auto* column = table == nullptr ? nullptr : book::find_column(*table, finding.field);
    return column == nullptr ? QString() : translated(std::string(column->label));
}

// The shapes, not the colours alone, tell errors from warnings.
QString mark_of(Level level) {
    switch (level) {
        case Level::error:
            return QStringLiteral("✖");
        case Level::warning:
            return QStringLiteral("⚠");
        case Level::notice:
            break;
    }
    return QStringLiteral("ℹ");
}

QString html_of(const Finding& finding) {
    const QString label = label_of(finding);
    const QString head = label.isEmpty() ? QString()
                         : finding.value.empty()
                             ? QStringLiteral("<b>%1:</b> ").arg(label.toHtmlEscaped())
                             : QStringLiteral("<b>%1 %2:</b> ")
                                   .arg(label.toHtmlEscaped(), to_qt(finding.value).toHtmlEscaped());
    return QStringLiteral("<p style=\"margin: 0 0 4px 0\">%1 %2%3<br/><i>%4</i></p>")
        .arg(mark_of(finding.level), head, said(finding.message).toHtmlEscaped(),
             said(finding.remedy).toHtmlEscaped());
}

}  // namespace

QString entry_finding_text(const Finding& finding) {
    const QString label = label_of(finding);
    const QString what = said(finding.message) + (finding.remedy.empty() ? "" : " ") + said(finding.remedy);
    return label.isEmpty() ? what : QStringLiteral("%1: %2").arg(label, what);
}

QString entry_findings_html(const Findings& findings) {
    QString html;
    for (const auto level : {Level::error, Level::warning, Level::notice}) {
        for (const auto& finding : findings) {
            html += finding.level == level ? html_of(finding) : QString();
        }
    }
    return html;
}

QString entry_findings_line(const Findings& findings, Level level) {
    QStringList lines;
    for (const auto& finding : findings) {
        if (finding.level == level) {
            lines << entry_finding_text(finding);
        }
    }
    return lines.join(' ');
}

}  // namespace pipward::desktop
