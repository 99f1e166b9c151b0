// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include "pipward/book/detail/create_tables.h"
#include "pipward/book/detail/describe.h"
#include "pipward/book/detail/lookup_indexes.h"
#include "pipward/book/detail/new_file.h"
#include "pipward/book/detail/ogr_session.h"
#include "pipward/book/detail/relations.h"
#include "pipward/book/detail/schema_version.h"
#include "pipward/book/detail/with_schema.h"

namespace pipward::book::detail {
namespace {

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

void create_book_file(const std::string& path, const BookForm& form) {
    make_whole_file(path, "book", [&](const std::string& made) { create_file(made, form); });
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
