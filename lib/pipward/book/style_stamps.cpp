// SPDX-License-Identifier: MIT
#include "pipward/book/detail/style_stamps.h"

#include <fmt/format.h>

#include <cstdint>

#include "pipward/book/map_style.h"

namespace pipward::book::detail {
namespace {

constexpr std::string_view style_sentence =
    "Written by Pipward, which replaces it. Save yours under another name.";
constexpr std::string_view maker = "Pipward";

}  // namespace

std::string fingerprint(std::string_view text) {
    std::uint64_t hash = 0xCBF29CE484222325;
    for (const unsigned char byte : text) {
        hash = (hash ^ byte) * 0x100000001B3;
    }
    return fmt::format("{:016x}", hash);
}

std::string style_mark(std::string_view text) {
    return fmt::format("{} [{}]", style_sentence, fingerprint(text));
}

bool is_our_style(std::string_view description, std::string_view text) {
    return description == style_mark(text);
}

std::string project_mark(std::string_view content, const std::string& time) {
    return fmt::format(R"({{"last_modified_time":"{}","last_modified_user":"{}","fingerprint":"{}"}})", time,
                       maker, fingerprint(content));
}

bool is_our_project(std::string_view metadata, std::string_view content) {
    return metadata.find(fmt::format(R"("fingerprint":"{}")", fingerprint(content))) !=
           std::string_view::npos;
}

bool carries_our_style(Session& session) {
    if (session.server) {
        return false;
    }
    const auto any = [&](const std::string& table, const std::string& condition) {
        return has_table(session, table) &&
               !query(session, fmt::format("SELECT 1 FROM {} WHERE {} LIMIT 1", table, condition)).empty();
    };
    return any("layer_styles", fmt::format("styleName = {}", quoted_text(style_name))) ||
           any("qgis_projects", "CAST(metadata AS TEXT) LIKE '%\"last_modified_user\":\"Pipward\"%'");
}

}  // namespace pipward::book::detail
