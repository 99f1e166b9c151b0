// SPDX-License-Identifier: MIT
// Single questions read a part of the book: what they find must be what the whole book would have told, on
// any book, for any search text, and after any edit by any program.
#include <gtest/gtest.h>

#include <random>

#include "bad-books/raw_book.h"
#include "operation/own_layer.h"
#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/book/checked_reading.h"
#include "pipward/book/part_reading.h"
#include "pipward/book/records.h"
#include "pipward/place/named_place.h"
#include "pipward/place/near_spots.h"
#include "pipward/place/part_of_book.h"
#include "pipward/place/tree_index.h"
#include "place/large_orchard.h"
#include "place/made_queries.h"

namespace pipward {
namespace {

Day day(int year, int month, int number) {
    return make_day({year, month, number}).value();
}

const Day today = day(2024, 5, 1);

std::string told(const Orchard& orchard, const std::vector<place::FoundTree>& found) {
    std::string text;
    for (const auto& one : found) {
        text += fmt::format("{:.4f} {} {}\n", one.score, orchard.trees[one.tree].label,
                            place::to_text(one.match).text());
    }
    return text;
}

std::string told(const Orchard& orchard, const place::FindWish& wish) {
    const place::TreeIndex index(orchard);
    return told(orchard, index.find(wish.query, wish.limit, wish.from, wish.as_of));
}

// Nothing where the question is one for the whole book.
std::optional<std::string> told_by_part(const std::string& book, const place::FindWish& wish) {
    const auto part =
        book::read_part(book, [&](OrchardShelf& shelf) { return place::take_for(wish, shelf); });
    return part ? std::optional{told(part->orchard, wish)} : std::nullopt;
}

template <class Record>
void append(const std::string& book, const std::vector<Record>& records) {
    if (!records.empty()) {
        book::append_rows(book, book::rows_to_append(records));
    }
}

// Remarks, trees removed and to come, trees without block or place, odd writings.
void spoil(Orchard& orchard, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    const auto one_in = [&](unsigned many) { return random() % many == 0; };
    for (auto& tree : orchard.trees) {
        if (one_in(9)) {
            tree.removed_on = day(2023, 11, 2);
        }
        if (one_in(30)) {
            tree.planted_on = day(2025, 3, 2);
        }
        if (one_in(12)) {
            tree.remark = one_in(2) ? "Canker below the graft." : "Fire blight seen in spring, cut back.";
        }
        if (one_in(40)) {
            tree.block.reset();
        }
        if (one_in(40)) {
            tree.at.reset();
        }
        if (one_in(60)) {
            tree.label = "Ärmchen " + tree.label;
        }
    }
    for (auto& work : orchard.pollinations) {
        work.pollinated_on = day(2023, 4, 28);
        work.remark = one_in(2) ? std::optional<std::string>("Rain the day after.") : std::nullopt;
    }
    for (int i = 0; i < 20; ++i) {
        BloomObservation seen;
        seen.tree = orchard.trees[random() % orchard.trees.size()].label;
        seen.observed_on = day(2023, 4, 20);
        seen.bbch = Bbch{65};
        seen.remark = one_in(2) ? std::optional<std::string>("Frost in the lowest row.") : std::nullopt;
        orchard.bloom_observations.push_back(seen);
    }
}

class PartOfBook : public ::testing::Test {
  protected:
    std::string make_book(const testing::LargeForm& form, std::uint64_t seed) {
        made = testing::large_orchard(form);
        spoil(made, seed);
        const auto path = sample.path(fmt::format("made-{}.gpkg", seed));
        book::create_book(path, made.crs);
        append(path, made.accessions);
        append(path, made.trees);
        append(path, made.goals);
        append(path, made.pollinations);
        append(path, made.seed_lots);
        append(path, made.bloom_observations);
        return path;
    }

    // How many search texts a part answered; each of them as the whole book does.
    static int compare(const std::string& book, const std::vector<std::string>& queries,
                       const std::optional<place::OwnPosition>& from = {}) {
        const auto whole = book::read_trees(book).orchard;
        const place::TreeIndex index(whole);
        int parts = 0;
        for (const auto& query : queries) {
            const place::FindWish wish{query, 20, from, today};
            const auto part = told_by_part(book, wish);
            if (part) {
                ++parts;
                EXPECT_EQ(*part, told(whole, index.find(query, 20, from, today))) << query;
            }
        }
        return parts;
    }

