// SPDX-License-Identifier: MIT
#include "pipward/book/detail/named_layer.h"

namespace pipward::book::detail {

OGRLayer& named_layer(Session& session, const std::string& location, const std::string& name) {
    OGRLayer* layer = session.dataset->GetLayerByName(name.c_str());
    if (layer == nullptr) {
        throw access_error(location, say("The book has no table {}.", name),
                           say("Check the book with book-check."));
    }
    return *layer;
}

}  // namespace pipward::book::detail
