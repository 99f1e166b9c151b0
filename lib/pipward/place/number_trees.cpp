// SPDX-License-Identifier: MIT
#include "pipward/place/number_trees.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "pipward/record/name_index.h"
#include "pipward/record/presence.h"
#include "pipward/value/complaint.h"

namespace pipward::place {
namespace {

bool wants_number(const Tree& tree, const std::string& block, Day as_of) {
    return !removed_by(tree, as_of) && (!tree.row || !tree.position) && (!tree.block || *tree.block == block);
}

Finding no_place(const Tree& tree) {
    return {Level::warning,
            "tree",
            tree.label,
            "geom",
            "",
            say("It has no location on the map to be numbered by."),
            say("Draw it on the map.")};
}

struct BookRows {
    std::vector<const TreeRow*> records{};
    std::vector<KnownRow> rows{};
};

BookRows rows_of_block(const std::string& block, const Orchard& orchard) {
    const ToEarth to_earth(orchard.crs);
    BookRows known;
    for (const auto& row : orchard.rows) {
        const auto positions = row.block == block ? positions_on(row, to_earth) : std::vector<GroundPoint>{};
        if (!positions.empty()) {
            known.records.push_back(&row);
            known.rows.push_back(
                {to_ground(row.line, to_earth), *row.spacing, static_cast<int>(positions.size())});
        }
    }
    return known;
}

RecoveryRule rule_of(const NumberingWish& wish) {
    RecoveryRule rule;
    rule.bearing_deg = wish.bearing;
    rule.row_distance = wish.row_distance;
    rule.spacing = wish.spacing;
    rule.rows_to = wish.rows_to;
    rule.begin = wish.begin;
    rule.empty_rows = wish.empty_rows;
    rule.confidence = wish.confidence;
    return rule;
}

std::vector<std::string> names_from(const std::string& first, int rows) {
    std::vector<std::string> names;
    std::optional<std::string> name = first;
    for (int row = 0; row < rows; ++row) {
        if (!name) {
            throw Error(
                Trouble::usage,
                about_parameter("row", first, say("The names of the further rows do not follow from it."),
                                say("Give a first row that ends in a number, as in 1 or B01.")));
        }
        names.push_back(*name);
        name = next_name(*name);
    }
    return names;
}

void fill(TreeDecision& decision, const NumberedTree& tree, const std::string& block, const std::string& row,
          int first_position) {
    decision.block = block;
    decision.confidence = tree.confidence;
    decision.off_row = tree.off_row;
    decision.off_position = tree.off_position;
    decision.doubt = tree.doubt;
    if (tree.placed) {
        decision.row = row;
        decision.position = first_position + tree.position;
    }
    if (decision.doubt.empty() && !tree.placed) {
        decision.doubt = say("no position is near");
    }
}

struct Spot {
    std::string row;
    int position = 0;

