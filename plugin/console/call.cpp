// SPDX-License-Identifier: MIT
#include "console/call.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>
#include <utility>

#include "pipward/operation/declare/parameter_text.h"
#include "pipward/value/nearest.h"

namespace pipward::console {
namespace {

struct WishWord {
    std::string_view word;
    Wish wish;
};

constexpr std::array wish_words{WishWord{"--help", Wish::help},           WishWord{"-h", Wish::help},
                                WishWord{"--version", Wish::version},     WishWord{"--list", Wish::list},
                                WishWord{"--reference", Wish::reference}, WishWord{"--schema", Wish::schema},
                                WishWord{"--catalogue", Wish::catalogue}};

Finding usage(Sentence message, Sentence remedy) {
    return {Level::error, "", "", "", "", std::move(message), std::move(remedy)};
}

Sentence meant_or(const std::optional<std::string>& meant, const Sentence& otherwise) {
    return meant ? say("Did you mean {}?", *meant) : otherwise;
}

bool names_a_place(const operation::ParameterKind& kind) {
    return std::holds_alternative<operation::BookKind>(kind) ||
           std::holds_alternative<operation::NewBookKind>(kind) ||
           std::holds_alternative<operation::FileKind>(kind);
}

const operation::Operation& operation_named(const std::string& id) {
    if (const auto* found = operation::find_operation(id)) {
        return *found;
    }
    std::vector<std::string> ids;
    for (const auto& operation : operation::operations()) {
        ids.push_back(operation->about().id);
    }
    throw Error(Trouble::usage, usage(say("There is no operation '{}'.", id),
                                      meant_or(nearest(id, ids), say("pipward --list names them all."))));
}

/// Walks over the words of one operation's call and notes everything wrong.
class Reader {
  public:
    Reader(Call& call, std::vector<std::string> words) : call_(call), words_(std::move(words)) {}

    void read() {
        while (at_ < words_.size()) {
            const auto word = words_[at_++];
            if (word == "--help" || word == "-h") {
                call_.wish = Wish::operation_help;
            } else if (word.starts_with("--")) {
                read_option(word.substr(2));
            } else {
                read_positional(word);
            }
        }
    }

    Findings findings;

  private:
    void read_option(const std::string& text) {
        const auto equals = text.find('=');
        const auto key = text.substr(0, equals);
        std::optional<std::string> value;
        if (equals != std::string::npos) {
            value = text.substr(equals + 1);
        }
        if (!seen_.insert(key).second) {
            findings.push_back(usage(say("--{} is given twice.", key), say("Give it once.")));
        }
        if (!read_output_option(key, value)) {
            read_parameter(key, value);
        }
    }

    void read_parameter(const std::string& key, std::optional<std::string> value) {
        const auto& parameters = call_.operation->parameters();
        const auto found = std::ranges::find(parameters, key, &operation::Parameter::key);
        if (found == parameters.end()) {
            findings.push_back(unknown(key));
            skip_value();
        } else if (std::holds_alternative<operation::YesNoKind>(found->kind)) {
            call_.form[key] = value ? *value : yes_or_next();
        } else if (auto given = value ? value : next_value(key)) {
            call_.form[key] = *given;
        }
    }

    /// "--write" alone means yes; what follows it may be the book.
    std::string yes_or_next() {
        if (at_ == words_.size() || words_[at_].starts_with("--")) {
            return "yes";
        }
        const bool is_answer = operation::yes_no_from(words_[at_]) || !place_is_open();
        return is_answer ? words_[at_++] : "yes";
    }

    bool place_is_open() const {
        const auto* place = positional_of(*call_.operation);
        return place != nullptr && !call_.form.contains(place->key);
    }

    std::optional<std::string> next_value(const std::string& key) {
        if (at_ == words_.size() || words_[at_].starts_with("--")) {
            findings.push_back(usage(say("--{} needs a value.", key), say("Write --{} VALUE.", key)));
            return std::nullopt;
        }
        return words_[at_++];
    }

    /// What follows an unknown option is most likely its value, not another fault.
    void skip_value() {
        if (at_ < words_.size() && !words_[at_].starts_with("--")) {
            ++at_;
        }
    }

    bool read_output_option(const std::string& key, const std::optional<std::string>& value) {
        auto& output = call_.output;
        if (key == "quiet" || key == "wide") {
            (key == "quiet" ? output.quiet : output.wide) = true;
            return true;
        }
        if (key != "format" && key != "table" && key != "out" && key != "findings") {
            return false;
        }
        const auto given = value ? value : next_value(key);
        if (given && key == "format") {
            read_format(*given);
        } else if (given && key == "findings") {
            read_findings(*given);
        } else if (given) {
            (key == "table" ? output.table : output.out) = *given;
        }
        return true;
    }

