// SPDX-License-Identifier: MIT
// Kinds of orchards by what was told of them: right, silently wrong, left open, and how sure the wrong ones
// were.
#include <fmt/format.h>

#include <ctime>
#include <map>
#include <string>

#include "place/orchard_kinds.h"

namespace pipward::testing {
namespace {

struct Noise {
    NoiseModel model;
    double noise;
    const char* name;
};
constexpr Noise noises[]{{NoiseModel::white, 0.05, "w.05"},   {NoiseModel::white, 0.125, "w.125"},
                         {NoiseModel::white, 0.18, "w.18"},   {NoiseModel::white, 0.25, "w.25"},
                         {NoiseModel::drift, 0.25, "d.25"},   {NoiseModel::drift, 0.375, "d.375"},
                         {NoiseModel::heavy, 0.125, "h.125"}, {NoiseModel::heavy, 0.25, "h.25"}};

struct Count {
    int right = 0;
    int wrong = 0;
    int open = 0;
};

Count count_of(const MadeOrchard& orchard, const place::Recovery& got) {
    Count count;
    for (std::size_t i = 0; i < orchard.truth.size(); ++i) {
        const auto& truth = orchard.truth[i];
        const auto& told = got.trees[i];
        if (!told.doubt.empty()) {
            count.open += truth.row >= 0 ? 1 : 0;
        } else if (truth.row >= 0 && told.row == truth.row && told.position == truth.position) {
            ++count.right;
        } else {
            ++count.wrong;
        }
    }
    return count;
}

/// The answer that somebody who knows the orchard would give: it numbers most trees right.
const place::RowAnswer& true_answer(const MadeOrchard& orchard, const place::RowQuestion& question) {
    const auto right = [&](const place::RowAnswer& answer) {
        return count_of(orchard, {.trees = answer.trees}).right;
    };
    return right(question.answers[0]) >= right(question.answers[1]) ? question.answers[0]
                                                                    : question.answers[1];
}

}  // namespace
}  // namespace pipward::testing

int main(int argc, char** argv) {
    using namespace pipward::testing;
    const int seeds = argc > 1 ? std::atoi(argv[1]) : 1;
    const std::string only = argc > 2 ? argv[2] : "";
    const bool detail = argc > 3;
    Count all{};
    for (const auto& kind : orchard_kinds()) {
        if (!only.empty() && kind.name.find(only) == std::string_view::npos) {
            continue;
        }
        for (const auto& told : all_told()) {
            Count sum;
            Count answered;
            std::string cells;
            for (const auto& noise : noises) {
                Count part;
                int after_part = 0;
                int after_wrong = 0;
                for (int seed = 1; seed <= seeds; ++seed) {
                    const auto orchard =
                        planted(kind, {noise.model, noise.noise, static_cast<std::uint64_t>(seed)});
                    const auto got = pipward::place::recover_rows(orchard.seen, rule_of(kind, told));
                    const auto one = count_of(orchard, got);
                    const auto after =
                        got.question ? count_of(orchard, {.trees = true_answer(orchard, *got.question).trees})
                                     : one;
                    answered.right += after.right;
                    answered.wrong += after.wrong;
                    after_part += after.right;
                    after_wrong += after.wrong;
                    part.right += one.right;
                    part.wrong += one.wrong;
                    part.open += one.open;
                    if (detail) {
                        fmt::print(
                            "  {} {} seed {}: {} {} {}; {:.1f} deg {:.2f} m {:.3f} m noise {:.2f} {:.2f} "
                            "rows {}\n",
                            told.name, noise.name, seed, one.right, one.wrong, one.open, got.bearing_deg,
                            got.row_distance.value, got.spacing.value, got.noise_across.value,
                            got.noise_along.value, got.rows);
                        std::map<std::string, int> doubts;
                        for (std::size_t i = 0; i < got.trees.size(); ++i) {
                            const auto& t = got.trees[i];
                            const auto& truth = orchard.truth[i];
                            if (!t.doubt.empty()) {
                                ++doubts[(truth.row < 0 ? "(none) " : "") + t.doubt.text()];
                            } else if (t.row != truth.row || t.position != truth.position) {
                                ++doubts[truth.row < 0
                                             ? std::string("WRONG interplant")
                                             : fmt::format("WRONG row {} by {} {}", truth.row,
                                                           t.row - truth.row, t.position - truth.position)];
                            }
                        }
                        for (const auto& [text, count] : doubts) {
                            fmt::print("      {} x {}\n", count, text);
                        }
                        for (const auto& f : got.findings) {
                            fmt::print("      {}\n", f.message.text());
                        }
                    }
                }
                sum.right += part.right;
                sum.wrong += part.wrong;
                sum.open += part.open;
                const double n = part.right + part.wrong + part.open;
                cells += fmt::format(" {} {:.0f}/{}", noise.name, 100 * part.right / n, part.wrong);
                if (after_part != part.right || after_wrong != part.wrong) {
                    cells += fmt::format(" ?{:.0f}/{}", 100 * after_part / n, after_wrong);
                }
            }
            fmt::print("{:38} {:9} {:6} {:6} {:6} |{}\n", kind.name, told.name, sum.right, sum.wrong,
                       sum.open, cells);
            all.right += sum.right;
            all.wrong += sum.wrong;
            all.open += sum.open;
        }
    }
    int wooded = 0;
    for (std::uint64_t seed = 1; (only.empty() || only == "wood") && seed <= 20; ++seed) {
        for (const auto& told : all_told()) {
            const auto orchard = wood(500, 0.9 * static_cast<double>(seed % 3), seed);
            const auto got = count_of(
                orchard, pipward::place::recover_rows(orchard.seen, rule_of(orchard_kinds()[0], told)));
            wooded += got.wrong;
        }
    }
    fmt::print("all: {} right, {} wrong, {} open; woods {} decided; {:.1f} s\n", all.right, all.wrong,
               all.open, wooded, static_cast<double>(std::clock()) / CLOCKS_PER_SEC);
}
