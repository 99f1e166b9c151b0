// SPDX-License-Identifier: MIT
#include "pipward/book/detail/results.h"

#include <ogrsf_frmts.h>

namespace pipward::book::detail {
namespace {

constexpr std::string_view mark = "Result of Pipward, replaced when it is computed again. ";

}  // namespace

std::string marked(const std::string& description) {
    return std::string(mark) + description;
}

std::string without_mark(const std::string& description) {
    return description.starts_with(mark) ? description.substr(mark.size()) : description;
}

std::string description_of(Session& session, const std::string& name) {
    OGRLayer* layer = session.dataset->GetLayerByName(name.c_str());
    const char* text = layer == nullptr ? nullptr : layer->GetMetadataItem("DESCRIPTION");
    return text == nullptr ? std::string{} : std::string(text);
}

bool is_result(Session& session, const std::string& name) {
    return description_of(session, name).starts_with(mark);
}

}  // namespace pipward::book::detail
