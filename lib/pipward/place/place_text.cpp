// SPDX-License-Identifier: MIT
#include "pipward/place/place_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <string>
#include <vector>

#include "pipward/value/plain_text.h"

namespace pipward::place {
namespace {

char capital(char c) {
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}

// Every sign for degrees, minutes and seconds made one of three, and colons blanks.
std::string with_plain_signs(std::string_view text) {
    struct Sign {
        std::string_view written;
        std::string_view plain;
    };
    static constexpr std::array<Sign, 11> signs{{{"\u00B0", "d"},
                                                 {"\u00BA", "d"},
                                                 {"\u2032", "'"},
                                                 {"\u2019", "'"},
                                                 {"\u00B4", "'"},
                                                 {"\u2033", "\""},
                                                 {"\u201D", "\""},
                                                 {"\u2212", "-"},
                                                 {"''", "\""},
                                                 {"\u00A0", " "},
                                                 {":", " "}}};
    std::string plain;
    while (!text.empty()) {
        const auto sign =
            std::ranges::find_if(signs, [&](const Sign& one) { return text.starts_with(one.written); });
        plain += sign == signs.end() ? text.substr(0, 1) : sign->plain;
        text.remove_prefix(sign == signs.end() ? 1 : sign->written.size());
    }
    return plain;
}

struct Letters {
    std::string_view word;
    char hemisphere;
};
constexpr std::array<Letters, 14> hemispheres{{{"NORTH", 'N'},
                                               {"NORD", 'N'},
                                               {"SOUTH", 'S'},
                                               {"S\u00DCD", 'S'},
                                               {"SUED", 'S'},
                                               {"EAST", 'E'},
                                               {"OST", 'E'},
                                               {"WEST", 'W'},
                                               {"LAT", 'N'},
                                               {"N", 'N'},
                                               {"S", 'S'},
                                               {"E", 'E'},
                                               {"O", 'E'},
                                               {"W", 'W'}}};

/// What a text of one angle says.
struct Parts {
    bool minus = false;
    char hemisphere = '\0';
    std::vector<double> numbers;
    std::string units;  // of each number: d, ' or ", a blank where none is written
};

class AngleReader {
  public:
    explicit AngleReader(std::string_view text) : text_(text) {}

    std::optional<Parts> parts() {
        while (!text_.empty()) {
            if (text_.front() == ' ' || text_.front() == '\t') {
                text_.remove_prefix(1);
            } else if (!take_sign() && !take_number() && !take_hemisphere()) {
                return std::nullopt;
            }
        }
        return parts_.numbers.empty() ? std::nullopt : std::optional{parts_};
    }

  private:
    bool take_sign() {
        const char c = text_.front();
        const bool takes = (c == '-' || c == '+') && parts_.numbers.empty() && !signed_;
        if (takes) {
            signed_ = true;
            parts_.minus = c == '-';
            text_.remove_prefix(1);
        }
        return takes;
    }

    bool take_number() {
        std::size_t size = 0;
        std::string number;
        while (size < text_.size() &&
               (is_digit(text_[size]) || ((text_[size] == '.' || text_[size] == ',') && size > 0))) {
            number += text_[size] == ',' ? '.' : text_[size];
            ++size;
        }
        const bool behind_letter = parts_.hemisphere != '\0' && !letter_first_;  // "1e5"
        double value = 0;
        const auto read = std::from_chars(number.data(), number.data() + number.size(), value);
        if (size == 0 || behind_letter || read.ec != std::errc{} ||
            read.ptr != number.data() + number.size()) {
            return false;
        }
        text_.remove_prefix(size);
        parts_.numbers.push_back(value);
        while (text_.starts_with(' ') && text_.size() > 1 && is_unit(text_[1])) {
            text_.remove_prefix(1);
        }
        const bool has_unit = !text_.empty() && is_unit(text_.front());
        parts_.units += has_unit ? text_.front() : ' ';
        text_.remove_prefix(has_unit ? 1 : 0);
        return true;
    }
    static bool is_unit(char c) { return c == 'd' || c == '\'' || c == '"'; }

    bool take_hemisphere() {
        std::string word;
        for (const char c : text_.substr(0, 6)) {
            word += capital(c);
        }
        const auto* found =
            std::ranges::find_if(hemispheres, [&](const Letters& one) { return word.starts_with(one.word); });
        if (found == hemispheres.end() || parts_.hemisphere != '\0') {
            return false;
        }
        parts_.hemisphere = found->hemisphere;
        letter_first_ = parts_.numbers.empty();
        text_.remove_prefix(found->word.size());
        return true;
    }

