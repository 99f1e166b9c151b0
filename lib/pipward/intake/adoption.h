// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/intake/days.h"
#include "pipward/intake/field_mapping.h"
#include "pipward/intake/remark.h"
#include "pipward/place/earth.h"
#include "pipward/record/table.h"
#include "pipward/record/words.h"

/// How a user's own layer comes into a book: read, mapped, carried to the book's coordinates, judged.
namespace pipward::intake {

/// Which table of the book a layer's rows go to.
enum class AdoptTable {
    trees,       ///< points, a tree each
    accessions,  ///< varieties and selections, without a place
    rows,        ///< lines, a tree row each
    blocks       ///< areas, a block each
};
/// The tables as they are typed.
std::span<const Word<AdoptTable>> words(AdoptTable);

/// What is to be adopted, and what is stated of it instead of being found out.
struct AdoptOptions {
    std::string source;                  ///< path of the layer
    std::optional<std::string> bytes{};  ///< its content, where it is a table of text or a workbook
    std::string layer{};                 ///< one of several
    std::optional<AdoptTable> table{};   ///< seen from geometry and fields where not given
    std::string map{};                   ///< "FIELD=column; FIELD2=-"
    Corrections map_file{};              ///< the same, less near than `map`
    std::string layer_crs{};             ///< where the layer does not tell it
    bool exchange_axes = false;          ///< the layer's two coordinates stand the wrong way round
    bool add_accessions = false;         ///< those that trees name and the book lacks; else an error
    std::optional<AccessionKind> accession_kind{};  ///< of such accessions where the layer does not tell
    std::string species{};  ///< of such accessions where the layer does not tell; empty for unknown
    bool add_rows = false;  ///< blocks and rows that trees name and the book lacks; else an error
    std::string block{};    ///< of trees and rows where the layer does not tell; empty for unknown
    std::optional<TreePurpose> purpose{};  ///< of trees where the layer does not tell; other where not given
    std::optional<DateFormat> date_format{};  ///< of every column of days; found out where not given
    Metres same_place{2};                     ///< within which a tree of the same label is the book's own
    Day as_of{};                              ///< the day asked: trees removed by then are not in the way
};

/// Whether a file of that name is a table of text or a workbook, to be handed over as bytes.
bool is_sheet_name(const std::string& path);

/// What becomes of a row of the layer.
enum class Fate {
    added,     ///< or would be, where nothing is written
    known,     ///< the book has it already
    left_out,  ///< it is no row of this table
    refused,   ///< an error stands in the way
};

std::span<const Word<Fate>> words(Fate);

/// A row of the layer, as far as it was understood.
struct AdoptRow {
    std::string feature;                      ///< "feature 12"
    std::map<std::string, Cell> cells{};      ///< of its own table, by column; unknown ones are left out
    std::map<std::string, Cell> accession{};  ///< what a tree's row tells of its accession
    std::vector<MapPoint> points{};           ///< as in the layer, then in the book's system
    bool is_line = false;                     ///< `points` are one
    bool is_area = false;                     ///< `points` are its outline
    bool has_holes = false;                   ///< that `points` do not tell
    Fate fate = Fate::added;                  ///< as judged so far
    Sentence why{};                           ///< of a fate other than added

    std::string text(const std::string& column) const;  ///< empty where unknown
};

/// A row of the book that is to be made: of the layer, or one that its rows name and the book lacks.
struct MadeRow {
    std::string table;                    ///< of the schema
    std::map<std::string, Cell> cells{};  ///< by column
    std::vector<MapPoint> points{};       ///< in the book's system; empty for a row without a place
};

/// A layer, judged as a whole.
struct Adoption {
    std::string layer;                        ///< its name, for findings
    std::string table;                        ///< "tree"
    FieldMapping mapping{};                   ///< which field goes to which column
    std::vector<FieldSample> fields{};        ///< in the layer's order
    std::map<std::string, int> unreadable{};  ///< values by field
    std::vector<AdoptRow> rows{};             ///< in the layer's order
    std::vector<MadeRow> made{};  ///< blocks, tree rows and accessions that rows name and the book lacks
    Metres accuracy{};            ///< of the transformation
    Findings findings{};          ///< of the layer, then of its rows
    std::string crs{};            ///< the layer's

    /// The column of the table that names a row: "label" or "name".
    std::string key() const;
    std::string name_of(const AdoptRow& row) const;  ///< "feature 12 (LO-04-07)"
    /// Tells it of the row; an error refuses the row.
    void complain(AdoptRow& row, Remark remark);
    /// The same of a finding that lacks but its table and row.
    void complain_of(AdoptRow& row, Finding finding);
    /// Tells it of the layer as a whole.
    void tell(Level level, std::string field, std::string value, Sentence message, Sentence remedy);
};

/// Reads the layer and judges everything in it. `known` are the book's places, by which strange ones are
/// seen. Nothing is written. Throws Error (usage, access).
Adoption adopt(const AdoptOptions& options, const Orchard& orchard, std::span<const place::LonLat> known);

/// The rows to be added, table by table, parents first, as book::append_rows() takes them.
std::vector<Table> added_tables(const Adoption& adoption);

/// "FIELD=column; FIELD2=-" and the content of a file of two columns as corrections. Throws Error (usage).
Corrections corrections_in(const std::string& map);
/// `file` names it in what is thrown.
Corrections corrections_of_file(const std::string& bytes, const std::string& file);
/// The mapping as such a file.
std::string mapping_file(const FieldMapping& mapping);

}  // namespace pipward::intake
