// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <zip.h>

#include <memory>

#include "pipward/style/project_text.h"
#include "pipward/value/finding.h"

namespace pipward::style {
namespace {

// The earliest time that a zip archive can hold, 1 January 1980: the same text gives the same bytes.
constexpr zip_uint16_t no_time = 0;
constexpr zip_uint16_t first_date = (1 << 5) | 1;
constexpr int best_compression = 9;

Error not_packed(const Sentence& what) {
    return {Trouble::access, Finding{.level = Level::error,
                                     .table = {},
                                     .row = {},
                                     .field = {},
                                     .value = {},
                                     .message = say("The project could not be packed: {}.", what),
                                     .remedy = say("Check that there is memory left, then try again.")}};
}

struct SourceFreer {
    void operator()(zip_source_t* source) const { zip_source_free(source); }
};
using Source = std::unique_ptr<zip_source_t, SourceFreer>;

void expect(bool well, zip_t* archive) {
    if (!well) {
        const std::string what = zip_strerror(archive);
        zip_discard(archive);
        throw not_packed(verbatim(what));
    }
}

void add_text(zip_t* archive, const std::string& text) {
    zip_source_t* content = zip_source_buffer(archive, text.data(), text.size(), 0);
    expect(content != nullptr, archive);
    const auto index = zip_file_add(archive, "project.qgs", content, ZIP_FL_ENC_UTF_8);
    if (index < 0) {
        zip_source_free(content);
    }
    expect(index >= 0, archive);
    const auto file = static_cast<zip_uint64_t>(index);
    expect(zip_set_file_compression(archive, file, ZIP_CM_DEFLATE, best_compression) == 0, archive);
    expect(zip_file_set_dostime(archive, file, no_time, first_date, 0) == 0, archive);
}

std::string bytes_of(zip_source_t* source) {
    zip_stat_t about;
    if (zip_source_stat(source, &about) != 0 || zip_source_open(source) != 0) {
        throw not_packed(say("the archive cannot be read back"));
    }
    std::string bytes(about.size, '\0');
    const auto read = zip_source_read(source, bytes.data(), bytes.size());
    zip_source_close(source);
    if (read != static_cast<zip_int64_t>(bytes.size())) {
        throw not_packed(say("the archive was cut short"));
    }
    return bytes;
}

}  // namespace

std::string packed_project(const std::string& text) {
    zip_error_t trouble;
    zip_error_init(&trouble);
    const Source packed(zip_source_buffer_create(nullptr, 0, 0, &trouble));
    zip_t* archive = packed ? zip_open_from_source(packed.get(), ZIP_TRUNCATE, &trouble) : nullptr;
    if (archive == nullptr) {
        throw not_packed(verbatim(zip_error_strerror(&trouble)));
    }
    zip_source_keep(packed.get());
    add_text(archive, text);
    expect(zip_close(archive) == 0, archive);
    return bytes_of(packed.get());
}

std::string hexadecimal(std::string_view bytes) {
    static constexpr auto digits = "0123456789abcdef";
    std::string text;
    text.reserve(2 * bytes.size());
    for (const unsigned char byte : bytes) {
        text += digits[byte >> 4];
        text += digits[byte & 15];
    }
    return text;
}

}  // namespace pipward::style
