// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QDate>
#include <QHash>
#include <QString>
#include <chrono>
#include <future>
#include <map>
#include <memory>
#include <mutex>

namespace pipward::desktop {

/// What expressions may ask of a book, by the label of a tree or the name of an accession. A label goes
/// before a name.
struct BookFacts {
    QHash<QString, QDate> full_bloom;  ///< median, of the last forecast put into the book
    QHash<QString, QString> address;   ///< of trees
    QHash<QString, QString> lineage;   ///< "seed parent × pollen parent"
};

/// Reads a book's facts. What cannot be read is left out: an expression then answers with an unknown.
BookFacts read_facts(const QString& book);

/// Facts of books, read once and again after a book has changed. May be asked from any thread.
class FactShelf {
  public:
    FactShelf() = default;
    ~FactShelf();
    FactShelf(const FactShelf&) = delete;
    FactShelf& operator=(const FactShelf&) = delete;

    enum class State {
        known,    ///< the facts of the book as it is
        reading,  ///< not read yet: ask again
        failed    ///< the book cannot be read
    };
    struct Answer {
        State state;
        std::shared_ptr<const BookFacts> facts;  ///< null unless known
    };

    /// In the main thread the window must not stand still for long: a book that is still being read two
    /// seconds after the first question is answered with `reading`. Any other thread waits. What was known
    /// before a change of the book is never told: it might be written into data.
    Answer facts_of(const QString& book);

  private:
    using Reading = std::shared_future<std::shared_ptr<const BookFacts>>;
    struct Shelved {
        QString stamp;
        Reading reading;
        std::chrono::steady_clock::time_point patience_ends;
    };

    Shelved shelved_now(const QString& book);

    std::mutex lock_;
    std::map<QString, Shelved> shelved_;
};

}  // namespace pipward::desktop
