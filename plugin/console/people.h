// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "console/call.h"

/// An outcome on a screen: the answer first, then the tables cut to what matters and has room.
namespace pipward::console {

/// The year of the day that the call asks about: its days are told without it.
std::optional<int> year_spoken_of(const Call& call);

/// What goes to standard output.
std::string text_for_people(const Call& call, const operation::Outcome& outcome);

/// Which tables and columns it leaves out and how to see them, in one line; empty where nothing is left out.
std::string left_out(const Call& call, const operation::Outcome& outcome);

/// Whether the findings are the result, and so before people's eyes already.
bool shows_findings(const Call& call, const operation::Outcome& outcome);

}  // namespace pipward::console
