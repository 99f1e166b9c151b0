// SPDX-License-Identifier: MIT
// Names of the house: a room's names live in the room's namespace, a type is defined once in it, and what is
// inside of a room is named by no other.
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

const fs::path project_top = pipward::testing::project_file("");
const fs::path rooms_folder = project_top / "lib" / "pipward";

/// Rooms whose names every other room speaks: their namespaces are inline.
const std::set<std::string> spoken_everywhere{"value", "record"};

std::vector<fs::path> sources_below(const fs::path& folder) {
    std::vector<fs::path> found;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (entry.path().extension() == ".h" || entry.path().extension() == ".cpp") {
            found.push_back(entry.path());
        }
    }
    return found;
}

std::string room_of(const fs::path& file) {
    return fs::relative(file, rooms_folder).begin()->string();
}

/// The namespaces a file opens at its left margin, and the types it defines there. Sources are laid out by
/// the formatter, so what stands at the margin is what belongs to a namespace.
struct Opened {
    std::set<std::string> namespaces;
    std::vector<std::string> types;  ///< with their namespace; those of an anonymous one are left out
};

Opened opened_by(const fs::path& file) {
    static const std::regex opening(R"(^namespace( [A-Za-z_:]+( [A-Za-z_:]+)?)? ?\{$)");
    static const std::regex closing(R"(^\}  // namespace.*)");
    static const std::regex type(
        R"(^(struct|class|enum class|enum|union) ([A-Za-z_0-9]+)( final)?( :[^:].*)?( \{.*)?$)");
    Opened opened;
    std::vector<std::string> stack;
    std::ifstream stream(file);
    for (std::string line; std::getline(stream, line);) {
        std::smatch match;
        if (std::regex_match(line, match, opening)) {
            auto name = match[1].str();
            if (const auto word = name.find("inline "); word != std::string::npos) {
                name.erase(word, 7);
            }
            stack.push_back(name.empty() ? "" : name.substr(1));
            if (!name.empty() && stack.size() == 1) {
                opened.namespaces.insert(stack.back());
            }
        } else if (std::regex_match(line, closing) && !stack.empty()) {
            stack.pop_back();
        } else if (line.find('{') != std::string::npos && std::regex_match(line, match, type)) {
            std::string name;
            bool has_no_name = false;
            for (const auto& space : stack) {
                has_no_name = has_no_name || space.empty();
                name += space + "::";
            }
            if (!has_no_name) {
                opened.types.push_back(name + match[2].str());
            }
        }
    }
    return opened;
}

TEST(Names, EverySourceOfARoomOpensTheNamespaceOfTheRoom) {
    int seen = 0;
    for (const auto& file : sources_below(rooms_folder)) {
        if (file.filename() == "spoken.h") {
            continue;  // it is what makes two rooms inline
        }
        const auto home = "pipward::" + room_of(file);
        for (const auto& name : opened_by(file).namespaces) {
            ++seen;
            EXPECT_TRUE(name == home || name.starts_with(home + "::"))
                << file << " opens " << name << "; its room is " << home;
        }
    }
    EXPECT_GT(seen, 400);
}

TEST(Names, ATypeIsDefinedOnceInItsNamespace) {
    std::map<std::string, std::vector<std::string>> places;
    for (const auto* folder : {"lib", "plugin", "sample-gpkg"}) {
        for (const auto& file : sources_below(project_top / folder)) {
            for (auto name : opened_by(file).types) {
                // What everybody speaks is found as pipward::X: there it must be alone as well.
                for (const auto& room : spoken_everywhere) {
                    if (name.starts_with("pipward::" + room + "::")) {
                        name.erase(9, room.size() + 2);
                    }
                }
                places[name].push_back(fs::relative(file, project_top).string());
            }
        }
    }
    EXPECT_GT(places.size(), 300U);
    for (const auto& [name, files] : places) {
        std::string where;
        for (const auto& file : files) {
            where += " " + file;
        }
        EXPECT_EQ(files.size(), 1U) << name << " is defined in" << where;
    }
}

