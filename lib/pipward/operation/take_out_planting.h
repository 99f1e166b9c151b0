// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/book/change.h"

namespace pipward::operation {

/// How the trees and accessions of a planting are marked: "planting 2026-07-01".
std::string planting_note(const std::string& name);

/// Takes out every tree and accession that bears the note. Throws Error (input) with all findings where there
/// is none, or where something was noted of one of them since; then nothing may be taken out.
book::BookChange planting_taken_out(const Orchard& orchard, const std::string& note);

}  // namespace pipward::operation
