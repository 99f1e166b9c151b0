// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>

#include "pipward/book/book.h"

/// Books read for work that must not be misled by what is wrong in them.
namespace pipward::book {

/// Told the share of the whole work that is done, 0 to 1, and what is being done. May throw to stop it.
using ReadingStep = std::function<void(double share, const Sentence& doing)>;

/// The book, read and checked by its rules as seen from a day; bloom observations that the rules find
/// misdated are left out. What was written down after that day is no mistake as long as the weather record
/// goes on to it without a gap of more than 400 days. Throws Error: (input) carrying every finding where any
/// is an error, (access).
BookReading read_checked(const BookAt& book, Day as_of, const ReadingStep& step = {});

/// The same for work that asks nothing of bloom and weather: findings about those tables are left out.
BookReading read_checked_without_weather(const BookAt& book, Day as_of, const ReadingStep& step = {});
/// The same for what depends on accessions, crosses and counts alone: nothing is said of weather, stations
/// and bloom, and errors of trees, rows and blocks are told as warnings.
BookReading read_checked_without_ground(const BookAt& book, Day as_of, const ReadingStep& step = {});

/// What is known of the trees, without the weather: enough to find one. What cannot be read is
/// told as warnings, since the rest can still be found. Throws Error (input) where no tree could be read
/// because of errors.
BookReading read_trees(const BookAt& book);

/// The same of blocks, rows and trees only: enough to walk between them.
BookReading read_stands(const BookAt& book);

/// What the book knows of parents and traits, for which it needs no trees and no weather. What cannot be read
/// is told as warnings. Throws Error (input) where no accession could be read because of errors.
BookReading read_line(const BookAt& book);

/// Errors told as warnings: for work that goes on with what could be read.
void tell_as_warnings(Findings& findings);

}  // namespace pipward::book
