// SPDX-License-Identifier: MIT
#include <cpl_vsi.h>
#include <fcntl.h>
#include <fmt/format.h>
#include <ogrsf_frmts.h>
#include <sys/file.h>
#include <unistd.h>

#include <filesystem>

#include "pipward/book/detail/create_tables.h"
#include "pipward/book/detail/describe.h"
#include "pipward/book/detail/lookup_indexes.h"
#include "pipward/book/detail/ogr_session.h"
#include "pipward/book/detail/relations.h"
#include "pipward/book/detail/schema_version.h"
#include "pipward/book/detail/with_schema.h"

namespace pipward::book::detail {
namespace {

namespace fs = std::filesystem;

Error usage_error(const std::string& field, const std::string& value, const Sentence& message,
                  const Sentence& remedy) {
    return {Trouble::usage, Finding{.level = Level::error,
                                    .table = {},
                                    .row = {},
                                    .field = field,
                                    .value = value,
                                    .message = message,
                                    .remedy = remedy}};
}

// A book needs a system that can be turned into latitudes: day length depends on them.
OGRSpatialReference coordinate_system(const std::string& crs) {
    const OgrMessages quiet;
    OGRSpatialReference system;
    system.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    const bool known =
        system.SetFromUserInput(crs.c_str(), OGRSpatialReference::SET_FROM_USER_INPUT_LIMITATIONS_get()) ==
        OGRERR_NONE;
    if (!known || (system.IsProjected() == 0 && system.IsGeographic() == 0)) {
        throw usage_error("crs", crs, say("This is no known map or geographic coordinate system."),
                          say("Give one by its EPSG number, for instance EPSG:32632."));
    }
    return system;
}

/// What a new book is made by.
struct BookForm {
    OGRSpatialReference crs;
    Schema schema;
};

void create_all(Session& session, const BookForm& form) {
    if (!session.server) {
        prepare_descriptions(session);
        write_domains(session);
    }
    create_tables(session, form.schema, form.crs);
    if (!session.server) {
        write_relations(session, form.schema);
    }
    ensure_lookup_indexes(session);
    detail::write_version(session, detail::our_version);
}

void create_in_transaction(Session& session, const BookForm& form) {
    const auto before = session.messages->failures();
    expect_success(session, before, session.dataset->StartTransaction() != OGRERR_NONE, "StartTransaction");
    create_all(session, form);
    expect_success(session, before, session.dataset->CommitTransaction() != OGRERR_NONE, "CommitTransaction");
    session.dataset.reset();
    expect_success(session, before, false, "close");
}

void create_file(const std::string& path, const BookForm& form) {
    Session session;
    register_drivers();
    GDALDriver* driver = GetGDALDriverManager()->GetDriverByName("GPKG");
    session.dataset.reset(driver->Create(path.c_str(), 0, 0, 0, GDT_Unknown, nullptr));
    expect_success(session, 0, session.dataset == nullptr, "Create");
    create_in_transaction(session, form);
}

// Two who make books in one folder follow each other: they would take one another's half-made file for a
// leftover. Where a folder cannot be locked, nothing is lost but that.
class FolderLock {
  public:
    explicit FolderLock(const fs::path& folder)
        : folder_(open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)) {
        if (folder_ >= 0) {
            flock(folder_, LOCK_EX);
        }
    }
    ~FolderLock() {
        if (folder_ >= 0) {
            close(folder_);
        }
    }
    FolderLock(const FolderLock&) = delete;
    FolderLock& operator=(const FolderLock&) = delete;

  private:
    int folder_;
};

// A new name that appears whole or not at all, and never over a file that came meanwhile.
void put_in_place(const fs::path& made, const fs::path& wanted) {
    std::error_code trouble;
    fs::create_hard_link(made, wanted, trouble);
    if (trouble && trouble != std::errc::file_exists && !fs::exists(wanted)) {
        fs::rename(made, wanted);  // a file system without hard links
        return;
    }
    if (trouble) {
        throw OgrTrouble("a file of that name has appeared meanwhile");
    }
    fs::remove(made);
}

void remove_leftovers(const fs::path& made) {
    for (const auto* ending : {"", "-journal", "-wal", "-shm"}) {
        std::error_code ignored;
        fs::remove(made.string() + ending, ignored);
    }
}

void create_book_file(const std::string& path, const BookForm& form) {
    if (!path.ends_with(".gpkg")) {
        throw usage_error("book", path, say("A book's name ends with .gpkg."),
                          say("Give it a name like orchard.gpkg."));
    }
    const FolderLock alone(fs::path(path).parent_path());
    if (std::error_code ignored; fs::exists(fs::symlink_status(path, ignored))) {
        throw access_error(path, say("There is a file of that name already."),
                           say("Choose another name; a book is never overwritten."));
    }
    const fs::path made = path.substr(0, path.size() - 5) + ".part.gpkg";
    remove_leftovers(made);
    try {
        create_file(made.string(), form);
        put_in_place(made, path);
    } catch (const std::exception& trouble) {
        remove_leftovers(made);
        throw access_error(path, say("The book cannot be made: {}.", trouble.what()),
                           say("Check that the folder exists and may be written, and that there is room."));
    }
}

void create_book_on_server(const std::string& location, const BookForm& form) {
    auto session = open_session(location, Purpose::writing);
    for (const auto& table : form.schema) {
        if (session.dataset->GetLayerByName(std::string(table.name).c_str()) != nullptr) {
            throw access_error(location, say("The database has a table {} already.", table.name),
                               say("Use an empty schema or database."));
        }
    }
    try {
        create_in_transaction(session, form);
    } catch (const OgrTrouble& trouble) {
        session.dataset->RollbackTransaction();
        throw access_error(location, say("The book cannot be made: {}.", trouble.what()),
                           say("Check that the user may create tables."));
    }
}

}  // namespace

void create_book(const std::string& path, const std::string& crs, Schema schema) {
    const BookForm form{coordinate_system(crs), schema};
    if (is_server(path)) {
        create_book_on_server(path, form);
    } else {
        create_book_file(path, form);
    }
}

}  // namespace pipward::book::detail

namespace pipward::book {

void create_book(const std::string& path, const std::string& crs) {
    detail::create_book(path, crs, book_tables());
}

}  // namespace pipward::book
