// SPDX-License-Identifier: MIT
// No two lines of a plan disagree: held over random orchards, every few days of the season.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <random>
#include <set>

#include "cross/made_orchard.h"
#include "cross/plan_agreement.h"

namespace pipward::cross {
namespace {

using testing::day;
using testing::MadeOrchard;

/// Any number of accessions, vials, blends and goals, by a generator with a fixed start.
class RandomOrchard {
  public:
    explicit RandomOrchard(unsigned start) : draw_(start) {}

    MadeOrchard made(const std::string& as_of) {
        MadeOrchard orchard(as_of);
        orchard.season_sd = real(0.5, 4);
        orchard.own_sd = real(0.5, 3);
        for (int i = 0; i < 8; ++i) {
            orchard.accession({name(i), real(100, 145), alleles(), {}, whole(1, 5)});
        }
        orchard.blend("Mix", name(whole(0, 3)), 0.4).blend("Mix", name(whole(4, 7)), 0.6);
        for (int i = 0; i < 10; ++i) {
            const auto donor = whole(0, 8) == 0 ? std::string("Mix") : name(whole(0, 7));
            orchard.goal("C" + std::to_string(i), name(whole(0, 7)), donor, whole(0, 5) == 0 ? 2027 : 2026,
                         whole(1, 3));
            orchard.orchard.goals.back().seedlings_wanted = whole(1, 300);
        }
        for (int i = 0; i < 8; ++i) {
            add_lot(orchard, "P" + std::to_string(i));
        }
        return orchard;
    }

  private:
    int whole(int from, int to) { return std::uniform_int_distribution<int>(from, to)(draw_); }
    double real(double from, double to) { return std::uniform_real_distribution<double>(from, to)(draw_); }
    static std::string name(int i) { return "A" + std::to_string(i); }
    std::string alleles() { return "S" + std::to_string(whole(1, 4)) + " S" + std::to_string(whole(5, 8)); }

    void add_lot(MadeOrchard& orchard, const std::string& code) {
        const Day on = day("2025-04-01") + whole(0, 400);
        const auto store = static_cast<Store>(whole(0, 3));
        const auto donor = whole(0, 9) == 0 ? std::string("Mix") : name(whole(0, 7));
        orchard.lot(code, donor, to_iso(on), store,
                    whole(0, 6) == 0 ? std::optional<int>{} : std::optional{whole(1, 120)});
        if (whole(0, 1) == 1) {
            orchard.test(code, to_iso(on + whole(0, 200)), 200, whole(20, 180));
        }
    }

    std::mt19937 draw_;
};

TEST(OneDecision, NoTwoLinesOfAPlanDisagree) {
    for (unsigned start = 1; start <= 25; ++start) {
        for (int offset = 60; offset < 180; offset += 9) {
            auto made = RandomOrchard(start).made("2026-03-01");
            made.forecast.as_of = day("2025-12-01") + offset;
            const auto plan = made.plan();
            for (const auto& line : testing::disagreements(plan, made.orchard)) {
                ADD_FAILURE() << "orchard " << start << ", " << to_iso(plan.as_of) << ": " << line;
            }
        }
    }
}

}  // namespace
}  // namespace pipward::cross
