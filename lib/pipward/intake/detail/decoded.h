// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <string>
#include <string_view>

#include "pipward/value/finding.h"

namespace pipward::intake::detail {

struct Decoded {
    std::string_view
        text;             ///< UTF-8 without a byte-order mark: into the bytes, or into what was made of them
    Findings findings{};  ///< how it was understood, or an error: then there is no text
    std::shared_ptr<const std::string> made{};  ///< null where the bytes are UTF-8 as they stand
};

/// The bytes must outlive it. UTF-16 is known by its mark. Bytes that are no UTF-8 are taken for
/// Windows-1252, with a warning of the first line; a text that has letters of UTF-8 besides is a mixture and
/// refused, as are bytes of zero and workbooks.
Decoded decoded(std::string_view bytes, const std::string& file);

}  // namespace pipward::intake::detail