    std::string_view text_;
    Parts parts_;
    bool signed_ = false;
    bool letter_first_ = false;
};

// Degrees, minutes, seconds in this order; only the last may have decimals, those below degrees stay
// under 60.
bool is_angle(const Parts& parts) {
    constexpr std::string_view order = "d'\"";
    if (parts.numbers.size() > order.size() || (parts.minus && parts.hemisphere != '\0')) {
        return false;
    }
    for (std::size_t i = 0; i < parts.numbers.size(); ++i) {
        const bool last = i + 1 == parts.numbers.size();
        const bool whole = parts.numbers[i] == std::floor(parts.numbers[i]);
        const bool right_unit = parts.units[i] == ' ' || parts.units[i] == order[i];
        if (!right_unit || (!last && !whole) || (i > 0 && parts.numbers[i] >= 60)) {
            return false;
        }
    }
    return true;
}

std::optional<WrittenPlace> on_earth(double lat, double lon) {
    const bool is = std::isfinite(lat) && std::isfinite(lon) && std::abs(lat) <= 90 && std::abs(lon) <= 180;
    return is ? std::optional{WrittenPlace{{lon, lat}, {}}} : std::nullopt;
}

bool is_east_west(char hemisphere) {
    return hemisphere == 'E' || hemisphere == 'W';
}
bool is_north_south(char hemisphere) {
    return hemisphere == 'N' || hemisphere == 'S';
}

std::optional<WrittenPlace> place_of(std::string_view first, std::string_view second) {
    const auto one = parse_angle(first);
    const auto other = parse_angle(second);
    if (!one || !other || (one->hemisphere != '\0' && one->hemisphere == other->hemisphere)) {
        return std::nullopt;
    }
    const bool turned = is_east_west(one->hemisphere) || is_north_south(other->hemisphere);
    const bool at_odds = turned && (is_north_south(one->hemisphere) || is_east_west(other->hemisphere));
    return at_odds  ? std::nullopt
           : turned ? on_earth(other->degrees, one->degrees)
                    : on_earth(one->degrees, other->degrees);
}

// Every place where the text may part in two.
std::optional<WrittenPlace> two_angles(std::string_view text) {
    for (const char between : {';', ' ', ',', '/'}) {
        for (auto at = text.find(between); at != std::string_view::npos; at = text.find(between, at + 1)) {
            if (const auto place = place_of(text.substr(0, at), text.substr(at + 1))) {
                return place;
            }
        }
    }
    // "48°8'2.4\"N9°18'3.6\"E"
    for (std::size_t at = 1; at < text.size(); ++at) {
        const char letter = capital(text[at - 1]);
        if (is_north_south(letter) || is_east_west(letter) || letter == 'O') {
            if (const auto place = place_of(text.substr(0, at), text.substr(at))) {
                return place;
            }
        }
    }
    return std::nullopt;
}

std::optional<double> number_in(std::string_view text) {
    return parse_coordinate(text);
}

std::optional<WrittenPlace> geo_place(std::string_view text) {
    const auto end = text.find(';');
    auto coordinates = text.substr(0, end);
    const auto comma = coordinates.find(',');
    if (comma == std::string_view::npos) {
        return std::nullopt;
    }
    const auto lat = number_in(coordinates.substr(0, comma));
    coordinates.remove_prefix(comma + 1);
    const auto lon = number_in(coordinates.substr(0, coordinates.find_first_of(",?")));
    auto place = lat && lon ? on_earth(*lat, *lon) : std::nullopt;
    const auto accuracy = text.find(";u=");
    if (place && accuracy != std::string_view::npos) {
        const auto value = text.substr(accuracy + 3);
        const auto metres = number_in(value.substr(0, value.find(';')));
        place->accuracy = metres && *metres >= 0 ? std::optional{Metres{*metres}} : std::nullopt;
    }
    return place;
}

bool is_of_number(char c) {
    return is_digit(c) || c == '.' || c == '-';
}

// Two numbers with at least three decimals each: fewer would be a version or a zoom.
std::optional<WrittenPlace> place_in_link(std::string_view text) {
    constexpr std::size_t decimals = 3;
    const auto has_decimals = [](std::string_view number) {
        const auto point = number.find('.');
        return point != std::string_view::npos && number.size() - point > decimals;
    };
    for (std::size_t at = text.find_first_of(",/%"); at != std::string_view::npos;
         at = text.find_first_of(",/%", at + 1)) {
        auto first = at;
        while (first > 0 && is_of_number(text[first - 1])) {
            --first;
        }
        const auto next = text[at] == '%' ? at + 3 : at + 1;
        auto end = std::min(next, text.size());
        while (end < text.size() && is_of_number(text[end])) {
            ++end;
        }
        const auto lat = text.substr(first, at - first);
        const auto lon = text.substr(std::min(next, text.size()), end - std::min(next, text.size()));
        if (has_decimals(lat) && has_decimals(lon)) {
            const auto north = number_in(lat);
            const auto east = number_in(lon);
            if (const auto place = north && east ? on_earth(*north, *east) : std::nullopt) {
                return place;
            }
        }
    }
    return std::nullopt;
}

constexpr std::size_t longest_text = 400;

}  // namespace

std::optional<WrittenAngle> parse_angle(std::string_view text) {
    if (text.size() > longest_text) {
        return std::nullopt;
    }
    const auto plain = with_plain_signs(trimmed(text));
    const auto parts = AngleReader(plain).parts();
    if (!parts || !is_angle(*parts)) {
        return std::nullopt;
    }
    double degrees = 0;
    for (std::size_t i = parts->numbers.size(); i > 0; --i) {
        degrees = degrees / 60 + parts->numbers[i - 1];
    }
    const bool negative = parts->minus || parts->hemisphere == 'S' || parts->hemisphere == 'W';
    return WrittenAngle{negative ? -degrees : degrees, parts->hemisphere};
}

std::optional<WrittenPlace> parse_place(std::string_view text) {
    text = trimmed(text);
    if (text.size() > longest_text) {
        return std::nullopt;
    }
    std::string scheme;
    for (const char c : text.substr(0, 4)) {
        scheme += capital(c);
    }
    if (scheme == "GEO:") {
        return geo_place(text.substr(4));
    }
    return text.find("://") != std::string_view::npos ? place_in_link(text) : two_angles(text);
}

}  // namespace pipward::place
