// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "pipward/book/adopt_mapping.h"
#include "pipward/book/book.h"
#include "pipward/book/user_layer.h"
#include "pipward/operation/request_field.h"
#include "pipward/place/earth.h"
#include "pipward/record/words.h"
#include "pipward/value/sentence.h"
#include "pipward/weather/weather_import.h"

/// How a user's own layer comes into a book: read, mapped, carried to the book's coordinates, judged.
namespace pipward::operation {

enum class AdoptTable { trees, accessions, rows, blocks };
std::span<const Word<AdoptTable>> words(AdoptTable);

struct AdoptRequest {
    BookName book;
    Day as_of;
    InputFile file;
    std::string layer;
    std::optional<AdoptTable> table;
    std::string map;
    std::optional<InputFile> map_file;
    std::string crs;
    bool exchange_axes = false;
    bool add_accessions = false;
    std::optional<AccessionKind> accession_kind;
    std::string species;
    bool add_rows = false;
    std::string block;
    std::optional<TreePurpose> purpose;
    std::optional<weather::DayFormat> day_format;
    Metres same_place{2};
    bool write = false;
};

enum class Fate {
    added,
    known,     ///< the book has it already
    left_out,  ///< it is no row of this table
    refused,   ///< an error stands in the way
};

struct AdoptRow {
    std::string feature;                      ///< "feature 12"
    std::map<std::string, Cell> cells{};      ///< of its own table, by column; unknown ones are left out
    std::map<std::string, Cell> accession{};  ///< what a tree's row tells of its accession
    std::vector<MapPoint> points{};           ///< as in the layer, then in the book's system
    bool is_line = false;
    bool is_area = false;
    bool has_holes = false;
    Fate fate = Fate::added;
    Sentence why{};  ///< of a fate other than added

    std::string text(const std::string& column) const;  ///< empty where unknown
};

/// A row of a block or a tree row that trees name and the book lacks, and new accessions.
struct MadeRow {
    std::string table;
    std::map<std::string, Cell> cells{};
    std::vector<MapPoint> points{};
};

struct Adoption {
    std::string layer;  ///< its name, for findings
    std::string table;  ///< "tree"
    book::FieldMapping mapping{};
    std::vector<book::FieldSample> fields{};
    std::map<std::string, int> unreadable{};  ///< values by field
    std::vector<AdoptRow> rows{};
    std::vector<MadeRow> made{};
    Metres accuracy{};  ///< of the transformation
    Findings findings{};
    std::string crs{};  ///< the layer's

    /// The column of the table that names a row: "label" or "name".
    std::string key() const;
    std::string name_of(const AdoptRow& row) const;  ///< "feature 12 (LO-04-07)"
    void complain(Level level, AdoptRow& row, std::string field, std::string value, Sentence message,
                  Sentence remedy);
    /// The same of a finding that lacks but its table and row.
    void complain(AdoptRow& row, Finding finding);
    void tell(Level level, std::string field, std::string value, Sentence message, Sentence remedy);
};

/// Reads the layer and says where each of its fields goes. Throws Error (usage, access).
struct AdoptSource {
    book::UserLayer layer;
    Adoption adoption;
};
AdoptSource open_adoption(const AdoptRequest& request, const Orchard& orchard);

/// "FIELD=column; FIELD2=-" and a file of two columns as corrections. Throws Error (usage, access).
book::Corrections corrections_in(const std::string& map);
book::Corrections corrections_of_file(const std::string& path);
/// The mapping as such a file.
std::string mapping_file(const book::FieldMapping& mapping);

/// Kind and species of an accession's cells, where they do not tell it and the user does.
void fill_in_accession(std::map<std::string, Cell>& cells, const AdoptRequest& request);
/// Leaves out what is no row of the table by its shape, and tells rows of several parts.
void judge_shapes(Adoption& adoption);
/// Texts into values of the book.
void read_values(Adoption& adoption, const book::UserLayer& layer, const AdoptRequest& request);
/// Every day of the layer as ISO 8601, where a column's writing leaves no doubt.
void read_days(Adoption& adoption, book::UserLayer& layer, std::optional<weather::DayFormat> format);
/// Where the rows lie, in the book's coordinates.
void read_places(Adoption& adoption, const book::UserLayer& layer, const AdoptRequest& request,
                 const Orchard& orchard);
/// Names that refer to other rows: written as in the book, added, or told.
void judge_names(Adoption& adoption, const AdoptRequest& request, const Orchard& orchard);
/// Rows that the book has, that the layer has twice, and trees on one spot.
void judge_clashes(Adoption& adoption, const AdoptRequest& request, const Orchard& orchard);
/// What the rules of the book say of all of it together.
void judge_whole(Adoption& adoption, const AdoptRequest& request, const Orchard& orchard);

/// The rows to be added, table by table, as append_rows() takes them.
std::vector<Table> added_tables(const Adoption& adoption);

TableShape adopt_field_shape();
Table adopt_field_table(const Adoption& adoption);
TableShape adopt_row_shape();
Table adopt_row_table(const Adoption& adoption);

}  // namespace pipward::operation
