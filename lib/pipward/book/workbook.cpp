// SPDX-License-Identifier: MIT
#include "pipward/book/workbook.h"

#include <cpl_conv.h>
#include <cpl_vsi.h>
#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include <algorithm>
#include <array>

#include "pipward/book/detail/ogr_session.h"

namespace pipward::book {
namespace {

constexpr std::string_view begins = "PK\x03\x04";
constexpr std::string_view open_document = "opendocument.spreadsheet";
constexpr std::size_t first_entry = 128;  // where an ODS names its kind

/// A setting of the library for this thread while it lives: its drivers of this age know no open option.
class Setting {
  public:
    Setting(const char* key, const char* value) : key_(key) {
        if (const char* before = CPLGetThreadLocalConfigOption(key, nullptr)) {
            before_ = before;
        }
        CPLSetThreadLocalConfigOption(key, value);
    }
    ~Setting() { CPLSetThreadLocalConfigOption(key_, before_ ? before_->c_str() : nullptr); }
    Setting(const Setting&) = delete;
    Setting& operator=(const Setting&) = delete;

  private:
    const char* key_;
    std::optional<std::string> before_{};
};

/// The bytes as a file of the library's own while it lives.
class MemoryFile {
  public:
    explicit MemoryFile(std::string_view bytes)
        : name_(fmt::format("/vsimem/pipward-{}.{}", static_cast<const void*>(bytes.data()),
                            bytes.substr(0, first_entry).find(open_document) == bytes.npos ? "xlsx" : "ods")),
          bytes_(bytes) {
        VSIFCloseL(VSIFileFromMemBuffer(name_.c_str(), reinterpret_cast<GByte*>(bytes_.data()), bytes_.size(),
                                        FALSE));
    }
    ~MemoryFile() { VSIUnlink(name_.c_str()); }
    MemoryFile(const MemoryFile&) = delete;
    MemoryFile& operator=(const MemoryFile&) = delete;
    const char* name() const { return name_.c_str(); }

  private:
    std::string name_;
    std::string bytes_;
};

WorkbookSheet sheet_of(OGRLayer& layer) {
    WorkbookSheet sheet{layer.GetName(), {}};
    for (const auto& feature : layer) {
        WorkbookLine line{static_cast<int>(feature->GetFID()), {}};
        for (int i = 0; i < feature->GetFieldCount(); ++i) {
            line.cells.emplace_back(feature->IsFieldSetAndNotNull(i) ? feature->GetFieldAsString(i) : "");
        }
        if (!std::ranges::all_of(line.cells, &std::string::empty)) {
            sheet.lines.push_back(std::move(line));
        }
    }
    return sheet;
}

}  // namespace

std::optional<std::vector<WorkbookSheet>> read_workbook(std::string_view bytes) {
    if (!bytes.starts_with(begins)) {
        return std::nullopt;
    }
    GDALAllRegister();
    const detail::OgrMessages messages;
    const std::array settings{Setting("OGR_XLSX_HEADERS", "DISABLE"), Setting("OGR_ODS_HEADERS", "DISABLE"),
                              Setting("OGR_XLSX_FIELD_TYPES", "STRING"),
                              Setting("OGR_ODS_FIELD_TYPES", "STRING")};
    const MemoryFile file(bytes);
    constexpr std::array<const char*, 3> drivers{"XLSX", "ODS", nullptr};
    const detail::DatasetHandle dataset(
        GDALDataset::Open(file.name(), GDAL_OF_VECTOR | GDAL_OF_READONLY, drivers.data(), nullptr, nullptr));
    if (dataset == nullptr) {
        return std::nullopt;
    }
    std::vector<WorkbookSheet> sheets;
    for (auto* layer : dataset->GetLayers()) {
        if (auto sheet = sheet_of(*layer); !sheet.lines.empty()) {
            sheets.push_back(std::move(sheet));
        }
    }
    return messages.failures() > 0 ? std::nullopt : std::optional{std::move(sheets)};
}

}  // namespace pipward::book
