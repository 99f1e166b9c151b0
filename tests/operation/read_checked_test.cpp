// SPDX-License-Identifier: MIT
#include "pipward/operation/declare/detail/read_checked.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "operation/sample_copy.h"

namespace pipward::operation {
namespace {

const Day spring = *parse_iso_day("2026-03-20");

book::BookReading read(const testing::SampleCopy& sample, Day as_of = spring) {
    return detail::read_checked({sample.book()}, as_of, {});
}

void add_note(const testing::SampleCopy& sample, const std::string& accession,
              const std::string& observed_on) {
    using enum CellType;
    book::append_rows(
        sample.book(),
        {{"bloom_observation",
          "",
          "",
          false,
          {{"accession", text, "", "", ""}, {"observed_on", day, "", "", ""}, {"bbch", whole, "", "", ""}}},
         {{{accession, *parse_iso_day(observed_on), std::int64_t{65}}}}});
}

int findings_saying(const Findings& findings, const std::string& words) {
    return static_cast<int>(std::ranges::count_if(
        findings, [&](const Finding& f) { return f.message.text().find(words) != words.npos; }));
}

bool has_note_of(const Orchard& orchard, const std::string& observed_on) {
    return std::ranges::find(orchard.bloom_observations, *parse_iso_day(observed_on),
                             &BloomObservation::observed_on) != orchard.bloom_observations.end();
}

TEST(ReadChecked, LeavesOutANoteOfBloomInWinterAndSaysSo) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto before = read(sample);
    add_note(sample, "Larkfold Red", "2026-01-10");
    const auto after = read(sample);
    EXPECT_FALSE(has_note_of(after.orchard, "2026-01-10"));
    EXPECT_EQ(after.orchard.bloom_observations.size(), before.orchard.bloom_observations.size());
    EXPECT_EQ(findings_saying(after.findings, "it is not used"), 1);
}

TEST(ReadChecked, CarriesEveryFindingWhereOneIsAnError) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto sound = read(sample).findings;
    add_note(sample, "Nobody's Apple", "2025-04-28");
    add_note(sample, "No Apple", "2025-04-28");
    try {
        (void)read(sample);
        FAIL() << "a book with errors was taken";
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::input);
        EXPECT_EQ(error.findings().size(), sound.size() + 2);
    }
}

TEST(ReadChecked, WorkWithoutWeatherIsNotStoppedByFaultsOfBloomObservations) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    add_note(sample, "Nobody's Apple", "2025-04-28");
    EXPECT_THROW((void)read(sample), Error);
    const auto reading = detail::read_checked_without_weather({sample.book()}, spring, {});
    for (const auto& finding : reading.findings) {
        EXPECT_NE(finding.table, "bloom_observation");
        EXPECT_NE(finding.table, "weather_day");
    }
    EXPECT_FALSE(reading.orchard.goals.empty());
}

TEST(ReadChecked, LooksFromAPastDayWithoutWonderingAtWhatCameLater) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    EXPECT_EQ(findings_saying(read(sample, *parse_iso_day("2020-03-20")).findings, "future"), 0);
}

TEST(ReadChecked, FindsANoteFarBeyondTheRecord) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    add_note(sample, "Larkfold Red", "2099-04-28");
    EXPECT_EQ(findings_saying(read(sample).findings, "lies in the future"), 1);
    EXPECT_EQ(findings_saying(read(sample, *parse_iso_day("2020-03-20")).findings, "lies in the future"), 1);
}

TEST(ReadChecked, StopsWhenAsked) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    pipward::operation::Run lent;
    lent.cancelled = [] { return true; };
    EXPECT_THROW((void)detail::read_checked({sample.book()}, spring, lent), Error);
}

TEST(WriteResults, TellHowToLookWhereTheBookCannotBeWritten) {
    try {
        detail::write_results({"no-such-folder/book.gpkg"}, {});
        FAIL() << "written to nowhere";
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::access);
        EXPECT_NE(error.findings().back().remedy.text().find("set keep to no"), std::string::npos);
    }
}

}  // namespace
}  // namespace pipward::operation
