// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include "pipward/book/book.h"
#include "pipward/book/change.h"
#include "pipward/intake/passport_file.h"
#include "pipward/record/words.h"

/// Passports held against a book.
namespace pipward::intake {

enum class PassportFate { added, known, left_out };
std::span<const Word<PassportFate>> words(PassportFate);

struct JudgedPassport {
    int line = 0;
    PassportReading reading;
    PassportFate fate = PassportFate::added;
    std::vector<Sentence> remarks;  ///< what differs from the book, what went to the note, what was left open
};

struct PassportJudgement {
    std::vector<JudgedPassport> passports;
    std::vector<BlendMember> blends;  ///< to be added
    Findings findings;
};

/// Which passports are new, what differs of those that the book has, which parents nobody knows: those are
/// left open and kept in the note.
PassportJudgement judge_passports(const PassportFile& file, const std::string& name, const Orchard& orchard);

/// The rows to add.
book::BookChange change_of(const PassportJudgement& judgement);

}  // namespace pipward::intake
