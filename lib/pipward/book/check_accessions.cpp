// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <map>

#include "pipward/book/detail/check.h"

namespace pipward::book::detail {
namespace {

// The number of alleles in "S2 S3", "s2/s3", "2,3", "S2S3"; nothing where the text has another form. Which
// alleles they are is lineage's business; here only the writing is looked at.
std::optional<int> count_alleles(const std::string& text) {
    int count = 0;
    bool open = false;  // an S or a separator has been read and a name may follow
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto letter = static_cast<unsigned char>(text[i]);
        const bool begins = (letter == 'S' || letter == 's') && i + 1 < text.size() &&
                            std::isalnum(static_cast<unsigned char>(text[i + 1])) != 0;
        if (begins) {
            ++count;
            open = true;
        } else if (std::isalnum(letter) != 0) {
            count += open ? 0 : 1;
            open = true;
        } else if (std::isspace(letter) != 0 || letter == ',' || letter == '/' || letter == ';' ||
                   letter == '-') {
            open = false;
        } else {
            return std::nullopt;
        }
    }
    return count == 0 ? std::nullopt : std::optional{count};
}

void check_alleles(const Accession& accession, Findings& findings) {
    if (!accession.s_alleles) {
        return;
    }
    const Whereabouts place{"accession", accession.name, "s_alleles", *accession.s_alleles};
    const auto count = count_alleles(*accession.s_alleles);
    if (!count) {
        findings.push_back(
            error(place, say("The S-alleles cannot be read."), say("Write them as \"S2 S3\".")));
    } else if (*count > accession.ploidy.value_or(4)) {
        findings.push_back(error(place,
                                 say("There are {} S-alleles but at most {} chromosome sets to carry them.",
                                     *count, accession.ploidy.value_or(4)),
                                 say("Correct the alleles or the ploidy.")));
    }
}

using Parents = std::map<std::string, std::vector<std::string>>;

Parents parents_of(const Orchard& orchard) {
    Parents members;
    for (const auto& member : orchard.blend_members) {
        members[member.name].push_back(member.member);
    }
    Parents parents;
    for (const auto& accession : orchard.accessions) {
        auto& known = parents[accession.name];
        if (accession.sport_of) {
            known.push_back(*accession.sport_of);
        }
        for (const auto& parent : {accession.seed_parent, accession.pollen_parent}) {
            if (!parent) {
                continue;
            }
            const auto blend = members.find(*parent);
            if (blend == members.end()) {
                known.push_back(*parent);
            } else {
                known.insert(known.end(), blend->second.begin(), blend->second.end());
            }
        }
    }
    return parents;
}

enum class Visit { open, done };

struct Step {
    const std::string* name;
    std::size_t next;
};
using Path = std::vector<Step>;

constexpr std::ptrdiff_t most_names = 12;  // of a long circle; who sees its ends finds the rest

// "A -> B -> A": each is a child of the next.
Sentence circle_text(Path::const_iterator first, Path::const_iterator end) {
    const auto length = end - first;
    std::vector<Sentence> names;
    for (auto step = first; step != end && step - first < most_names; ++step) {
        names.push_back(verbatim(*step->name));
    }
    if (length > most_names) {
        names.push_back(say("{} more", length - most_names));
    }
    names.push_back(verbatim(*first->name));
    return joined(names, verbatim(" -> "));
}

// What each accession is recorded to be a sport of.
using Sports = std::map<std::string, std::string>;

Sports sports_of(const Orchard& orchard) {
    Sports sports;
    for (const auto& accession : orchard.accessions) {
        if (accession.sport_of) {
            sports.try_emplace(accession.name, *accession.sport_of);
        }
    }
    return sports;
}

// Whether every step of the circle is from a sport to its original.
bool is_of_sports(Path::const_iterator first, Path::const_iterator end, const Sports& sports) {
    for (auto step = first; step != end; ++step) {
        const auto& next = step + 1 == end ? *first->name : *(step + 1)->name;
        const auto sport = sports.find(*step->name);
        if (sport == sports.end() || sport->second != next) {
            return false;
        }
    }
    return true;
}

Finding circle(const Path& path, const std::string& met_again, const Sports& sports) {
    const auto first = std::ranges::find(path, met_again, [](const Step& step) { return *step.name; });
    if (path.end() - first == 1 && is_of_sports(first, path.end(), sports)) {
        return error({"accession", met_again, "sport_of", met_again},
                     say("The accession is recorded as a sport of itself."),
                     say("Name the accession that it came from, or clear the field."));
    }
    if (is_of_sports(first, path.end(), sports)) {
        return error(
            {"accession", met_again, "sport_of", sports.at(met_again)},
            say("Accessions are sports of each other in a circle: {}.", circle_text(first, path.end())),
            say("Clear the field of the one that was there first."));
    }
    return error(
        {"accession", met_again, "seed_parent, pollen_parent"},
        say("The accession is among its own ancestors: {}, each recorded as an offspring of the next.",
            circle_text(first, path.end())),
        say("Correct or clear the wrong one of these parents."));
}

/// Goes through a pedigree and tells of every circle in it once.
class CircleSearch {
  public:
    CircleSearch(const Orchard& orchard, Findings& findings)
        : parents_(parents_of(orchard)), sports_(sports_of(orchard)), findings_(findings) {}

