// SPDX-License-Identifier: MIT
// From a passport to an accession.
#include <algorithm>
#include <array>

#include "pipward/intake/cells.h"
#include "pipward/intake/detail/own_remarks.h"
#include "pipward/intake/detail/plain_number.h"
#include "pipward/intake/passport.h"
#include "pipward/lineage/cross_notation.h"

namespace pipward::intake {
namespace {

constexpr std::array<std::string_view, 5> words_for_unknown{"unknown", "unk", "?", "-", "open pollinated"};
constexpr std::array<std::string_view, 4> words_for_sport{"sport of ", "mutant of ", "mutation of ",
                                                          "clone of "};

Finding odd(const std::string& name, const std::string& value, Sentence message, Sentence remedy) {
    return {Level::warning, "", "", name, value, std::move(message), std::move(remedy)};
}

// Takes one "NAME:value" of the book's own off the remarks; false where there is none.
class OwnRemarks {
  public:
    explicit OwnRemarks(PassportReading& reading) : reading_(reading) {}

    std::string_view take(std::string_view remarks) {
        while (true) {
            const auto end = remarks.find(';');
            const auto colon = remarks.find(':');
            if (end == remarks.npos || colon > end ||
                !understood(remarks.substr(0, colon), remarks.substr(colon + 1, end - colon - 1))) {
                return remarks;
            }
            remarks.remove_prefix(end + 1);
        }
    }

  private:
    bool understood(std::string_view name, std::string_view value) {
        if (name == "BLEND") {
            add_member(value);
            return true;
        }
        return detail::fill_remark(reading_.accession, name, value);
    }

    void add_member(std::string_view text) {
        BlendMember member;
        const auto space = text.rfind(' ');
        const auto share = space == text.npos ? std::nullopt : detail::plain_number(text.substr(space + 1));
        member.member = std::string(share ? text.substr(0, space) : text);
        if (share) {
            member.share = Share{*share};
        }
        reading_.blend.push_back(std::move(member));
    }

    PassportReading& reading_;
};

std::optional<std::string> parent_named(const lineage::CrossTree& leaf) {
    const bool is_unknown =
        std::ranges::find(words_for_unknown, lower_case(leaf.name)) != words_for_unknown.end();
    return is_unknown ? std::nullopt : std::optional{leaf.name};
}

bool read_parents(std::string_view text, Accession& accession) {
    const auto read = lineage::read_cross(text);
    const bool are_names = read.trouble.empty() && read.tree.parents.size() == 2 &&
                           read.tree.parents[0].parents.empty() && read.tree.parents[1].parents.empty();
    if (are_names) {
        accession.seed_parent = parent_named(read.tree.parents[0]);
        accession.pollen_parent = parent_named(read.tree.parents[1]);
    }
    return are_names;
}

bool read_ancestry(std::string_view text, Accession& accession) {
    for (const auto words : words_for_sport) {
        if (lower_case(text).starts_with(words)) {
            const auto end = std::min(text.find(';'), text.size());
            accession.sport_of = std::string(trimmed(text.substr(words.size(), end - words.size())));
            return end == text.size() || read_parents(text.substr(end + 1), accession);
        }
    }
    return read_parents(text, accession);
}

class Reading {
  public:
    explicit Reading(const Passport& passport) : rest_(passport) {
        take_names();
        take_species();
        take_status();
        if (const auto ancestry = take("ANCEST"); !ancestry.empty() && !read_ancestry(ancestry, accession_)) {
            reading.ancestry_left = ancestry;
            rest_["ANCEST"] = ancestry;
        }
        const auto remarks = take("REMARKS");
        const auto remark = OwnRemarks(reading).take(remarks);
        check_rest();
        for (auto& member : reading.blend) {
            member.name = accession_.pollen_parent.value_or("");
        }
        for (const auto& [name, value] : rest_) {
            reading.kept.push_back(name);
        }
        const auto whole_remark = remark_with(std::string(remark), rest_);
        accession_.remark = whole_remark.empty() ? std::nullopt : std::optional{whole_remark};
    }

    PassportReading reading{};

  private:
    std::string take(std::string_view name) {
        const auto found = rest_.find(name);
        if (found == rest_.end()) {
            return {};
        }
        auto value = std::move(found->second);
        rest_.erase(found);
        return value;
    }

    // The name on the tag is ACCENAME; a plant without one is called by its number.
    void take_names() {
        const auto name = take("ACCENAME");
        const auto number = take("ACCENUMB");
        accession_.name = name.empty() ? number : name;
        if (!name.empty() && !number.empty() && number != name) {
            rest_["ACCENUMB"] = number;
        }
    }

    void take_species() {
        const auto genus = take("GENUS");
        const auto species = take("SPECIES");
        if (!genus.empty()) {
            accession_.species = genus + (species.empty() ? "" : " " + species);
        } else if (!species.empty()) {
            rest_["SPECIES"] = species;
        }
        if (const auto crop = take("CROPNAME"); !crop.empty() && lower_case(crop) != crop_of(genus)) {
            rest_["CROPNAME"] = crop;
        }
    }

    void take_status() {
        const auto code = take("SAMPSTAT");
        const auto kind = kind_of_status(code);
        accession_.kind = kind.value_or(AccessionKind::unknown);
        if (!code.empty() && code != status_of_kind(accession_.kind)) {
            rest_["SAMPSTAT"] = code;
        }
        if (!code.empty() && !kind) {
            reading.wrong.push_back(odd("SAMPSTAT", code, say("The standard has no status of this code."),
                                        say("Its kind becomes unknown; correct it in the book.")));
        }
    }

    void check_rest() {
        for (const auto* name : {"ACQDATE", "COLLDATE"}) {
            const auto found = rest_.find(name);
            if (found != rest_.end() && !is_passport_day(found->second)) {
                reading.wrong.push_back(
                    odd(name, found->second, say("This is no day as YYYYMMDD."),
                        say("Write 19750612, or 197506-- and 1975---- where day or month are not known.")));
            }
        }
        for (const auto* name : {"INSTCODE", "DONORCODE", "BREDCODE", "COLLCODE"}) {
            const auto found = rest_.find(name);
            if (found != rest_.end() && !is_institute_code(found->second)) {
                reading.wrong.push_back(odd(name, found->second,
                                            say("This is no code of an institute, as in AAA999."),
                                            say("It is kept as it stands.")));
            }
        }
    }

    Passport rest_;
    Accession& accession_ = reading.accession;
};

}  // namespace

PassportReading read_passport(const Passport& passport) {
    return Reading(passport).reading;
}

}  // namespace pipward::intake
