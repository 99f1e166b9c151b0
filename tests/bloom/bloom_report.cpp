// SPDX-License-Identifier: MIT
// Prints how well bloom is foretold forward in time: the figures of the method notes. Not a test: built with
// the tests, run by hand.
#include <fmt/core.h>

#include <string>

#include "klein_altendorf.h"
#include "pipward/bloom/forward.h"

namespace pipward::testing {
namespace {

constexpr Day long_ago_over{1000000};

std::string name_of(const bloom::ForwardScore& score) {
    return score.accession.empty() ? "all" : score.accession;
}

void print(const std::vector<bloom::ForwardScore>& scores, bool accessions) {
    fmt::print("{:16} {:18} {:>5} {:>6} {:>4} {:>6} {:>6} {:>6} {:>6} {:>7} {:>7}\n", "method", "of", "stage",
               "issued", "n", "rmse", "mae", "bias", "crps", "inside", "length");
    for (const auto& score : scores) {
        if (score.of_species || score.accession.empty() || accessions) {
            fmt::print(
                "{:16} {:18} {:5} {:02}-{:02}  {:4} {:6.2f} {:6.2f} {:6.2f} {:6.2f} {:6.0f}% {:7.2f}\n",
                bloom::to_text(score.method), name_of(score), score.stage.code, score.issued.month,
                score.issued.day, score.n, score.rmse, score.mae, score.bias, score.crps,
                100 * score.inside_80, score.length_bias.value_or(0));
        }
    }
}

int report(bool accessions, bool rivals) {
    const auto read = read_klein_altendorf();
    if (!read) {
        fmt::print("The shared files bloom/klein-altendorf-*.csv are not here.\n");
        return 3;
    }
    bloom::ForwardRequest request{{{2, 15}, {3, 1}, {3, 15}, {4, 1}, {4, 15}}, 1990, {}};
    if (!rivals) {
        request.methods = {bloom::BloomMethod::averaged};
    }
    const bloom::ForwardGround ground{read->orchard, read->station, klein_altendorf_latitude, long_ago_over,
                                      read->seasons};
    print(bloom::forward_scores(bloom::forward_cases(ground, request)), accessions);
    return 0;
}

}  // namespace
}  // namespace pipward::testing

int main(int count, char** words) {
    bool accessions = false;
    bool rivals = false;
    for (int i = 1; i < count; ++i) {
        accessions = accessions || std::string(words[i]) == "accessions";
        rivals = rivals || std::string(words[i]) == "rivals";
    }
    return pipward::testing::report(accessions, rivals);
}