    std::vector<std::string> queries(int of_each, std::uint64_t seed) const {
        std::vector<std::string> texts;
        for (auto& query : testing::QueryMaker(made, seed).all(of_each)) {
            texts.push_back(std::move(query.text));
        }
        for (const auto& text : testing::QueryMaker::nonsense()) {
            texts.push_back(text);
        }
        return texts;
    }

    testing::SampleCopy sample;
    Orchard made;
};

TEST_F(PartOfBook, FindsWhatTheWholeBookWouldHaveTold) {
    for (const std::uint64_t seed : {1, 2}) {
        const testing::LargeForm form{.blocks = 3, .rows = 12, .positions = 11, .cultivars = 60, .family = 9};
        const auto book = make_book(form, seed);
        const auto texts = queries(6, seed);
        EXPECT_GT(compare(book, texts), static_cast<int>(texts.size() * 9 / 10));
    }
}

TEST_F(PartOfBook, FindsPartsOfNamesAndFieldsThatManyTreesShare) {
    const auto book = make_book({.blocks = 4, .rows = 10, .positions = 12, .cultivars = 40, .family = 12}, 3);
    const std::vector<std::string> texts{"UP",          "0",
                                         "12",          "Upper",
                                         "M9",          "MM106 2012",
                                         "row 3",       "Wren",
                                         "Upper M9",    "lea Red",
                                         "canker",      "blight",
                                         "blihgt",      "rain",
                                         "frost",       "01",
                                         "01-01",       "01-01 4",
                                         "P-01-01",     "S-02-01",
                                         "Kn",          "row 3 5",
                                         "2019",        "5",
                                         "Ärmchen",     "up 3 12 canker",
                                         "a x b",       "Upper 2019",
                                         "mill",        "MF",
                                         "mf 2 3",      "Larkfold Upper",
                                         "x",           "Bumblewump",
                                         "larkfold m26"};
    EXPECT_GT(compare(book, texts), static_cast<int>(texts.size() * 9 / 10));
    const auto from = place::own_position({9.2965, 48.13}, made.crs);
    EXPECT_GT(compare(book, texts, from), static_cast<int>(texts.size() / 2));
}

TEST_F(PartOfBook, FindsOnTheSampleWhatTheWholeBookWouldHaveTold) {
    NEED_SAMPLE();
    const auto part = sample.path("sample.gpkg");
    std::filesystem::copy_file(sample.book(), part);
    // A write makes what an older book lacks.
    testing::RawBook(part).run("DROP INDEX IF EXISTS tree_by_accession");
    BloomObservation seen;
    seen.accession = "Wrenlea";
    seen.observed_on = day(2024, 4, 20);
    seen.bbch = Bbch{65};
    EXPECT_FALSE(told_by_part(part, {"UP-05-04", 20, {}, today}));
    append(part, std::vector{seen});
    const std::vector<std::string> texts{"up-05-04",   "17-02-a", "Dapplestead × Greywether no. 2",
                                         "17-02-02",   "voles",   "Upper 5 10",
                                         "Dapelstead", "scab",    "Tansy Lane x Wrenlea no. 4",
                                         "Wernlea",    "17-02",   "tree 12 of row 3, Upper"};
    EXPECT_EQ(compare(part, texts), static_cast<int>(texts.size()));
}

TEST_F(PartOfBook, IsNeverWrongAfterAnEditByAnotherProgram) {
    const auto book = make_book({.blocks = 2, .rows = 6, .positions = 10, .cultivars = 20, .family = 6}, 4);
    const std::vector<std::string> texts{"UP-03-04", "LO-02-05", "XX-1",      "upper 3 4", "Renamed Row 7",
                                         "Wrenlea",  "moved",    "01-01-001", "QQ-77",     "QQ 77"};
    const auto edit = [&](const std::string& sql) {
        testing::RawBook(book).run(sql);
        EXPECT_EQ(compare(book, texts), static_cast<int>(texts.size())) << sql;
    };
    edit("UPDATE tree SET label = 'XX-1' WHERE label = 'UP-03-04'");
    edit("UPDATE tree SET accession = 'Wrenlea' WHERE label LIKE 'LO-02-%'");
    edit("DELETE FROM tree WHERE label = 'XX-1'");
    edit(
        "INSERT INTO tree (label, accession, block, \"row\", position) VALUES ('UP-03-04', 'Wrenlea', "
        "'Upper', '3', 4)");
    edit(
        "INSERT OR REPLACE INTO tree (label, block, \"row\", position, remark) VALUES ('LO-02-05', "
        "'Renamed', 'Row', 7, 'moved')");
    edit("UPDATE accession SET name = 'Renamed' WHERE name = '01-01-001'");
    edit("DELETE FROM tree WHERE block = 'Upper'");
    edit(
        "BEGIN; CREATE TABLE tree_new AS SELECT * FROM tree; DELETE FROM tree; INSERT INTO tree SELECT * "
        "FROM tree_new WHERE label NOT LIKE '%3%'; DROP TABLE tree_new; COMMIT");
    edit("VACUUM");
}

TEST_F(PartOfBook, IsNeverWrongAfterAnEditByAnotherGis) {
    const auto book = make_book({.blocks = 2, .rows = 6, .positions = 10, .cultivars = 20, .family = 6}, 5);
    auto* dataset =
        GDALDataset::Open(book.c_str(), GDAL_OF_VECTOR | GDAL_OF_UPDATE, nullptr, nullptr, nullptr);
    auto* layer = dataset->GetLayerByName("tree");
    for (int i = 0; i < 40; ++i) {
        OGRFeature feature(layer->GetLayerDefn());
        feature.SetField("label", fmt::format("QQ-{}", 50 + i).c_str());
        feature.SetField("block", "Beyond");
        feature.SetGeometryDirectly(new OGRPoint(530000.0 + i, 5331000.0));
        ASSERT_EQ(layer->CreateFeature(&feature), OGRERR_NONE);
    }
    ASSERT_EQ(layer->DeleteFeature(3), OGRERR_NONE);
    GDALClose(dataset);
    EXPECT_EQ(compare(book, {"QQ-77", "QQ", "qq 77", "Beyond", "UP-01-03", made.trees[2].label}), 6);
}

TEST_F(PartOfBook, TellsTheNearestTreesAndNamesAsTheWholeBookDoes) {
    const auto book = make_book({.blocks = 3, .rows = 8, .positions = 9, .cultivars = 30, .family = 7}, 6);
    const auto whole = book::read_trees(book).orchard;
    const place::TreeIndex index(whole);
    for (const place::LonLat at : {place::LonLat{9.2965, 48.13}, {9.31, 48.14}, {9.2970, 48.1303}}) {
        const auto from = *place::own_position(at, made.crs);
        const auto part =
            book::read_part(book, [&](OrchardShelf& shelf) { return place::take_nearest(from, 12, shelf); });
        ASSERT_TRUE(part);
        EXPECT_EQ(told(part->orchard, place::TreeIndex(part->orchard).nearest(from, 12)),
                  told(whole, index.nearest(from, 12)));
    }
    for (const auto* query : {"Wrenlee", "UP-99-99", "qqqqq", "01-01"}) {
        std::vector<std::string> names;
        book::read_part(book, [&](OrchardShelf& shelf) {
            names = place::names_like(query, shelf);
            return true;
        });
        EXPECT_EQ(names, index.names_like(query)) << query;
    }
}

TEST_F(PartOfBook, TellsTheSpotsNearByAsTheWholeBookDoes) {
    const auto book = make_book({.blocks = 3, .rows = 8, .positions = 9, .cultivars = 30, .family = 7}, 7);
    const auto whole = book::read_stands(book).orchard;
    int near_trees = 0;
    for (std::size_t i = 0; i < whole.trees.size(); i += 17) {
        if (!whole.trees[i].at) {
            continue;
        }
        const MapPoint at{whole.trees[i].at->x + 0.7, whole.trees[i].at->y - 0.9, {}};
        const place::NearWish wish{at, Metres{5}, Metres{1}, 0.1};
        const auto part =
            book::read_part(book, [&](OrchardShelf& shelf) { return place::take_near(wish, shelf); });
        ASSERT_TRUE(part);
        const auto by_part = place::near_spots(part->orchard, today, wish);
        const auto by_whole = place::near_spots(whole, today, wish);
        ASSERT_EQ(by_part.spots.size(), by_whole.spots.size());
        for (std::size_t spot = 0; spot < by_whole.spots.size(); ++spot) {
            const auto& one = by_part.spots[spot];
            const auto& other = by_whole.spots[spot];
            EXPECT_DOUBLE_EQ(one.probability, other.probability);
            EXPECT_EQ(one.row, other.row);
            EXPECT_EQ(one.position, other.position);
            EXPECT_EQ(one.facts.trees_ahead, other.facts.trees_ahead);
            EXPECT_EQ(one.facts.row_left, other.facts.row_left);
            ASSERT_EQ(one.tree.has_value(), other.tree.has_value());
            if (one.tree) {
                ++near_trees;
                EXPECT_EQ(part->orchard.trees[*one.tree].label, whole.trees[*other.tree].label);
            }
        }
    }
    EXPECT_GT(near_trees, 50);
}

}  // namespace
}  // namespace pipward
