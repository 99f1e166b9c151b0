// SPDX-License-Identifier: MIT
// A published table entered as notes: what is calculated from the book must be what was printed.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "operation/sample_copy.h"
#include "paths.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"
#include "pipward/seed/trial.h"

namespace pipward::operation {
namespace {

constexpr int seeds = 180;  // inferred, as the oracle's head tells

struct PublishedLot {
    std::string lot;
    double control = 0;  // %
    double treated = 0;
};

/// The first one holds the printed means.
std::vector<PublishedLot> published() {
    std::vector<PublishedLot> lots;
    std::ifstream file(testing::oracle_file("seed-douglas-fir.txt"));
    for (std::string line; std::getline(file, line);) {
        PublishedLot lot;
        if (!line.starts_with('#') && std::istringstream(line) >> lot.lot >> lot.control >> lot.treated) {
            lots.push_back(lot);
        }
    }
    return lots;
}

int germinated(double percent) {
    return static_cast<int>(std::lround(percent * seeds / 100));
}

/// A book with a tree and a cross of two invented accessions, and nothing else.
std::string fresh_book(const testing::SampleCopy& folder) {
    const auto path = folder.path("fresh.gpkg");
    book::create_book(path, "EPSG:25832");
    const auto add = [&](const std::string& table, const std::vector<std::string>& names,
                         std::vector<Row> rows) {
        Table made;
        made.shape.name = table;
        for (const auto& name : names) {
            made.shape.columns.push_back(
                {.name = name, .type = {}, .unit = {}, .label = {}, .description = {}});
        }
        made.rows = std::move(rows);
        book::append_rows(path, made);
    };
    const auto text = [](const char* words) { return Cell{std::string(words)}; };
    add("accession", {"name", "kind"},
        {{{text("Fir A"), text("cultivar")}}, {{text("Fir B"), text("cultivar")}}});
    add("cross_goal", {"code", "season", "seed_parent", "pollen_parent", "seedlings_wanted"},
        {{{text("98-01"), Cell{std::int64_t{1998}}, text("Fir A"), text("Fir B"), Cell{std::int64_t{50}}}}});
    return path;
}

std::string sheet_of_lots(const std::vector<PublishedLot>& lots) {
    std::string sheet = "code,cross,seeds,stratified_from,treatment\n";
    for (const auto& lot : lots) {
        sheet += fmt::format("{}-C,98-01,{},1998-03-01,\n", lot.lot, seeds);
        sheet += fmt::format("{}-T,98-01,{},1998-03-01,\"hydrogen peroxide 3 %, 4 h\"\n", lot.lot, seeds);
    }
    return sheet;
}

std::string sheet_of_counts(const std::vector<PublishedLot>& lots) {
    std::string sheet = "lot;counted_on;germinated\n";
    for (const auto& lot : lots) {
        sheet += fmt::format("{}-C;1998-04-01;{}\n", lot.lot, germinated(lot.control));
        sheet += fmt::format("{}-T;1998-04-01;{}\n", lot.lot, germinated(lot.treated));
    }
    return sheet;
}

class DouglasFir : public ::testing::Test {
  protected:
    Outcome take_in(const std::string& sheet) {
        return find_operation("record-import")
            ->run({{"book", book},
                   {"records-file", folder.put("sheet.csv", sheet)},
                   {"write", "yes"},
                   {"as-of", "1998-07-01"}},
                  {});
    }
    Orchard entered() {
        auto lots = published();
        lots.erase(lots.begin());
        EXPECT_TRUE(take_in(sheet_of_lots(lots)).findings.empty());
        EXPECT_TRUE(take_in(sheet_of_counts(lots)).findings.empty());
        return book::read_book(book).orchard;
    }

    testing::SampleCopy folder;
    std::string book = fresh_book(folder);
};

TEST_F(DouglasFir, EveryPrintedPercentageIsAWholeCountOfTheInferredSeeds) {
    const auto lots = published();
    ASSERT_EQ(lots.size(), 11U);
    for (std::size_t i = 1; i < lots.size(); ++i) {
        EXPECT_NEAR(100.0 * germinated(lots[i].control) / seeds, lots[i].control, 0.05 + 1e-9);
        EXPECT_NEAR(100.0 * germinated(lots[i].treated) / seeds, lots[i].treated, 0.05 + 1e-9);
    }
}

TEST_F(DouglasFir, TheTrialOfTheEnteredLotsHasThePrintedMeans) {
    const auto orchard = entered();
    const auto printed = published().front();
    const auto trials = seed::trials_of(orchard, *parse_iso_day("1998-07-01"));
    ASSERT_EQ(trials.size(), 1U);
    ASSERT_EQ(trials[0].arms.size(), 2U);
    for (const auto& arm : trials[0].arms) {
        EXPECT_EQ(arm.lots.size(), 10U);
        EXPECT_EQ(arm.seeds, 1800);
        const double share = 100.0 * arm.germinated / arm.seeds;
        EXPECT_NEAR(share, arm.treatment.empty() ? printed.control : printed.treated, 0.05);
        EXPECT_NEAR(share, arm.treatment.empty() ? 79.72 : 79.88, 0.01);
    }
    EXPECT_NE(trials[0].pairs.at(0).verdict, seed::TrialVerdict::more_germinate);
}

}  // namespace
}  // namespace pipward::operation
