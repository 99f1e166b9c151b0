// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"

#include <array>

namespace pipward::operation {

std::span<const std::unique_ptr<const Operation>> operations() {
    static const std::array all{
        detail::book_new(),         detail::book_dress(),       detail::book_adopt(),
        detail::weather_import(),   detail::book_check(),       detail::row_lay(),
        detail::row_number(),       detail::season_clock(),     detail::bloom_fit(),
        detail::bloom_skill(),      detail::bloom_forecast(),   detail::cross_outlook(),
        detail::season_plan(),      detail::field_calendar(),   detail::work_sheet(),
        detail::note_template(),    detail::note_import(),      detail::note_bloom(),
        detail::note_pollination(), detail::note_pollen_test(), detail::note_pick(),
        detail::note_seed_lot(),    detail::note_sprouts(),     detail::note_seed_out(),
        detail::note_score(),       detail::note_undo(),        detail::seed_status(),
        detail::seed_cold(),        detail::seed_trial(),       detail::pick_list(),
        detail::row_assign(),       detail::first_fruit(),      detail::line_show(),
        detail::line_traits(),      detail::line_alleles(),     detail::line_kinship(),
        detail::line_values(),      detail::line_suggest(),     detail::passport_export(),
        detail::passport_import(),  detail::tree_find(),        detail::tree_near(),
        detail::walk_order(),       detail::field_map(),        detail::label_sheet(),
    };
    return all;
}

}  // namespace pipward::operation
