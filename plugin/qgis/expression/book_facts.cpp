// SPDX-License-Identifier: GPL-2.0-or-later
#include "expression/book_facts.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFileInfo>
#include <QThread>

#include "panel/table_view.h"
#include "pipward/book/book.h"
#include "pipward/lineage/pedigree_text.h"
#include "pipward/place/address.h"
#include "text.h"

namespace pipward::desktop {
namespace {

constexpr std::chrono::seconds patience{2};

// A book in an edit session is written beside itself first.
QString stamp_of(const QString& book) {
    QString stamp;
    for (const auto* end : {"", "-wal"}) {
        const QFileInfo file(book + QLatin1String(end));
        stamp += file.lastModified().toString(Qt::ISODateWithMs) + '/' + QString::number(file.size()) + ' ';
    }
    return stamp;
}

void add_bloom(BookFacts& facts, const QString& book) {
    const auto windows = book::read_result(from_qt(book), "bloom_window");
    if (!windows) {
        return;
    }
    const TableView view(*windows);
    for (std::size_t row = 0; row < view.size(); ++row) {
        const QString accession = view.text(row, "accession");
        const QDate day = view.day(row, "full_p50");
        if (!facts.full_bloom.contains(accession)) {
            facts.full_bloom.insert(accession, day);
        }
    }
    for (std::size_t row = 0; row < view.size(); ++row) {
        if (const QString label = view.text(row, "tree"); !label.isEmpty()) {
            facts.full_bloom.insert(label, view.day(row, "full_p50"));
        }
    }
}

void insert_text(QHash<QString, QString>& texts, const std::string& name, const Sentence& text) {
    if (!text.empty()) {
        texts.insert(to_qt(name), said(text));
    }
}

void add_records(BookFacts& facts, const QString& book) {
    const auto orchard = book::read_tables(from_qt(book), {"tree", "tree_row", "accession", "blend"}).orchard;
    const lineage::PedigreeText lines(orchard.accessions, orchard.blend_members);
    for (const auto& accession : orchard.accessions) {
        insert_text(facts.lineage, accession.name, lines.of(accession.name));
    }
    for (const auto& tree : orchard.trees) {
        insert_text(facts.address, tree.label, place::address_of(tree, orchard.rows));
        insert_text(facts.lineage, tree.label, tree.accession ? lines.of(*tree.accession) : Sentence());
    }
}

std::shared_ptr<const BookFacts> read_or_nothing(const QString& book) {
    try {
        return std::make_shared<const BookFacts>(read_facts(book));
    } catch (const std::exception&) {
        return nullptr;
    }
}

bool in_main_thread() {
    return QCoreApplication::instance() != nullptr &&
           QThread::currentThread() == QCoreApplication::instance()->thread();
}

}  // namespace

BookFacts read_facts(const QString& book) {
    BookFacts facts;
    add_bloom(facts, book);
    add_records(facts, book);
    return facts;
}

FactShelf::~FactShelf() {
    for (const auto& [book, shelved] : shelved_) {
        shelved.reading.wait();
    }
}

FactShelf::Shelved FactShelf::shelved_now(const QString& book) {
    const std::scoped_lock hold(lock_);
    auto& shelved = shelved_[book];
    const QString stamp = stamp_of(book);
    const bool done = shelved.reading.valid() &&
                      shelved.reading.wait_for(std::chrono::seconds(0)) == std::future_status::ready;
    if (!shelved.reading.valid() || (done && shelved.stamp != stamp)) {
        shelved = {stamp, std::async(std::launch::async, read_or_nothing, book).share(),
                   std::chrono::steady_clock::now() + patience};
    }
    return shelved;
}

FactShelf::Answer FactShelf::facts_of(const QString& book) {
    const auto shelved = shelved_now(book);
    if (in_main_thread() && shelved.reading.wait_until(shelved.patience_ends) != std::future_status::ready) {
        return {State::reading, nullptr};
    }
    auto facts = shelved.reading.get();
    return {facts == nullptr ? State::failed : State::known, std::move(facts)};
}

}  // namespace pipward::desktop
