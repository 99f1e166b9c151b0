// SPDX-License-Identifier: MIT
#include <cpl_vsi.h>
#include <fmt/format.h>
#include <gdal.h>
#include <ogrsf_frmts.h>

#include <algorithm>
#include <array>

#include "pipward/book/detail/location.h"
#include "pipward/book/detail/no_network.h"
#include "pipward/book/detail/ogr_session.h"

namespace pipward::book {
namespace {

std::optional<VSIStatBufL> status_of(const std::string& path) {
    VSIStatBufL status{};
    return VSIStatL(path.c_str(), &status) == 0 ? std::optional{status} : std::nullopt;
}

// What a file that is no GeoPackage is, in the words of whichever driver knows it.
std::string kind_of(const std::string& path) {
    GDALAllRegister();
    GDALDriverH driver = GDALIdentifyDriverEx(path.c_str(), 0, nullptr, nullptr);
    return driver == nullptr ? std::string{} : std::string(GDALGetDriverLongName(driver));
}

GDALDataset* open_with(const std::string& location, const char* driver, unsigned flags) {
    const std::array<const char*, 2> drivers{driver, nullptr};
    return GDALDataset::Open(location.c_str(), GDAL_OF_VECTOR | flags, drivers.data(), nullptr, nullptr);
}

// With what the library said behind it.
Sentence with_words(const Sentence& message, const std::string& said) {
    const auto last = said.find_last_not_of(" .\n");
    return last == std::string::npos ? message : say("{} It says: {}.", message, said.substr(0, last + 1));
}

Error not_opened(const std::string& path, const std::string& said) {
    const auto kind = kind_of(path);
    if (kind.empty()) {
        return detail::access_error(
            path,
            with_words(say("This is no GeoPackage: it is damaged, encrypted, or something else."), said),
            say("Name the .gpkg file of the book, or restore it from a backup."));
    }
    if (kind.find("GeoPackage") == std::string::npos) {
        return detail::access_error(
            path, say("This is no GeoPackage but: {}.", kind),
            say("Name the .gpkg file of the book, or make one with book-new and copy these layers into its "
                "tables."));
    }
    return detail::access_error(path, with_words(say("The GeoPackage cannot be opened."), said),
                                say("If it is damaged, restore it from a backup."));
}

void refuse_what_is_no_file(const std::string& path) {
    detail::refuse_what_is_not_at_hand(path);
    const auto status = status_of(path);
    if (!status) {
        throw detail::access_error(path, say("There is no such file."),
                                   say("Check the name, or make a book with book-new."));
    }
    if (VSI_ISDIR(status->st_mode)) {
        throw detail::access_error(path, say("This is a folder, not a book."),
                                   say("Name the .gpkg file in it."));
    }
    if (status->st_size == 0) {
        throw detail::access_error(
            path, say("The file is empty (0 bytes)."),
            say("Restore it from a backup, or remove it and make a book with book-new."));
    }
}

bool can_be_read(const std::string& path) {
    const detail::DatasetHandle dataset(open_with(path, "GPKG", GDAL_OF_READONLY));
    return dataset != nullptr;
}

bool has_companion(const std::string& path, const char* ending) {
    const auto companion = status_of(path + ending);
    return companion && companion->st_size > 0;
}

Error not_repaired(const std::string& path) {
    return detail::access_error(
        path,
        say("A program stopped while it was writing this book, and the book cannot be repaired where it "
            "lies because it cannot be written."),
        say("Make the file and its folder writable, or copy the file together with its \"-journal\" or "
            "\"-wal\" to a folder that is."));
}

// A crashed writer leaves a journal beside the file. Only opening for writing lets the database undo what
// was half done; until then it cannot be read at all, and read without its journal it would be in a state
// that never was.
void undo_crashed_write(const std::string& path) {
    if (const detail::DatasetHandle dataset(open_with(path, "GPKG", GDAL_OF_UPDATE)); dataset == nullptr) {
        throw not_repaired(path);
    }
}

// Where it may not write, OGR can fall back on taking the file for immutable, and then it passes over what
// stands in a write-ahead log: rows that were saved would be missing without a word.
void refuse_to_pass_over_a_log(const detail::Session& session, const std::string& path) {
    const bool immutable = std::ranges::any_of(session.messages->warnings(), [](const std::string& warning) {
        return warning.find("IMMUTABLE") != std::string::npos ||
               warning.find("immutable") != std::string::npos;
    });
    if (immutable && has_companion(path, "-wal")) {
        throw not_repaired(path);
    }
}

void open_as_it_is(detail::Session& session, const std::string& path, detail::Purpose purpose) {
    session.dataset.reset(
        open_with(path, "GPKG", purpose == detail::Purpose::writing ? GDAL_OF_UPDATE : GDAL_OF_READONLY));
}

detail::Session open_file(const std::string& path, detail::Purpose purpose) {
    detail::register_drivers();
    refuse_what_is_no_file(path);
    detail::Session session;
    open_as_it_is(session, path, purpose);
    if (session.dataset == nullptr && purpose == detail::Purpose::reading &&
        has_companion(path, "-journal")) {
        undo_crashed_write(path);
        open_as_it_is(session, path, purpose);
    }
    if (session.dataset != nullptr) {
        refuse_to_pass_over_a_log(session, path);
        return session;
    }
    const auto said = session.messages->failures_since(0);
    if (detail::OgrTrouble(said).locked()) {
        throw detail::OgrTrouble(said);
    }
    throw purpose == detail::Purpose::writing && can_be_read(path) ? detail::may_not_write(path)
                                                                   : not_opened(path, said);
}

detail::Session open_server(const std::string& location, detail::Purpose purpose) {
    detail::register_drivers();
    detail::Session session;
    session.server = true;
    session.dataset.reset(open_with(detail::as_opened(location), "PostgreSQL",
                                    purpose == detail::Purpose::writing ? GDAL_OF_UPDATE : GDAL_OF_READONLY));
    if (session.dataset == nullptr) {
        const auto said = detail::without_secrets(session.messages->failures_since(0), location);
        throw detail::access_error(
            location, with_words(say("The database does not answer."), said),
            say("Check host, port, database name, user and password, and that PostGIS is there."));
    }
    return session;
}

}  // namespace

// Registering is OGR's own once-only business; a host that has done it already is left as it is.
void detail::register_drivers() {
    auto* drivers = GetGDALDriverManager();
    if (drivers->GetDriverByName("GPKG") == nullptr) {
        RegisterOGRGeoPackage();
    }
    if (drivers->GetDriverByName("PostgreSQL") == nullptr) {
        RegisterOGRPG();
    }
}

bool detail::is_server(const std::string& location) {
    return is_on_server(location);
}

detail::Session detail::open_session(const std::string& location, detail::Purpose purpose) {
    return detail::is_server(location) ? open_server(location, purpose) : open_file(location, purpose);
}

Error detail::access_error(const std::string& location, const Sentence& message, const Sentence& remedy) {
    return {Trouble::access, Finding{.level = Level::error,
                                     .table = shown_location(location),
                                     .row = {},
                                     .field = {},
                                     .value = {},
                                     .message = message,
                                     .remedy = remedy}};
}

Error detail::may_not_write(const std::string& location) {
    return detail::access_error(
        location, say("The book may not be written."),
        say("Make the file and its folder writable, or work on a copy. Nothing was changed."));
}

}  // namespace pipward::book
