// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "console/call.h"

/// Where an outcome goes: standard output and the user's folder.
namespace pipward::console {

/// Makes the folder for made files, before any work is done. Throws Error (access).
void prepare_folder(const Output& output);

/// Everything that goes to the folder: made files, and with CSV every table.
std::vector<operation::MadeFile> files_to_keep(const Call& call, const operation::Outcome& outcome);
/// Each file wholly or not at all. Throws Error (access).
void keep(const std::vector<operation::MadeFile>& files, const std::string& folder);

/// What goes to standard output.
std::string printed(const Call& call, const operation::Outcome& outcome);
/// Throws Error (access) where standard output takes no more.
void print(const std::string& text);

}  // namespace pipward::console