TEST(Names, WhatIsInsideOfARoomIsNamedByNoOtherRoom) {
    static const std::regex included(R"re(^#include "pipward/([a-z]+)/(?:[a-z]+/)?detail/.*)re");
    static const std::regex named(R"(\b([a-z]+)::detail::)");
    for (const auto* folder : {"lib", "plugin", "sample-gpkg", "tests"}) {
        for (const auto& file : sources_below(project_top / folder)) {
            const auto from = fs::relative(file, project_top);
            auto part = from.begin();
            const bool is_test = *part == "tests";
            ++part;
            const auto room = is_test ? part->string() : *part == "pipward" ? room_of(file) : std::string{};
            std::ifstream stream(file);
            for (std::string line; std::getline(stream, line);) {
                std::smatch match;
                if (std::regex_search(line, match, included) || std::regex_search(line, match, named)) {
                    EXPECT_EQ(match[1].str(), room) << from << ": " << line;
                }
            }
        }
    }
}

/// What each header of the rooms_folder is included by, both as paths below lib/ or the project.
std::map<std::string, std::set<std::string>> users_of_headers() {
    static const std::regex included(R"re(^#include "(pipward/[^"]+)".*)re");
    std::map<std::string, std::set<std::string>> users;
    for (const auto* folder : {"lib", "plugin", "sample-gpkg", "tests", "docs"}) {
        for (const auto& file : sources_below(project_top / folder)) {
            const auto from = fs::relative(file, project_top);
            std::ifstream stream(file);
            for (std::string line; std::getline(stream, line);) {
                std::smatch match;
                if (std::regex_match(line, match, included)) {
                    users[match[1].str()].insert(from.string());
                }
            }
        }
    }
    return users;
}

/// The room for whose sources a file speaks: of the rooms_folder, or of the tests of a room.
std::string speaks_for(const std::string& user) {
    static const std::regex of_library("lib/pipward/([a-z]+)/.*");
    static const std::regex of_tests("tests/([a-z]+)/.*");
    std::smatch match;
    return std::regex_match(user, match, of_library) || std::regex_match(user, match, of_tests)
               ? match[1].str()
               : std::string{};
}

TEST(Names, AHeaderThatOnlyItsRoomIncludesIsInsideOfTheRoom) {
    // One published formula a header: callers of the library may want any of them.
    const std::set<std::string> whole_rooms{"clock"};
    const auto users = users_of_headers();
    std::set<std::string> open;
    std::map<std::string, std::string> rooms;  // of the headers that are not in a detail/
    for (const auto& file : sources_below(rooms_folder)) {
        const auto name = "pipward/" + fs::relative(file, rooms_folder).string();
        if (file.extension() == ".h" && name.find("/detail/") == std::string::npos) {
            rooms[name] = room_of(file);
        }
    }
    for (const auto& [name, room] : rooms) {
        const auto found = users.find(name);
        const bool wanted = found != users.end() && std::ranges::any_of(found->second, [&](const auto& user) {
                                return speaks_for(user) != room;
                            });
        if (wanted || whole_rooms.contains(room)) {
            open.insert(name);
        }
    }
    // What an open header includes is open with it.
    for (bool grows = true; grows;) {
        grows = false;
        for (const auto& [name, room] : rooms) {
            const auto found = users.find(name);
            if (!open.contains(name) && found != users.end() &&
                std::ranges::any_of(found->second, [&](const auto& user) {
                    return user.starts_with("lib/") && open.contains(user.substr(4));
                })) {
                grows = open.insert(name).second;
            }
        }
    }
    EXPECT_GT(open.size(), 100U);
    for (const auto& [name, room] : rooms) {
        EXPECT_TRUE(open.contains(name)) << name << " is included by its room alone: it belongs in detail/";
    }
}

}  // namespace
