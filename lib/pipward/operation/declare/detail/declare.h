// SPDX-License-Identifier: MIT
#pragma once

#include <concepts>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "pipward/operation/declare/detail/request_field.h"
#include "pipward/operation/operation.h"

/// How an operation is declared once: a plain request struct, its fields bound to words and limits, a run
/// function.
///
///     struct Request { BookName book; Day as_of; int lead = 14; };
///     Outcome run(const Request&, const Run&);
///     std::unique_ptr<const Operation> bloom_skill() {
///         return declare<Request>({
///             .about = {"bloom-skill", ...},
///             .parameters = {book_parameter(&Request::book),
///                            parameter(&Request::lead, "lead", "Lead", "Days before
///                            bloom.").in("d").between(0, 120)},
///             .results = {bloom_skill_table.shape()},
///             .examples = {{"...", {{"book", "BOOK"}}}},
///             .run = run});
///     }
///
/// The field's type picks the kind (operation/request_field.h); its initialiser is the only default.
namespace pipward::operation::detail {

/// A parameter and the field of a request that it fills.
template <class Request>
struct Bound {
    Parameter words;
    std::function<void(const std::string&, Request&)> fill;
    std::function<std::string(const Request&)> show;

    Bound(Parameter words_, std::function<void(const std::string&, Request&)> fill_,
          std::function<std::string(const Request&)> show_)
        : words(std::move(words_)), fill(std::move(fill_)), show(std::move(show_)) {}

    /// A field of a struct that the request extends.
    template <class Base>
    requires(std::derived_from<Request, Base> && !std::same_as<Request, Base>)
        Bound(const Bound<Base>& base)  // NOLINT(google-explicit-constructor): lists of both kinds read alike
        : Bound(base.words, base.fill, base.show) {}

    Bound&& required() && {
        words.required = true;
        return std::move(*this);
    }
    Bound&& advanced() && {
        words.advanced = true;
        return std::move(*this);
    }
};

/// What only a parameter of this field's type can be told.
template <class Request, RequestField Field>
struct BoundField : Bound<Request> {
    using Bound<Request>::Bound;

    BoundField&& in(std::string_view unit) && requires(WholeField<Field> || NumberField<Field>) {
        std::visit(
            [&](auto& kind) {
                if constexpr (requires { kind.unit; }) {
                    kind.unit = unit;
                }
            },
            this->words.kind);
        return std::move(*this);
    }
    BoundField&& between(int least, int most) && requires WholeField<Field> {
        return std::move(*this).template limit<WholeKind, WholeListKind>(least, most);
    }
    BoundField&& between(double least, double most) && requires NumberField<Field> {
        return std::move(*this).template limit<NumberKind, NumberKind>(least, most);
    }
    /// The host fills in today where the user gives no day.
    BoundField&& today_if_absent() && requires std::same_as<Field, Day> {
        std::get<DayKind>(this->words.kind).today_if_absent = true;
        return std::move(*this);
    }
    BoundField&& named(std::string_view pattern) && requires std::same_as<ValueOf<Field>, InputFile> {
        std::get<FileKind>(this->words.kind).pattern = pattern;
        return std::move(*this);
    }

  private:
    template <class One, class Other, class Number>
    BoundField&& limit(Number least, Number most) && {
        if (auto* one = std::get_if<One>(&this->words.kind)) {
            one->least = least;
            one->most = most;
        } else if (auto* other = std::get_if<Other>(&this->words.kind)) {
            other->least = least;
            other->most = most;
        }
        return std::move(*this);
    }
};

/// Binds a field to its key (lower case with hyphens), label and help (one sentence without the default).
template <class Request, RequestField Field>
BoundField<Request, Field> parameter(Field Request::*field, std::string_view key, std::string_view label,
                                     std::string_view help) {
    return {Parameter{key, label, help, field_kind<Field>()},
            [field](const std::string& text, Request& request) { fill_field(text, request.*field); },
            [field](const Request& request) { return default_of(request.*field); }};
}

template <class Request>
struct Declaration {
    About about;
    std::vector<Bound<Request>> parameters;
    std::vector<ResultShape> results;
    std::vector<Example> examples;
    std::function<Findings(const Request&)> check{};  ///< rules between fields; may be left out
    std::function<Outcome(const Request&, const Run&)> run;
};

/// A declaration without its request type: what the one adapter works with.
struct ErasedDeclaration {
    struct Field {
        Parameter words;
        std::function<void(const std::string&, void*)> fill;
    };
    About about;
    std::vector<Field> fields;
    std::vector<ResultShape> results;
    std::vector<Example> examples;
    std::function<std::shared_ptr<void>()> make_request;
    std::function<Findings(const void*)> check;
    std::function<Outcome(const void*, const Run&)> run;
};
std::unique_ptr<const Operation> make_operation(ErasedDeclaration declaration);

template <class Request>
std::unique_ptr<const Operation> declare(Declaration<Request> declaration) {
    ErasedDeclaration erased{std::move(declaration.about),
                             {},
                             std::move(declaration.results),
                             std::move(declaration.examples),
                             [] { return std::make_shared<Request>(); },
                             {},
                             {}};
    const auto defaults = std::make_shared<Request>();
    for (auto& bound : declaration.parameters) {
        bound.words.default_text = bound.show(*defaults);
        erased.fields.push_back(
            {std::move(bound.words), [fill = std::move(bound.fill)](const std::string& text, void* request) {
                 fill(text, *static_cast<Request*>(request));
             }});
    }
    erased.check = [check = std::move(declaration.check)](const void* request) {
        return check ? check(*static_cast<const Request*>(request)) : Findings{};
    };
    erased.run = [run = std::move(declaration.run)](const void* request, const Run& lent) {
        return run(*static_cast<const Request*>(request), lent);
    };
    return make_operation(std::move(erased));
}

}  // namespace pipward::operation::detail
