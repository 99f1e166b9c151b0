// SPDX-License-Identifier: MIT
#include "pipward/intake/passport_judging.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "pipward/book/records.h"
#include "pipward/lineage/line_graph.h"
#include "pipward/record/words.h"
#include "pipward/value/complaint.h"

namespace pipward::intake {
namespace {

class Judging {
  public:
    Judging(const PassportFile& file, const std::string& name, const Orchard& orchard)
        : name_(name), orchard_(orchard) {
        for (const auto& accession : orchard.accessions) {
            known_.emplace(accession.name, &accession);
        }
        for (const auto& member : orchard.blend_members) {
            blends_.insert(member.name);
        }
        for (const auto& line : file.lines) {
            judged.passports.push_back({line.line, read_passport(line.passport), PassportFate::added, {}});
            names_.insert(judged.passports.back().reading.accession.name);
        }
        judged.findings = file.findings;
        for (auto& passport : judged.passports) {
            judge(passport);
        }
        look_for_circles();
    }

    PassportJudgement judged;

  private:
    void tell(const JudgedPassport& passport, Remark remark) {
        judged.findings.push_back(finding_about(name_, say("line {}", passport.line), std::move(remark)));
    }

    void judge(JudgedPassport& passport) {
        auto& accession = passport.reading.accession;
        for (const auto& wrong : passport.reading.wrong) {
            tell(passport, {wrong.level, wrong.field, wrong.value, wrong.message, wrong.remedy});
        }
        if (!seen_.insert(accession.name).second) {
            passport.fate = PassportFate::left_out;
            tell(passport, {Level::error, "ACCENAME", accession.name,
                            say("Two lines have this name; it must be one accession's alone."),
                            say("Make the names different, with the number behind perhaps.")});
            return;
        }
        if (const auto known = known_.find(accession.name); known != known_.end()) {
            passport.fate = PassportFate::known;
            compare(passport, *known->second);
            return;
        }
        judge_parents(passport);
        tell_kept(passport);
    }

    void compare(JudgedPassport& passport, const Accession& known) {
        const auto& read = passport.reading.accession;
        const auto compare_one = [&](const std::string& field, const std::optional<std::string>& theirs,
                                     const std::optional<std::string>& ours) {
            if (theirs && theirs != ours) {
                passport.remarks.push_back(
                    say("{}: {} in the file, {} in the book", field, *theirs, ours ? *ours : "-"));
                tell(passport,
                     {Level::note, field, *theirs,
                      say("The book has {} with another value: {}.", known.name, ours ? *ours : "-"),
                      say("Nothing is overwritten; change it in the book if the file is right.")});
            }
        };
        const auto kind = [](AccessionKind k) {
            return k == AccessionKind::unknown ? std::nullopt : std::optional{std::string(to_word(k))};
        };
        compare_one("SAMPSTAT", kind(read.kind), kind(known.kind));
        compare_one("SPECIES", read.species, known.species);
        compare_one("ANCEST", read.seed_parent, known.seed_parent);
        compare_one("ANCEST", read.pollen_parent, known.pollen_parent);
        compare_one("ANCEST", read.sport_of, known.sport_of);
    }

    bool is_accession(const std::string& name) const {
        return known_.contains(name) || names_.contains(name);
    }

    // A blend that the remarks tell of and of which every member is known.
    bool takes_blend(const JudgedPassport& passport, const std::string& name) {
        const auto& blend = passport.reading.blend;
        const bool is_told = !blend.empty() && std::ranges::all_of(blend, [&](const BlendMember& member) {
            return is_accession(member.member);
        });
        if (is_told && blends_.insert(name).second) {
            judged.blends.insert(judged.blends.end(), blend.begin(), blend.end());
        }
        return is_told;
    }

    void leave_open(JudgedPassport& passport, std::optional<std::string>& parent,
                    const std::string& ancestry) {
        passport.remarks.push_back(say("{} is not known", *parent));
        tell(passport, {Level::warning, "ANCEST", *parent,
                        say("Neither the book nor the file has this parent of {}: it is left open.",
                            passport.reading.accession.name),
                        say("Add a line for it to the file, or the parent to the book first.")});
        parent.reset();
        keep(passport, "ANCEST", ancestry);
    }

    static void keep(JudgedPassport& passport, const std::string& field, const std::string& value) {
        auto& reading = passport.reading;
        auto note = kept_in(reading.accession.note.value_or(""));
        note.kept[field] = value;
        reading.accession.note = note_with(note.remark, note.kept);
        if (std::ranges::find(reading.kept, field) == reading.kept.end()) {
            reading.kept.push_back(field);
        }
    }

