// SPDX-License-Identifier: MIT
#include <map>

#include "pipward/book/detail/check_counts.h"

namespace pipward::book::detail {
namespace {

void check_fruit(const OrchardIndex& book, Day as_of, Findings& findings) {
    std::map<std::string, std::int64_t> fruits;
    for (const auto& fruit : book.orchard().fruits) {
        const auto row = fid_name(fruit.fid);
        check_not_future({"fruit", row, "picked_on", to_iso(fruit.picked_on)}, fruit.picked_on, as_of,
                         findings);
        fruits[fruit.tag] += fruit.fruits;
        if (const auto* work = book.pollination(fruit.tag)) {
            check_order({"fruit", row, "picked_on", to_iso(fruit.picked_on)}, work->worked_on,
                        say("The day lies before the flowers were pollinated, {}.", to_iso(work->worked_on)),
                        fruit.picked_on, findings);
        }
    }
    for (const auto& [tag, count] : fruits) {
        if (const auto* work = book.pollination(tag); work != nullptr && count > work->flowers) {
            findings.push_back(
                warning({"fruit", tag, "fruits", std::to_string(count)},
                        say("More fruits were picked than the {} flowers worked.", work->flowers),
                        say("Correct one of the two numbers.")));
        }
    }
}

void check_sprouts(const OrchardIndex& book, Day as_of, Findings& findings) {
    for (const auto& count : book.orchard().sprout_counts) {
        const auto row = fid_name(count.fid);
        check_not_future({"sprout_count", row, "counted_on", to_iso(count.counted_on)}, count.counted_on,
                         as_of, findings);
        if (const auto* lot = book.seed_lot(count.lot); lot != nullptr && count.sprouted > lot->seeds) {
            findings.push_back(error({"sprout_count", row, "sprouted", std::to_string(count.sprouted)},
                                     say("More seeds sprouted than the {} of lot {}.", lot->seeds, count.lot),
                                     say("Correct one of the two numbers.")));
        }
    }
}

void check_out(const OrchardIndex& book, Findings& findings) {
    std::map<std::string, std::int64_t> out;
    for (const auto& row : book.orchard().seeds_out) {
        out[row.lot] += row.seeds;
    }
    for (const auto& [code, count] : out) {
        if (const auto* lot = book.seed_lot(code); lot != nullptr && count > lot->seeds) {
            findings.push_back(error({"seed_out", code, "seeds", std::to_string(count)},
                                     say("More seeds left the lot than the {} that it had.", lot->seeds),
                                     say("Correct one of the numbers.")));
        }
    }
}

void check_seed_lots(const Orchard& orchard, Findings& findings) {
    for (const auto& lot : orchard.seed_lots) {
        if (lot.cold_from && lot.cold_to) {
            check_order({"seed_lot", lot.code, "cold_to", to_iso(*lot.cold_to)}, *lot.cold_from,
                        say("The day lies before the seed went into the cold, {}.", to_iso(*lot.cold_from)),
                        *lot.cold_to, findings);
        }
        if (lot.washed_on && lot.cold_from) {
            check_order({"seed_lot", lot.code, "cold_from", to_iso(*lot.cold_from)}, *lot.washed_on,
                        say("The day lies before the seed was washed, {}.", to_iso(*lot.washed_on)),
                        *lot.cold_from, findings);
        }
    }
}

}  // namespace

void check_seed(const OrchardIndex& book, Day as_of, Findings& findings) {
    check_fruit(book, as_of, findings);
    check_seed_lots(book.orchard(), findings);
    check_sprouts(book, as_of, findings);
    check_out(book, findings);
}

}  // namespace pipward::book::detail
