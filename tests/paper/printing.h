// SPDX-License-Identifier: MIT
#pragma once

#include <unistd.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <regex>
#include <sstream>
#include <string>
#include <vector>

#include "pipward/paper/pdf.h"

/// Printed pages, looked at by programs that did not make them: poppler's tools and a reader of QR codes.
namespace pipward::testing {

inline bool is_here(const std::string& program) {
    return std::system(("command -v " + program + " > /dev/null 2>&1").c_str()) == 0;
}

#define NEED_PROGRAM(program)                                          \
    if (!pipward::testing::is_here(program)) {                         \
        GTEST_SKIP() << "The program is not installed: " << (program); \
    }                                                                  \
    static_assert(true)

/// What a command prints; it must succeed.
inline std::string output_of(const std::string& command) {
    std::string text;
    FILE* pipe = popen((command + " 2>/dev/null").c_str(), "r");
    std::array<char, 4096> part{};
    while (const auto count = std::fread(part.data(), 1, part.size(), pipe)) {
        text.append(part.data(), count);
    }
    pclose(pipe);
    return text;
}

/// A PDF in a folder of its own; gone afterwards.
class PrintedFile {
  public:
    explicit PrintedFile(const std::string& pdf)
        : folder_(std::filesystem::temp_directory_path() / ("pipward-print-" + std::to_string(getpid()))) {
        std::filesystem::remove_all(folder_);
        std::filesystem::create_directories(folder_);
        std::ofstream(path("printed.pdf"), std::ios::binary) << pdf;
    }
    ~PrintedFile() { std::filesystem::remove_all(folder_); }
    PrintedFile(const PrintedFile&) = delete;
    PrintedFile& operator=(const PrintedFile&) = delete;

    std::string path(const std::string& name) const { return (folder_ / name).string(); }
    std::string pdf() const { return path("printed.pdf"); }

    /// A page, or a part of it, as a grey picture at a printer's dots an inch.
    std::string picture(int page, int dots, const std::string& part = "") const {
        const auto root = path("page-" + std::to_string(page));
        (void)output_of("pdftoppm -gray -singlefile -r " + std::to_string(dots) + " -f " +
                        std::to_string(page) + " " + part + " " + pdf() + " " + root);
        return root + ".pgm";
    }

  private:
    std::filesystem::path folder_;
};

struct Grey {
    int width = 0;
    int height = 0;
    std::string dots;

    bool is_dark(int x, int y) const {
        return static_cast<unsigned char>(dots[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
                                               static_cast<std::size_t>(x)]) < 128;
    }
};

inline Grey read_picture(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::string kind;
    int most = 0;
    Grey grey;
    file >> kind >> grey.width >> grey.height >> most;
    file.get();
    std::stringstream rest;
    rest << file.rdbuf();
    grey.dots = rest.str();
    return grey;
}

/// The part of a picture that a box covers, as a picture of its own.
inline void cut_out(const Grey& page, const paper::Box& box, int dots, const std::string& path) {
    const auto dot = [&](paper::Millimetres length) {
        return static_cast<int>(length.value / 25.4 * dots + 0.5);
    };
    const int left = dot(box.left);
    const int top = dot(box.top);
    const int width = std::min(dot(box.width), page.width - left);
    const int height = std::min(dot(box.height), page.height - top);
    std::ofstream file(path, std::ios::binary);
    file << "P5 " << width << " " << height << " 255\n";
    for (int row = top; row < top + height; ++row) {
        file.write(page.dots.data() + static_cast<std::ptrdiff_t>(row) * page.width + left, width);
    }
}

/// What a QR reader finds in pictures that hold one code each, a line for each code.
inline std::string codes_in(const std::string& pictures) {
    return output_of("zbarimg -q --raw --nodbus -Sdisable -Sqrcode.enable " + pictures);
}

/// The same of one picture, without the line end that the reader adds.
inline std::string code_in(const std::string& picture) {
    auto text = codes_in(picture);
    if (!text.empty() && text.back() == '\n') {
        text.pop_back();
    }
    return text;
}

/// What the codes in the boxes of a page say, a line for each that could be read.
inline std::string codes_in(const PrintedFile& file, int page, int dots,
                            const std::vector<paper::Box>& boxes) {
    const auto picture = read_picture(file.picture(page, dots));
    std::string pictures;
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        const auto path = file.path("part-" + std::to_string(i) + ".pgm");
        cut_out(picture, boxes[i], dots, path);
        pictures += path + " ";
    }
    return codes_in(pictures);
}

struct PrintedWord {
    std::string text;
    paper::Box box;
};

/// The words of a PDF's first page and where they stand.
inline std::vector<PrintedWord> words_of(const PrintedFile& file) {
    static const std::regex form(
        R"form(<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">([^<]*)</word>)form");
    const auto text = output_of("pdftotext -bbox -f 1 -l 1 " + file.pdf() + " -");
    std::vector<PrintedWord> words;
    for (std::sregex_iterator match(text.begin(), text.end(), form), end; match != end; ++match) {
        const auto at = [&](std::size_t i) { return paper::from_points(std::stod((*match)[i])); };
        words.push_back({(*match)[5], {at(1), at(2), at(3) - at(1), at(4) - at(2)}});
    }
    return words;
}

}  // namespace pipward::testing
