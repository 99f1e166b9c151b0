// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// Accessions as multi-crop passport descriptors (FAO & Bioversity International, MCPD V2.1, 2015): what
/// genebanks exchange. Pure: needs no file.
namespace pipward::intake {

/// The names of the descriptors in the order of the standard.
std::span<const std::string_view> passport_descriptors();
/// The descriptor of that name, be it written with other capitals; empty where there is none.
std::string passport_descriptor(std::string_view name);

/// Values by descriptor; none is empty.
using Passport = std::map<std::string, std::string, std::less<>>;

/// Whether it is a code of FAO's list in its form: three capitals and three digits ("AAA999").
bool is_institute_code(std::string_view code);
/// A day as YYYYMMDD, month and day perhaps unknown: "197506--", "1975----".
bool is_passport_day(std::string_view text);
/// YYYYMMDD.
std::string passport_day(Day day);

/// The status of a sample by its code, in words; nothing for a code that the standard does not have.
std::optional<AccessionKind> kind_of_status(std::string_view code);
std::string status_of_kind(AccessionKind kind);  ///< empty for an unknown kind

/// "apple" and "pear", by genus; empty for any other.
std::string crop_of(const std::string& genus);

/// What the book knows of an accession, with what its note has kept of other descriptors. `earliest` is the
/// first planting of a tree of it, `stands` whether one is standing.
struct PassportFacts {
    std::string institute;           ///< INSTCODE of whose book it is; empty for none
    std::optional<Day> earliest;     ///< nothing where no planting is recorded
    bool stands = false;             ///< in the orchard, so that STORAGE is 20
    std::vector<BlendMember> blend;  ///< of its pollen parent
};
/// The same out of a book, as it stands on a day.
PassportFacts facts_of(const Accession& accession, const Orchard& orchard, const std::string& institute,
                       Day as_of);
/// What the book does not know has no descriptor.
Passport passport_of(const Accession& accession, const PassportFacts& facts);

/// An accession that a passport describes, as far as the book has places for it; what it has none for is
/// kept at the end of the note: "[ACQDATE=1975----; STORAGE=20]".
struct PassportReading {
    Accession accession;             ///< its name is ACCENAME, else the number; empty where there is neither
    std::vector<BlendMember> blend;  ///< of its pollen parent; empty where that is no blend
    std::vector<std::string> kept;   ///< descriptors that went to the note
    std::vector<Finding> wrong;      ///< what cannot be taken; the rest is still good
    std::string ancestry_left{};     ///< ANCEST where it is not two names or an original
};
/// What is wrong is told, not thrown.
PassportReading read_passport(const Passport& passport);

/// A note taken apart: the remark and what was kept of descriptors.
struct KeptRemark {
    std::string remark;  ///< without what was kept
    Passport kept;       ///< empty where nothing was
};
/// Takes apart what remark_with() put together.
KeptRemark kept_in(const std::string& whole_remark);
/// The remark, then what is kept in brackets.
std::string remark_with(const std::string& remark, const Passport& kept);

}  // namespace pipward::intake
