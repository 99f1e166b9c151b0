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
struct RecordRequest {
    BookName book;
    Day as_of;
    std::optional<Day> on;
    std::string remark;

    Day day() const { return on.value_or(as_of); }
};

inline Bound<RecordRequest> record_book_parameter() {
    return book_parameter(&RecordRequest::book);
}
inline Bound<RecordRequest> record_as_of_parameter() {
    return as_of_parameter(&RecordRequest::as_of);
}
/// Named like the column of the sheet that it fills: "observed-on".
inline Bound<RecordRequest> on_parameter(std::string key, std::string label) {
    return parameter(&RecordRequest::on, std::move(key), std::move(label),
                     "Date of the observation or of the work; the reference date where not given.");
}
inline Bound<RecordRequest> remark_parameter() {
    return parameter(&RecordRequest::remark, "remark", "Remark", "Anything worth keeping about this row.");
}

template <class Request>
BoundField<Request, std::string> tree_parameter(std::string Request::*field) {
    return parameter(field, "tree", "Tree", "The tree's label.");
}

template <class Request>
BoundField<Request, std::string> cross_parameter(std::string Request::*field) {
    return parameter(field, "cross", "Cross", "The code of the cross.");
}

template <class Request>
BoundField<Request, std::string> tag_parameter(std::string Request::*field) {
    return parameter(field, "tag", "Tag", "Code on the tag at the branch.");
}

template <class Request>
BoundField<Request, std::string> pollen_lot_parameter(std::string Request::*field) {
    return parameter(field, "lot", "Pollen lot", "Code on the vial.");
}

template <class Request>
BoundField<Request, std::string> seed_lot_parameter(std::string Request::*field) {
    return parameter(field, "lot", "Seed lot", "Code on the seed bag.");
}

template <class Request>
BoundField<Request, std::string> trait_parameter(std::string Request::*field) {
    return parameter(field, "trait", "Trait", "The trait, always in the same word.");
}

inline constexpr int most_counted = 1'000'000;

/// A parameter that counts something.
template <class Request, class Field>
BoundField<Request, Field> count_parameter(Field Request::*field, std::string key, std::string label,
                                           std::string help) {
    return parameter(field, std::move(key), std::move(label), std::move(help)).between(0, most_counted);
}

/// Writes the entry and says what was written, where, and how it is taken back.
Outcome recorded(const RecordRequest& request, const book::Entry& entry, const Run& lent);

}  // namespace pipward::operation::detail
