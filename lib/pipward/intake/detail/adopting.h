// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/book/schema.h"
#include "pipward/book/user_layer.h"
#include "pipward/intake/adoption.h"

/// The steps of an adoption, in their order.
namespace pipward::intake::detail {

/// The layer, and where each of its fields goes.
book::UserLayer read_layer(const AdoptOptions& options);
Adoption open_adoption(const book::UserLayer& layer, const AdoptOptions& options, const Orchard& orchard);

/// Leaves out what is no row of the table by its shape, and tells rows of several parts.
void judge_shapes(Adoption& adoption);
/// Every day of the layer as ISO 8601, where a column's writing leaves no doubt.
void read_days(Adoption& adoption, book::UserLayer& layer, std::optional<DateFormat> format);
/// Texts into values of the book.
void read_values(Adoption& adoption, const book::UserLayer& layer, const AdoptOptions& options);
/// Where the rows lie, in the book's coordinates.
void read_places(Adoption& adoption, const book::UserLayer& layer, const AdoptOptions& options,
                 const Orchard& orchard, std::span<const place::LonLat> known);
/// Rows that the book has, that the layer has twice, and trees on one spot.
void judge_clashes(Adoption& adoption, const AdoptOptions& options, const Orchard& orchard);
/// Names that refer to other rows: written as in the book, added, or told.
void judge_names(Adoption& adoption, const AdoptOptions& options, const Orchard& orchard);
/// What the rules of the book say of all of it together.
void judge_whole(Adoption& adoption, const AdoptOptions& options, const Orchard& orchard);

/// Kind and species of an accession's cells, where they do not tell it and the user does.
void fill_in_accession(std::map<std::string, Cell>& cells, const AdoptOptions& options);

/// What names a row among those of its table: tree rows have their block's name as well.
std::string key_of(const Adoption& adoption, const AdoptRow& row);
/// The field of the layer that goes to a column of the rows' own table, else the column's own name.
std::string field_of(const Adoption& adoption, const std::string& column);

/// The rows that come of it table by table, parents first: those that are made, then the layer's own of which
/// `wanted` is true.
std::vector<MadeRow> rows_to_add(const Adoption& adoption,
                                 const std::function<bool(const AdoptRow&)>& wanted);

}  // namespace pipward::intake::detail
