// SPDX-License-Identifier: MIT
// What is recorded from pollen to fruit set.
#include "pipward/operation/field/detail/record_form.h"

namespace pipward::operation::detail {

std::vector<RecordForm> spring_records() {
    using enum intake::RecordKind;
    return {
        {pollen_lot,
         {"record-pollen-lot", "Record pollen lot", "Records",
          "Records pollen collected, under the code on its vial: donor, date, flowers, and the mass once it "
          "is dry. Pollen in stock is planned with, and what it covers is no longer to be collected."},
         {{"Eighty flowers of a donor, dried and refrigerated.",
           {{"book", "BOOK"},
            {"code", "P-26-01"},
            {"donor", "Wrenlea"},
            {"collected-on", "2026-05-08"},
            {"flowers", "80"},
            {"store", "refrigerator"},
            {"as-of", "2026-05-09"}}},
          {"A lot in stock is used up.",
           {{"book", "BOOK"},
            {"code", "P-25-02"},
            {"used-up-on", "2026-05-10"},
            {"complete", "yes"},
            {"as-of", "2026-05-10"}}}},
         true},
        {pollen_move,
         {"record-pollen-move", "Record move of pollen", "Records",
          "Records that a pollen lot was brought to another store. From that day on its germination falls as "
          "it does there."},
         {{"A lot brought from the refrigerator to the freezer.",
           {{"book", "BOOK"}, {"lot", "P-24-02"}, {"store", "freezer"}, {"as-of", "2026-03-20"}}}}},
        {branch_work,
         {"record-branch-work", "Record work at a branch", "Records",
          "Records that flowers were bagged, emasculated or unbagged, a donor branch was cut, or the cut "
          "branch has come to bloom indoors: by the tag, or by tree and cross. The task is then done and out "
          "of the plan."},
         {{"Flowers bagged for a cross.",
           {{"book", "BOOK"},
            {"task", "bag"},
            {"tree", "LO-01-01"},
            {"cross", "26-04"},
            {"flowers", "60"},
            {"as-of", "2026-05-02"}}},
          {"A branch of a donor cut to be forced.",
           {{"book", "BOOK"}, {"task", "cut_branch"}, {"tree", "LO-01-09"}, {"as-of", "2026-04-02"}}}}},
        {bloom,
         {"record-bloom", "Record bloom", "Records",
          "Records the BBCH stage of a tree, or of an accession as a whole. The observation is checked "
          "against the book first: an unknown tree, a date in the future, a stage that goes back."},
         {{"The first flowers of a tree.",
           {{"book", "BOOK"}, {"tree", "LO-04-07"}, {"bbch", "61"}, {"as-of", "2026-05-12"}}},
          {"Full bloom of an accession, two days ago.",
           {{"book", "BOOK"},
            {"accession", "Greywether"},
            {"bbch", "65"},
            {"observed-on", "2026-05-14"},
            {"as-of", "2026-05-16"}}}}},
        {pollination,
         {"record-pollination", "Record pollination", "Records",
          "Records the flowers pollinated on a branch, under the tag that is put on it. It is "
          "checked against the book first: the tree must be of the cross's seed parent, the "
          "pollen in stock on that day. A second pass over the branch goes under its tag."},
         {{"Forty flowers pollinated with stored pollen.",
           {{"book", "BOOK"},
            {"tag", "26-04-a"},
            {"cross", "26-04"},
            {"tree", "LO-01-01"},
            {"flowers", "40"},
            {"lot", "P-25-02"},
            {"as-of", "2026-05-08"}}}}},
        {pollen_test,
         {"record-pollen-test", "Record pollen test", "Records",
          "Records a germination test of stored pollen: the viability of the lot is then estimated "
          "from it instead of from published figures."},
         {{"A lot that has kept well.",
           {{"book", "BOOK"},
            {"lot", "P-25-02"},
            {"grains", "200"},
            {"germinated", "130"},
            {"as-of", "2026-03-20"}}}}},
        {fruit_set,
         {"record-fruit-set", "Record fruit set", "Records",
          "Records how many fruits hang at a tagged branch after the June drop. Where none is left the tag "
          "is done: no harvest is waited for."},
         {{"A count in June.",
           {{"book", "BOOK"}, {"tag", "25-03-b"}, {"fruits-set", "21"}, {"as-of", "2025-06-25"}}}}},
    };
}

}  // namespace pipward::operation::detail
