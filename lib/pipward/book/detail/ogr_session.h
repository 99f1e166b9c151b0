// SPDX-License-Identifier: MIT
#pragma once

#include <gdal_priv.h>

#include <memory>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/book/book.h"
#include "pipward/value/finding.h"

/// Inside of the room: OGR data sources, their messages and SQL, made safe to use. Nothing here changes
/// anything of OGR beyond the calling thread.
namespace pipward::book::detail {

/// What OGR or the database said when a call failed. Does not leave the room: it becomes an Error.
class OgrTrouble : public std::runtime_error {
  public:
    using std::runtime_error::runtime_error;
    /// Another program holds the database's lock, or has won the race for it: trying again may help.
    bool locked() const;
};

/// Keeps OGR's messages of this thread to itself while it lives, instead of letting them be printed.
class OgrMessages {
  public:
    OgrMessages();
    ~OgrMessages();
    OgrMessages(const OgrMessages&) = delete;
    OgrMessages& operator=(const OgrMessages&) = delete;

    std::size_t failures() const { return failures_.size(); }
    const std::vector<std::string>& warnings() const { return warnings_; }
    /// The failures from number `first` on, as one text.
    std::string failures_since(std::size_t first) const;
    void add(CPLErr kind, const char* message);

  private:
    std::vector<std::string> failures_;
    std::vector<std::string> warnings_;
};

struct DatasetCloser {
    void operator()(GDALDataset* dataset) const { GDALClose(dataset); }
};
using DatasetHandle = std::unique_ptr<GDALDataset, DatasetCloser>;

/// An open book with its messages. The messages outlive the data source, so closing stays quiet too.
/// OGR keeps its message handlers in a stack, so one session is never put in place of another.
struct Session {
    Session() = default;
    Session(Session&&) = default;
    Session& operator=(Session&&) = delete;

    std::unique_ptr<OgrMessages> messages = std::make_unique<OgrMessages>();
    DatasetHandle dataset{};
    bool server = false;  ///< PostgreSQL, not a GeoPackage
};

/// "PG:..." or "postgresql://...": a database server rather than a file.
bool is_server(const std::string& location);
/// Makes OGR's drivers for books known, where the host has not.
void register_drivers();
enum class Purpose { reading, writing };
/// Opens a book. Throws Error (access) saying what stands in the way; OgrTrouble where another program has
/// locked it.
Session open_session(const std::string& location, Purpose purpose);
/// An Error of kind access about a whole book.
Error access_error(const std::string& location, const Sentence& message, const Sentence& remedy);
/// The same for a book, or its folder, that this user may not write.
Error may_not_write(const std::string& location);

/// Runs one statement; throws OgrTrouble with the database's words when it fails.
void run_sql(Session& session, const std::string& sql);
using SqlRow = std::vector<std::optional<std::string>>;
/// Every row of a query, as text. Throws OgrTrouble.
std::vector<SqlRow> query(Session& session, const std::string& sql);
/// Whether a GeoPackage has a table of that name, registered or not.
bool has_table(Session& session, const std::string& name);
std::string quoted_name(std::string_view name);
std::string quoted_text(std::string_view text);

/// Throws OgrTrouble with the failures since `first`, if there are any or if `failed`.
void expect_success(const Session& session, std::size_t first, bool failed, std::string_view what);

}  // namespace pipward::book::detail
