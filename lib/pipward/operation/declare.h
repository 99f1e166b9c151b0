// SPDX-License-Identifier: MIT
#pragma once

/// How an operation is declared once: a plain request struct, its fields bound to words and limits, a run
/// function.
///
///     struct Request { std::string book; std::optional<Day> as_of; int lead = 14; };
///     Outcome run(const Request&, const Run&);
///     std::unique_ptr<const Operation> bloom_skill() {
///         return declare<Request>({"bloom-skill", ...}, {
///             book_parameter(&Request::book),
///             as_of_parameter(&Request::as_of),
///             parameter(&Request::lead, "lead", "Lead", "Days before bloom ...").between(0, 120),
///         }, {bloom_skill_shape()}, {{"...", {{"book", "BOOK"}}}}, run);
///     }
///
/// The field's type picks the kind; its initialiser is the only default.