    void judge_parents(JudgedPassport& passport) {
        auto& accession = passport.reading.accession;
        if (!passport.reading.ancestry_left.empty()) {
            passport.remarks.push_back(say("its ancestry is not two names"));
            tell(passport, {Level::warning, "ANCEST", passport.reading.ancestry_left,
                            say("The parents cannot be seen from this: they are left open."),
                            say("Write it as A/B or A x B, with a line of its own for each parent.")});
        }
        const auto ancestry = passport_of(accession, {})["ANCEST"];
        for (auto* parent : {&accession.seed_parent, &accession.sport_of}) {
            if (*parent && !is_accession(**parent)) {
                leave_open(passport, *parent, ancestry);
            }
        }
        auto& pollen = accession.pollen_parent;
        if (pollen && !is_accession(*pollen) && !blends_.contains(*pollen) &&
            !takes_blend(passport, *pollen)) {
            leave_open(passport, pollen, ancestry);
        }
    }

    void tell_kept(JudgedPassport& passport) {
        const auto& kept = passport.reading.kept;
        if (kept.empty()) {
            return;
        }
        std::vector<Sentence> names;
        for (const auto& name : kept) {
            names.push_back(verbatim(name));
        }
        const auto list = joined(names, verbatim(", "));
        passport.remarks.push_back(say("in its note: {}", list));
        tell(passport, {Level::note, "", "",
                        say("The book has no place for {}: it is kept in the note of {}.", list,
                            passport.reading.accession.name),
                        Sentence{}});
    }

    void look_for_circles() {
        auto accessions = orchard_.accessions;
        auto blends = orchard_.blend_members;
        for (const auto& passport : judged.passports) {
            if (passport.fate == PassportFate::added) {
                accessions.push_back(passport.reading.accession);
            }
        }
        blends.insert(blends.end(), judged.blends.begin(), judged.blends.end());
        try {
            (void)lineage::line_graph(accessions, blends);
        } catch (const Error& error) {
            const auto& found = error.findings();
            judged.findings.insert(judged.findings.end(), found.begin(), found.end());
        }
    }

    const std::string& name_;
    const Orchard& orchard_;
    std::map<std::string, const Accession*> known_;
    std::set<std::string> blends_;
    std::set<std::string> names_;
    std::set<std::string> seen_;
};

/// Rows for a table of the book, of those columns that some record fills: an older book may lack the others.
template <class Record>
Table rows_of_records(const std::vector<Record>& records) {
    const auto& table = book::table_of_records<Record>();
    std::vector<book::BookRow> rows;
    std::ranges::transform(records, std::back_inserter(rows), book::row_of<Record>);
    Table result;
    result.shape.name = table.name;
    result.rows.resize(rows.size());
    for (std::size_t column = 0; column < table.columns.size(); ++column) {
        const bool is_empty = std::ranges::all_of(rows, [&](const book::BookRow& row) {
            return std::holds_alternative<std::monostate>(row.cells[column]);
        });
        if (!is_empty) {
            result.shape.columns.push_back(
                {std::string(table.columns[column].name), table.columns[column].type, "", "", ""});
            for (std::size_t i = 0; i < rows.size(); ++i) {
                result.rows[i].cells.push_back(rows[i].cells[column]);
            }
        }
    }
    return result;
}

}  // namespace

std::span<const Word<PassportFate>> words(PassportFate) {
    static constexpr std::array<Word<PassportFate>, 3> all{
        {{PassportFate::added, "added", "added"},
         {PassportFate::known, "known", "in the book already"},
         {PassportFate::left_out, "left_out", "left out"}}};
    return all;
}

PassportJudgement judge_passports(const PassportFile& file, const std::string& name, const Orchard& orchard) {
    return Judging(file, name, orchard).judged;
}

book::BookChange change_of(const PassportJudgement& judgement) {
    std::vector<Accession> accessions;
    for (const auto& passport : judgement.passports) {
        if (passport.fate == PassportFate::added) {
            accessions.push_back(passport.reading.accession);
        }
    }
    book::BookChange change;
    if (!accessions.empty()) {
        change.added.push_back(rows_of_records(accessions));
    }
    if (!judgement.blends.empty()) {
        change.added.push_back(rows_of_records(judgement.blends));
    }
    return change;
}

}  // namespace pipward::intake
