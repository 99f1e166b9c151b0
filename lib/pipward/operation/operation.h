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
struct YesNoKind {};
struct WholeKind {
    std::string unit;  ///< empty for a count
    std::optional<int> least;
    std::optional<int> most;
};
struct WholeListKind {  ///< "7,14,28"
    std::string unit;
    std::optional<int> least;
    std::optional<int> most;
};
struct NumberKind {
    std::string unit;
    std::optional<double> least;
    std::optional<double> most;
};
struct DayKind {
    bool today_if_absent =
        false;  ///< the host must fill in today where the user gave none: the library reads no clock
};
struct ChoiceKind {
    struct Option {
        std::string word;
        std::string meaning;
    };
    std::vector<Option> options;
};
struct TextKind {};
struct BookKind {};     ///< an orchard book to work on: a file path or "PG:..."
struct NewBookKind {};  ///< a path for a book that does not exist yet
struct FileKind {
    std::string pattern;  ///< "*.csv"
};
using ParameterKind = std::variant<YesNoKind, WholeKind, WholeListKind, NumberKind, DayKind, ChoiceKind,
                                   TextKind, BookKind, NewBookKind, FileKind>;

struct Parameter {
    std::string key;    ///< lower case with hyphens: "as-of"
    std::string label;  ///< for people: "As of"
    std::string help;   ///< one sentence, without the default: hosts print it from default_text
    ParameterKind kind;
    bool required = false;
    bool advanced = false;
    std::string default_text;  ///< read off the request's initialiser; empty where there is none
};

/// What a host does by itself, beside running what a user picks from the list. It asks for the role, never
/// for an operation by its name, and may fill in the keys that stand here.
enum class Role {
    dress_book,   ///< gives a book its looks before it is opened: book
    plan_season,  ///< makes the season's plan, as tables: book, as-of
    draw_line,    ///< draws the pedigree of an accession or of a tree's: book, who, as-of
};

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
    std::string words;
    std::map<std::string, std::string> values;
    std::string file{};
};

/// What the host lends to a run.
struct Run {
    std::function<void(double share, std::string_view step)> progress = [](double, std::string_view) {};
    std::function<bool()> cancelled = [] { return false; };
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
    std::string content;
};

/// A table that an operation returns, and what matters of it on a screen.
struct ResultShape : TableShape {
    TableView view{};
};

/// One line of an answer: "Today": "Gather balloon flowers of Wrenlea at UP-03-02."
struct AnswerLine {
    Sentence topic;  ///< one or two words
    Sentence words;  ///< of any length
};

struct Outcome {
    std::vector<Table> tables;
    std::vector<MadeFile> files;
    Findings findings;
    Sentence summary;   ///< one or two sentences: what came out
    std::string crs{};  ///< of the tables' points, AUTHORITY:CODE; empty where there are none
    /// What people ask first, before the tables; empty where the tables are short enough to say it.
    std::vector<AnswerLine> answer{};
};

/// Values by key, as text. Days ISO 8601, numbers with a point, yes/no, choice words.
using Form = std::map<std::string, std::string>;

class Operation {
  public:
    virtual ~Operation() = default;

    virtual const About& about() const = 0;
    virtual const std::vector<Parameter>& parameters() const = 0;
    virtual const std::vector<ResultShape>& results() const = 0;  ///< tables it returns
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