    void search() {
        for (const auto& [name, unused] : parents_) {
            if (!visits_.contains(name)) {
                walk_from(name);
            }
        }
    }

  private:
    // Walks to the ancestors with a stack of its own: a pedigree from elsewhere may be deep. A name met again
    // while it is still open is its own ancestor.
    void walk_from(const std::string& start) {
        Path path{{&start, 0}};
        visits_[start] = Visit::open;
        while (!path.empty()) {
            auto& step = path.back();
            const auto found = parents_.find(*step.name);
            if (found == parents_.end() || step.next == found->second.size()) {
                visits_[*step.name] = Visit::done;
                path.pop_back();
                continue;
            }
            const auto& parent = found->second[step.next++];
            if (const auto visit = visits_.find(parent); visit == visits_.end()) {
                visits_[parent] = Visit::open;
                path.push_back({&parent, 0});
            } else if (visit->second == Visit::open && told_.insert(parent).second) {
                findings_.push_back(circle(path, parent, sports_));
            }
        }
    }

    const Parents parents_;
    const Sports sports_;
    Findings& findings_;
    std::map<std::string, Visit> visits_{};
    std::set<std::string> told_{};
};

}  // namespace

void check_accessions(const Orchard& orchard, Findings& findings) {
    for (const auto& accession : orchard.accessions) {
        check_alleles(accession, findings);
    }
}

void check_pedigree(const Orchard& orchard, Findings& findings) {
    CircleSearch(orchard, findings).search();
}

void check_blends(const Orchard& orchard, const Names& names, Findings& findings) {
    struct Blend {
        std::map<std::string, int> members;
        double sum = 0;
        bool complete = true;
    };
    const auto& accessions = names.of("accession", "name");
    std::map<std::string, Blend> blends;
    for (const auto& member : orchard.blend_members) {
        auto& blend = blends[member.name];
        ++blend.members[member.member];
        blend.sum += member.share ? member.share->value : 0.0;
        blend.complete = blend.complete && member.share;
    }
    for (const auto& [name, blend] : blends) {
        if (accessions.contains(name)) {
            findings.push_back(error({"blend", name, "name", name},
                                     say("A blend and an accession have the same name."),
                                     say("Rename the blend.")));
        }
        // Shares are often written to one or two places: three thirds of 0.33 are meant to be a whole.
        constexpr double rounding = 0.015;
        if (blend.complete && blend.sum <= 0.0) {
            findings.push_back(error({"blend", name, "share", fmt::format("{:.3g}", blend.sum)},
                                     say("All members of the blend have a share of zero."),
                                     say("Write the shares, or leave all of them out for equal parts.")));
        } else if (blend.complete ? std::abs(blend.sum - 1.0) > rounding : blend.sum > 0.0) {
            findings.push_back(
                warning({"blend", name, "share", fmt::format("{:.3g}", blend.sum)},
                        blend.complete ? say("The shares of the blend do not add up to 1.")
                                       : say("Some members of the blend have a share and some have none."),
                        say("Correct the shares, or leave all of them out for equal parts.")));
        }
        for (const auto& [member, count] : blend.members) {
            if (count > 1) {
                findings.push_back(error({"blend", name, "member", member},
                                         say("The blend has this member more than once."),
                                         say("Remove all but one.")));
            }
        }
    }
}

}  // namespace pipward::book::detail
