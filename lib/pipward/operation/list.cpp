// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"

#include <array>

namespace pipward::operation {

std::span<const std::unique_ptr<const Operation>> operations() {
    static const std::array all{
        detail::book_new(),           detail::book_style(),         detail::layer_import(),
        detail::weather_import(),     detail::book_check(),         detail::row_lay(),
        detail::row_number(),         detail::chill_heat(),         detail::bloom_fit(),
        detail::bloom_skill(),        detail::bloom_forecast(),     detail::cross_outlook(),
        detail::season_plan(),        detail::field_calendar(),     detail::work_sheet(),
        detail::record_template(),    detail::record_import(),      detail::record_bloom(),
        detail::record_pollination(), detail::record_pollen_test(), detail::record_harvest(),
        detail::record_seed_lot(),    detail::record_germination(), detail::record_seed_withdrawal(),
        detail::record_score(),       detail::record_undo(),        detail::seed_status(),
        detail::stratification(),     detail::seed_trial(),         detail::harvest_list(),
        detail::row_assign(),         detail::first_fruit(),        detail::pedigree_show(),
        detail::pedigree_traits(),    detail::s_alleles(),          detail::kinship(),
        detail::breeding_values(),    detail::cross_suggest(),      detail::passport_export(),
        detail::passport_import(),    detail::tree_find(),          detail::tree_near(),
        detail::walk_order(),         detail::field_map(),          detail::label_sheet(),
    };
    return all;
}

}  // namespace pipward::operation
