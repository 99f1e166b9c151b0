// SPDX-License-Identifier: MIT
#include <map>

#include "pipward/book/detail/check_counts.h"

namespace pipward::book::detail {
namespace {

void check_fruit(const OrchardIndex& book, Day as_of, Findings& findings) {
    std::map<std::string, std::int64_t> fruits;
    for (const auto& fruit : book.orchard().fruits) {
        const auto row = fid_name(fruit.fid);
        check_not_future({"fruit", row, "harvested_on", to_iso(fruit.harvested_on)}, fruit.harvested_on,
                         as_of, findings);
        fruits[fruit.tag] += fruit.fruits;
        if (const auto* work = book.pollination(fruit.tag)) {
            check_order(
                {"fruit", row, "harvested_on", to_iso(fruit.harvested_on)}, work->pollinated_on,
                say("The day lies before the flowers were pollinated, {}.", to_iso(work->pollinated_on)),
                fruit.harvested_on, findings);
        }
    }
    for (const auto& [tag, count] : fruits) {
        if (const auto* work = book.pollination(tag); work != nullptr && count > work->flowers) {
            findings.push_back(
                warning({"fruit", tag, "fruits", std::to_string(count)},
                        say("More fruits were harvested than the {} flowers pollinated.", work->flowers),
                        say("Correct one of the two numbers.")));
        }
    }
}

void check_germination(const OrchardIndex& book, Day as_of, Findings& findings) {
    for (const auto& count : book.orchard().germination_counts) {
        const auto row = fid_name(count.fid);
        check_not_future({"germination_count", row, "counted_on", to_iso(count.counted_on)}, count.counted_on,
                         as_of, findings);
        if (const auto* lot = book.seed_lot(count.lot); lot != nullptr && count.germinated > lot->seeds) {
            findings.push_back(
                error({"germination_count", row, "germinated", std::to_string(count.germinated)},
                      say("More seeds germinated than the {} of lot {}.", lot->seeds, count.lot),
                      say("Correct one of the two numbers.")));
        }
    }
}

void check_out(const OrchardIndex& book, Findings& findings) {
    std::map<std::string, std::int64_t> out;
    for (const auto& row : book.orchard().seed_withdrawals) {
        out[row.lot] += row.seeds;
    }
    for (const auto& [code, count] : out) {
        if (const auto* lot = book.seed_lot(code); lot != nullptr && count > lot->seeds) {
            findings.push_back(error({"seed_withdrawal", code, "seeds", std::to_string(count)},
                                     say("More seeds were withdrawn than the {} of the lot.", lot->seeds),
                                     say("Correct one of the numbers.")));
        }
    }
}

void check_seed_lots(const Orchard& orchard, Findings& findings) {
    for (const auto& lot : orchard.seed_lots) {
        if (lot.stratified_from && lot.stratified_to) {
            check_order(
                {"seed_lot", lot.code, "stratified_to", to_iso(*lot.stratified_to)}, *lot.stratified_from,
                say("The date lies before the stratification began, {}.", to_iso(*lot.stratified_from)),
                *lot.stratified_to, findings);
        }
        if (lot.washed_on && lot.stratified_from) {
            check_order({"seed_lot", lot.code, "stratified_from", to_iso(*lot.stratified_from)},
                        *lot.washed_on,
                        say("The day lies before the seed was washed, {}.", to_iso(*lot.washed_on)),
                        *lot.stratified_from, findings);
        }
    }
}

}  // namespace

void check_seed(const OrchardIndex& book, Day as_of, Findings& findings) {
    check_fruit(book, as_of, findings);
    check_seed_lots(book.orchard(), findings);
    check_germination(book, as_of, findings);
    check_out(book, findings);
}

}  // namespace pipward::book::detail
