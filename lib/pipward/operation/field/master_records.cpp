// SPDX-License-Identifier: MIT
// What the orchard has and wants.
#include "pipward/operation/field/detail/record_form.h"

namespace pipward::operation::detail {

std::vector<RecordForm> master_records() {
    using enum intake::RecordKind;
    return {
        {goal,
         {"record-goal", "Record cross goal", "Records",
          "Records a cross that is wanted in a season: parents, number of seedlings and priority."},
         {{"Forty seedlings of a cross.",
           {{"book", "BOOK"},
            {"code", "26-15"},
            {"season", "2026"},
            {"seed-parent", "Wrenlea"},
            {"pollen-parent", "Owlcombe"},
            {"seedlings-wanted", "40"},
            {"priority", "3"},
            {"as-of", "2026-03-20"}}}},
         true},
        {accession,
         {"record-accession", "Record accession", "Records",
          "Records an accession: its kind, parents, S-alleles, species and what else is known. With "
          "complete, fills what the accession of that name lacks."},
         {{"A new selection with its parents.",
           {{"book", "BOOK"},
            {"name", "LF 16-104"},
            {"kind", "selection"},
            {"seed-parent", "Wrenlea"},
            {"pollen-parent", "Owlcombe"},
            {"species", "Malus domestica"},
            {"as-of", "2026-03-20"}}},
          {"Alleles of an accession that were determined since.",
           {{"book", "BOOK"},
            {"name", "Fallowby"},
            {"s-alleles", "S3 S9"},
            {"complete", "yes"},
            {"as-of", "2026-03-20"}}}},
         true},
        {blend,
         {"record-blend", "Record member of a blend", "Records",
          "Records one member of a pollen blend with its share; a blend is made of as many such records as "
          "it has members."},
         {{"A member of a new blend.",
           {{"book", "BOOK"}, {"name", "Mossgate Mix"}, {"member", "Wrenlea"}, {"as-of", "2026-03-20"}}}}},
        {tree,
         {"record-tree", "Record tree", "Records",
          "Records a tree: accession, address, rootstock, day of planting and, where known, latitude and "
          "longitude. With complete, fills what the tree of that label lacks."},
         {{"The rootstock of a new tree.",
           {{"book", "BOOK"},
            {"label", "NEW-01"},
            {"accession", "Wrenlea"},
            {"rootstock", "M9"},
            {"purpose", "parent"},
            {"as-of", "2026-03-20"}}}},
         true},
        {station,
         {"record-station", "Record weather station", "Records",
          "Records a weather station with its height and its place, so that weather-import can bring its "
          "days."},
         {{"A second station in the valley.",
           {{"book", "BOOK"},
            {"name", "Valley"},
            {"elevation-m", "398"},
            {"latitude", "48.02"},
            {"longitude", "11.6"},
            {"as-of", "2026-03-20"}}}}},
        {trait,
         {"record-trait", "Record trait", "Records",
          "Records on which part of the tree a trait is scored: leaf, bloom, fruit or the whole tree. Only "
          "scores of flowers and fruit show that a seedling has bloomed."},
         {{"Mildew is scored on leaves.",
           {{"book", "BOOK"}, {"name", "mildew"}, {"kind", "leaf"}, {"as-of", "2026-03-20"}}}}},
    };
}

}  // namespace pipward::operation::detail