    void read_format(const std::string& word) {
        static constexpr std::array formats{std::pair{"table", Format::table},
                                            std::pair{"json", Format::json}, std::pair{"csv", Format::csv}};
        const auto* const found =
            std::ranges::find(formats, word, [](const auto& entry) { return entry.first; });
        if (found == formats.end()) {
            findings.push_back(usage(say("There is no format '{}'.", word), say("Give table, json or csv.")));
        } else {
            call_.output.format = found->second;
        }
    }

    void read_findings(const std::string& word) {
        if (word != "all" && word != "grouped") {
            findings.push_back(
                usage(say("Findings cannot be shown as '{}'.", word), say("Give grouped or all.")));
        }
        call_.output.all_findings = word == "all";
    }

    void read_positional(const std::string& word) {
        if (!place_is_open()) {
            findings.push_back(
                usage(say("'{}' is one word too many.", word),
                      say("Everything but the book is given as --option value; put quotes around a "
                          "name with blanks.")));
        } else {
            call_.form[positional_of(*call_.operation)->key] = word;
        }
    }

    Finding unknown(const std::string& key) const {
        std::vector<std::string> keys{"format", "table", "wide", "findings", "out", "quiet", "help"};
        for (const auto& parameter : call_.operation->parameters()) {
            keys.push_back(parameter.key);
        }
        auto meant = nearest(key, keys);
        if (meant) {
            *meant = "--" + *meant;
        }
        const auto& id = call_.operation->about().id;
        return usage(say("{} has no option --{}.", id, key),
                     meant_or(meant, say("pipward {} --help names them all.", id)));
    }

    Call& call_;
    std::vector<std::string> words_;
    std::size_t at_ = 0;
    std::set<std::string> seen_;
};

void fill_in_today(Call& call, const std::string& today) {
    for (const auto& parameter : call.operation->parameters()) {
        const auto* day = std::get_if<operation::DayKind>(&parameter.kind);
        if (day != nullptr && day->today_if_absent) {
            call.form.try_emplace(parameter.key, today);
        }
    }
}

/// A table that the operation does not return, or several where one is needed.
void check_output(const Call& call, Findings& findings) {
    const auto& output = call.output;
    std::vector<std::string> names;
    for (const auto& shape : call.operation->results()) {
        names.push_back(shape.name);
    }
    if (!output.table.empty() && std::ranges::find(names, output.table) == names.end()) {
        findings.push_back(usage(say("{} returns no table '{}'.", call.operation->about().id, output.table),
                                 names.empty()
                                     ? say("It returns none.")
                                     : say("It returns: {}.", fmt::format("{}", fmt::join(names, ", ")))));
    }
    if (output.format == Format::csv && output.table.empty() && output.out.empty() && names.size() > 1) {
        findings.push_back(usage(say("One CSV cannot hold several tables."),
                                 say("Choose one with --table ({}), or give --out FOLDER for a file each.",
                                     fmt::format("{}", fmt::join(names, ", ")))));
    }
}

}  // namespace

const operation::Parameter* positional_of(const operation::Operation& operation) {
    const auto& parameters = operation.parameters();
    const auto found = std::ranges::find_if(parameters, [](const operation::Parameter& parameter) {
        return parameter.required && names_a_place(parameter.kind);
    });
    return found == parameters.end() ? nullptr : &*found;
}

Call read_call(const std::vector<std::string>& words, const std::string& today) {
    Call call;
    if (words.empty()) {
        throw Error(
            Trouble::usage,
            usage(say("No operation is given."),
                  say("Write pipward OPERATION BOOK [--option value ...]; pipward --help tells more.")));
    }
    const auto* const wish = std::ranges::find(wish_words, words.front(), &WishWord::word);
    if (wish != wish_words.end()) {
        call.wish = wish->wish;
        return call;
    }
    call.operation = &operation_named(words.front());
    Reader reader(call, {words.begin() + 1, words.end()});
    reader.read();
    if (call.wish == Wish::operation_help) {
        return call;
    }
    fill_in_today(call, today);
    auto findings = std::move(reader.findings);
    const auto more = call.operation->check(call.form);
    findings.insert(findings.end(), more.begin(), more.end());
    check_output(call, findings);
    if (!findings.empty()) {
        throw Error(Trouble::usage, std::move(findings));
    }
    return call;
}

}  // namespace pipward::console
