// SPDX-License-Identifier: MIT
#include "pipward/lineage/pedigree_text.h"

#include <gtest/gtest.h>

namespace pipward::lineage {
namespace {

Accession bred(const std::string& name, std::optional<std::string> seed, std::optional<std::string> pollen) {
    Accession accession;
    accession.name = name;
    accession.seed_parent = std::move(seed);
    accession.pollen_parent = std::move(pollen);
    return accession;
}

TEST(PedigreeText, NamesParentsAndWhatIsKnownOfTheirs) {
    const std::vector<Accession> all{bred("A", {}, {}), bred("B", "A", {}), bred("C", "B", "A"),
                                     bred("D", "C", "Mix"), bred("E", {}, "Nowhere")};
    BlendMember one;
    one.name = "Mix";
    one.member = "A";
    auto other = one;
    other.member = "B";
    const std::vector<BlendMember> mix{one, other};
    const PedigreeText line(all, mix);
    EXPECT_EQ(line.of("A"), "");
    EXPECT_EQ(line.of("B"), "A × unknown");
    EXPECT_EQ(line.of("C"), "B (A × unknown) × A");
    EXPECT_EQ(line.of("D"), "C (B × A) × Mix (A, B)");
    EXPECT_EQ(line.of("E"), "unknown × Nowhere");
    EXPECT_EQ(line.of("not in the book"), "");
}

TEST(PedigreeText, EndsWhereAnAccessionIsItsOwnAncestor) {
    const std::vector<Accession> all{bred("A", "B", "A"), bred("B", "A", "B")};
    EXPECT_EQ(PedigreeText(all, {}).of("A"), "B (A × B) × A (B × A)");
}

}  // namespace
}  // namespace pipward::lineage
