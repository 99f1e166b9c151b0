// SPDX-License-Identifier: MIT
#include "pipward/operation/book/style_book.h"

#include <algorithm>
#include <exception>
#include <filesystem>

#include "pipward/operation/season/result_tables.h"
#include "pipward/style/project_text.h"
#include "pipward/style/style_text.h"
#include "pipward/value/complaint.h"

namespace pipward::operation {
namespace {

std::optional<style::BloomSpan> bloom_of(const std::string& location) {
    const auto windows = book::read_result(location, "bloom_window");
    return windows ? style::bloom_span(*windows) : std::nullopt;
}

struct Styled {
    std::vector<style::LayerStyle> layers;
    std::vector<book::StyleText> styles;
};

Styled style_layers(const book::BookLook& look, const std::optional<style::BloomSpan>& bloom,
                    const Wording& wording) {
    Styled styled;
    for (const auto& seen : look.layers) {
        if (auto style = find_style(seen.table, bloom, wording)) {
            styled.styles.push_back({seen.table, seen.geometry_column, style::style_text(*style)});
            styled.layers.push_back(std::move(*style));
        }
    }
    return styled;
}

book::StyleReport style_as_seen(const std::string& location, const book::BookLook& look,
                                const Wording& wording) {
    const auto bloom = bloom_of(location);
    const auto styled = style_layers(look, bloom, wording);
    const auto file = std::filesystem::path(location).filename().string();
    const auto map = style::season_map(look, styled.layers, bloom, file, wording);
    return book::write_map_style(location, styled.styles,
                                 {std::string(style::season_map_name),
                                  style::hexadecimal(style::packed_project(style::project_text(map)))});
}

}  // namespace

bool can_be_styled(const std::string& location) {
    return location.ends_with(".gpkg");
}

book::StyleReport style_book(const std::string& location, const Wording& wording) {
    return style_as_seen(location, book::look_at_book(location), wording);
}

Findings refresh_style(const std::string& location, const Wording& wording) {
    try {
        const auto look = book::look_at_book(location);
        if (look.styled) {
            style_as_seen(location, look, wording);
        }
        return {};
    } catch (const Error& error) {
        auto findings = error.findings();
        for (auto& finding : findings) {
            finding.level = Level::warning;
            finding.remedy =
                say("The results are in the book; only its map style was not updated. Run book-style later.");
        }
        return findings;
    } catch (const std::exception& fault) {
        return {about_table(Level::warning, location, say("Its map style was not updated: {}.", fault.what()),
                            say("The results are in the book. Run book-style later."))};
    }
}

std::optional<style::LayerStyle> find_style(std::string_view table,
                                            const std::optional<style::BloomSpan>& bloom,
                                            const Wording& wording) {
    if (const auto* known = book::find_book_table(table)) {
        return style::style_of_layer(*known, wording);
    }
    const auto shapes = book_result_shapes();
    const auto shape = std::ranges::find(shapes, table, &TableShape::name);
    return shape == shapes.end() ? std::nullopt
                                 : std::optional(style::style_of_layer(*shape, bloom, wording));
}

}  // namespace pipward::operation
