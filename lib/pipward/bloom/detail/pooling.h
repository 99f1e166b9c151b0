// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

/// Partial pooling: what each accession needs, allowing for the season's luck and drawn to the orchard's
/// mean.
namespace pipward::bloom::detail {

/// Correlation of the departures of two accessions in one spring: they share the weather, its measurement
/// and whatever the model has wrong about that spring. Common practice, no source; it makes twenty accessions
/// of one spring worth about one and a half springs.
inline constexpr double shared_luck = 0.6;

/// Of two accessions of one species: 0.81 among apples and 0.73 to 0.75 among pears were found in two
/// orchards, across the species 0.60 (our own figures, of which the cultivars held back cannot be shown
/// here).
inline constexpr double shared_luck_in_species = 0.75;

/// How many independent notes the notes of one season are worth: n / (1 + (n - 1) r), the design effect of a
/// cluster (Kish 1965, Survey Sampling, from memory) with r = shared_luck; one or fewer stay as they are.
double effective_number(double observations);

/// One observed amount, or one a structure, with where it belongs.
struct PoolRow {
    int accession = 0;                ///< below PoolShape::accessions
    int season = 0;                   ///< below PoolShape::seasons
    double weight = 1;                ///< above 0; 1 for a note good to a day
    std::span<const double> amounts;  ///< as many as PoolShape::amounts, each in its structure's unit
};

/// How many there are of each: rows are numbered from 0.
struct PoolShape {
    int accessions = 0;          ///< with rows or without
    int seasons = 0;             ///< with rows or without
    int amounts = 0;             ///< structures, or 1 for the day itself
    std::vector<int> species{};  ///< by accession; empty: all of one species
    std::vector<int> genus{};    ///< by species; empty: all of one genus
    std::vector<double>
        looseness{};  ///< by accession, 0..1: the part of the pull that it feels; empty: all of it

    /// Where they are given; else 0, the only one.
    int species_of(int accession) const { return species.empty() ? 0 : species[accession]; }
    int genus_of(int of_species) const { return genus.empty() ? 0 : genus[of_species]; }
    int species_count() const;
    int genus_count() const;
    double looseness_of(int accession) const { return looseness.empty() ? 1 : looseness[accession]; }
};

/// How close a centre stands to the accession that leans on it.
enum class CentreOf { species, genus, orchard };

/// What came of pooling, in the units of the amounts.
struct Pooled {
    std::vector<std::vector<double>> needs;  ///< by accession, each one a structure; empty without rows
    std::vector<double> centre;              ///< the orchard's mean, one a structure
    std::vector<std::vector<double>> species_centres;  ///< by species, drawn to its genus's and the orchard's
    std::vector<CentreOf> centre_of;  ///< by species: the closest circle in which anything was noted
    std::vector<double> worth;        ///< by accession: the sum of its rows' weights
};

/// amount = need of the accession + luck of the season + rest, by a fixed number of rounds over the two.
/// Needs are (n mean + m centre) / (n + m), `m` being `pull` and the centre that of the species, which is
/// drawn to its genus's a little and this to the orchard's. The season's luck, that of the species in it
/// being shared more closely, is drawn to zero and is looked for only where two accessions share the season,
/// so a book with one accession gets its plain mean. These are the equations of a linear mixed model with all
/// of them as random effects (Robinson 1991, Stat. Sci. 6:15, from memory), solved in turns; `pull` is the
/// ratio of its variances.
Pooled pool_needs(std::span<const PoolRow> rows, const PoolShape& shape, double pull);

/// How far accessions differ, and how hard a need is drawn to the centre: m = within^2 / between^2.
struct PoolStrength {
    double within_sd = 0;   ///< days: one accession's departure in one season, the season's luck aside
    double between_sd = 0;  ///< days: of accessions' full bloom about the orchard's mean
    double pull = 2;        ///< m, in notes good to a day; 0.1..4
    std::vector<double> looseness;  ///< by accession: what blooms far from its kind is not drawn back to it
};

/// By the method of moments, each variance joined with what is believed beforehand as if that were so many
/// more notes or accessions (our own method). From the observed days themselves; `rows` carry one amount, the
/// day. Begins at m = 2 and learns from the book as far as its numbers go.
PoolStrength pool_strength(std::span<const PoolRow> rows, const PoolShape& shape);

}  // namespace pipward::bloom::detail