    auto operator<=>(const Spot&) const = default;
};

/// What the book says already comes before what was calculated.
void respect_book(Numbering& numbering, const NumberingWish& wish, const Orchard& orchard, Day as_of) {
    std::map<Spot, std::string> taken;
    for (const auto& tree : orchard.trees) {
        if (!removed_by(tree, as_of) && tree.block == wish.block && tree.row && tree.position) {
            taken.emplace(Spot{*tree.row, *tree.position}, tree.label);
        }
    }
    for (auto& decision : numbering.decisions) {
        if (!decision.decided() || !decision.tree) {
            continue;
        }
        const auto& tree = orchard.trees[*decision.tree];
        const auto holder = taken.find({decision.row, *decision.position});
        if (holder != taken.end()) {
            decision.doubt = say("tree {} has this position in the book", holder->second);
        } else if (tree.row && *tree.row != decision.row) {
            decision.doubt = say("the book has it in row {}", *tree.row);
        } else if (tree.position && *tree.position != *decision.position) {
            decision.doubt = say("the book has it at position {}", *tree.position);
        }
    }
}

void number_in_known_rows(Numbering& numbering, const NumberingWish& wish, const TreeCloud& cloud,
                          const BookRows& known, Findings& findings) {
    const auto recovery = match_rows(cloud.places, known.rows, rule_of(wish));
    findings.insert(findings.end(), recovery.findings.begin(), recovery.findings.end());
    for (std::size_t i = 0; i < numbering.decisions.size(); ++i) {
        const auto& tree = recovery.trees[i];
        const auto& row = *known.records[static_cast<std::size_t>(tree.row)];
        fill(numbering.decisions[i], tree, wish.block, row.name, row.first_position);
    }
    numbering.rows = recovery.rows;
    numbering.rows_known = true;
    numbering.understood =
        say("Matched with the block's rows in the book; the points deviate by about {:.2f} m across and "
            "{:.2f} m along.",
            recovery.noise_across.value, recovery.noise_along.value);
}

/// The decisions with the numbers of the trees; row names as many as the numbers need.
void fill_all(std::vector<TreeDecision>& decisions, std::span<const NumberedTree> trees,
              const NumberingWish& wish) {
    int rows = 0;
    for (const auto& tree : trees) {
        rows = std::max(rows, tree.placed ? tree.row + 1 : 0);
    }
    const auto names = names_from(wish.row, rows);
    for (std::size_t i = 0; i < decisions.size(); ++i) {
        const auto name = trees[i].placed ? names[static_cast<std::size_t>(trees[i].row)] : std::string{};
        fill(decisions[i], trees[i], wish.block, name, wish.first_position);
    }
}

NumberingQuestion question_of(const RowQuestion& question, std::span<const TreeDecision> unnumbered,
                              const NumberingWish& wish) {
    NumberingQuestion result{question.words, {}, question.tree};
    for (const auto& answer : question.answers) {
        result.answers.push_back(
            {answer.words, answer.option, answer.value, {unnumbered.begin(), unnumbered.end()}});
        fill_all(result.answers.back().decisions, answer.trees, wish);
    }
    return result;
}

void number_from_cloud(Numbering& numbering, const NumberingWish& wish, const TreeCloud& cloud,
                       Findings& findings) {
    auto recovery = recover_rows(cloud.places, rule_of(wish));
    findings.insert(findings.end(), recovery.findings.begin(), recovery.findings.end());
    numbering.row_names = names_from(wish.row, recovery.rows);
    if (recovery.question) {
        numbering.question = question_of(*recovery.question, numbering.decisions, wish);
    }
    fill_all(numbering.decisions, recovery.trees, wish);
    numbering.rows = recovery.rows;
    numbering.made_out = std::move(recovery.made_out);
    if (recovery.rows == 1) {
        numbering.understood =
            say("The row runs at {:.1f} degrees, with a tree every {:.3f} m; the points deviate "
                "by about {:.2f} m across and {:.2f} m along.",
                recovery.bearing_deg, recovery.spacing.value, recovery.noise_across.value,
                recovery.noise_along.value);
    } else if (recovery.rows > 1) {
        numbering.understood =
            say("The rows run at {:.1f} degrees, {:.2f} m apart, with a tree every {:.3f} m; the points "
                "deviate by about {:.2f} m across and {:.2f} m along.",
                recovery.bearing_deg, recovery.row_distance.value, recovery.spacing.value,
                recovery.noise_across.value, recovery.noise_along.value);
    }
}

}  // namespace

std::span<const Word<RowBegin>> words(RowBegin) {
    static constexpr std::array table{
        Word<RowBegin>{RowBegin::detect, "detect",
                       "at the block's common edge where the trees show it; asked where they do not"},
        Word<RowBegin>{RowBegin::edge, "edge",
                       "at the block's common edge, also where first trees are missing"},
        Word<RowBegin>{RowBegin::bent_edge, "bent_edge",
                       "at an edge that turns once, as at a cut corner, also where first trees are missing"},
        Word<RowBegin>{RowBegin::first_tree, "first_tree", "at its own first tree"},
    };
    return table;
}

std::span<const Word<EmptyRows>> words(EmptyRows) {
    static constexpr std::array table{
        Word<EmptyRows>{EmptyRows::ask, "ask", "left open, and asked"},
        Word<EmptyRows>{EmptyRows::count, "count", "a row without trees has a number"},
        Word<EmptyRows>{EmptyRows::skip, "skip", "a wide gap is an alley"},
    };
    return table;
}

Findings check_numbering(const NumberingWish& wish) {
    Findings findings;
    if (wish.block.find_first_not_of(" \t\r\n") == std::string::npos) {
        findings.push_back(about_parameter("block", wish.block, say("The block has no name."),
                                           say("Name the block that the trees stand in.")));
    }
    return findings;
}

TreeCloud cloud_of_layer(const GroundLayer& layer, const Orchard& orchard) {
    const auto names = column_like(layer, {"label", "tree", "name", "id"});
    const ToEarth to_earth(orchard.crs);
    TreeCloud cloud;
    for (const auto& feature : layer.features) {
        if (feature.is_line || feature.points.empty()) {
            continue;
        }
        const auto named = feature.texts.find(names);
        TreeDecision decision{named == feature.texts.end() ? feature.name : named->second};
        decision.at = to_map(feature.points.front(), to_earth);
        cloud.decisions.push_back(std::move(decision));
        cloud.places.push_back(feature.points.front().at);
    }
    return cloud;
}

TreeCloud cloud_of_trees(const std::string& block, const Orchard& orchard, Day as_of, Findings& findings) {
    const ToEarth to_earth(orchard.crs);
    TreeCloud cloud;
    for (std::size_t i = 0; i < orchard.trees.size(); ++i) {
        const auto& tree = orchard.trees[i];
        if (!wants_number(tree, block, as_of)) {
            continue;
        }
        const auto place = tree.at ? to_earth(*tree.at) : std::nullopt;
        if (!place) {
            findings.push_back(no_place(tree));
            continue;
        }
        TreeDecision decision{tree.label, i};
        decision.at = tree.at;
        cloud.decisions.push_back(std::move(decision));
        cloud.places.push_back(*place);
    }
    return cloud;
}

void expect_block(const NumberingWish& wish, const Orchard& orchard) {
    if (first_named(orchard.blocks, &Block::name, wish.block) == nullptr) {
        throw Error(Trouble::input,
                    about_parameter("block", wish.block, say("The book has no block of this name."),
                                    say("Correct it, or draw the block first.")));
    }
}

Numbering number_trees(TreeCloud cloud, const NumberingWish& wish, const Orchard& orchard, Day as_of,
                       Findings& findings) {
    expect_block(wish, orchard);
    Numbering numbering;
    numbering.decisions = std::move(cloud.decisions);
    if (numbering.decisions.empty()) {
        findings.push_back(about_table(Level::notice, "tree",
                                       say("There is no tree to number in block {}.", wish.block),
                                       say("Trees that have a row and a position are left as they are.")));
        return numbering;
    }
    const auto known = rows_of_block(wish.block, orchard);
    if (!known.rows.empty()) {
        number_in_known_rows(numbering, wish, cloud, known, findings);
    } else {
        number_from_cloud(numbering, wish, cloud, findings);
    }
    respect_book(numbering, wish, orchard, as_of);
    return numbering;
}

std::vector<TreeRow> new_rows(const NumberingWish& wish, const Numbering& numbering, const Orchard& orchard) {
    const ToEarth to_earth(orchard.crs);
    std::vector<TreeRow> rows;
    for (std::size_t i = 0; i < numbering.made_out.size(); ++i) {
        const auto& made = numbering.made_out[i];
        const bool used = std::ranges::any_of(numbering.decisions, [&](const TreeDecision& decision) {
            return decision.decided() && decision.row == numbering.row_names[i];
        });
        const bool there = std::ranges::any_of(orchard.rows, [&](const TreeRow& row) {
            return row.block == wish.block && row.name == numbering.row_names[i];
        });
        if (!used || there) {
            continue;
        }
        TreeRow row;
        row.block = wish.block;
        row.name = numbering.row_names[i];
        // Rounded down: the last position must not fall off the line's end.
        row.spacing = Metres{std::floor(made.spacing.value * 1e4) / 1e4};
        row.first_position = wish.first_position;
        for (const auto& corner : made.line) {
            if (const auto point = to_earth.back(corner)) {
                row.line.push_back(*point);
            }
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

Finding left_open(const TreeDecision& decision) {
    return {Level::warning,
            "tree",
            decision.label,
            "position",
            "",
            say("Its number is left open: {}.",
                decision.doubt.empty() ? say("it is not certain") : decision.doubt),
            say("Check it in the field and fill in its row and position, or survey it again.")};
}

}  // namespace pipward::place
