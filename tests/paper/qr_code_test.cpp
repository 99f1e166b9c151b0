// SPDX-License-Identifier: MIT
#include "pipward/paper/qr_code.h"

#include <gtest/gtest.h>

#include "paper/printing.h"
#include "pipward/paper/pdf.h"

namespace pipward::paper {
namespace {

// A code alone, its free zone at the page's edge.
std::string printed(const QrCode& code, Millimetres side) {
    const Typesetter typesetter;
    const Page page{{side, side}, {QrPiece{{{0}, {0}, side, side}, code}}};
    return pdf_of(std::vector{page}, {"Code", {}}, typesetter);
}

TEST(QrCode, AnIndependentReaderReadsEveryTextBack) {
    NEED_PROGRAM("pdftoppm");
    NEED_PROGRAM("zbarimg");
    for (const std::string text : {"UP-05-04", "A", "lower case", "geo:48.1363812,9.3002512;u=0.05",
                                   "He said \"no\"; it's <5> & more", "'); DROP TABLE tree; --",
                                   "Gr\xC3\xA4"
                                   "fin × Wrenlea",
                                   "りんごの木 12", "🍎🌳 42", "Яблоня «Антоновка»"}) {
        const auto code = qr_code(text);
        ASSERT_TRUE(code);
        const testing::PrintedFile file(printed(*code, {25}));
        EXPECT_EQ(testing::code_in(file.picture(1, 300)), text);
    }
}

TEST(QrCode, ThreeHundredCharactersAreReadAtTheSmallestModule) {
    NEED_PROGRAM("pdftoppm");
    NEED_PROGRAM("zbarimg");
    std::string text;
    while (text.size() < 300) {
        text += "Larkfold " + std::to_string(text.size()) + " ";
    }
    const auto code = qr_code(text);
    ASSERT_TRUE(code);
    const auto side = least_qr_module * (code->size + 2 * qr_free_zone);
    const testing::PrintedFile file(printed(*code, side));
    EXPECT_EQ(testing::code_in(file.picture(1, 300)), text);
}

TEST(QrCode, HasNoneForWhatItCannotCarry) {
    EXPECT_FALSE(qr_code(""));
    EXPECT_FALSE(qr_code(std::string("a\0b", 3)));
    EXPECT_FALSE(qr_code(std::string(2332, 'q')));
    EXPECT_TRUE(qr_code(std::string(2331, 'q')));
}

TEST(QrCode, TheFreeZoneCountsForTheModule) {
    const auto code = qr_code("UP-05-04");
    ASSERT_TRUE(code);
    EXPECT_EQ(code->size, 21);
    EXPECT_NEAR(module_in(*code, {29}).value, 1.0, 1e-9);
}

}  // namespace
}  // namespace pipward::paper
