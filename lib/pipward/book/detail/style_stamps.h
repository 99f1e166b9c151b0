// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "pipward/book/detail/ogr_session.h"

/// Inside of the room: how rows that we wrote for a desktop are told from rows that a user made or changed.
namespace pipward::book::detail {

/// A short fingerprint of a text, to notice that somebody has changed it: FNV-1a of 64 bits in hexadecimal.
/// Guards against oversight, not against malice.
std::string fingerprint(std::string_view text);

/// What goes with a style of ours: a sentence for people, with the style's fingerprint.
std::string style_mark(std::string_view text);
/// Whether `description` is the mark of exactly this text.
bool is_our_style(std::string_view description, std::string_view text);

/// What goes with a project of ours, in the desktop's form.
std::string project_mark(std::string_view content, const std::string& time);
bool is_our_project(std::string_view metadata, std::string_view content);

/// Whether the book holds a style or project that we wrote, even if somebody changed it since.
bool carries_our_style(Session& session);

}  // namespace pipward::book::detail
