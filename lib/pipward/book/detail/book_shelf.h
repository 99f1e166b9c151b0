// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <map>
#include <set>
#include <string>

#include "pipward/book/book.h"
#include "pipward/book/detail/ogr_session.h"
#include "pipward/book/schema.h"
#include "pipward/record/orchard_shelf.h"

namespace pipward::book::detail {

/// Inside of the room: the shelf of an open GeoPackage. Rows are chosen by their numbers, which SQL tells,
/// and then read as those of a whole table are. Throws OgrTrouble.
class BookShelf : public OrchardShelf {
  public:
    explicit BookShelf(Session& session);

    void each_name(std::string_view table, std::string_view column,
                   const std::function<void(std::string_view)>& use) override;
    std::size_t take(std::string_view table, std::span<const Held> all_of, std::size_t most) override;
    std::size_t take_first_trees(std::span<const Held> all_of, Day as_of, std::size_t most) override;
    std::size_t take_trees_within(const MapPoint& low, const MapPoint& high) override;
    bool overfull() const override { return overfull_; }
    const Orchard& taken() override;

    /// All that was taken, with what could not be read of it.
    BookReading reading();

  private:
    using Numbers = std::set<std::int64_t>;

    bool has_column(std::string_view table, std::string_view column);
    std::size_t want(std::string_view table, const std::string& sql);
    void read_wanted();
    void read_wanted(const BookTable& table, const Numbers& numbers);

    Session& session_;
    Findings findings_;
    std::map<std::string, Numbers, std::less<>> wanted_;                        // by table, not read yet
    std::map<std::string, std::map<std::int64_t, BookRow>, std::less<>> rows_;  // by table and number
    std::map<std::string, Numbers, std::less<>> known_;                         // wanted at any time
    std::size_t count_ = 0;
    bool overfull_ = false;
    Orchard taken_;
};

}  // namespace pipward::book::detail
