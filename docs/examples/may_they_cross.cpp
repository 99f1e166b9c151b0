// SPDX-License-Identifier: MIT
// May these two be crossed? may_they_cross BOOK SEED_PARENT DONOR
#include <fmt/format.h>
#include <pipward/book/book.h>
#include <pipward/lineage/kinship.h>
#include <pipward/lineage/s_alleles.h>
#include <pipward/record/orchard_index.h>

using namespace pipward;

int main(int count, char** words) {
    if (count != 4) {
        fmt::print(stderr, "may_they_cross BOOK SEED_PARENT DONOR\n");
        return 2;
    }
    try {
        const auto reading = book::read_tables(words[1], {"accession", "blend"});
        const OrchardIndex index(reading.orchard);
        const auto alleles_of = [&](const char* name) {
            const auto* accession = index.accession(name);
            return accession != nullptr && accession->s_alleles
                       ? lineage::parse_s_alleles(*accession->s_alleles)
                       : std::nullopt;
        };
        const auto match = lineage::s_compatibility(alleles_of(words[2]), alleles_of(words[3]));
        fmt::print("S-alleles: {}; {:.0f} % of the pollen may pass\n", to_text(match.match),
                   100 * match.pollen_share.value);
        const lineage::Kinship kinship(reading.orchard.accessions, reading.orchard.blend_members);
        const auto shared = kinship.between(words[2], words[3]);
        fmt::print("Kinship: {}\n", shared ? fmt::format("{:.3f}", *shared) : "unknown");
    } catch (const Error& error) {
        for (const auto& finding : error.findings()) {
            fmt::print(stderr, "{}\n", to_text(finding));
        }
        return 1;
    }
}
