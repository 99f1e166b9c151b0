// SPDX-License-Identifier: MIT
// find_report [SIZE [OF_EACH [all]]]: how often a search text that was written down wrongly finds its tree
// first, and among three: the table of docs/method.md. SIZE small (5,000 trees) or large (a million).
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <string_view>

#include "pipward/place/tree_index.h"
#include "place/made_queries.h"

namespace pipward::testing {
namespace {

struct Tally {
    int asked = 0;
    int first = 0;
    int among_three = 0;
    double longest = 0;  // ms

    Tally& operator+=(const Tally& other) {
        asked += other.asked;
        first += other.first;
        among_three += other.among_three;
        longest = std::max(longest, other.longest);
        return *this;
    }
};

Tally asked(const place::TreeIndex& index, const MadeQuery& query, bool show) {
    const auto start = std::chrono::steady_clock::now();
    const auto found = index.find(query.text, 3);
    const double took =
        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
    const auto meant = [&](const place::FoundTree& one) { return query.meant.contains(one.tree); };
    const bool first = !found.empty() && meant(found.front());
    if (!first && show) {
        fmt::print("  {}: \"{}\" for {}:", query.kind, query.text,
                   query.meant.empty() ? "nobody" : index.orchard().trees[*query.meant.begin()].label);
        for (const auto& one : found) {
            fmt::print(" {} ({:.3f} {});", index.orchard().trees[one.tree].label, one.score,
                       to_text(one.match).text());
        }
        fmt::print("\n");
    }
    return {1, first ? 1 : 0, std::ranges::any_of(found, meant) ? 1 : 0, took};
}

void show_line(const std::string& kind, const Tally& tally) {
    fmt::print("| {} | {} | {:.1f} % | {:.1f} % | {:.1f} |\n", kind, tally.asked,
               100.0 * tally.first / tally.asked, 100.0 * tally.among_three / tally.asked, tally.longest);
}

void report(const LargeForm& form, int of_each, bool show) {
    auto orchard = large_orchard(form);
    QueryMaker maker(orchard, 20260320);
    const auto queries = maker.all(of_each);
    const place::TreeIndex index(orchard);
    fmt::print(
        "{} trees, {} accessions\n\n| kind | texts | first | among three | ms at most "
        "|\n|---|---|---|---|---|\n",
        orchard.trees.size(), orchard.accessions.size());
    Tally all;
    for (auto at = queries.begin(); at != queries.end();) {
        const auto kind = at->kind;
        Tally of_kind;
        for (; at != queries.end() && at->kind == kind; ++at) {
            of_kind += asked(index, *at, show);
        }
        show_line(kind, of_kind);
        all += of_kind;
    }
    show_line("all", all);
    int silent = 0;
    for (const auto& text : QueryMaker::nonsense()) {
        const auto found = index.find(text, 3);
        silent += found.empty() ? 1 : 0;
        if (!found.empty() && show) {
            fmt::print("  nonsense \"{}\": {} {:.3f} {}\n", text, index.orchard().trees[found[0].tree].label,
                       found[0].score, to_text(found[0].match).text());
        }
    }
    fmt::print("\nNonsense that finds nothing: {} of {}.\n", silent, QueryMaker::nonsense().size());
}

}  // namespace
}  // namespace pipward::testing

int main(int count, char** words) {
    using pipward::testing::LargeForm;
    const bool large = count > 1 && std::string_view(words[1]) == "large";
    const int of_each = count > 2 ? std::atoi(words[2]) : 20;
    pipward::testing::report(large ? LargeForm{20, 200, 250, 300, 200} : LargeForm{}, of_each, count > 3);
}
