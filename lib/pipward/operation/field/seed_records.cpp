// SPDX-License-Identifier: MIT
// What is recorded from harvest to the scores of seedlings.
#include "pipward/operation/field/detail/record_form.h"

namespace pipward::operation::detail {

std::vector<RecordForm> seed_records() {
    using enum intake::RecordKind;
    return {
        {harvest,
         {"record-harvest", "Record harvest", "Records",
          "Records the fruit harvested from a tagged branch and, once it is cut, the seed in it. It "
          "is checked against the book first: fruit comes after its pollination, is no more than "
          "the flowers pollinated, and its seed must have had time to ripen."},
         {{"A few late fruits of a branch pollinated last spring.",
           {{"book", "BOOK"}, {"tag", "25-03-b"}, {"fruits", "2"}, {"as-of", "2025-10-05"}}}}},
        {seed_lot,
         {"record-seed-lot", "Record seed lot", "Records",
          "Records a lot of seed of one cross that is treated alike, on the day of its washing. It is "
          "checked against the book first: its tags must belong to its cross, and it has no more seed than "
          "their fruit."},
         {{"Forty seeds washed and stratified the same day.",
           {{"book", "BOOK"},
            {"code", "S-25-04"},
            {"cross", "25-03"},
            {"seeds", "40"},
            {"from-tags", "25-03-b"},
            {"stratified-from", "2025-10-10"},
            {"stratification-c", "3"},
            {"medium", "moist sand"},
            {"as-of", "2025-10-10"}}}}},
        {stratification,
         {"record-stratification", "Record stratification", "Records",
          "Completes the row of a seed lot: the first day of stratification, its temperature and medium, "
          "later its last day. Only empty cells are filled, and record-undo empties them again."},
         {{"The treatment of a lot, recorded later.",
           {{"book", "BOOK"},
            {"code", "S-25-03"},
            {"stratified-from", "2025-12-02"},
            {"treatment", "water, 24 h"},
            {"as-of", "2026-03-20"}}}}},
        {germination,
         {"record-germination", "Record germination", "Records",
          "Records how many seeds of a lot have germinated so far, those withdrawn included. It is "
          "checked against the book first: the count of a lot only grows, and never beyond its seeds."},
         {{"A count some days after the last.",
           {{"book", "BOOK"}, {"lot", "S-25-03"}, {"germinated", "68"}, {"as-of", "2026-03-23"}}}}},
        {seed_withdrawal,
         {"record-seed-withdrawal", "Record seed withdrawal", "Records",
          "Records seeds withdrawn from a lot: potted, given away, rotten. It is checked against "
          "the book first: no more can be withdrawn from a lot than it had."},
         {{"Germinated seed potted.",
           {{"book", "BOOK"},
            {"lot", "S-25-03"},
            {"seeds", "20"},
            {"remark", "potted"},
            {"as-of", "2026-03-23"}}}}},
        {score,
         {"record-score", "Record trait score", "Records",
          "Records a score given to a tree for one trait: taste, size, scab. It is checked against "
          "the book first: the tree must be known and standing on that day."},
         {{"The taste of a seedling's fruit.",
           {{"book", "BOOK"},
            {"tree", "UP-05-12"},
            {"trait", "taste"},
            {"score", "8"},
            {"as-of", "2025-09-25"}}}}},
    };
}

}  // namespace pipward::operation::detail
