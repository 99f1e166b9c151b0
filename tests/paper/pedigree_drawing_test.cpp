// SPDX-License-Identifier: MIT
// Drawings of lines: what stands in the boxes, what gives way on a full page, sound markup.
#include "pipward/paper/pedigree_drawing.h"

#include <gtest/gtest.h>

#include "lineage/pedigrees.h"
#include "paper/markup_check.h"
#include "pipward/lineage/ancestor_shares.h"
#include "pipward/paper/page_svg.h"

namespace pipward::paper {
namespace {

using testing::Pedigree;

struct Sheet {
    lineage::PedigreeGraph graph;
    PedigreeDrawing drawing;
    std::string svg;

    bool says(const std::string& text) const { return svg.find(">" + text + "<") != std::string::npos; }
};

Sheet drawn(const Pedigree& pedigree, const std::string& who, const lineage::PedigreeLimits& limits,
            PageSize size = turned(a4_page)) {
    Sheet made{lineage::pedigree_graph(pedigree.accessions, pedigree.blends), {}, {}};
    const int subject = made.graph.number.at(who);
    PedigreeFacts facts{&made.graph,
                        subject,
                        std::vector<double>(made.graph.nodes.size()),
                        lineage::shares_of_ancestor(made.graph, subject),
                        {}};
    for (const auto& share : lineage::ancestor_shares(made.graph, subject)) {
        facts.of_ancestor[share.node] = share.share;
    }
    facts.more[subject] = {say("taste {:.3g}", 6.1)};
    made.drawing = pedigree_drawing(facts, {size, say("Pedigree of {}", who), {}, limits});
    made.svg = page_svg(made.drawing.page, "Line");
    EXPECT_EQ(testing::MarkupCheck(made.svg).trouble, "");
    return made;
}

void expect_on_page(const Sheet& sheet) {
    const auto& layout = sheet.drawing.layout;
    for (std::size_t i = 0; i < layout.boxes.size(); ++i) {
        const auto& box = layout.boxes[i];
        EXPECT_TRUE(box.left >= 9.99 && box.top >= 9.99 &&
                    box.right() <= sheet.drawing.page.size.width.value - 9.99 &&
                    box.bottom() <= sheet.drawing.page.size.height.value - 9.99);
        for (std::size_t k = 0; k < i; ++k) {
            const auto& other = layout.boxes[k];
            EXPECT_FALSE(box.left < other.right() - 1e-6 && other.left < box.right() - 1e-6 &&
                         box.top < other.bottom() - 1e-6 && other.top < box.bottom() - 1e-6);
        }
    }
}

TEST(PedigreeDrawing, TellsSharesBlendsUnknownParentsAndTraits) {
    Pedigree p;
    p.mix("Mix <1>", "A", 0.75);
    p.mix("Mix <1>", "B", 0.2);
    p.add("A");
    p.add("X", "Y", "Mix <1>");
    p.add("Y", {}, "A");
    const auto sheet = drawn(p, "X", {4, 0, 0});
    EXPECT_TRUE(sheet.says("Pedigree of X"));
    EXPECT_TRUE(sheet.says("Mix &lt;1&gt;"));
    EXPECT_TRUE(sheet.says("blend of pollen"));
    EXPECT_TRUE(sheet.says("A 75 %"));
    EXPECT_TRUE(sheet.says("unknown 5 %"));
    EXPECT_TRUE(sheet.says("unknown"));
    EXPECT_TRUE(sheet.says("◆ 62.5 %, cultivar")) << sheet.svg;
    EXPECT_TRUE(sheet.says("taste 6.1"));
    EXPECT_TRUE(sheet.says("to the seed parent"));
    EXPECT_NE(sheet.svg.find("stroke-dasharray"), std::string::npos) << "not by colour alone";
    expect_on_page(sheet);
}

TEST(PedigreeDrawing, FiveGenerationsCanBeReadOnA4AndA3) {
    Pedigree p;
    for (int i = 1; i < 32; ++i) {
        const auto name = [](int n) { return "Selection " + std::to_string(n); };
        p.add(name(i), name(2 * i), name(2 * i + 1));
    }
    const auto a4 = drawn(p, "Selection 1", {5, 0, 0});
    EXPECT_EQ(a4.drawing.view.boxes.size(), 63U);
    EXPECT_GE(a4.drawing.points, 7);
    expect_on_page(a4);
    const auto a3 = drawn(p, "Selection 1", {5, 0, 0}, turned(a3_page));
    EXPECT_GE(a3.drawing.points, 9);
}

TEST(PedigreeDrawing, GivesWayByGenerationsAndSaysWhatIsLeftOut) {
    const auto p = testing::made_pedigree(12, 420, 11);
    ASSERT_GT(p.accessions.size(), 5000U);
    const auto sheet = drawn(p, "G12-7", {12, 0, 0});
    expect_on_page(sheet);
    EXPECT_GE(sheet.drawing.points, 5.5);
    EXPECT_GE(sheet.drawing.limits.up, 4);
    EXPECT_LT(sheet.drawing.limits.up, 12);
    EXPECT_GT(sheet.drawing.view.ancestors_left_out, 100);
    const auto founder = drawn(p, "G0-3", {0, 12, 0});
    expect_on_page(founder);
    EXPECT_GT(founder.drawing.view.descendants_left_out, 100);
    EXPECT_GT(founder.drawing.view.boxes.size(), 1U);
}

TEST(PedigreeDrawing, ManyChildrenEndInABoxThatCountsTheRest) {
    Pedigree p;
    for (int i = 0; i < 300; ++i) {
        p.add("Child " + std::to_string(i), "A", "Other " + std::to_string(i));
    }
    const auto sheet = drawn(p, "A", {2, 1, 0});
    expect_on_page(sheet);
    EXPECT_GT(sheet.drawing.view.boxes.size(), 10U);
    EXPECT_GT(sheet.drawing.view.boxes.back().more, 200);
    EXPECT_TRUE(sheet.says(std::to_string(sheet.drawing.view.boxes.back().more) + " more"));
}

TEST(PedigreeDrawing, LongNamesAreWrapped) {
    Pedigree p;
    p.add("X", "A variety with a name that goes on and on beyond any box", "B");
    const auto sheet = drawn(p, "X", {1, 0, 0});
    EXPECT_EQ(sheet.svg.find("…"), std::string::npos) << sheet.svg;
}

}  // namespace
}  // namespace pipward::paper
