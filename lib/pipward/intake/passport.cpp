// SPDX-License-Identifier: MIT
#include "pipward/intake/passport.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>

namespace pipward::intake {
namespace {

constexpr std::array<std::string_view, 41> descriptors{
    "PUID",       "INSTCODE",    "ACCENUMB",     "COLLNUMB",   "COLLCODE",    "COLLNAME",   "COLLINSTADDRESS",
    "COLLMISSID", "GENUS",       "SPECIES",      "SPAUTHOR",   "SUBTAXA",     "SUBTAUTHOR", "CROPNAME",
    "ACCENAME",   "ACQDATE",     "ORIGCTY",      "COLLSITE",   "DECLATITUDE", "LATITUDE",   "DECLONGITUDE",
    "LONGITUDE",  "COORDUNCERT", "COORDDATUM",   "GEOREFMETH", "ELEVATION",   "COLLDATE",   "BREDCODE",
    "BREDNAME",   "SAMPSTAT",    "ANCEST",       "COLLSRC",    "DONORCODE",   "DONORNAME",  "DONORNUMB",
    "OTHERNUMB",  "DUPLSITE",    "DUPLINSTNAME", "STORAGE",    "MLSSTAT",     "REMARKS"};

struct Status {
    std::string_view code;
    AccessionKind kind;
    bool is_written = false;  // for accessions of that kind
};

// Codes of SAMPSTAT; what has no kind of the book's is "unknown" and its code is kept.
constexpr std::array<Status, 21> statuses{
    {{"100", AccessionKind::species, true},  {"110", AccessionKind::species},
     {"120", AccessionKind::species},        {"130", AccessionKind::species},
     {"200", AccessionKind::unknown},        {"300", AccessionKind::cultivar},
     {"400", AccessionKind::unknown},        {"410", AccessionKind::selection},
     {"411", AccessionKind::unknown},        {"412", AccessionKind::unknown},
     {"413", AccessionKind::unknown},        {"414", AccessionKind::unknown},
     {"415", AccessionKind::seedling, true}, {"416", AccessionKind::selection, true},
     {"420", AccessionKind::unknown},        {"421", AccessionKind::unknown},
     {"422", AccessionKind::unknown},        {"423", AccessionKind::unknown},
     {"500", AccessionKind::cultivar, true}, {"600", AccessionKind::unknown},
     {"999", AccessionKind::unknown}}};

bool are_digits(std::string_view text) {
    return std::ranges::all_of(text, [](unsigned char c) { return std::isdigit(c) != 0; });
}

bool is_part_of_day(std::string_view part, int most) {
    return part == "--" || (are_digits(part) && part >= "01" && part <= fmt::format("{:02}", most));
}

// Where "; NAME=" begins, NAME a descriptor, at or behind `from`.
std::size_t next_kept(std::string_view text, std::size_t from) {
    for (auto at = text.find("; ", from); at != text.npos; at = text.find("; ", at + 1)) {
        const auto equals = text.find('=', at);
        const auto name = text.substr(at + 2, equals == text.npos ? 0 : equals - at - 2);
        if (std::ranges::find(descriptors, name) != descriptors.end()) {
            return at;
        }
    }
    return text.size();
}

}  // namespace

std::span<const std::string_view> passport_descriptors() {
    return descriptors;
}

std::string passport_descriptor(std::string_view name) {
    std::string upper;
    for (const char letter : name) {
        upper += static_cast<char>(std::toupper(static_cast<unsigned char>(letter)));
    }
    return std::ranges::find(descriptors, upper) == descriptors.end() ? std::string{} : upper;
}

bool is_institute_code(std::string_view code) {
    const auto is_capital = [](char c) { return c >= 'A' && c <= 'Z'; };
    return code.size() == 6 && std::ranges::all_of(code.substr(0, 3), is_capital) &&
           are_digits(code.substr(3));
}

bool is_passport_day(std::string_view text) {
    if (text.size() != 8 || !are_digits(text.substr(0, 4)) || !is_part_of_day(text.substr(4, 2), 12) ||
        !is_part_of_day(text.substr(6, 2), 31)) {
        return false;
    }
    if (text.find('-') != text.npos) {
        return text.substr(4, 2) != "--" || text.substr(6, 2) == "--";
    }
    const auto iso = fmt::format("{}-{}-{}", text.substr(0, 4), text.substr(4, 2), text.substr(6, 2));
    return parse_iso_day(iso).has_value();
}

std::string passport_day(Day day) {
    const auto parts = parts_of(day);
    return fmt::format("{:04}{:02}{:02}", parts.year, parts.month, parts.day);
}

std::optional<AccessionKind> kind_of_status(std::string_view code) {
    const auto* const found = std::ranges::find(statuses, code, &Status::code);
    return found == statuses.end() || code.empty() ? std::nullopt : std::optional{found->kind};
}

std::string status_of_kind(AccessionKind kind) {
    for (const auto& status : statuses) {
        if (status.is_written && status.kind == kind) {
            return std::string(status.code);
        }
    }
    return {};
}

KeptRemark kept_in(const std::string& whole_remark) {
    const auto open = whole_remark.rfind('[');
    if (open == whole_remark.npos || !whole_remark.ends_with(']')) {
        return {whole_remark, {}};
    }
    const std::string text = "; " + whole_remark.substr(open + 1, whole_remark.size() - open - 2);
    if (next_kept(text, 0) != 0) {
        return {whole_remark, {}};
    }
    KeptRemark read{whole_remark.substr(0, open), {}};
    while (read.remark.ends_with(' ')) {
        read.remark.pop_back();
    }
    for (std::size_t at = 0; at < text.size();) {
        const auto end = next_kept(text, at + 1);
        const auto equals = text.find('=', at);
        read.kept.emplace(text.substr(at + 2, equals - at - 2), text.substr(equals + 1, end - equals - 1));
        at = end;
    }
    return read;
}

std::string remark_with(const std::string& remark, const Passport& kept) {
    std::string list;
    for (const auto name : descriptors) {
        if (const auto value = kept.find(name); value != kept.end()) {
            list += fmt::format("{}{}={}", list.empty() ? "" : "; ", name, value->second);
        }
    }
    // The list is found again by its opening bracket, the last one of the note.
    std::ranges::replace(list, '[', '(');
    return list.empty() ? remark : fmt::format("{}{}[{}]", remark, remark.empty() ? "" : " ", list);
}

}  // namespace pipward::intake
