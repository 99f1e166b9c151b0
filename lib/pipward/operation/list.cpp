// SPDX-License-Identifier: MIT
#include "pipward/operation/list.h"

#include <array>

namespace pipward::operation {

std::span<const std::unique_ptr<const Operation>> operations() {
    static const std::array all{
        book_new(),       book_dress(),    book_adopt(),   weather_import(),   book_check(),
        row_lay(),        row_number(),    season_clock(), bloom_fit(),        bloom_skill(),
        bloom_forecast(), cross_outlook(), season_plan(),  field_calendar(),   work_sheet(),
        note_template(),  note_import(),   note_bloom(),   note_pollination(), note_pollen_test(),
        note_pick(),      note_seed_lot(), note_sprouts(), note_seed_out(),    note_score(),
        note_undo(),      seed_status(),   seed_cold(),    seed_trial(),       pick_list(),
        row_assign(),     first_fruit(),   line_show(),    line_traits(),      line_alleles(),
        line_kinship(),   line_values(),   line_suggest(), passport_export(),  passport_import(),
        tree_find(),      tree_near(),     walk_order(),   field_map(),        label_sheet(),
    };
    return all;
}

}  // namespace pipward::operation
