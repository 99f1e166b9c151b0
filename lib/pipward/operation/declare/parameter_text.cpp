// SPDX-License-Identifier: MIT
#include "pipward/operation/declare/parameter_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdlib>

#include "pipward/value/complaint.h"
#include "pipward/value/nearest.h"
#include "pipward/value/plain_text.h"

namespace pipward::operation {
namespace {

template <class Number>
std::optional<Number> parse(std::string_view text) {
    Number value{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (text.empty() || error != std::errc{} || end != text.data() + text.size()) {
        return std::nullopt;
    }
    return value;
}

bool has_unit(const std::string& unit) {
    return !unit.empty() && unit != share_unit;
}

Sentence with_unit(const std::string& value, const std::string& unit) {
    return has_unit(unit) ? say("{} {}", value, filled(unit, {})) : verbatim(value);
}

/// "an integer, 0 to 120 days": with the limits of a number and its unit, or what there is of them.
template <class Number>
Sentence in_range(const Sentence& what, const std::optional<Number>& least, const std::optional<Number>& most,
                  const std::string& unit) {
    const auto text = [](Number number) { return fmt::format("{}", number); };
    if (least && most) {
        return say("{}, {} to {}", what, *least, with_unit(text(*most), unit));
    }
    if (least) {
        return has_unit(unit) ? say("{}, {} or more {}", what, *least, filled(unit, {}))
                              : say("{}, {} or more", what, *least);
    }
    if (most) {
        return say("{}, at most {}", what, with_unit(text(*most), unit));
    }
    return has_unit(unit) ? say("{} ({})", what, filled(unit, {})) : what;
}

template <class Number>
bool outside(Number value, const std::optional<Number>& least, const std::optional<Number>& most) {
    return (least && value < *least) || (most && value > *most);
}

bool looks_like_a_day(std::string_view text) {
    return text.size() == 10 && text[4] == '-' && text[7] == '-' &&
           std::ranges::count_if(text, [](char c) { return c >= '0' && c <= '9'; }) == 8;
}

std::vector<std::string> option_words(const ChoiceKind& kind) {
    std::vector<std::string> found;
    for (const auto& option : kind.options) {
        found.push_back(option.word);
    }
    return found;
}

// Among numbers the nearest is meant, not the one with the likest digits.
std::optional<std::string> likely_option(const std::string& text, const std::vector<std::string>& options) {
    const auto given = parse<int>(text);
    std::optional<std::string> best;
    long least = 0;
    for (const auto& option : options) {
        const auto number = parse<int>(option);
        if (!given || !number) {
            return nearest(text, options);
        }
        const long distance = std::labs(long{*number} - long{*given});
        if (!best || distance < least) {
            best = option;
            least = distance;
        }
    }
    return best;
}

/// What is wrong with a parameter's text; empty if nothing.
struct Judge {
    const std::string& key;
    const std::string& text;

    Sentence not_a(const Sentence& what) const { return say("{}: '{}' is not {}.", key, text, what); }
    Sentence out_of_range(const std::string& unit) const {
        return say("{} is {}, which is out of its range.", key, with_unit(text, unit));
    }

    Sentence operator()(const YesNoKind&) const {
        return yes_no_from(text) ? Sentence{} : not_a(say("yes or no"));
    }
    Sentence operator()(const WholeKind& kind) const {
        const auto value = whole_from(text);
        if (!value) {
            return not_a(say("an integer"));
        }
        return outside(*value, kind.least, kind.most) ? out_of_range(kind.unit) : Sentence{};
    }
    Sentence operator()(const WholeListKind& kind) const {
        const auto values = wholes_from(text);
        if (!values) {
            return not_a(say("a list of integers"));
        }
        const bool bad =
            std::ranges::any_of(*values, [&](int value) { return outside(value, kind.least, kind.most); });
        return bad ? out_of_range(kind.unit) : Sentence{};
    }
    Sentence operator()(const NumberKind& kind) const {
        const auto value = number_from(text);
        if (!value) {
            return not_a(say("a number"));
        }
        return outside(*value, kind.least, kind.most) ? out_of_range(kind.unit) : Sentence{};
    }
    Sentence operator()(const DayKind&) const {
        if (parse_iso_day(text)) {
            return {};
        }
        return looks_like_a_day(text) ? say("{}: there is no day {}.", key, text) : not_a(say("a day"));
    }
    Sentence operator()(const ChoiceKind& kind) const {
        const auto known = option_words(kind);
        if (std::ranges::find(known, text) != known.end()) {
            return {};
        }
        const auto meant = likely_option(text, known);
        const auto wrong = not_a(say("one of its words"));
        return meant ? say("{} Did you mean '{}'?", wrong, *meant) : wrong;
    }
    // Whether a book or a file is there shows when it is opened.
    Sentence operator()(const auto&) const { return {}; }
};

struct Fitting {
    Sentence operator()(const YesNoKind&) const { return say("yes or no"); }
    Sentence operator()(const WholeKind& kind) const {
        return in_range(say("an integer"), kind.least, kind.most, kind.unit);
    }
    Sentence operator()(const WholeListKind& kind) const {
        return in_range(say("integers separated by commas"), kind.least, kind.most, kind.unit);
    }
    Sentence operator()(const NumberKind& kind) const {
        return kind.unit == share_unit
                   ? say("a number from {} to {}", kind.least.value_or(0), kind.most.value_or(1))
                   : in_range(say("a number"), kind.least, kind.most, kind.unit);
    }
    Sentence operator()(const DayKind&) const { return say("a day as YYYY-MM-DD"); }
    Sentence operator()(const ChoiceKind& kind) const {
        return say("one of: {}", fmt::format("{}", fmt::join(option_words(kind), ", ")));
    }
    Sentence operator()(const TextKind&) const { return say("a text"); }
    Sentence operator()(const BookKind&) const { return say("the path of an orchard book"); }
    Sentence operator()(const NewBookKind&) const { return say("a path where no book is yet"); }
    Sentence operator()(const FileKind&) const { return say("the path of a file"); }
};

struct KindWord {
    std::string_view operator()(const YesNoKind&) const { return "boolean"; }
    std::string_view operator()(const WholeKind&) const { return "integer"; }
    std::string_view operator()(const WholeListKind&) const { return "integer-list"; }
    std::string_view operator()(const NumberKind&) const { return "number"; }
    std::string_view operator()(const DayKind&) const { return "day"; }
    std::string_view operator()(const ChoiceKind&) const { return "choice"; }
    std::string_view operator()(const TextKind&) const { return "text"; }
    std::string_view operator()(const BookKind&) const { return "book"; }
    std::string_view operator()(const NewBookKind&) const { return "new-book"; }
    std::string_view operator()(const FileKind&) const { return "file"; }
};

}  // namespace

std::optional<int> whole_from(std::string_view text) {
    return parse<int>(text);
}

std::optional<double> number_from(std::string_view text) {
    const auto value = parse<double>(text);
    return value && std::isfinite(*value) ? value : std::nullopt;
}

std::optional<std::vector<int>> wholes_from(std::string_view text) {
    std::vector<int> values;
    for (std::size_t start = 0; start <= text.size();) {
        const auto comma = std::min(text.find(',', start), text.size());
        const auto value = whole_from(trimmed(text.substr(start, comma - start)));
        if (!value) {
            return std::nullopt;
        }
        values.push_back(*value);
        start = comma + 1;
    }
    return values;
}

std::optional<bool> yes_no_from(std::string_view text) {
    if (text == "yes" || text == "no") {
        return text == "yes";
    }
    return std::nullopt;
}

std::optional<Finding> problem_with(const Parameter& parameter, const std::string& text) {
    const auto wrong = std::visit(Judge{parameter.key, text}, parameter.kind);
    if (wrong.empty()) {
        return std::nullopt;
    }
    return about_parameter(parameter.key, text, wrong, say("Give {}.", what_fits(parameter.kind)));
}

Sentence what_fits(const ParameterKind& kind) {
    return std::visit(Fitting{}, kind);
}

std::string_view kind_word(const ParameterKind& kind) {
    return std::visit(KindWord{}, kind);
}

std::string_view unit_of(const ParameterKind& kind) {
    return std::visit(
        [](const auto& one) -> std::string_view {
            if constexpr (requires { one.unit; }) {
                return one.unit;
            } else {
                return {};
            }
        },
        kind);
}

}  // namespace pipward::operation
