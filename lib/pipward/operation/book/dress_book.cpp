// SPDX-License-Identifier: MIT
#include "pipward/operation/book/dress_book.h"

#include <algorithm>
#include <filesystem>

#include "pipward/dress/project_text.h"
#include "pipward/dress/style_text.h"
#include "pipward/operation/season/result_tables.h"

namespace pipward::operation {
namespace {

std::optional<dress::BloomSpan> bloom_of(const std::string& location) {
    const auto windows = book::read_result(location, "bloom_window");
    return windows ? dress::bloom_span(*windows) : std::nullopt;
}

struct Dressed {
    std::vector<dress::LayerDress> layers;
    std::vector<book::StyleText> styles;
};

Dressed dress_layers(const book::BookLook& look, const std::optional<dress::BloomSpan>& bloom,
                     const Wording& wording) {
    Dressed dressed;
    for (const auto& seen : look.layers) {
        if (auto dress = find_dress(seen.table, bloom, wording)) {
            dressed.styles.push_back({seen.table, seen.geometry_column, dress::style_text(*dress)});
            dressed.layers.push_back(std::move(*dress));
        }
    }
    return dressed;
}

book::DressReport dress_as_seen(const std::string& location, const book::BookLook& look,
                                const Wording& wording) {
    const auto bloom = bloom_of(location);
    const auto dressed = dress_layers(look, bloom, wording);
    const auto file = std::filesystem::path(location).filename().string();
    const auto map = dress::season_map(look, dressed.layers, bloom, file, wording);
    return book::write_dressing(location, dressed.styles,
                                {std::string(dress::season_map_name),
                                 dress::hexadecimal(dress::packed_project(dress::project_text(map)))});
}

}  // namespace

bool can_be_dressed(const std::string& location) {
    return location.ends_with(".gpkg");
}

book::DressReport dress_book(const std::string& location, const Wording& wording) {
    return dress_as_seen(location, book::look_at_book(location), wording);
}

Findings refresh_dress(const std::string& location, const Wording& wording) {
    try {
        const auto look = book::look_at_book(location);
        if (look.dressed) {
            dress_as_seen(location, look, wording);
        }
        return {};
    } catch (const Error& error) {
        auto findings = error.findings();
        for (auto& finding : findings) {
            finding.level = Level::warning;
            finding.remedy =
                say("The results are in the book; only its map is as it was. Run book-dress later.");
        }
        return findings;
    }
}

std::optional<dress::LayerDress> find_dress(std::string_view table,
                                            const std::optional<dress::BloomSpan>& bloom,
                                            const Wording& wording) {
    if (const auto* known = book::find_book_table(table)) {
        return dress::dress_of(*known, wording);
    }
    const auto shapes = book_result_shapes();
    const auto shape = std::ranges::find(shapes, table, &TableShape::name);
    return shape == shapes.end() ? std::nullopt : std::optional(dress::dress_of(*shape, bloom, wording));
}

}  // namespace pipward::operation
