// SPDX-License-Identifier: GPL-2.0-or-later
#include "find/find_box.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "find/tree_finder.h"
#include "text.h"

namespace pipward::desktop {
namespace {

constexpr std::size_t most_lines = 30;
constexpr int most_seen = 5;

QLineEdit* make_line() {
    auto* line = new QLineEdit;
    line->setObjectName(QStringLiteral("pipward_find_query"));
    line->setAccessibleName(FindBox::tr("Find a tree"));
    line->setPlaceholderText(FindBox::tr("Find a tree"));
    line->setToolTip(
        FindBox::tr("A label, a tag, the code of a cross, \"A × B 17\", an accession even if misspelt, row "
                    "and position, or a word of a remark."));
    line->setClearButtonEnabled(true);
    return line;
}

QListWidget* make_list() {
    auto* list = new QListWidget;
    list->setObjectName(QStringLiteral("pipward_found"));
    list->setAccessibleName(FindBox::tr("Trees found"));
    list->setWordWrap(true);
    list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list->setResizeMode(QListView::Adjust);
    list->setAlternatingRowColors(true);
    list->hide();
    return list;
}

QStringList names_like(const BookIndex& index, const QString& query) {
    QStringList names;
    for (const auto& name : index.trees.names_like(from_qt(query))) {
        names << to_qt(name);
    }
    return names;
}

}  // namespace

FindBox::FindBox(TreeFinder& finder, Whereabouts whereabouts, QWidget* parent)
    : QWidget(parent), finder_(finder), whereabouts_(std::move(whereabouts)) {
    setObjectName(QStringLiteral("pipward_find_box"));
    pool_.setMaxThreadCount(1);
    query_ = make_line();
    list_ = make_list();
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(query_);
    all->addWidget(list_);
    query_->installEventFilter(this);
    connect(query_, &QLineEdit::textChanged, this, [this] {
        take_first_ = false;
        look();
    });
    connect(query_, &QLineEdit::returnPressed, this, [this] {
        take_first_ = lines_.empty();
        take(std::max(0, list_->currentRow()));
    });
    connect(list_, &QListWidget::itemActivated, this,
            [this](QListWidgetItem* item) { take(list_->row(item)); });
    connect(list_, &QListWidget::itemClicked, this,
            [this](QListWidgetItem* item) { take(list_->row(item)); });
    connect(&finder_, &TreeFinder::ready, this, [this](const SharedIndex& index) {
        if (index->book == finder_.book() && !query_->text().isEmpty()) {
            look();
        }
    });
    connect(&finder_, &TreeFinder::failed, this, [this](const QString& book, const QString& what) {
        if (book == finder_.book() && !query_->text().isEmpty()) {
            say(what);
        }
    });
}

FindBox::~FindBox() {
    ++*newest_;
    pool_.clear();
    pool_.waitForDone();
}

void FindBox::look_for(const QString& query) {
    query_->setText(query);
}

// The arrow keys move in the list while one types on.
bool FindBox::eventFilter(QObject* watched, QEvent* event) {
    if (watched == query_ && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const int step = key->key() == Qt::Key_Down ? 1 : key->key() == Qt::Key_Up ? -1 : 0;
        if (step != 0 && !lines_.empty()) {
            const int last = static_cast<int>(lines_.size()) - 1;
            list_->setCurrentRow(std::clamp(list_->currentRow() + step, 0, last));
            return true;
        }
        if (key->key() == Qt::Key_Escape && !query_->text().isEmpty()) {
            query_->clear();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void FindBox::look() {
    const int number = ++*newest_;
    lines_.clear();
    const QString query = query_->text().trimmed();
    if (query.isEmpty()) {
        list_->clear();
        list_->hide();
        return;
    }
    if (finder_.book().isEmpty()) {
        say(tr("Choose an orchard book first."));
        return;
    }
    const auto index = finder_.index_of(finder_.book());
    if (index == nullptr) {
        const QString failure = finder_.failure_of(finder_.book());
        say(failure.isEmpty() ? tr("Reading the book …") : failure);
        return;
    }
    const auto from = whereabouts_ ? whereabouts_() : std::nullopt;
    pool_.start([this, newest = newest_, number, index, query, from] {
        if (*newest != number) {
            return;
        }
        const auto lines = found_lines(*index, query, from, most_lines);
        const auto names = lines.empty() ? names_like(*index, query) : QStringList();
        QMetaObject::invokeMethod(
            this,
            [this, number, index, lines, names] {
                if (*newest_ == number) {
                    show_lines(index, lines, names);
                }
            },
            Qt::QueuedConnection);
    });
}

void FindBox::show_lines(const SharedIndex& index, const std::vector<FoundLine>& lines,
                         const QStringList& names) {
    shown_ = index;
    if (lines.empty()) {
        say(names.isEmpty()
                ? tr("The book has no trees yet.")
                : tr("Nothing matches. The nearest names: %1").arg(names.join(QStringLiteral(", "))));
        return;
    }
    list_->clear();
    for (const auto& line : lines) {
        auto* item = new QListWidgetItem(QStringLiteral("%1\n%2").arg(line.title, line.detail), list_);
        item->setToolTip(item->text());
    }
    lines_ = lines;
    list_->setCurrentRow(0);
    list_->show();
    const int seen = std::min(list_->count(), most_seen);
    list_->setFixedHeight(seen * list_->sizeHintForRow(0) + 2 * list_->frameWidth());
    if (take_first_) {
        take_first_ = false;
        take(0);
    }
}

void FindBox::say(const QString& words) {
    lines_.clear();
    list_->clear();
    auto* item = new QListWidgetItem(words, list_);
    item->setFlags(Qt::NoItemFlags);
    list_->show();
    list_->setFixedHeight(2 * list_->sizeHintForRow(0) + 2 * list_->frameWidth());
}

void FindBox::take(int row) {
    if (row >= 0 && row < static_cast<int>(lines_.size())) {
        emit chosen({shown_, lines_[static_cast<std::size_t>(row)].number});
    }
}

}  // namespace pipward::desktop
