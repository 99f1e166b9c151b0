// SPDX-License-Identifier: MIT
// Locations: passwords are never shown, and nothing is fetched from the network.
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <sys/wait.h>

#include "book/book_testing.h"
#include "pipward/book/detail/location.h"
#include "pipward/book/user_layer.h"

namespace pipward::book {
namespace {

using testing::error_of;

// Forms of a connection text: PostgreSQL 15 documentation, 34.1.1 Connection Strings (from memory).
TEST(Location, APasswordIsNeverShown) {
    for (const auto* location :
         {"PG:host=h dbname=orchard password=secret", "PG:password = secret host=h dbname=orchard",
          "PG:password='a secret one' host=h dbname=orchard",
          "PG:password='it\\'s secret' host=h dbname=orchard", "PG:password=a secret host=h dbname=orchard",
          "pg:PASSWORD=secret host=h dbname=orchard", "PG:host=h dbname=orchard sslpassword=secret",
          "postgresql://me:secret@h/orchard", "postgres://me:secret@h/orchard",
          "postgres://me:se/secret@h/orchard", "postgresql://h/orchard?user=me&password=secret",
          "postgresql://h/orchard?password=secret&user=me", "PG:postgresql://me:secret@h/orchard"}) {
        const auto shown = shown_location(location);
        EXPECT_EQ(shown.find("secret"), std::string::npos) << shown;
        EXPECT_NE(shown.find('h'), std::string::npos) << shown;
        EXPECT_NE(shown.find("orchard"), std::string::npos) << shown;
        EXPECT_TRUE(is_on_server(location)) << location;
    }
    EXPECT_EQ(shown_location("PG:host=h dbname=orchard"), "PG:host=h dbname=orchard");
    EXPECT_EQ(shown_location("postgresql://me@h/orchard"), "postgresql://me@h/orchard");
    EXPECT_EQ(shown_location("C:/password=x/book.gpkg"), "C:/password=x/book.gpkg");
}

TEST(Location, WhatTheDatabaseSaysOfItRepeatsNoPassword) {
    const std::string location = "PG:host=h password=my secret dbname=orchard";
    for (const auto* said : {"missing \"=\" after \"secret\" in connection info string",
                             "invalid connection option \"secret\""}) {
        EXPECT_EQ(detail::without_secrets(said, location).find("secret"), std::string::npos) << said;
    }
    EXPECT_EQ(detail::without_secrets("no \"s3cret\" here", "PG:password='s3cret'"), "no \"***\" here");
}

class Sources : public testing::BookTest {
  protected:
    std::string put(const std::string& name, const std::string& text) const {
        std::ofstream((folder / name).string()) << text;
        return (folder / name).string();
    }
    void expect_refused(const std::string& file) const {
        const auto error = error_of([&] { read_user_layer(file, {}); });
        EXPECT_EQ(error.trouble(), Trouble::access) << file;
    }
};

TEST_F(Sources, TheNetworkIsNeverAsked) {
    make_book();
    for (const auto* location :
         {"/vsicurl/http://127.0.0.1:9/a.geojson", "/vsizip//vsicurl/http://127.0.0.1:9/a.zip",
          "/vsizip/{/vsicurl/http://127.0.0.1:9/a.zip}/a.csv", "/vsis3/bucket/a.gpkg",
          "http://127.0.0.1:9/a.geojson", "https://127.0.0.1:9/a.csv", "WFS:http://127.0.0.1:9/",
          "/VSICURL/http://127.0.0.1:9/a"}) {
        for (const auto& error :
             {error_of([&] { read_user_layer(location, {}); }), error_of([&] { read_book(location); })}) {
            EXPECT_EQ(error.trouble(), Trouble::access) << location;
            EXPECT_NE(error.findings().at(0).message.text().find("network"), std::string::npos)
                << error.what();
        }
    }
}

TEST_F(Sources, FormatsThatLeadElsewhereAreRefused) {
    const auto points = put("points.csv", "name,x,y\nA,1,2\n");
    expect_refused(put("a.vrt", "<OGRVRTDataSource><OGRVRTLayer name=\"points\"><SrcDataSource>" + points +
                                    "</SrcDataSource></OGRVRTLayer></OGRVRTDataSource>"));
    expect_refused(put("a.xml", "<OGRWFSDataSource><URL>http://127.0.0.1:9/</URL></OGRWFSDataSource>"));
    expect_refused("<OGRVRTDataSource><OGRVRTLayer name=\"points\"><SrcDataSource>" + points +
                   "</SrcDataSource></OGRVRTLayer></OGRVRTDataSource>");
    EXPECT_EQ(read_user_layer(points, {}).features.size(), 1U);
}

// A GeoJSON of 2008 may name its coordinate system by a link.
TEST_F(Sources, AFileThatNamesADocumentElsewhereIsReadWithoutIt) {
    const auto file = put("a.geojson",
                          R"({"type": "FeatureCollection", "crs": {"type": "link", "properties": {"href":
                          "http://127.0.0.1:9/crs", "type": "ogcwkt"}}, "features": [{"type": "Feature",
                          "properties": {}, "geometry": {"type": "Point", "coordinates": [9, 48]}}]})");
    try {
        EXPECT_EQ(read_user_layer(file, {}).features.size(), 1U);
    } catch (const Error& error) {
        EXPECT_NE(std::string(error.what()).find("network"), std::string::npos) << error.what();
    }
}

TEST_F(Sources, APipeIsNotWaitedFor) {
    const auto pipe = (folder / "pipe.gpkg").string();
    ASSERT_EQ(mkfifo(pipe.c_str(), 0600), 0);
    expect_refused(pipe);
    EXPECT_EQ(error_of([&] { read_book(pipe); }).trouble(), Trouble::access);
}

TEST_F(Sources, TwoWhoMakeOneBookAtOnceMakeOneWholeBook) {
    std::vector<pid_t> children;
    for (int i = 0; i < 3; ++i) {
        children.push_back(fork());
        if (children.back() == 0) {
            try {
                create_book(book, "EPSG:32632");
                _exit(0);
            } catch (const std::exception&) {
                _exit(1);
            }
        }
    }
    int made = 0;
    for (const auto child : children) {
        int status = 0;
        waitpid(child, &status, 0);
        made += status == 0 ? 1 : 0;
    }
    EXPECT_EQ(made, 1);
    EXPECT_EQ(files(), std::vector<std::string>{"book.gpkg"});
    EXPECT_TRUE(read_book(book).findings.empty());
}

}  // namespace
}  // namespace pipward::book
