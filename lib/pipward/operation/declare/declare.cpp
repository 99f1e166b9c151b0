// SPDX-License-Identifier: MIT
#include "pipward/operation/declare/detail/declare.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/operation/declare/parameter_text.h"
#include "pipward/value/complaint.h"
#include "pipward/value/nearest.h"

namespace pipward::operation::detail {
namespace {

bool must_be_given(const Parameter& words) {
    const auto* day = std::get_if<DayKind>(&words.kind);
    return words.required || (day != nullptr && day->today_if_absent);
}

Finding missing(const Parameter& words) {
    return about_parameter(words.key, "", say("{} is missing.", words.key),
                           say("Give {}.", what_fits(words.kind)));
}

/// Hosts get text: nothing that comes out of a run has to be put in words any more.
Outcome in_words(Outcome outcome, const Wording& wording) {
    for (auto& table : outcome.tables) {
        table = spoken(std::move(table), wording);
    }
    outcome.findings = spoken(std::move(outcome.findings), wording);
    outcome.summary = verbatim(outcome.summary.in(wording));
    return outcome;
}

class DeclaredOperation final : public Operation {
  public:
    explicit DeclaredOperation(ErasedDeclaration declaration) : declaration_(std::move(declaration)) {
        for (const auto& field : declaration_.fields) {
            parameters_.push_back(field.words);
            if (must_be_given(field.words)) {
                parameters_.back().default_text.clear();
            }
        }
    }

    const About& about() const override { return declaration_.about; }
    const std::vector<Parameter>& parameters() const override { return parameters_; }
    const std::vector<TableShape>& results() const override { return declaration_.results; }
    const std::vector<Example>& examples() const override { return declaration_.examples; }

    Findings check(const Form& form) const override {
        const auto request = declaration_.make_request();
        return fill(form, request.get());
    }

    Outcome run(const Form& form, const Run& lent) const override {
        const auto request = declaration_.make_request();
        if (auto findings = fill(form, request.get()); has_errors(findings)) {
            throw Error(Trouble::usage, spoken(std::move(findings), lent.wording));
        }
        try {
            return in_words(declaration_.run(request.get(), lent), lent.wording);
        } catch (const Error& error) {
            throw Error(error.trouble(), spoken(error.findings(), lent.wording));
        }
    }

  private:
    /// Fills what can be filled; rules between fields are asked only when every field is sound.
    Findings fill(const Form& form, void* request) const {
        Findings findings = unknown_keys(form);
        for (const auto& field : declaration_.fields) {
            const auto given = form.find(field.words.key);
            if (given == form.end() || given->second.empty()) {
                if (must_be_given(field.words)) {
                    findings.push_back(missing(field.words));
                }
            } else if (auto problem = problem_with(field.words, given->second)) {
                findings.push_back(std::move(*problem));
            } else {
                field.fill(given->second, request);
            }
        }
        return findings.empty() ? declaration_.check(request) : findings;
    }

    Findings unknown_keys(const Form& form) const {
        Findings findings;
        for (const auto& [key, value] : form) {
            if (std::ranges::find(parameters_, key, &Parameter::key) == parameters_.end()) {
                findings.push_back(unknown_key(key, value));
            }
        }
        return findings;
    }

    Finding unknown_key(const std::string& key, const std::string& value) const {
        std::vector<std::string> keys;
        for (const auto& words : parameters_) {
            keys.push_back(words.key);
        }
        const auto meant = nearest(key, keys);
        return about_parameter(key, value, say("{} has no parameter '{}'.", about().id, key),
                               meant ? say("Did you mean '{}'?", *meant)
                                     : say("It has: {}.", fmt::format("{}", fmt::join(keys, ", "))));
    }

    ErasedDeclaration declaration_;
    std::vector<Parameter> parameters_;
};

}  // namespace

std::unique_ptr<const Operation> make_operation(ErasedDeclaration declaration) {
    return std::make_unique<DeclaredOperation>(std::move(declaration));
}

}  // namespace pipward::operation::detail
