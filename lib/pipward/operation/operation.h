// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "pipward/record/table.h"
#include "pipward/record/table_view.h"
#include "pipward/value/finding.h"

/// What the tool can do, as every host sees it: described, filled in as text, run. No templates, no host, no
/// printing.
namespace pipward::operation {

// The closed set of parameter kinds. A host visits the variant whole: a new kind breaks its build until it is
// handled.
/// "yes" or "no".
struct YesNoKind {};
/// A whole number, both bounds included.
struct WholeKind {
    std::string unit;          ///< empty for a count
    std::optional<int> least;  ///< nothing: no bound
    std::optional<int> most;   ///< nothing: no bound
};
/// Whole numbers, "7,14,28"; bounds included.
struct WholeListKind {
    std::string unit;          ///< empty for counts
    std::optional<int> least;  ///< of each; nothing: no bound
    std::optional<int> most;   ///< of each; nothing: no bound
};
/// A finite number, both bounds included.
struct NumberKind {
    std::string unit;             ///< empty for none; "share" for 0 to 1
    std::optional<double> least;  ///< nothing: no bound
    std::optional<double> most;   ///< nothing: no bound
};
/// A day as YYYY-MM-DD.
struct DayKind {
    bool today_if_absent =
        false;  ///< the host must fill in today where the user gave none: the library reads no clock
};
/// One word of a closed list.
struct ChoiceKind {
    /// What may be chosen.
    struct Option {
        std::string word;     ///< as it is typed, in every language
        std::string meaning;  ///< for people, in English
    };
    std::vector<Option> options;  ///< in the order offered
};
/// Any text.
struct TextKind {};
struct BookKind {};     ///< an orchard book to work on: a file path or "PG:..."
struct NewBookKind {};  ///< a path for a book that does not exist yet
/// A file to read; its content is the operation's to judge.
struct FileKind {
    std::string pattern;  ///< "*.csv"
};
/// What a value may be.
using ParameterKind = std::variant<YesNoKind, WholeKind, WholeListKind, NumberKind, DayKind, ChoiceKind,
                                   TextKind, BookKind, NewBookKind, FileKind>;

/// One value that an operation asks for.
struct Parameter {
    std::string key;           ///< lower case with hyphens: "as-of"
    std::string label;         ///< for people: "As of"
    std::string help;          ///< one sentence, without the default: hosts print it from default_text
    ParameterKind kind;        ///< what a value may be
    bool required = false;     ///< check() complains where it is not given
    bool advanced = false;     ///< hosts may keep it out of the way
    std::string default_text;  ///< read off the request's initialiser; empty where there is none

    /// Made, copied and dropped out of line, as Outcome: it would cost every file that declares an operation
    /// dear.
    Parameter();
    Parameter(const Parameter& other);
    Parameter(Parameter&& other) noexcept;
    Parameter& operator=(const Parameter& other);
    Parameter& operator=(Parameter&& other) noexcept;
    ~Parameter();
    /// Neither required nor advanced, and without a default.
    Parameter(std::string_view key, std::string_view label, std::string_view help, ParameterKind kind);
};

/// What a host does by itself, beside running what a user picks from the list. It asks for the role, never
/// for an operation by its name, and may fill in the keys that stand here.
enum class Role {
    style_book,     ///< gives a book its looks before it is opened: book
    plan_season,    ///< makes the season's plan, as tables: book, as-of, keep
    draw_pedigree,  ///< draws the pedigree of an accession or of a tree's: book, accessions, as-of
};

/// What an operation is, for people in English.
struct About {
    std::string id;              ///< "season-plan"
    std::string title;           ///< "Season plan"
    std::string group;           ///< "Season"
    std::string help;            ///< one paragraph
    std::optional<Role> role{};  ///< of most, none; each role is played by one operation
};

/// A worked call, run by the tests: values by key; "BOOK" stands for a copy of the sample, "NEW" for a path
/// where nothing is yet, "FILE" for the file whose text is `file`.
struct Example {
    std::string words;                          ///< what it shows
    std::map<std::string, std::string> values;  ///< as in a Form
    std::string file{};                         ///< empty where no value is "FILE"
};

/// What the host lends to a run.
struct Run {
    /// Hears the share done, 0 to 1, and what is being done.
    std::function<void(double share, std::string_view step)> progress = [](double, std::string_view) {};
    std::function<bool()> cancelled = [] { return false; };  ///< asked now and then, by the thread that runs
    /// Hears what is worth saying while it goes on.
    std::function<void(std::string_view line)> note = [](std::string_view) {};
    /// The language of what comes out: of the tables, those kept in a book too, findings and summary.
    Wording wording = in_english;

    /// Tells progress and throws Error (cancelled) when the user has stopped the work.
    void step(double share, const Sentence& what) const;
};

/// A file made by an operation, for the host to put where the user wants it.
struct MadeFile {
    std::string name;        ///< "season-sheet.html"
    std::string media_type;  ///< "text/html"
    std::string content;     ///< its bytes
};

/// A table that an operation returns, and what matters of it on a screen.
struct ResultShape : TableShape {
    TableView view{};  ///< empty: all of it
};

/// One line of an answer: "Today": "Gather balloon flowers of Wrenlea at UP-03-02."
struct AnswerLine {
    Sentence topic;  ///< one or two words
    Sentence words;  ///< of any length
};

/// What came of a run.
struct Outcome {
    std::vector<Table> tables;    ///< of the shapes in results(), each at most once
    std::vector<MadeFile> files;  ///< may be none
    Findings findings;            ///< of the book and of the run
    Sentence summary;             ///< one or two sentences: what came out
    std::string crs{};            ///< of the tables' points, AUTHORITY:CODE; empty where there are none
    /// What people ask first, before the tables; empty where the tables are short enough to say it.
    std::vector<AnswerLine> answer{};

    /// Made, copied and dropped out of line, as Parameter.
    Outcome();
    Outcome(const Outcome& other);
    Outcome(Outcome&& other) noexcept;
    Outcome& operator=(const Outcome& other);
    Outcome& operator=(Outcome&& other) noexcept;
    ~Outcome();
    explicit Outcome(Sentence all_that_came_out);
};

/// Values by key, as text. Days ISO 8601, numbers with a point, yes/no, choice words.
using Form = std::map<std::string, std::string>;

/// One thing that the tool can do. Has no state: run() may be called as often as wanted.
class Operation {
  public:
    virtual ~Operation() = default;

    /// Name and help.
    virtual const About& about() const = 0;
    /// In the order of forms; keys differ.
    virtual const std::vector<Parameter>& parameters() const = 0;
    virtual const std::vector<ResultShape>& results() const = 0;  ///< tables it returns
    /// At least one.
    virtual const std::vector<Example>& examples() const = 0;
    /// Everything wrong with the form, each naming the parameter, the value and what would be right.
    virtual Findings check(const Form& form) const = 0;
    /// Throws Error; usage where check() would have complained.
    virtual Outcome run(const Form& form, const Run& run) const = 0;
};

/// Every operation, in the order of the breeder's year. The one list.
std::span<const std::unique_ptr<const Operation>> operations();
/// Null where there is none of that id.
const Operation* find_operation(std::string_view id);
/// The one that plays the role.
const Operation& operation_for(Role role);

}  // namespace pipward::operation
