// SPDX-License-Identifier: MIT
#include "pipward/place/detail/misreading.h"

#include <algorithm>
#include <array>
#include <limits>

#include "pipward/place/detail/likeness.h"

namespace pipward::place::detail {
namespace {

constexpr std::array<std::string_view, 6> shapes{"0o", "1il", "2z", "5s", "6g", "8b"};

constexpr std::array<std::string_view, 256> shape_table() {
    std::array<std::string_view, 256> table{};
    for (const auto shape : shapes) {
        for (const char c : shape) {
            table[static_cast<unsigned char>(c)] = shape;
        }
    }
    return table;
}
constexpr auto shape_of = shape_table();

// Groups of characters that sound or look somewhat alike, and neighbours on a keyboard.
constexpr std::array<std::string_view, 22> sounds{"ck", "cs", "sz", "fv", "vw", "uv", "iy", "jy",
                                                  "dt", "bp", "gk", "mn", "ea", "kq", "17", "38",
                                                  "56", "49", "9g", "hn", "71", "0q"};
constexpr std::array<std::string_view, 7> keys{"1234567890", "qwertyuiop", "asdfghjkl", "zxcvbnm",
                                               "qwertz",     "yxcvbnm",    "aeiou"};

constexpr float like_shape = 0.2F;
constexpr float like_sound = 0.5F;
constexpr float swap = 0.45F;
constexpr float doubled_letter = 0.4F;
constexpr float silent = 0.7F;
constexpr float near_key = 0.8F;
constexpr float any = 1.0F;

bool has_both(std::string_view group, char a, char b) {
    return group.find(a) != std::string_view::npos && group.find(b) != std::string_view::npos;
}

bool are_neighbours(char a, char b) {
    return std::ranges::any_of(keys, [&](std::string_view row) {
        const auto at = row.find(a);
        const auto other = row.find(b);
        return at != std::string_view::npos && other != std::string_view::npos &&
               (at > other ? at - other : other - at) == 1;
    });
}

float exchange_of(char a, char b) {
    if (a == b) {
        return 0;
    }
    if (!shape_of[static_cast<unsigned char>(a)].empty() && look_of(a) == look_of(b)) {
        return like_shape;
    }
    if (std::ranges::any_of(sounds, [&](std::string_view group) { return has_both(group, a, b); })) {
        return like_sound;
    }
    return are_neighbours(a, b) ? near_key : any;
}

// A character that one of the texts has and the other lacks, with the one before it.
float odd_one(char c, char before) {
    const bool digit = c >= '0' && c <= '9';
    return c == before ? (digit ? silent : doubled_letter) : c == 'h' || c == 'e' ? silent : any;
}

// Two characters that are read or heard as one.
struct Fusion {
    std::string_view two;
    char one;
    float cost;
};
constexpr std::array<Fusion, 8> fusions{{{"rn", 'm', 0.3F},
                                         {"vv", 'w', 0.3F},
                                         {"cl", 'd', 0.4F},
                                         {"ph", 'f', 0.4F},
                                         {"ae", 'a', 0.2F},
                                         {"oe", 'o', 0.2F},
                                         {"ue", 'u', 0.2F},
                                         {"ck", 'k', 0.4F}}};

struct Cost {
    float cost = 0;
    int letters = 0;

    Cost plus(float more, int differing) const { return {cost + more, letters + differing}; }
    bool operator<(const Cost& other) const {
        return cost != other.cost ? cost < other.cost : letters < other.letters;
    }
};

/// The table of Damerau's distance with costs, no letter touched twice, row by row of the search text, of
/// which the last three are kept.
class Costs {
  public:
    Costs(std::string_view query, std::string_view name, bool whole)
        : query_(query), name_(name), whole_(whole) {}

    Misreading least() {
        for (std::size_t j = 0; j <= name_.size(); ++j) {
            at(0, j) =
                j == 0 || !whole_ ? Cost{} : at(0, j - 1).plus(odd_one(name_[j - 1], before(name_, j)), 1);
        }
        for (std::size_t i = 1; i <= query_.size(); ++i) {
            at(i, 0) = at(i - 1, 0).plus(odd_one(query_[i - 1], before(query_, i)), 1);
            for (std::size_t j = 1; j <= name_.size(); ++j) {
                at(i, j) = best(i, j);
            }
        }
        Cost least = at(query_.size(), name_.size());
        for (std::size_t j = 0; j <= name_.size() && !whole_; ++j) {
            least = std::min(least, at(query_.size(), j));
        }
        return {least.cost, least.letters};
    }

  private:
    static constexpr std::size_t side = Likeness::longest + 1;

    Cost& at(std::size_t i, std::size_t j) { return cells_[i % 3 * side + j]; }
    static char before(std::string_view text, std::size_t i) { return i > 1 ? text[i - 2] : '\0'; }

    Cost best(std::size_t i, std::size_t j) {
        const char a = query_[i - 1];
        const char b = name_[j - 1];
        Cost least = at(i - 1, j - 1).plus(exchange_of(a, b), a == b ? 0 : 1);
        least = std::min(least, at(i - 1, j).plus(odd_one(a, before(query_, i)), 1));
        least = std::min(least, at(i, j - 1).plus(odd_one(b, before(name_, j)), 1));
        if (i > 1 && j > 1 && a == name_[j - 2] && query_[i - 2] == b && a != b) {
            least = std::min(least, at(i - 2, j - 2).plus(swap, 1));
        }
        for (const auto& fusion : fusions) {
            if (j > 1 && a == fusion.one && name_.substr(j - 2, 2) == fusion.two) {
                least = std::min(least, at(i - 1, j - 2).plus(fusion.cost, 1));
            }
            if (i > 1 && b == fusion.one && query_.substr(i - 2, 2) == fusion.two) {
                least = std::min(least, at(i - 2, j - 1).plus(fusion.cost, 1));
            }
        }
        return least;
    }

    std::string_view query_;
    std::string_view name_;
    bool whole_;
    std::array<Cost, 3 * side> cells_;
};

Misreading misread(std::string_view query, std::string_view name, bool whole) {
    return Costs(query.substr(0, Likeness::longest), name.substr(0, Likeness::longest), whole).least();
}

}  // namespace

std::string_view looks_like(char c) {
    return shape_of[static_cast<unsigned char>(c)];
}

char look_of(char c) {
    const auto shape = looks_like(c);
    return shape.empty() ? c : shape.front();
}

Misreading misread_part(std::string_view query, std::string_view name) {
    return misread(query, name, false);
}

Misreading misread_whole(std::string_view query, std::string_view name) {
    return misread(query, name, true);
}

}  // namespace pipward::place::detail
