// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/style/project_style.h"

namespace pipward::style {

/// A map as the desktop's project text (QGS). The same map gives the same bytes.
std::string project_text(const ProjectStyle& project);

/// A project text packed as the desktop packs it (QGZ: a zip archive of one file), without a time of its own.
/// Throws Error (access) where the archive cannot be made.
std::string packed_project(const std::string& text);

/// Bytes as lower-case hexadecimal digits: how a GeoPackage keeps a packed project.
std::string hexadecimal(std::string_view bytes);

}  // namespace pipward::style
