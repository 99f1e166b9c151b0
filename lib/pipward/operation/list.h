// SPDX-License-Identifier: MIT
#pragma once

#include <memory>

#include "pipward/operation/operation.h"

/// The maker of each operation; each stands in the file of its name.
namespace pipward {

std::unique_ptr<const Operation> book_new();
std::unique_ptr<const Operation> book_dress();
std::unique_ptr<const Operation> weather_import();
std::unique_ptr<const Operation> book_check();
std::unique_ptr<const Operation> season_clock();
std::unique_ptr<const Operation> bloom_fit();
std::unique_ptr<const Operation> bloom_skill();
std::unique_ptr<const Operation> bloom_forecast();
std::unique_ptr<const Operation> cross_outlook();
std::unique_ptr<const Operation> season_plan();

}  // namespace pipward
