// SPDX-License-Identifier: MIT
#include "pipward/place/row_courses.h"

#include <algorithm>
#include <map>

#include "pipward/value/complaint.h"
#include "pipward/value/plain_text.h"

namespace pipward::place {
namespace {

/// One more than the highest number that is a row's name in the block.
std::string free_name(const std::string& block, const Orchard& orchard) {
    int highest = 0;
    for (const auto& row : orchard.rows) {
        const bool digits = !row.name.empty() && row.name.size() < 7 &&
                            row.name.find_first_not_of("0123456789") == std::string::npos;
        if (row.block == block && digits) {
            highest = std::max(highest, std::stoi(row.name));
        }
    }
    return std::to_string(highest + 1);
}

Error no_row_column(const std::string& column) {
    return {Trouble::usage, about_parameter("row-column", column, say("The layer has no such column."),
                                            say("Name the column that holds the rows' names."))};
}

std::string row_column(const CoursesWish& wish, const GroundLayer& layer, bool lines) {
    if (!wish.row_column.empty()) {
        const auto found = std::ranges::find(layer.columns, wish.row_column);
        return found == layer.columns.end() ? throw no_row_column(wish.row_column) : *found;
    }
    return lines ? column_like(layer, {"row", "row_name", "name"}) : column_like(layer, {"row", "row_name"});
}

std::string text_in(const GroundFeature& feature, const std::string& column) {
    const auto found = feature.texts.find(column);
    return found == feature.texts.end() ? std::string{} : found->second;
}

std::vector<RowCourse> courses_of_lines(const GroundLayer& layer, const std::string& column) {
    std::vector<RowCourse> courses;
    for (const auto& feature : layer.features) {
        if (feature.is_line) {
            courses.push_back({text_in(feature, column), feature.points});
        }
    }
    return courses;
}

/// Points of one name make one row, in the order of the layer.
std::vector<RowCourse> courses_of_points(const GroundLayer& layer, const std::string& column) {
    std::vector<RowCourse> courses;
    std::map<std::string, std::size_t> index;
    for (const auto& feature : layer.features) {
        const auto name = text_in(feature, column);
        const auto [known, first] = index.emplace(name, courses.size());
        if (first) {
            courses.push_back({name, {}});
        }
        auto& points = courses[known->second].points;
        points.insert(points.end(), feature.points.begin(), feature.points.end());
    }
    return courses;
}

void name_courses(std::vector<RowCourse>& courses, const std::string& first) {
    std::optional<std::string> name = first;
    for (auto& course : courses) {
        if (is_blank(course.name)) {
            course.name = name.value_or("");
            name = name ? next_name(*name) : std::nullopt;
        }
    }
}

void expect_names(const std::vector<RowCourse>& courses, const std::string& first) {
    if (std::ranges::any_of(courses, [](const RowCourse& course) { return is_blank(course.name); })) {
        throw Error(
            Trouble::usage,
            about_parameter("row", first, say("The names of the further rows do not follow from this one."),
                            say("Give a first row that ends in a number, as in 1 or B01.")));
    }
}

std::vector<RowCourse> block_of(const CoursesWish& wish, std::vector<RowCourse> courses) {
    if (courses.size() != 1) {
        throw Error(
            Trouble::usage,
            about_parameter("rows", std::to_string(wish.rows),
                            say("A block is laid from one base line; there are {} lines.", courses.size()),
                            say("Give one line, or leave rows out to lay each line as a row.")));
    }
    return block_courses(courses.front(), {wish.rows, *wish.row_distance, wish.side, wish.alternate});
}

}  // namespace

Findings check_courses(const CoursesWish& wish) {
    Findings findings;
    if (is_blank(wish.block)) {
        findings.push_back(about_parameter("block", wish.block, say("The block has no name."),
                                           say("Name the block that the rows stand in.")));
    }
    if (wish.rows > 1 && (!wish.row_distance || wish.row_distance->value <= 0)) {
        findings.push_back(about_parameter("row-distance", "",
                                           say("Several rows need a distance between them."),
                                           say("Give the distance from row to row in metres.")));
    }
    return findings;
}

std::vector<RowCourse> courses_of(const CoursesWish& wish, const GroundLayer& layer, const Orchard& orchard) {
    const bool lines = std::ranges::any_of(layer.features, &GroundFeature::is_line);
    const auto column = row_column(wish, layer, lines);
    auto courses = lines ? courses_of_lines(layer, column) : courses_of_points(layer, column);
    const auto first = is_blank(wish.row) ? free_name(wish.block, orchard) : wish.row;
    name_courses(courses, first);
    if (wish.rows > 1) {
        courses = block_of(wish, std::move(courses));
    } else if (wish.alternate) {
        for (std::size_t i = 1; i < courses.size(); i += 2) {
            courses[i].from_the_end = true;
        }
    }
    if (courses.empty()) {
        throw Error(Trouble::input, about_table(Level::error, "", say("The layer has no point and no line."),
                                                say("Name a layer of lines or points.")));
    }
    expect_names(courses, first);
    return courses;
}

}  // namespace pipward::place
