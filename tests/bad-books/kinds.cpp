// SPDX-License-Identifier: MIT
#include "bad-books/kinds.h"

#include <fmt/format.h>
#include <sys/stat.h>

#include <cmath>
#include <cstring>
#include <filesystem>
#include <fstream>

#include "bad-books/spoil.h"

namespace pipward::testing {
namespace {

namespace fs = std::filesystem;

/// Statements run on the book; those that call its triggers find no spatial index.
std::function<void(const std::string&)> sql(std::vector<std::string> statements) {
    return [statements = std::move(statements)](const std::string& path) {
        RawBook raw(path);
        for (const auto& statement : statements) {
            raw.run(statement);
        }
    };
}

/// A point as a GeoPackage stores it (OGC 12-128r18, 2.1.3): in the sample's system unless another is named.
std::string point(double x, double y, int srs = 25832) {
    std::string blob("GP\0\1", 4);
    const auto add = [&](const auto& value) {
        std::string bytes(sizeof value, '\0');
        std::memcpy(bytes.data(), &value, sizeof value);
        blob += bytes;
    };
    add(srs);
    blob += '\1';
    add(std::uint32_t{1});
    add(x);
    add(y);
    std::string text = "X'";
    for (const char byte : blob) {
        text += fmt::format("{:02X}", static_cast<unsigned char>(byte));
    }
    return text + "'";
}

std::string line(double x, double y, double to_x, double to_y) {
    auto text = point(x, y);
    // A point's blob up to its type, then a line's: type 2, two points.
    const auto coordinates = point(to_x, to_y).substr(2 + 2 * 13, 32);
    const auto first = text.substr(2 + 2 * 13, 32);
    return text.substr(0, 2 + 2 * 9) + "0200000002000000" + first + coordinates + "'";
}

std::string trees_at(const std::string& where, const std::string& blob) {
    return "UPDATE tree SET geom = " + blob + " WHERE " + where;
}

const std::string some_trees = "fid IN (SELECT fid FROM tree ORDER BY fid LIMIT 10)";
const std::string one_tree = "label = 'LO-01-02'";
const std::string endless = "WITH RECURSIVE n(x) AS (SELECT 1 UNION ALL SELECT x + 1 FROM n) ";

void rewrite(const std::string& path, const std::string& bytes) {
    fs::remove(path);
    std::ofstream(path, std::ios::binary) << bytes;
}

void overwrite(const std::string& path, std::streamoff at, const std::string& bytes) {
    std::fstream file(path, std::ios::binary | std::ios::in | std::ios::out);
    file.seekp(at);
    file << bytes;
}

/// The page on which an index or a table begins, spoilt.
void spoil_root(const std::string& path, const std::string& name) {
    std::streamoff page = 0;
    {
        RawBook raw(path);
        page = std::stoll(raw.text("SELECT rootpage FROM sqlite_master WHERE name = '" + name + "'"));
    }
    overwrite(path, (page - 1) * 4096 + 8, std::string(200, '\xEE'));
}

/// Changes that stand in a write-ahead log, of which the book's file alone was copied.
void lose_the_log(const std::string& path) {
    const auto whole = path + ".whole";
    fs::copy_file(path, whole);
    {
        RawBook raw(whole);
        raw.run("PRAGMA journal_mode = wal; PRAGMA wal_autocheckpoint = 0");
        raw.run("INSERT INTO accession (name, kind) VALUES ('Lost', 'cultivar')");
        fs::remove(path);
        fs::copy_file(whole, path);
    }
    for (const auto* ending : {"", "-wal", "-shm"}) {
        fs::remove(whole + ending);
    }
}

std::string generations(int number) {
    return fmt::format(
        "WITH RECURSIVE n(x) AS (SELECT 1 UNION ALL SELECT x + 1 FROM n WHERE x < {}) INSERT INTO accession "
        "(name, kind, seed_parent) SELECT 'G' || x, 'seedling', CASE WHEN x > 1 THEN 'G' || (x - 1) END FROM "
        "n",
        number);
}

std::string weather(const std::string& change, const std::string& where) {
    return "UPDATE weather_day SET " + change + " WHERE " + where;
}

std::vector<BadKind> files() {
    using enum Verdict;
    return {
        {"cut-to-100-bytes", told, [](const auto& path) { cut_off(path, 100); }},
        {"cut-in-half", told,
         [](const auto& path) { cut_off(path, static_cast<std::streamoff>(fs::file_size(path) / 2)); }},
        {"cut-by-a-page", told,
         [](const auto& path) { cut_off(path, static_cast<std::streamoff>(fs::file_size(path)) - 4096); }},
        {"empty-file", told, [](const auto& path) { rewrite(path, ""); }},
        {"text-file", told, [](const auto& path) { rewrite(path, "label,accession\nA1,Red\n"); }},
        {"encrypted", told, [](const auto& path) { encrypt(path); }},
        {"folder", told,
         [](const auto& path) {
             fs::remove(path);
             fs::create_directory(path);
         }},
        {"missing", told, [](const auto& path) { fs::remove(path); }},
        {"pipe", told,
         [](const auto& path) {
             fs::remove(path);
             mkfifo(path.c_str(), 0600);
         }},
        {"archive", told, [](const auto& path) { overwrite(path, 0, "PK\x03\x04"); }},
        {"leaf-of-trees-zeroed", told, [](const auto& path) { zero_last_leaf(path, "tree"); }},
        {"leaf-of-weather-zeroed", told, [](const auto& path) { zero_last_leaf(path, "weather_day"); }},
        {"root-of-trees-spoilt", told, [](const auto& path) { spoil_root(path, "tree"); }},
        {"index-of-names-spoilt", told,
         [](const auto& path) { spoil_root(path, "sqlite_autoindex_tree_1"); }},
        {"schema-page-spoilt", told,
         [](const auto& path) { overwrite(path, 110, std::string(300, '\xEE')); }},
        {"garbage-for-a-journal", nothing,
         [](const auto& path) { std::ofstream(path + "-journal") << "garbage"; }},
        {"write-ahead-log-lost", told, lose_the_log},
        {"spatial-index-zeroed", told,
         sql({"UPDATE rtree_tree_geom_node SET data = zeroblob(length(data))"})},
        {"spatial-index-lacks-rows", told, sql({"DELETE FROM rtree_tree_geom WHERE id > 20"})},
        {"application-unknown", nothing, sql({"PRAGMA application_id = 0"})},
        {"other-schema-version", told, sql({"UPDATE book_version SET version = 99"})},
        {"book-of-no-tables", told, sql({"DELETE FROM gpkg_contents"})},
        {"layers-unregistered", told, sql({"DELETE FROM gpkg_geometry_columns"})},
        {"coordinate-system-unknown", told, sql({"DELETE FROM gpkg_spatial_ref_sys WHERE srs_id = 25832"})},
    };
}

std::vector<BadKind> schemas() {
    using enum Verdict;
    const auto registered = [](const std::string& name) {
        return "INSERT INTO gpkg_contents (table_name, data_type, identifier, srs_id) VALUES ('" + name +
               "', 'attributes', '" + name + "', 0)";
    };
    const std::string count_registered = "UPDATE gpkg_ogr_contents SET feature_count = 5";
    return {
        {"no-trees-table", told, sql({"DROP TABLE tree"})},
        {"no-weather-table", told, sql({"DROP TABLE weather_day"})},
        {"needed-column-missing", told, sql({"ALTER TABLE weather_day RENAME COLUMN t_min_c TO low"})},
        {"other-column-missing", nothing, sql({"ALTER TABLE bloom_observation DROP COLUMN observer"})},
        {"view-for-a-table", told,
         sql({"ALTER TABLE weather_day RENAME TO kept", "CREATE VIEW weather_day AS SELECT * FROM kept"})},
        {"endless-view-for-a-table", told,
         sql({"DROP TABLE weather_day", "CREATE VIEW weather_day AS " + endless +
                                            "SELECT x AS fid, 'Larkfold' AS station, '2026-01-01' AS day, "
                                            "1.0 AS t_min_c, 2.0 AS t_max_c, "
                                            "'observed' AS source FROM n"})},
        {"endless-view-for-a-result", nothing,
         sql({"CREATE VIEW bloom_window AS " + endless + "SELECT x AS fid FROM n",
              registered("bloom_window")})},
        {"endless-view-counted-for-a-result", nothing,
         sql({"CREATE VIEW field_task AS " + endless + "SELECT count(*) AS fid FROM n",
              registered("field_task")})},
        {"endless-view-marked-as-ours", nothing,
         sql({"CREATE VIEW row_position AS " + endless + "SELECT x AS fid FROM n", registered("row_position"),
              "UPDATE gpkg_contents SET description = 'Result of Pipward, replaced when it is computed "
              "again. ' WHERE table_name = 'row_position'"})},
        {"endless-view-besides", nothing,
         sql({"CREATE VIEW besides AS " + endless + "SELECT x AS fid FROM n"})},
        {"endless-trigger-of-weather", nothing,
         sql({"CREATE TRIGGER own AFTER INSERT ON weather_day BEGIN SELECT count(*) FROM (" + endless +
              "SELECT x FROM n); END"})},
        {"endless-trigger-like-ours", nothing,
         sql({"CREATE TRIGGER own BEFORE INSERT ON bloom_observation BEGIN SELECT RAISE(ABORT, 'no') WHERE "
              "(" +
              endless + "SELECT count(*) FROM n) < 0; END"})},
        {"trigger-that-swallows", nothing,
         sql({"CREATE TRIGGER own BEFORE INSERT ON bloom_observation BEGIN SELECT RAISE(IGNORE); END"})},
        {"trigger-that-removes", nothing,
         sql({"CREATE TRIGGER own AFTER INSERT ON bloom_observation BEGIN DELETE FROM tree; END"})},
        {"trigger-on-the-contents", nothing,
         sql({"CREATE TRIGGER own AFTER UPDATE ON gpkg_contents BEGIN DELETE FROM tree; END"})},
        {"index-that-ignores", nothing,
         sql({"CREATE TABLE copy (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, station TEXT NOT NULL, day "
              "DATE NOT NULL, t_min_c REAL NOT NULL, t_max_c REAL NOT NULL, source TEXT NOT NULL DEFAULT "
              "'observed', UNIQUE (t_min_c) ON CONFLICT IGNORE)",
              "INSERT OR IGNORE INTO copy SELECT * FROM weather_day", "PRAGMA legacy_alter_table = on",
              "DROP TABLE weather_day", "ALTER TABLE copy RENAME TO weather_day"})},
        {"names-in-capitals", nothing,
         sql({"ALTER TABLE weather_day RENAME TO weather_day_",
              "ALTER TABLE weather_day_ RENAME TO WEATHER_DAY",
              "UPDATE gpkg_contents SET table_name = 'WEATHER_DAY' WHERE table_name = 'weather_day'"})},
        {"rows-without-numbers", told,
         sql({"PRAGMA legacy_alter_table = on", "CREATE TABLE copy AS SELECT * FROM accession",
              "DROP TABLE accession", "ALTER TABLE copy RENAME TO accession"})},
        {"table-of-2000-columns", told,
         [](const auto& path) {
             RawBook raw(path);
             raw.run("BEGIN");
             for (int i = 0; i < 1900; ++i) {
                 raw.run(fmt::format("ALTER TABLE blend ADD COLUMN c{} TEXT", i));
             }
             raw.run("COMMIT");
         }},
        {"registered-counts-wrong", nothing, sql({count_registered})},
        {"table-of-ours-made-by-others", nothing,
         sql({"CREATE TABLE cross_outlook (fid INTEGER PRIMARY KEY, mine TEXT)",
              registered("cross_outlook")})},
        {"all-tables-empty", told,
         sql({"DELETE FROM tree", "DELETE FROM weather_day", "DELETE FROM bloom_observation",
              "DELETE FROM accession"})},
    };
}

std::vector<BadKind> cells() {
    using enum Verdict;
    return {
        {"text-for-a-number", told, sql({weather("t_min_c = 'cold'", "fid % 50 = 0")})},
        {"fraction-for-an-integer", told, sql({"UPDATE tree SET position = 3.7 WHERE " + one_tree})},
        {"huge-integer", told, sql({"UPDATE tree SET position = 9000000000 WHERE " + one_tree})},
        {"infinite-number", told, sql({weather("t_max_c = 9e999", "fid = 700")})},
        {"day-that-is-none", told, sql({"UPDATE tree SET planted_on = '2024-02-31' WHERE " + one_tree})},
        {"day-of-an-empty-cell", told,
         sql({"UPDATE tree SET planted_on = '1900-01-01' WHERE " + some_trees})},
        {"blob-for-a-text", told, sql({"UPDATE tree SET label = x'00FF' WHERE " + one_tree})},
        {"bytes-that-are-no-text", told,
         sql({"UPDATE tree SET remark = CAST(x'C3C3' AS TEXT) WHERE " + one_tree})},
        {"zero-within-a-text", told,
         sql({"UPDATE tree SET label = CAST(x'410042' AS TEXT) WHERE " + one_tree})},
        {"text-of-ten-megabytes", told,
         sql({"UPDATE tree SET remark = replace(hex(zeroblob(5000000)), '00', 'ab') WHERE " + one_tree})},
        {"word-that-is-unknown", told, sql({"UPDATE tree SET purpose = 'wonder' WHERE " + one_tree})},
        {"stage-that-is-none", told, sql({"UPDATE bloom_observation SET bbch = 68 WHERE fid = 7"})},
        {"name-given-twice", told,
         sql({"INSERT INTO accession (name, kind, remark) SELECT lower(name), kind, 'again' FROM accession "
              "LIMIT 1"})},
        {"name-that-nobody-answers-to", told,
         sql({"UPDATE tree SET accession = 'Nobody' WHERE " + some_trees})},
        {"circle-in-the-pedigree", told,
         sql({"UPDATE accession SET seed_parent = (SELECT name FROM accession ORDER BY fid LIMIT 1 OFFSET 1) "
              "WHERE fid = (SELECT min(fid) FROM accession)",
              "UPDATE accession SET seed_parent = (SELECT name FROM accession ORDER BY fid LIMIT 1) WHERE "
              "fid = (SELECT fid FROM accession ORDER BY fid LIMIT 1 OFFSET 1)"})},
        {"twenty-thousand-generations", nothing, sql({generations(20'000)})},
        {"negative-counts", told, sql({"UPDATE seed_lot SET seeds = -5"})},
        {"more-than-there-was", told, sql({"UPDATE fruit SET fruits = 99999"})},
        {"scores-at-the-end-of-numbers", nothing,
         sql({"UPDATE trait_score SET score = 1e308 * (1 - 2 * (fid % 2))"})},
        {"notes-doubled", told,
         sql({"INSERT INTO bloom_observation (tree, accession, observed_on, bbch) SELECT tree, accession, "
              "observed_on, bbch FROM bloom_observation WHERE tree IS NOT NULL LIMIT 5"})},
        {"notes-that-contradict", told,
         sql({"INSERT INTO bloom_observation (tree, observed_on, bbch) SELECT tree, date(observed_on, '+2 "
              "days'), 55 FROM bloom_observation WHERE tree IS NOT NULL AND bbch > 62 LIMIT 5"})},
        {"cold-store-at-minus-100", told, sql({"UPDATE seed_lot SET stratification_c = -100"})},
        {"formulas-and-markup", nothing,
         sql({"UPDATE tree SET remark = '=HYPERLINK(\"http://x\",\"<script>alert(1)</script>\")' WHERE " +
              some_trees})},
        {"control-characters", told,
         sql({"UPDATE accession SET name = name || char(27) || '[31m' WHERE fid = 1"})},
    };
}

std::vector<BadKind> places() {
    using enum Verdict;
    return {
        {"tree-at-nought-nought", told, sql({trees_at(one_tree, point(0, 0))})},
        {"degrees-among-metres", told, sql({trees_at(some_trees, point(9.1, 48.2))})},
        {"axes-exchanged", told, sql({trees_at(some_trees, point(5'331'200, 522'400))})},
        {"tree-100-km-off", told, sql({trees_at(one_tree, point(522'400, 5'431'200))})},
        {"all-trees-at-one-point", told, sql({trees_at("1", point(522'400, 5'331'200))})},
        {"all-trees-on-another-continent", told, sql({trees_at("1", point(522'400, 331'200))})},
        {"all-trees-at-6000-m", told, sql({"UPDATE tree SET elevation_m = 6000"})},
        {"tree-at-1e300", told, sql({trees_at(one_tree, point(1e300, 1e300))})},
        {"tree-at-no-number", told, sql({trees_at(one_tree, point(std::nan(""), 5'331'200))})},
        {"tree-in-another-system", told, sql({trees_at(one_tree, point(522'400, 5'331'200, 4326))})},
        {"garbage-for-a-place", told, sql({trees_at(one_tree, "X'DEADBEEF'")})},
        {"line-for-a-point", told, sql({trees_at(one_tree, line(522'400, 5'331'200, 522'410, 5'331'200))})},
        {"row-without-length", told,
         sql({"UPDATE tree_row SET geom = " + line(522'400, 5'331'200, 522'400, 5'331'200) +
              " WHERE fid = 1"})},
        {"row-of-1000-km", told,
         sql({"UPDATE tree_row SET geom = " + line(522'400, 5'331'200, 522'400, 6'331'200) +
              " WHERE fid = 1"})},
        {"row-at-1e300", told,
         sql({"UPDATE tree_row SET geom = " + line(522'400, 5'331'200, 1e300, -1e300) + " WHERE fid = 1"})},
        {"station-at-nought-nought", told, sql({"UPDATE station SET geom = " + point(0, 0)})},
        {"station-without-a-place", told, sql({"UPDATE station SET geom = NULL"})},
    };
}

std::vector<BadKind> weathers() {
    using enum Verdict;
    const std::string a_july = "day BETWEEN '2024-07-05' AND '2024-07-14'";
    return {
        {"zeros-for-missing-days", told, sql({weather("t_min_c = 0, t_max_c = 0", a_july)})},
        {"thermometer-stuck", told, sql({weather("t_min_c = 12.3, t_max_c = 21.4", a_july)})},
        {"decimal-point-lost", told, sql({weather("t_max_c = 45.0, t_min_c = 2.0", "day = '2024-02-10'")})},
        {"fahrenheit", told,
         sql({weather("t_min_c = t_min_c * 1.8 + 32, t_max_c = t_max_c * 1.8 + 32", "1")})},
        {"a-year-in-fahrenheit", told,
         sql({weather("t_min_c = t_min_c * 1.8 + 32, t_max_c = t_max_c * 1.8 + 32",
                      "day BETWEEN '2024-01-01' AND '2024-12-31'")})},
        {"columns-exchanged", told, sql({weather("t_min_c = t_max_c, t_max_c = t_min_c", a_july)})},
        {"days-of-nobodys-station", told, sql({weather("station = 'Larkfeld'", a_july)})},
        {"days-to-come-as-observed", told,
         sql({"INSERT INTO weather_day (station, day, t_min_c, t_max_c) VALUES ('Larkfold', '2028-04-01', 4, "
              "12)"})},
        {"a-winter-missing", told,
         sql({"DELETE FROM weather_day WHERE day BETWEEN '2023-11-01' AND '2024-02-20'"})},
        {"a-day-in-the-year-9000", told,
         sql({"INSERT INTO weather_day (station, day, t_min_c, t_max_c) VALUES ('Larkfold', '9000-04-01', 4, "
              "12)"})},
    };
}

}  // namespace

const std::vector<BadKind>& bad_kinds() {
    static const std::vector<BadKind> all = [] {
        std::vector<BadKind> kinds;
        for (auto& group : {files(), schemas(), cells(), places(), weathers()}) {
            kinds.insert(kinds.end(), group.begin(), group.end());
        }
        return kinds;
    }();
    return all;
}

}  // namespace pipward::testing
