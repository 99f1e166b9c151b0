// SPDX-License-Identifier: MIT
// Passports against tests/oracles/operation-passport.txt, out of the sample and into a new book.
#include "pipward/intake/passport.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "operation/sample_copy.h"
#include "paths.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"
#include "pipward/record/words.h"

namespace pipward::record {

bool operator==(const Accession& a, const Accession& b) {
    const auto key = [](const Accession& x) {
        return std::tie(x.name, x.kind, x.seed_parent, x.pollen_parent, x.s_alleles, x.ploidy,
                        x.seed_ripe_days, x.protected_until, x.species, x.sport_of);
    };
    return key(a) == key(b) && a.chill.has_value() == b.chill.has_value();
}

}  // namespace pipward::record

namespace pipward::operation {
namespace {

using testing::SampleCopy;
using Words = std::vector<std::string>;

std::vector<Words> oracle(const std::string& kind) {
    std::ifstream file(testing::oracle_file("operation-passport.txt"));
    std::vector<Words> lines;
    for (std::string line; std::getline(file, line);) {
        std::istringstream text(line);
        std::string first;
        text >> first;
        if (first == kind) {
            lines.emplace_back(std::istream_iterator<std::string>(text),
                               std::istream_iterator<std::string>());
        }
    }
    EXPECT_FALSE(lines.empty()) << kind;
    return lines;
}

TEST(Passport, HasTheDescriptorsAndCodesOfTheStandard) {
    const auto names = intake::passport_descriptors();
    EXPECT_EQ(oracle("order").front(), Words(names.begin(), names.end()));
    for (const auto& words : oracle("day")) {
        EXPECT_EQ(intake::is_passport_day(words[0]), words[1] == "yes") << words[0];
    }
    for (const auto& words : oracle("status")) {
        ASSERT_TRUE(intake::kind_of_status(words[0])) << words[0];
        EXPECT_EQ(to_word(*intake::kind_of_status(words[0])), words[1]);
    }
    for (const auto& words : oracle("written")) {
        EXPECT_EQ(intake::status_of_kind(*from_word<AccessionKind>(words[0])), words[1]);
    }
    for (const auto& words : oracle("institute")) {
        EXPECT_EQ(intake::is_institute_code(words[0]), words[1] == "yes") << words[0];
    }
    EXPECT_FALSE(intake::kind_of_status("7"));
    EXPECT_FALSE(intake::kind_of_status(""));
}

TEST(Passport, KeepsInTheNoteWhatTheBookHasNoPlaceFor) {
    const intake::Passport kept{
        {"ACQDATE", "1975----"}, {"OTHERNUMB", "ZZZ999:7;XXX002:9"}, {"STORAGE", "20"}};
    const auto whole_remark = intake::remark_with("Firm; sharp.", kept);
    EXPECT_EQ(whole_remark, "Firm; sharp. [ACQDATE=1975----; OTHERNUMB=ZZZ999:7;XXX002:9; STORAGE=20]");
    EXPECT_EQ(intake::kept_in(whole_remark).remark, "Firm; sharp.");
    EXPECT_EQ(intake::kept_in(whole_remark).kept, kept);
    EXPECT_EQ(intake::kept_in("From [somewhere]").remark, "From [somewhere]");
    EXPECT_EQ(intake::remark_with("", {}), "");
}

Outcome run(const std::string& book, const std::string& id, Form form) {
    form["book"] = book;
    return find_operation(id)->run(form, {});
}

Outcome exported(const std::string& book) {
    return run(book, "passport-export", {{"as-of", "2026-03-20"}});
}

TEST(Passport, OutOfABookAndIntoANewOneNothingIsLost) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto csv = exported(sample.book()).files.at(0).content;
    const auto file = sample.put("passport.csv", csv);
    const auto fresh = sample.path("fresh.gpkg");
    book::create_book(fresh, "EPSG:32632");
    const auto outcome = run(fresh, "passport-import", {{"passport-file", file}, {"write", "yes"}});
    EXPECT_FALSE(std::ranges::any_of(outcome.findings,
                                     [](const Finding& finding) { return finding.level != Level::notice; }));
    const auto before = book::read_book(sample.book()).orchard;
    const auto after = book::read_tables(fresh, {"accession", "blend"}).orchard;
    ASSERT_EQ(after.accessions.size(), before.accessions.size());
    for (std::size_t i = 0; i < before.accessions.size(); ++i) {
        EXPECT_TRUE(after.accessions[i] == before.accessions[i]) << before.accessions[i].name;
        EXPECT_EQ(intake::kept_in(after.accessions[i].remark.value_or("")).remark,
                  before.accessions[i].remark.value_or(""));
    }
    EXPECT_EQ(after.blend_members.size(), before.blend_members.size());
    EXPECT_EQ(exported(fresh).files.at(0).content, csv) << "planting days are kept in the notes";
}

class Import : public ::testing::Test {
  protected:
    Outcome take(const std::string& csv, bool write = false) {
        return run(sample.book(), "passport-import",
                   {{"passport-file", sample.put("in.csv", csv)}, {"write", write ? "yes" : "no"}});
    }
    static std::string told(const Outcome& outcome) {
        std::string text;
        for (const auto& finding : outcome.findings) {
            text += to_text(finding) + "\n";
        }
        return text;
    }
    std::string refused(const std::string& csv) {
        const auto before = sample.bytes();
        try {
            take(csv, true);
        } catch (const Error& error) {
            EXPECT_EQ(sample.bytes(), before);
            return to_text(error.findings().back());
        }
        return "nothing";
    }
    static bool has(const std::string& text, const std::string& part) {
        return text.find(part) != std::string::npos;
    }
    SampleCopy sample;
};

TEST_F(Import, ShowsFirstAndWritesOnlyWhenToldSo) {
    NEED_SAMPLE();
    const std::string csv =
        "\xEF\xBB\xBF"
        "accename;GENUS;SPECIES;SAMPSTAT;ANCEST;COLLSITE\n"
        "Pellhurst;Malus;domestica;500;Wrenlea x Owlcombe;by the mill\n";
    const auto before = sample.bytes();
    EXPECT_TRUE(
        has(take(csv).summary, "Nothing was written; with write these accessions would be added: 1."));
    EXPECT_EQ(sample.bytes(), before);
    const auto outcome = take(csv, true);
    EXPECT_TRUE(has(told(outcome), "no column for COLLSITE"));
    const auto after = book::read_tables(sample.book(), {"accession"}).orchard.accessions.back();
    EXPECT_EQ(after.name, "Pellhurst");
    EXPECT_EQ(after.seed_parent, "Wrenlea");
    EXPECT_EQ(after.pollen_parent, "Owlcombe");
    EXPECT_EQ(after.remark, "[COLLSITE=by the mill]");
}

TEST_F(Import, TellsWhatDiffersAndOverwritesNothing) {
    NEED_SAMPLE();
    const auto before = sample.bytes();
    const auto outcome = take("ACCENAME,SAMPSTAT,ANCEST\nMarlside,416,Larkfold Red/Owlcombe\n", true);
    EXPECT_EQ(sample.bytes(), before);
    EXPECT_TRUE(has(told(outcome), "another value: cultivar"));
    EXPECT_TRUE(has(told(outcome), "another value: Tansy Lane"));
    EXPECT_TRUE(has(outcome.summary, "In the book already: 1"));
}

TEST_F(Import, TellsOfEverythingThatIsOdd) {
    NEED_SAMPLE();
    const auto outcome = take(
        "ACCENAME,ACQDATES,ACQDATE,SAMPSTAT,INSTCODE,ANCEST\n"
        "One,x,1975-06-12,777,abc,Nobody/Wrenlea\n"
        "Two,x,197506--,421,ZZZ999,sport of Wrenlea\n"
        "Three,x,,,,A/B//C\n"
        ",x,,500,,\n"
        "Four,x,,,,-/Wrenlea,too many\n");
    const auto text = told(outcome);
    EXPECT_TRUE(has(text, "no descriptor of this name")) << text;
    EXPECT_TRUE(has(text, "Did you mean ACQDATE?")) << text;
    EXPECT_TRUE(has(text, "no day as YYYYMMDD")) << text;
    EXPECT_TRUE(has(text, "no status of this code")) << text;
    EXPECT_TRUE(has(text, "no code of an institute")) << text;
    EXPECT_TRUE(has(text, "Neither the book nor the file has this parent of One")) << text;
    EXPECT_TRUE(has(text, "The parents cannot be seen from this")) << text;
    EXPECT_TRUE(has(text, "no name: it is left out")) << text;
    EXPECT_TRUE(has(text, "more fields than the header")) << text;
    EXPECT_FALSE(has(text, "error:")) << text;
    EXPECT_EQ(outcome.tables.at(0).rows.size(), 4U);
}

TEST_F(Import, ReadsWindows1252AndSaysSo) {
    NEED_SAMPLE();
    const auto outcome = take("ACCENAME\nGr\xFCn\n");
    EXPECT_TRUE(has(told(outcome), "The line holds letters that are not UTF-8")) << told(outcome);
    EXPECT_EQ(to_text(outcome.tables.at(0).rows.at(0).cells.at(1)), "Gr\xC3\xBCn");
}

TEST_F(Import, RefusesAsAWhole) {
    NEED_SAMPLE();
    EXPECT_TRUE(has(refused("ACCENAME\nSame\nSame\n"), "Two lines have this name"));
    EXPECT_TRUE(has(refused("NAME,STATUS\nA,B\n"), "neither a column ACCENAME"));
    EXPECT_TRUE(has(refused("ACCENAME,ANCEST\nA1,B1/Wrenlea\nB1,A1/Wrenlea\n"), "its own ancestor"));
    EXPECT_TRUE(has(refused("ACCENAME\nGr\xFCn\nH\xC3\xB6he\n"), "not UTF-8"));
    EXPECT_TRUE(has(refused(""), "file"));
}

}  // namespace
}  // namespace pipward::operation
