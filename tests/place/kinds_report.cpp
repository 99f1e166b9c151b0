// SPDX-License-Identifier: MIT
// Kinds of orchards by what was told of them: right, wrong, left open, and how many were wrong of those that
// were as sure as that. The tables of docs/method.md.
//
//     kinds_report FIRST-SEED LAST-SEED [PART-OF-A-NAME [detail]]
#include <fmt/format.h>

#include <array>
#include <cstdlib>
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

struct Wanted {
    std::uint64_t first = 1;
    std::uint64_t last = 1;
    std::string name{};
    bool detail = false;
};

/// Trees that have a likeliest place, by how sure it is said to be.
struct Sureness {
    static constexpr std::array from{0.5, 0.8, 0.9, 0.97, 0.99, 0.997, 0.9997};
    std::array<int, from.size()> trees{};
    std::array<int, from.size()> wrong{};

    void add(double confidence, bool right) {
        for (std::size_t i = from.size(); i-- > 0;) {
            if (confidence >= from[i]) {
                ++trees[i];
                wrong[i] += right ? 0 : 1;
                return;
            }
        }
    }
};

bool is_right(const place::NumberedTree& got, const TrueTree& truth) {
    return truth.row >= 0 && got.row == truth.row && got.position == truth.position;
}

void print_detail(const MadeOrchard& orchard, const place::Recovery& got, const std::string& of) {
    const auto one = count_of(orchard, got.trees);
    fmt::print("  {}: {} {} {}; {:.1f} deg {:.2f} m {:.3f} m noise {:.2f} {:.2f} rows {}\n", of, one.right,
               one.wrong, one.open, got.bearing_deg, got.row_distance.value, got.spacing.value,
               got.noise_across.value, got.noise_along.value, got.rows);
    std::map<std::string, int> doubts;
    for (std::size_t i = 0; i < got.trees.size(); ++i) {
        const auto& tree = got.trees[i];
        const auto& truth = orchard.truth[i];
        if (!tree.doubt.empty()) {
            ++doubts[(truth.row < 0 ? "(none) " : "") + tree.doubt.text()];
        } else if (!is_right(tree, truth)) {
            ++doubts[truth.row < 0
                         ? std::string("WRONG interplant")
                         : fmt::format("WRONG row {} by {} {} at {:.4f}", truth.row, tree.row - truth.row,
                                       tree.position - truth.position, tree.confidence)];
        }
    }
    for (const auto& [text, count] : doubts) {
        fmt::print("      {} x {}\n", count, text);
    }
    for (const auto& finding : got.findings) {
        fmt::print("      {}\n", finding.message.text());
    }
}

struct Both {
    Count plain{};
    Count after{};  // one answer
};

class Report {
  public:
    explicit Report(Wanted wanted) : wanted_(std::move(wanted)) {}

    void add(const OrchardKind& kind) {
        Both of_kind;
        for (const auto& told : all_told()) {
            Both sum;
            std::string cells;
            for (const auto& noise : noises) {
                const auto part = numbered(kind, told, noise);
                const double n = part.plain.trees();
                cells +=
                    fmt::format(" {} {:.0f}/{}", noise.name, 100 * part.plain.right / n, part.plain.wrong);
                if (part.after.right != part.plain.right || part.after.wrong != part.plain.wrong) {
                    cells += fmt::format(" ?{:.0f}/{}", 100 * part.after.right / n, part.after.wrong);
                }
                sum.plain += part.plain;
                sum.after += part.after;
            }
            fmt::print("{:38} {:9} {:6} {:6} {:6} |{}\n", kind.name, told.name, sum.plain.right,
                       sum.plain.wrong, sum.plain.open, cells);
            of_kind.plain += sum.plain;
            of_kind.after += sum.after;
        }
        all_.plain += of_kind.plain;
        all_.after += of_kind.after;
    }

    void print() const {
        for (const auto* one : {&all_.plain, &all_.after}) {
            fmt::print("{}: {} right, {} wrong, {} open\n", one == &all_.plain ? "all" : "one answered",
                       one->right, one->wrong, one->open);
        }
        fmt::print("| told to be | trees | wrong | right |\n|---|---|---|---|\n");
        for (std::size_t i = 0; i < Sureness::from.size(); ++i) {
            const double share =
                sureness_.trees[i] == 0 ? 0 : 100.0 * sureness_.wrong[i] / sureness_.trees[i];
            fmt::print("| {} or more | {} | {} | {:.3f} % |\n", Sureness::from[i], sureness_.trees[i],
                       sureness_.wrong[i], 100 - share);
        }
    }

  private:
    Both numbered(const OrchardKind& kind, const Told& told, const Noise& noise) {
        Both sum;
        for (auto seed = wanted_.first; seed <= wanted_.last; ++seed) {
            // The first is the kind as it stands in the table.
            const auto own = seed == 1 ? kind : varied(kind, seed);
            const auto orchard = planted(own, {noise.model, noise.noise, seed});
            const auto got = place::recover_rows(orchard.seen, rule_of(own, told));
            sum.plain += count_of(orchard, got.trees);
            sum.after += count_of(orchard, answered(orchard, got));
            for (std::size_t i = 0; i < got.trees.size(); ++i) {
                if (got.trees[i].placed && orchard.truth[i].row >= 0) {
                    sureness_.add(got.trees[i].confidence, is_right(got.trees[i], orchard.truth[i]));
                }
            }
            if (wanted_.detail) {
                print_detail(orchard, got, fmt::format("{} {} seed {}", told.name, noise.name, seed));
            }
        }
        return sum;
    }

    Wanted wanted_;
    Both all_{};
    Sureness sureness_{};
};

int decided_in_woods() {
    int decided = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const auto orchard = wood(500, 0.9 * static_cast<double>(seed % 3), seed);
        for (const auto& told : all_told()) {
            const auto got = place::recover_rows(orchard.seen, rule_of(orchard_kinds()[0], told));
            decided += count_of(orchard, got.trees).wrong;
        }
    }
    return decided;
}

}  // namespace
}  // namespace pipward::testing

int main(int argc, char** argv) {
    using namespace pipward::testing;
    Wanted wanted;
    wanted.first = argc > 1 ? std::strtoull(argv[1], nullptr, 10) : 1;
    wanted.last = argc > 2 ? std::strtoull(argv[2], nullptr, 10) : wanted.first;
    wanted.name = argc > 3 ? argv[3] : "";
    wanted.detail = argc > 4;
    Report report(wanted);
    for (const auto& kind : orchard_kinds()) {
        if (kind.name.find(wanted.name) != std::string_view::npos) {
            report.add(kind);
        }
    }
    report.print();
    if (wanted.name.empty()) {
        fmt::print("woods: {} decided\n", decided_in_woods());
    }
    fmt::print("{:.1f} s\n", static_cast<double>(std::clock()) / CLOCKS_PER_SEC);
}
