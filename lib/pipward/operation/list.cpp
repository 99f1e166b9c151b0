// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"

#include <array>

namespace pipward::operation {

std::span<const std::unique_ptr<const Operation>> operations() {
    static const std::array all{
        detail::book_new(),
        detail::book_upgrade(),
        detail::book_backup(),
        detail::book_style(),
        detail::layer_import(),
        detail::weather_import(),
        detail::book_check(),
        detail::row_lay(),
        detail::row_number(),
        detail::chill_heat(),
        detail::bloom_fit(),
        detail::bloom_skill(),
        detail::bloom_forecast(),
        detail::cross_outlook(),
        detail::season_plan(),
        detail::plan_replay(),
        detail::field_calendar(),
        detail::work_sheet(),
        detail::record_template(),
        detail::record_import(),
        detail::recording(intake::RecordKind::pollen_lot),
        detail::recording(intake::RecordKind::pollen_move),
        detail::recording(intake::RecordKind::branch_work),
        detail::recording(intake::RecordKind::bloom),
        detail::recording(intake::RecordKind::pollination),
        detail::recording(intake::RecordKind::pollen_test),
        detail::recording(intake::RecordKind::fruit_set),
        detail::recording(intake::RecordKind::harvest),
        detail::recording(intake::RecordKind::seed_lot),
        detail::recording(intake::RecordKind::stratification),
        detail::recording(intake::RecordKind::germination),
        detail::recording(intake::RecordKind::seed_withdrawal),
        detail::recording(intake::RecordKind::score),
        detail::recording(intake::RecordKind::goal),
        detail::recording(intake::RecordKind::accession),
        detail::recording(intake::RecordKind::blend),
        detail::recording(intake::RecordKind::tree),
        detail::recording(intake::RecordKind::station),
        detail::recording(intake::RecordKind::trait),
        detail::record_undo(),
        detail::seed_status(),
        detail::stratification(),
        detail::seed_trial(),
        detail::harvest_list(),
        detail::row_assign(),
        detail::first_fruit(),
        detail::pedigree_show(),
        detail::pedigree_traits(),
        detail::s_alleles(),
        detail::kinship(),
        detail::breeding_values(),
        detail::cross_suggest(),
        detail::passport_export(),
        detail::passport_import(),
        detail::tree_find(),
        detail::tree_near(),
        detail::walk_order(),
        detail::field_map(),
        detail::label_sheet(),
    };
    return all;
}

}  // namespace pipward::operation
