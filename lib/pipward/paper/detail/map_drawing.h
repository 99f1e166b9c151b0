// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "pipward/paper/detail/free_room.h"
#include "pipward/paper/field_plan.h"
#include "pipward/paper/typesetter.h"
#include "pipward/value/sentence.h"

namespace pipward::paper::detail {

/// One page's part of a map, drawn piece by piece from the back to the front.
class MapDrawing {
  public:
    MapDrawing(const FieldMap& map, const MapWindow& window, const TextRuler& ruler, const Wording& wording);

    PaperSpot spot_of(math::PlanePoint ground) const;
    void put_block_names();
    void put_row_lines();
    void put_marks(Millimetres size);
    void put_row_names();
    void put_numbers(Millimetres mark);
    /// Where the other pages lie, the first of them with this number.
    void put_page_frames(const std::vector<MapWindow>& windows, int first_number);

    int trees() const { return trees_; }
    std::size_t numbers_left_out() const { return left_out_; }
    std::vector<PagePiece> take() { return std::move(pieces_); }

  private:
    PaperSpot spot_of(PageGround ground) const;
    std::vector<PaperSpot> line_of(const MapRow& row) const;
    bool is_on_page(PaperSpot spot) const;
    std::optional<Box> room_for_row_name(const std::string& name, const Face& face, PaperSpot end,
                                         PaperSpot before) const;
    void put_row_name(const std::vector<std::string>& writings, PaperSpot end, PaperSpot before);
    void put_block_name(const std::string& text, PaperSpot top);
    void put_text(const std::string& text, const Box& box, const Face& face);
    bool put_number(const std::string& number, PaperSpot at, Millimetres mark);

    const FieldMap& map_;
    Box box_;
    MapWindow window_;
    const TextRuler& ruler_;
    const Wording& wording_;
    FreeRoom room_;
    std::vector<PagePiece> pieces_;
    int trees_ = 0;
    std::size_t left_out_ = 0;
};

}  // namespace pipward::paper::detail
