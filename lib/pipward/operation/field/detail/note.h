// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "pipward/book/entry.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"

/// What the operations that write single entries have in common.
namespace pipward::operation::detail {

/// The fields that every such request has.
struct NoteRequest {
    BookName book;
    Day as_of;
    std::optional<Day> on;
    std::string remark;

    Day day() const { return on.value_or(as_of); }
};

inline Bound<NoteRequest> note_book_parameter() {
    return book_parameter(&NoteRequest::book);
}
inline Bound<NoteRequest> note_as_of_parameter() {
    return as_of_parameter(&NoteRequest::as_of);
}
inline Bound<NoteRequest> on_parameter() {
    return parameter(&NoteRequest::on, "on", "On",
                     "The day on which it was seen or done; the as-of day where it is not given.");
}
inline Bound<NoteRequest> remark_parameter() {
    return parameter(&NoteRequest::remark, "remark", "Remark", "Anything worth keeping about it.");
}

template <class Request>
BoundField<Request, std::string> tree_parameter(std::string Request::*field) {
    return parameter(field, "tree", "Tree", "The label on the tree's tag.");
}

template <class Request>
BoundField<Request, std::string> cross_parameter(std::string Request::*field) {
    return parameter(field, "cross", "Cross", "The code of the cross.");
}

template <class Request>
BoundField<Request, std::string> tag_parameter(std::string Request::*field) {
    return parameter(field, "tag", "Tag", "What stands on the tag at the branch.");
}

template <class Request>
BoundField<Request, std::string> pollen_lot_parameter(std::string Request::*field) {
    return parameter(field, "pollen-lot", "Pollen lot", "The code on the vial.");
}

template <class Request>
BoundField<Request, std::string> seed_lot_parameter(std::string Request::*field) {
    return parameter(field, "seed-lot", "Seed lot", "The code on the bag of seed.");
}

template <class Request>
BoundField<Request, std::string> trait_parameter(std::string Request::*field) {
    return parameter(field, "trait", "Trait", "What was scored, always in the same word.");
}

inline constexpr int most_counted = 1'000'000;

/// A parameter that counts something.
template <class Request, class Field>
BoundField<Request, Field> count_parameter(Field Request::*field, std::string key, std::string label,
                                           std::string help) {
    return parameter(field, std::move(key), std::move(label), std::move(help)).between(0, most_counted);
}

/// Writes the entry and says what was written, where, and how it is taken back.
Outcome noted(const NoteRequest& request, const book::Entry& entry, const Run& lent);

}  // namespace pipward::operation::detail
