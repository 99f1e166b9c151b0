// SPDX-License-Identifier: MIT
// The shape of the house: each room includes only rooms above it, and outside libraries stay in their rooms.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "paths.h"

namespace {

namespace fs = std::filesystem;

// A room and the rooms it may include, itself aside. Kept in the order of the house.
const std::vector<std::pair<std::string, std::set<std::string>>> house{
    {"value", {}},
    {"math", {"value"}},
    {"record", {"value", "math"}},
    {"weather", {"value", "math", "record"}},
    {"clock", {"value", "math"}},
    {"bloom", {"value", "math", "record", "weather", "clock"}},
    {"lineage", {"value", "math", "record"}},
    {"place", {"value", "math", "record"}},
    {"cross", {"value", "math", "record", "weather", "clock", "bloom", "lineage"}},
    {"seed", {"value", "math", "record", "weather", "clock", "bloom", "lineage", "place", "cross"}},
    {"season", {"value", "math", "record", "weather", "clock", "bloom", "lineage", "place", "cross", "seed"}},
    {"book", {"value", "math", "record"}},
    {"intake",
     {"value", "math", "record", "weather", "clock", "bloom", "lineage", "place", "cross", "seed", "book"}},
    {"style", {"value", "math", "record", "book"}},
    {"paper",
     {"value", "math", "record", "weather", "clock", "bloom", "lineage", "place", "cross", "seed", "season"}},
    {"operation",
     {"value", "math", "record", "weather", "clock", "bloom", "lineage", "place", "cross", "seed", "season",
      "book", "intake", "style", "paper"}},
};

struct Include {
    fs::path file;
    std::string room;
    std::string target;
};

std::vector<Include> includes_of(const fs::path& room) {
    static const std::regex line_form(R"(^\s*#\s*include\s*["<]([^">]+)[">])");
    std::vector<Include> found;
    for (const auto& entry : fs::recursive_directory_iterator(room)) {
        const auto ending = entry.path().extension();
        if (ending != ".h" && ending != ".cpp") {
            continue;
        }
        std::ifstream file(entry.path());
        for (std::string line; std::getline(file, line);) {
            if (std::smatch match; std::regex_search(line, match, line_form)) {
                found.push_back({entry.path(), room.filename().string(), match[1]});
            }
        }
    }
    return found;
}

const fs::path library = pipward::testing::project_file("lib/pipward");

TEST(House, EveryFolderOfTheLibraryIsARoomOfTheHouse) {
    std::set<std::string> known;
    for (const auto& [room, above] : house) {
        known.insert(room);
        EXPECT_TRUE(fs::is_directory(library / room)) << room;
    }
    for (const auto& entry : fs::directory_iterator(library)) {
        if (entry.is_directory()) {
            EXPECT_TRUE(known.count(entry.path().filename().string())) << entry.path();
        }
    }
}

TEST(House, ARoomIncludesOnlyRoomsAboveIt) {
    static const std::regex ours("^pipward/([a-z]+)/.*");
    int seen = 0;
    for (const auto& [room, above] : house) {
        for (const auto& include : includes_of(library / room)) {
            std::smatch match;
            if (!std::regex_match(include.target, match, ours)) {
                EXPECT_EQ(include.target.rfind("../", 0), std::string::npos)
                    << include.file << " " << include.target;
                continue;
            }
            ++seen;
            EXPECT_TRUE(match[1] == room || above.count(match[1]))
                << include.file << " includes " << include.target;
        }
    }
    EXPECT_GT(seen, 50);
}

TEST(House, NoRoomHoldsMoreThanAFifthOfTheLibrary) {
    std::map<std::string, int> lines;
    int all = 0;
    for (const auto& entry : fs::recursive_directory_iterator(library)) {
        if (entry.path().extension() == ".h" || entry.path().extension() == ".cpp") {
            std::ifstream file(entry.path());
            const auto room = fs::relative(entry.path(), library).begin()->string();
            for (std::string line; std::getline(file, line);) {
                ++lines[room];
                ++all;
            }
        }
    }
    EXPECT_GT(all, 10'000);
    for (const auto& [room, own] : lines) {
        EXPECT_LE(5 * own, all) << room << " has " << own << " of " << all
                                << " lines: it is more than one room";
    }
}

TEST(House, OutsideLibrariesStayInTheirRooms) {
    static const std::regex qt_or_desktop("^(Q[A-Z]|Qt|qgs).*");
    static const std::regex vector_library("^(gdal|ogr|cpl|sqlite3).*");
    static const std::regex earth_library("^(proj|geodesic).*");
    static const std::regex plane_library("^geos.*");
    static const std::regex statistics("^boost/.*");
    static const std::regex matrices("^Eigen/.*");
    static const std::regex json("^nlohmann/.*");
    static const std::regex xml("^pugi.*");
    static const std::regex zip("^zip.*");
    static const std::regex character_widths("^glib.*");
    static const std::regex printing("^(cairo|pango|qrencode|libical).*");
    for (const auto& [room, above] : house) {
        for (const auto& include : includes_of(library / room)) {
            EXPECT_FALSE(std::regex_match(include.target, qt_or_desktop)) << include.file;
            if (room != "book") {
                EXPECT_FALSE(std::regex_match(include.target, vector_library)) << include.file;
            }
            if (room != "style") {
                EXPECT_FALSE(std::regex_match(include.target, zip)) << include.file;
            }
            if (room != "style" && room != "paper") {
                EXPECT_FALSE(std::regex_match(include.target, xml)) << include.file;
            }
            if (room != "paper") {
                EXPECT_FALSE(std::regex_match(include.target, printing)) << include.file;
            }
            if (room != "record") {
                EXPECT_FALSE(std::regex_match(include.target, character_widths)) << include.file;
            }
            if (room != "place") {
                EXPECT_FALSE(std::regex_match(include.target, earth_library)) << include.file;
            }
            if (room != "math") {
                EXPECT_FALSE(std::regex_match(include.target, plane_library)) << include.file;
                EXPECT_FALSE(std::regex_match(include.target, statistics)) << include.file;
            }
            if (room != "math" && room != "lineage") {
                EXPECT_FALSE(std::regex_match(include.target, matrices)) << include.file;
            }
            if (room != "operation") {
                EXPECT_FALSE(std::regex_match(include.target, json)) << include.file;
            }
        }
    }
}

// Ids as the golden catalogue has them.
std::set<std::string> operation_ids() {
    static const std::regex id_line(R"re(^    "id": "([a-z-]+)",$)re");
    std::ifstream catalogue(pipward::testing::project_file("tests/operation/catalogue.json"));
    std::set<std::string> ids;
    for (std::string line; std::getline(catalogue, line);) {
        if (std::smatch match; std::regex_match(line, match, id_line)) {
            ids.insert(match[1]);
        }
    }
    return ids;
}

// They ask for a role, or show the whole list.
TEST(House, NoHostNamesAnOperation) {
    static const std::set<std::string> endings{".h", ".cpp", ".py"};
    static const std::regex literal(R"re(["']([a-z]+[-_][a-z_-]+)["'])re");
    const auto ids = operation_ids();
    ASSERT_GT(ids.size(), 40U);
    int literals = 0;
    for (const auto& entry : fs::recursive_directory_iterator(pipward::testing::project_file("plugin"))) {
        if (!endings.contains(entry.path().extension().string())) {
            continue;
        }
        std::ifstream file(entry.path());
        for (std::string line; std::getline(file, line);) {
            for (std::sregex_iterator at(line.begin(), line.end(), literal), end; at != end; ++at) {
                ++literals;
                EXPECT_FALSE(ids.contains((*at)[1])) << entry.path() << ": " << line;
            }
        }
    }
    EXPECT_GT(literals, 20);
}

TEST(House, EverySourceNamesItsLicence) {
    for (const auto* folder : {"lib", "plugin", "tests", "sample-gpkg"}) {
        for (const auto& entry : fs::recursive_directory_iterator(pipward::testing::project_file(folder))) {
            const auto ending = entry.path().extension();
            if (ending != ".h" && ending != ".cpp") {
                continue;
            }
            std::ifstream file(entry.path());
            std::string first;
            std::getline(file, first);
            EXPECT_EQ(first.rfind("// SPDX-License-Identifier: ", 0), 0U) << entry.path();
        }
    }
}

}  // namespace
