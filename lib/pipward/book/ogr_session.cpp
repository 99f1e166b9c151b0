// SPDX-License-Identifier: MIT
#include "pipward/book/detail/ogr_session.h"

#include <cpl_error.h>
#include <ogrsf_frmts.h>

#include <algorithm>

namespace pipward::book::detail {
namespace {

void CPL_STDCALL keep_message(CPLErr kind, CPLErrorNum, const char* message) {
    static_cast<OgrMessages*>(CPLGetErrorHandlerUserData())->add(kind, message);
}

std::string doubled(std::string_view text, char quote) {
    std::string result(1, quote);
    for (const char letter : text) {
        result += letter;
        if (letter == quote) {
            result += letter;
        }
    }
    return result + quote;
}

// Returns a query's rows to OGR even when reading them throws.
class ResultSet {
  public:
    ResultSet(GDALDataset& dataset, OGRLayer* layer) : dataset_(dataset), layer_(layer) {}
    ~ResultSet() { dataset_.ReleaseResultSet(layer_); }
    ResultSet(const ResultSet&) = delete;
    ResultSet& operator=(const ResultSet&) = delete;
    OGRLayer* layer() const { return layer_; }

  private:
    GDALDataset& dataset_;
    OGRLayer* layer_;
};

// OGR repeats the whole statement before or after the database's words, which stand on a line of their own.
std::string_view database_words(std::string_view message) {
    constexpr std::string_view servers = "ERROR:";
    if (const auto at = message.find(servers); at != std::string_view::npos) {
        const auto words = message.substr(message.find_first_not_of(' ', at + servers.size()));
        return words.substr(0, words.find('\n'));
    }
    const auto line = message.starts_with("In ExecuteSQL()") ? message.rfind('\n') : std::string_view::npos;
    const auto start = line == std::string_view::npos ? 0 : message.find_first_not_of(" \n", line);
    return start == std::string_view::npos ? message : message.substr(start);
}

SqlRow text_row(OGRFeature& feature) {
    SqlRow row;
    for (int field = 0; field < feature.GetFieldCount(); ++field) {
        row.push_back(feature.IsFieldSetAndNotNull(field)
                          ? std::optional<std::string>{feature.GetFieldAsString(field)}
                          : std::nullopt);
    }
    return row;
}

}  // namespace

bool OgrTrouble::locked() const {
    const std::string_view words = what();
    return words.find("database is locked") != std::string_view::npos ||
           words.find("database table is locked") != std::string_view::npos ||
           words.find("database schema is locked") != std::string_view::npos ||
           words.find("lock timeout") != std::string_view::npos ||
           words.find("could not serialize access") != std::string_view::npos ||
           words.find("deadlock detected") != std::string_view::npos;
}

OgrMessages::OgrMessages() {
    CPLPushErrorHandlerEx(keep_message, this);
    CPLSetCurrentErrorHandlerCatchDebug(FALSE);
}

OgrMessages::~OgrMessages() {
    CPLPopErrorHandler();
    CPLErrorReset();
}

void OgrMessages::add(CPLErr kind, const char* message) {
    if (kind == CE_Warning) {
        warnings_.emplace_back(message);
    } else if (kind >= CE_Failure) {
        failures_.emplace_back(message);
    }
}

std::string OgrMessages::failures_since(std::size_t first) const {
    std::string text;
    for (std::size_t i = first; i < failures_.size(); ++i) {
        text += text.empty() ? "" : "; ";
        text += database_words(failures_[i]);
    }
    return text;
}

void expect_success(const Session& session, std::size_t first, bool failed, std::string_view what) {
    const auto words = session.messages->failures_since(first);
    if (failed || !words.empty()) {
        throw OgrTrouble(words.empty() ? std::string(what) : words);
    }
}

void run_sql(Session& session, const std::string& sql) {
    const auto before = session.messages->failures();
    OGRLayer* rows = session.dataset->ExecuteSQL(sql.c_str(), nullptr, nullptr);
    if (rows != nullptr) {
        session.dataset->ReleaseResultSet(rows);
    }
    expect_success(session, before, false, sql);
}

std::vector<SqlRow> query(Session& session, const std::string& sql) {
    const auto before = session.messages->failures();
    std::vector<SqlRow> rows;
    if (OGRLayer* layer = session.dataset->ExecuteSQL(sql.c_str(), nullptr, nullptr); layer != nullptr) {
        const ResultSet result(*session.dataset, layer);
        for (const auto& feature : *result.layer()) {
            rows.push_back(text_row(*feature));
        }
    }
    expect_success(session, before, false, sql);
    return rows;
}

bool has_table(Session& session, const std::string& name) {
    return !query(session, "SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = " + quoted_text(name))
                .empty();
}

std::string quoted_name(std::string_view name) {
    return doubled(name, '"');
}

std::string quoted_text(std::string_view text) {
    return doubled(text, '\'');
}

}  // namespace pipward::book::detail
