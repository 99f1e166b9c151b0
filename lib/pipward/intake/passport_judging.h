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

/// What becomes of a passport.
enum class PassportFate {
    added,    ///< the book has no such accession yet
    known,    ///< the book has it: what differs is told, nothing is changed
    left_out  ///< it cannot be taken, and an error tells why
};
std::span<const Word<PassportFate>> words(PassportFate);

/// One line, held against the book.
struct JudgedPassport {
    int line = 0;                             ///< of the file, counted from 1
    PassportReading reading;                  ///< parents that nobody knows have been taken out of it
    PassportFate fate = PassportFate::added;  ///< what becomes of it
    std::vector<Sentence> remarks;  ///< what differs from the book, what went to the note, what was left open
};

/// A whole file, held against the book.
struct PassportJudgement {
    std::vector<JudgedPassport> passports;  ///< in the file's order
    std::vector<BlendMember> blends;        ///< to be added
    Findings findings;                      ///< of the file, then of its lines
};

/// Which passports are new, what differs of those that the book has, which parents nobody knows: those are
/// left open and kept in the note.
PassportJudgement judge_passports(const PassportFile& file, const std::string& name, const Orchard& orchard);

/// The rows to add.
book::BookChange change_of(const PassportJudgement& judgement);

}  // namespace pipward::intake
