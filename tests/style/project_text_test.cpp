// SPDX-License-Identifier: MIT
// The stored map: groups, relations, and a packed form that is the same each time.
#include "pipward/style/project_text.h"

#include <gtest/gtest.h>
#include <zip.h>

#include <pugixml.hpp>
#include <set>

#include "pipward/style/orchard_style.h"

namespace pipward::style {
namespace {

ProjectStyle map_of(const std::vector<std::string_view>& tables) {
    std::vector<LayerStyle> layers;
    book::BookLook look;
    look.crs_wkt = "PROJCRS[\"made up\"]";
    look.crs_code = "EPSG:25832";
    for (const auto table : tables) {
        layers.push_back(style_of_layer(*book::find_book_table(table)));
        look.layers.push_back({std::string(table), "geom", book::MapBox{10, 20, 30, 60}});
    }
    return season_map(look, layers, std::nullopt, "my & orchard.gpkg");
}

std::vector<std::string_view> all_tables() {
    std::vector<std::string_view> names;
    for (const auto& table : book::book_tables()) {
        names.push_back(table.name);
    }
    return names;
}

pugi::xml_document parsed(const std::string& text) {
    pugi::xml_document document;
    EXPECT_TRUE(document.load_string(text.c_str()));
    return document;
}

std::string unpacked(const std::string& bytes) {
    zip_error_t trouble;
    zip_source_t* source = zip_source_buffer_create(bytes.data(), bytes.size(), 0, &trouble);
    zip_t* archive = zip_open_from_source(source, ZIP_RDONLY, &trouble);
    EXPECT_NE(archive, nullptr);
    zip_stat_t about;
    EXPECT_EQ(zip_stat(archive, "project.qgs", 0, &about), 0);
    std::string text(about.size, '\0');
    zip_file_t* file = zip_fopen(archive, "project.qgs", 0);
    EXPECT_EQ(zip_fread(file, text.data(), text.size()), static_cast<zip_int64_t>(text.size()));
    zip_fclose(file);
    zip_discard(archive);
    return text;
}

TEST(SeasonMap, PutsEveryLayerIntoExactlyOneGroup) {
    const auto map = map_of(all_tables());
    std::multiset<std::string> placed;
    for (const auto& group : map.groups) {
        EXPECT_FALSE(group.layers.empty()) << group.title;
        for (const auto& layer : group.layers) {
            placed.insert(layer.style.table);
        }
    }
    for (const auto& table : book::book_tables()) {
        EXPECT_EQ(placed.count(std::string(table.name)), 1U) << table.name;
    }
    EXPECT_EQ(map.groups.front().title, "Trees") << "groups without a layer are left out";
    EXPECT_EQ(map.groups.back().title, "Record tables");
}

TEST(SeasonMap, RelatesRowsOnlyToTablesThatTheMapHas) {
    for (const auto& relation : map_of({"tree", "bloom_observation"}).relations) {
        EXPECT_EQ(relation.child, "bloom_observation");
        EXPECT_EQ(relation.parent, "tree");
    }
    std::set<std::string> pairs;
    for (const auto& relation : map_of(all_tables()).relations) {
        pairs.insert(relation.parent + "/" + relation.child);
    }
    for (const auto* wanted : {"tree/bloom_observation", "tree/pollination", "cross_goal/pollination",
                               "accession/tree", "tree_row/tree", "seed_lot/germination_count"}) {
        EXPECT_TRUE(pairs.count(wanted)) << wanted;
    }
}

TEST(SeasonMap, RelatesARowOfTreesByItsBlockToo) {
    for (const auto& relation : map_of(all_tables()).relations) {
        EXPECT_EQ(relation.columns.size(), relation.parent == "tree_row" ? 2U : 1U) << relation.id;
    }
}

TEST(ProjectText, PointsAtTheBookBesideItAndAtLayersThatAreThere) {
    const auto document = parsed(project_text(map_of(all_tables())));
    std::set<std::string> ids;
    for (const auto& layer : document.select_nodes("/qgis/projectlayers/maplayer")) {
        const std::string id = layer.node().child("id").text().get();
        EXPECT_GT(id.size(), 10U) << "the desktop renames layers with short ids";
        ids.insert(id);
        EXPECT_TRUE(
            std::string(layer.node().child("datasource").text().get()).starts_with("./my & orchard.gpkg|"));
    }
    EXPECT_EQ(ids.size(), book::book_tables().size());
    for (const auto* path : {"//layer-tree-layer/@id", "//relation/@referencingLayer",
                             "//relation/@referencedLayer", "//Option[@name='Layer']/@value"}) {
        const auto found = document.select_nodes(path);
        EXPECT_FALSE(found.empty()) << path;
        for (const auto& node : found) {
            EXPECT_TRUE(ids.count(node.attribute().value())) << path << " " << node.attribute().value();
        }
    }
}

TEST(ProjectText, ShowsInAFormOnlyRelationsThatItDeclares) {
    const auto document = parsed(project_text(map_of(all_tables())));
    std::set<std::string> declared;
    for (const auto& id : document.select_nodes("/qgis/relations/relation/@id")) {
        declared.insert(id.attribute().value());
    }
    std::set<std::string> shown;
    for (const auto& id : document.select_nodes("//attributeEditorRelation/@relation")) {
        shown.insert(id.attribute().value());
    }
    EXPECT_EQ(shown, declared);
}

TEST(ProjectText, OpensOnTheTreesWithSomeGroundAround) {
    const auto document = parsed(project_text(map_of(all_tables())));
    const auto extent = document.select_node("/qgis/mapcanvas/extent").node();
    EXPECT_LT(extent.child("xmin").text().as_double(), 10);
    EXPECT_GT(extent.child("ymax").text().as_double(), 60);
    EXPECT_TRUE(parsed(project_text(map_of({}))).select_node("/qgis/mapcanvas/extent").node().empty());
}

TEST(PackedProject, HoldsTheTextAndIsTheSameBytesEachTime) {
    const auto text = project_text(map_of(all_tables()));
    const auto packed = packed_project(text);
    EXPECT_EQ(unpacked(packed), text);
    EXPECT_EQ(packed_project(text), packed);
    EXPECT_LT(packed.size(), text.size() / 5);
    EXPECT_EQ(hexadecimal(packed).substr(0, 8), "504b0304") << "the head of a zip archive";
}

}  // namespace
}  // namespace pipward::style
