// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "pipward/book/detail/ogr_session.h"
#include "pipward/book/schema.h"

/// Inside of the room: the words for people about a table's columns, kept by the GeoPackage Schema extension
/// (gpkg_data_columns) or as a server's comments.
namespace pipward::book::detail {

struct ColumnWords {
    std::string name;
    std::string label;
    std::string unit;
    std::string description;
    std::string domain;  ///< name of a field domain, or empty
};

ColumnWords words_of(const BookColumn& column);
ColumnWords words_of(const Column& column);

/// Makes the tables of the Schema extension where the book has none yet. GeoPackage only.
void prepare_descriptions(Session& session);
/// Writes every field domain of the schema that the book lacks. GeoPackage only.
void write_domains(Session& session);
/// Writes the words of one table's columns, replacing what was there.
void describe_columns(Session& session, const std::string& table, const std::vector<ColumnWords>& columns);
/// Column name to words, as far as the book has any.
std::map<std::string, ColumnWords> read_descriptions(Session& session, const std::string& table);

}  // namespace pipward::book::detail
