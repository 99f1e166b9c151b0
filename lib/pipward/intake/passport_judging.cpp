// SPDX-License-Identifier: MIT
#include "pipward/intake/passport_judging.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "pipward/book/records.h"
#include "pipward/intake/remark.h"
#include "pipward/lineage/pedigree_graph.h"
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
        for (const auto* descriptor : {"SAMPSTAT", "SPECIES", "ANCEST"}) {
            for (const auto& column : book::table_of_records<Accession>().columns) {
                const auto theirs = told_by(column, passport.reading.accession);
                const auto ours = told_by(column, known);
                if (column.passport == descriptor && !theirs.empty() && theirs != ours) {
                    tell_difference(passport, descriptor, theirs, ours.empty() ? "-" : ours);
                }
            }
        }
    }

    // Empty for what is not known.
    static std::string told_by(const book::BookColumn& column, const Accession& accession) {
        auto text = to_text(column.field.show(&accession));
        const bool is_unknown =
            column.role == book::ColumnRole::choice && text == to_word(AccessionKind::unknown);
        return is_unknown ? std::string{} : text;
    }

    void tell_difference(JudgedPassport& passport, const std::string& descriptor, const std::string& theirs,
                         const std::string& ours) {
        passport.remarks.push_back(say("{}: {} in the file, {} in the book", descriptor, theirs, ours));
        tell(passport, {Level::notice, descriptor, theirs,
                        say("The book has {} with another value: {}.", passport.reading.accession.name, ours),
                        say("Nothing is overwritten; change it in the book if the file is right.")});
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
                        say("Neither the book nor the file has this parent of {}: it stays unknown.",
                            passport.reading.accession.name),
                        say("Add a line for it to the file, or the parent to the book first.")});
        parent.reset();
        keep(passport, "ANCEST", ancestry);
    }

    static void keep(JudgedPassport& passport, const std::string& field, const std::string& value) {
        auto& reading = passport.reading;
        auto whole_remark = kept_in(reading.accession.remark.value_or(""));
        whole_remark.kept[field] = value;
        reading.accession.remark = remark_with(whole_remark.remark, whole_remark.kept);
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
        passport.remarks.push_back(say("in its remark: {}", list));
        tell(passport, {Level::notice, "", "",
                        say("The book has no column for {}: it is kept in the remark of {}.", list,
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
            (void)lineage::pedigree_graph(accessions, blends);
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
        change.added.push_back(book::rows_to_append(accessions));
    }
    if (!judgement.blends.empty()) {
        change.added.push_back(book::rows_to_append(judgement.blends));
    }
    return change;
}

}  // namespace pipward::intake
