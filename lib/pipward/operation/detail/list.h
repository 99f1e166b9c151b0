// SPDX-License-Identifier: MIT
#pragma once

#include <memory>

#include "pipward/intake/record_kind.h"
#include "pipward/operation/operation.h"

/// The maker of each operation; each stands in the file of its name, those of single records in
/// field/recording.cpp.
namespace pipward::operation::detail {

std::unique_ptr<const Operation> book_new();
std::unique_ptr<const Operation> book_upgrade();
std::unique_ptr<const Operation> book_style();
std::unique_ptr<const Operation> book_backup();
std::unique_ptr<const Operation> layer_import();
std::unique_ptr<const Operation> weather_import();
std::unique_ptr<const Operation> book_check();
std::unique_ptr<const Operation> row_lay();
std::unique_ptr<const Operation> row_number();
std::unique_ptr<const Operation> chill_heat();
std::unique_ptr<const Operation> bloom_fit();
std::unique_ptr<const Operation> bloom_skill();
std::unique_ptr<const Operation> bloom_forecast();
std::unique_ptr<const Operation> cross_outlook();
std::unique_ptr<const Operation> season_plan();
std::unique_ptr<const Operation> plan_replay();
std::unique_ptr<const Operation> field_calendar();
std::unique_ptr<const Operation> work_sheet();
std::unique_ptr<const Operation> harvest_list();
std::unique_ptr<const Operation> record_template();
std::unique_ptr<const Operation> record_import();
/// One for each kind of records.
std::unique_ptr<const Operation> recording(intake::RecordKind kind);
std::unique_ptr<const Operation> record_undo();
std::unique_ptr<const Operation> seed_status();
std::unique_ptr<const Operation> stratification();
std::unique_ptr<const Operation> seed_trial();
std::unique_ptr<const Operation> row_assign();
std::unique_ptr<const Operation> first_fruit();
std::unique_ptr<const Operation> pedigree_show();
std::unique_ptr<const Operation> pedigree_traits();
std::unique_ptr<const Operation> s_alleles();
std::unique_ptr<const Operation> kinship();
std::unique_ptr<const Operation> breeding_values();
std::unique_ptr<const Operation> cross_suggest();
std::unique_ptr<const Operation> passport_export();
std::unique_ptr<const Operation> passport_import();
std::unique_ptr<const Operation> tree_find();
std::unique_ptr<const Operation> tree_near();
std::unique_ptr<const Operation> walk_order();
std::unique_ptr<const Operation> field_map();
std::unique_ptr<const Operation> label_sheet();

}  // namespace pipward::operation::detail
