// SPDX-License-Identifier: MIT
// The host for terminals and scripts. It knows no operation by name.
#include <fmt/format.h>

#include <QCoreApplication>
#include <QDate>
#include <algorithm>
#include <clocale>
#include <exception>
#include <optional>
#include <string>
#include <vector>

#include "console/call.h"
#include "console/finding_lines.h"
#include "console/help.h"
#include "console/people.h"
#include "console/results.h"
#include "console/terminal.h"
#include "pipward/operation/outcome_json.h"
#include "pipward/operation/reference.h"
#include "pipward/record/reader_days.h"

namespace pipward::console {
namespace {

constexpr int exit_fault = 3;

int exit_code(Trouble trouble) {
    switch (trouble) {
        case Trouble::input:
            return 1;
        case Trouble::usage:
            return 2;
        case Trouble::access:
            return 3;
        case Trouble::cancelled:
            break;
    }
    return 130;
}

/// Wrong calls speak of options, which need no place in a table before them.
std::string told(const Finding& finding, Trouble trouble) {
    if (trouble != Trouble::usage) {
        return to_text(finding);
    }
    return fmt::format("error: {} {}", finding.message, finding.remedy);
}

void tell_findings(Findings findings, const Output& output) {
    if (output.quiet) {
        std::erase_if(findings, [](const Finding& finding) { return finding.level == Level::notice; });
    }
    for (const auto& line : finding_lines(findings, output.all_findings)) {
        tell(line);
    }
}

std::string refusal_summary(const Findings& findings) {
    const auto errors = std::ranges::count(findings, Level::error, &Finding::level);
    return errors == 1 ? "1 error prevents the result; nothing was written."
                       : fmt::format("{} errors prevent the result; nothing was written.", errors);
}

void tell_files(const std::vector<operation::MadeFile>& files, const Output& output) {
    for (const auto& file : files) {
        tell(output.out.empty()
                 ? fmt::format("{} was made but not kept: --out FOLDER says where to write it.", file.name)
                 : fmt::format("Wrote {}/{}", output.out, file.name));
    }
}

operation::Outcome outcome_of(const Call& call) {
    ProgressBar bar(!call.output.quiet);
    operation::Run lent;
    lent.progress = [&](double share, std::string_view step) { bar.show(share, step); };
    lent.cancelled = interrupted;
    lent.note = [&](std::string_view line) {
        bar.clear();
        if (!call.output.quiet) {
            tell(line);
        }
    };
    if (call.output.format == Format::table) {
        lent.wording = record::with_reader_days(in_english, year_spoken_of(call));
    }
    return call.operation->run(call.form, lent);
}

/// Scripts read JSON even where the book prevents a result: empty tables, and why.
void print_refusal(const Call& call, const Findings& findings) {
    if (call.output.format == Format::json) {
        print(printed(call, operation::refused_outcome(*call.operation, findings)));
    }
}

/// Nothing where the book prevents a result: then that has been told.
std::optional<operation::Outcome> run_or_refused(const Call& call) {
    try {
        return outcome_of(call);
    } catch (const Error& error) {
        if (error.trouble() != Trouble::input) {
            throw;
        }
        print_refusal(call, error.findings());
        tell_findings(error.findings(), call.output);
        tell(refusal_summary(error.findings()));
        return std::nullopt;
    }
}

void tell_what_is_left_out(const Call& call, const operation::Outcome& outcome) {
    if (const auto words = left_out(call, outcome); !words.empty()) {
        tell(words);
    }
}

int run(const Call& call) {
    prepare_folder(call.output);
    const auto outcome = run_or_refused(call);
    if (!outcome) {
        return exit_code(Trouble::input);
    }
    const auto files = files_to_keep(call, *outcome);
    if (!call.output.out.empty()) {
        keep(files, call.output.out);
    }
    print(printed(call, *outcome));
    if (!shows_findings(call, *outcome)) {
        tell_findings(outcome->findings, call.output);
    }
    if (!call.output.quiet) {
        tell_what_is_left_out(call, *outcome);
        tell_files(files, call.output);
        tell(outcome->summary.text());
    }
    return 0;
}

/// What is asked of the program itself.
std::string told_of_itself(const Call& call) {
    switch (call.wish) {
        case Wish::help:
            return overview();
        case Wish::operation_help:
            return operation_help(*call.operation);
        case Wish::version:
            return fmt::format("pipward {}\n", PIPWARD_VERSION);
        case Wish::list:
            return operation_list();
        case Wish::reference:
            return operation::operation_reference();
        case Wish::schema:
            return operation::book_reference();
        case Wish::catalogue:
            return operation::catalogue_json();
        case Wish::run:
            break;
    }
    return {};
}

int answer(const Call& call) {
    if (call.wish == Wish::run) {
        return run(call);
    }
    print(told_of_itself(call));
    return 0;
}

std::vector<std::string> given_words() {
    std::vector<std::string> words;
    for (const auto& word : QCoreApplication::arguments().mid(1)) {
        words.push_back(word.toStdString());
    }
    return words;
}

int guarded() {
    try {
        listen_for_interrupt();
        const auto today = QDate::currentDate().toString(Qt::ISODate).toStdString();
        return answer(read_call(given_words(), today));
    } catch (const Error& error) {
        for (const auto& finding : error.findings()) {
            tell(told(finding, error.trouble()));
        }
        return exit_code(error.trouble());
    } catch (const std::exception& fault) {
        tell(fmt::format("error: The program met a fault of its own: {}. Please report it.", fault.what()));
        return exit_fault;
    }
}

}  // namespace
}  // namespace pipward::console

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    // Qt takes the user's locale; numbers are written with a point everywhere.
    std::setlocale(LC_ALL, "C");
    return pipward::console::guarded();
}
