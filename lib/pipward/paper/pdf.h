// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>

#include "pipward/paper/page.h"
#include "pipward/paper/typesetter.h"
#include "pipward/value/day.h"

namespace pipward::paper {

/// What a file says of itself.
struct PdfAbout {
    std::string title;  ///< shown by readers
    Day made_on;        ///< what the file says of itself: the same pages of the same day are the same bytes
};

/// The pages as a PDF file, in true millimetres, every font embedded. `tell` hears the share that is done.
/// Throws Error (access) where the drawing library fails, which only happens without memory.
std::string pdf_of(
    std::span<const Page> pages, const PdfAbout& about, const Typesetter& typesetter,
    const std::function<void(double share)>& tell = [](double) {});

}  // namespace pipward::paper
