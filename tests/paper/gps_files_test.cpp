// SPDX-License-Identifier: MIT
// The structure that the schemas of GPX 1.1 and KML 2.2 ask for.
#include "pipward/paper/gps_files.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cstring>
#include <pugixml.hpp>

namespace pipward::paper {
namespace {

GpsFile sample() {
    GpsFile file{"Larkfold: Upper & Lower", {}, {}};
    file.waypoints = {{"UP-05-04", "block Upper, row 5, position 4; 16-01-04", 48.1363812, 9.3002512,
                       Metres{612.3}, TreePurpose::seedling, "Upper"},
                      {"O'Hara \"9\" & <b>", "", -33.5, 180.0, {}, TreePurpose::parent, "Lower"},
                      {"🍎 りんご\x01", "no block", 0, -180, {}, TreePurpose::other, ""}};
    file.route = {file.waypoints[1], file.waypoints[0]};
    return file;
}

pugi::xml_document parsed(const std::string& text) {
    pugi::xml_document document;
    const auto result = document.load_buffer(text.data(), text.size());
    EXPECT_TRUE(result) << result.description();
    return document;
}

// The order of a point's children in the schema (science notes: from memory).
constexpr std::array order{"ele",  "time", "magvar", "geoidheight", "name", "cmt",
                           "desc", "src",  "link",   "sym",         "type"};

std::size_t rank(const char* name) {
    return static_cast<std::size_t>(
        std::ranges::find_if(order, [&](const char* other) { return std::strcmp(name, other) == 0; }) -
        order.begin());
}

TEST(GpsFiles, GpxHasTheStructureOfItsSchema) {
    const auto document = parsed(gpx_text(sample()));
    const auto gpx = document.document_element();
    EXPECT_STREQ(gpx.name(), "gpx");
    EXPECT_STREQ(gpx.attribute("xmlns").value(), "http://www.topografix.com/GPX/1/1");
    EXPECT_STREQ(gpx.attribute("version").value(), "1.1");
    EXPECT_STREQ(gpx.attribute("creator").value(), "Pipward");
    std::string kinds;
    for (const auto child : gpx.children()) {
        kinds += std::string(child.name()) + " ";
    }
    EXPECT_EQ(kinds, "metadata wpt wpt wpt rte ");
    for (const auto point : gpx.children("wpt")) {
        EXPECT_LE(std::abs(point.attribute("lat").as_double()), 90);
        EXPECT_GE(point.attribute("lon").as_double(), -180);
        EXPECT_LT(point.attribute("lon").as_double(), 180);
        std::size_t last = 0;
        for (const auto child : point.children()) {
            EXPECT_LT(rank(child.name()), order.size()) << child.name();
            EXPECT_GE(rank(child.name()), last) << child.name();
            last = rank(child.name());
        }
    }
}

TEST(GpsFiles, GpxKeepsNamesPlacesHeightsAndTheWalk) {
    const auto document = parsed(gpx_text(sample()));
    const auto gpx = document.document_element();
    const auto first = gpx.child("wpt");
    EXPECT_STREQ(first.attribute("lat").value(), "48.1363812");
    EXPECT_STREQ(first.attribute("lon").value(), "9.3002512");
    EXPECT_STREQ(first.child_value("ele"), "612.30");
    EXPECT_STREQ(first.child_value("name"), "UP-05-04");
    EXPECT_STREQ(first.child_value("desc"), "block Upper, row 5, position 4; 16-01-04");
    const auto second = first.next_sibling("wpt");
    EXPECT_STREQ(second.child_value("name"), "O'Hara \"9\" & <b>");
    EXPECT_STREQ(second.attribute("lon").value(), "-180.0000000");
    EXPECT_FALSE(second.child("ele"));
    EXPECT_STREQ(second.next_sibling("wpt").child_value("name"), "🍎 りんご\xEF\xBF\xBD");
    EXPECT_STREQ(gpx.child("rte").child("rtept").child_value("name"), "O'Hara \"9\" & <b>");
}

TEST(GpsFiles, KmlPutsTheTreesOfABlockIntoAFolder) {
    const auto document = parsed(kml_text(sample()));
    const auto kml = document.document_element();
    EXPECT_STREQ(kml.attribute("xmlns").value(), "http://www.opengis.net/kml/2.2");
    const auto root = kml.child("Document");
    EXPECT_STREQ(root.child_value("name"), "Larkfold: Upper & Lower");
    const auto folder = root.child("Folder");
    EXPECT_STREQ(folder.child_value("name"), "Upper");
    const auto mark = folder.child("Placemark");
    EXPECT_STREQ(mark.child_value("name"), "UP-05-04");
    EXPECT_STREQ(mark.child("Point").child_value("coordinates"), "9.3002512,48.1363812");
    EXPECT_STREQ(folder.next_sibling("Folder").child("Placemark").child_value("name"), "O'Hara \"9\" & <b>");
    EXPECT_EQ(std::distance(root.children("Placemark").begin(), root.children("Placemark").end()), 2);
}

TEST(GpsFiles, EveryKmlStyleThatIsUsedIsThere) {
    const auto document = parsed(kml_text(sample()));
    for (const auto& node : document.select_nodes("//styleUrl")) {
        const std::string url = node.node().child_value();
        ASSERT_EQ(url.front(), '#');
        EXPECT_TRUE(document.select_node(("//Style[@id='" + url.substr(1) + "']").c_str())) << url;
    }
}

TEST(GpsFiles, KmlDescriptionsAreTextForReadersOfHtml) {
    GpsFile file{"Trees", {}, {}};
    file.waypoints = {{"A-1", "fruit < 60 mm & <b>red</b>", 48, 9, {}, TreePurpose::other, ""}};
    const auto document = parsed(kml_text(file));
    const auto kml = document.document_element().child("Document");
    // What the XML holds is the text as HTML.
    EXPECT_STREQ(kml.child("Placemark").child_value("description"),
                 "fruit &lt; 60 mm &amp; &lt;b&gt;red&lt;/b&gt;");
    EXPECT_STREQ(parsed(gpx_text(file)).document_element().child("wpt").child_value("desc"),
                 "fruit < 60 mm & <b>red</b>");
}

}  // namespace
}  // namespace pipward::paper
