// SPDX-License-Identifier: MIT
#pragma once

/// Inside of the room: which form of the desktop's texts we write. Later versions read it too.
namespace pipward::style::detail {

inline constexpr auto host_version = "3.22.16";
inline constexpr auto host_doctype = "qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'";

}  // namespace pipward::style::detail
