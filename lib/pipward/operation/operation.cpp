// SPDX-License-Identifier: MIT
#include "pipward/operation/operation.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

#include "pipward/value/complaint.h"

namespace pipward::operation {

Parameter::Parameter() = default;
Parameter::Parameter(const Parameter& other) = default;
Parameter::Parameter(Parameter&& other) noexcept = default;
Parameter& Parameter::operator=(const Parameter& other) = default;
Parameter& Parameter::operator=(Parameter&& other) noexcept = default;
Parameter::~Parameter() = default;
Parameter::Parameter(std::string_view key_, std::string_view label_, std::string_view help_,
                     ParameterKind kind_)
    : key(key_), label(label_), help(help_), kind(std::move(kind_)) {}

Outcome::Outcome() = default;
Outcome::Outcome(const Outcome& other) = default;
Outcome::Outcome(Outcome&& other) noexcept = default;
Outcome& Outcome::operator=(const Outcome& other) = default;
Outcome& Outcome::operator=(Outcome&& other) noexcept = default;
Outcome::~Outcome() = default;
Outcome::Outcome(Sentence all_that_came_out) : summary(std::move(all_that_came_out)) {}

void Run::step(double share, const Sentence& what) const {
    if (cancelled()) {
        throw Error(Trouble::cancelled,
                    about_table(Level::error, "", say("Stopped as you asked."), say("Nothing was written.")));
    }
    progress(share, what.in(wording));
}

const Operation* find_operation(std::string_view id) {
    const auto all = operations();
    const auto found =
        std::ranges::find_if(all, [&](const auto& operation) { return operation->about().id == id; });
    return found == all.end() ? nullptr : found->get();
}

const Operation& operation_for(Role role) {
    const auto all = operations();
    const auto found =
        std::ranges::find_if(all, [&](const auto& operation) { return operation->about().role == role; });
    if (found == all.end()) {
        throw std::logic_error("a role is played by no operation of the list");
    }
    return **found;
}

}  // namespace pipward::operation
