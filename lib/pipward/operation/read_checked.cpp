// SPDX-License-Identifier: MIT
#include "pipward/operation/read_checked.h"

namespace pipward {

BookReading read_checked(const BookName& book, Day as_of, const Run& lent) {
    lent.step(0.0, "Reading the book");
    auto reading = read_book(book.location);
    lent.step(0.05, "Checking the book");
    const auto more = check_orchard(reading.orchard, as_of);
    reading.findings.insert(reading.findings.end(), more.begin(), more.end());
    if (has_errors(reading.findings)) {
        throw Error(Trouble::input, std::move(reading.findings));
    }
    return reading;
}

void write_results(const BookName& book, std::span<const Table> results) {
    try {
        replace_results(book.location, results);
    } catch (const Error& error) {
        auto findings = error.findings();
        if (error.trouble() == Trouble::access) {
            findings.back().remedy +=
                (findings.back().remedy.empty() ? "" : " ") +
                std::string("To see the results without keeping them, set write to no.");
        }
        throw Error(error.trouble(), std::move(findings));
    }
}

}  // namespace pipward
