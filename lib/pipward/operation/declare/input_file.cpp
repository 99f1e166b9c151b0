// SPDX-License-Identifier: MIT
#include "pipward/operation/declare/detail/input_file.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "pipward/value/complaint.h"

namespace pipward::operation::detail {
namespace {

constexpr std::size_t most_bytes = 200'000'000;  // a century of hourly readings is a tenth of this

constexpr std::size_t part_size = 1U << 16;

Error unreadable(const std::string& path, const Sentence& why, const Sentence& remedy) {
    return {Trouble::access, about_table(Level::error, path, why, remedy)};
}

}  // namespace

std::string read_input_file(const std::string& path) {
    std::error_code ignored;
    if (!std::filesystem::exists(path, ignored)) {
        throw unreadable(path, say("There is no such file."), say("Check the path."));
    }
    if (std::filesystem::is_directory(path, ignored)) {
        throw unreadable(path, say("This is a folder, not a file."), say("Name a file in it."));
    }
    if (!std::filesystem::is_regular_file(path, ignored)) {
        throw unreadable(path, say("This is no file but a pipe or a device."),
                         say("Save its content as a file and name that."));
    }
    std::ifstream file(path, std::ios::binary);
    if (!file) {
        throw unreadable(path, say("The file cannot be opened."), say("Check that you may read it."));
    }
    std::string text;
    // In one piece: a text that grows by doubling needs three times its size.
    text.reserve(std::min<std::size_t>(std::filesystem::file_size(path, ignored), most_bytes + part_size) +
                 part_size);
    for (std::string part(part_size, '\0'); file;
         text.append(part, 0, static_cast<std::size_t>(file.gcount()))) {
        file.read(part.data(), static_cast<std::streamsize>(part.size()));
        if (text.size() > most_bytes) {
            throw unreadable(path, say("The file is larger than 200 MB."),
                             say("Give the days of one station only."));
        }
    }
    if (file.bad()) {
        throw unreadable(path, say("Reading the file failed half-way."),
                         say("Check the disk or the network share."));
    }
    return text;
}

}  // namespace pipward::operation::detail
