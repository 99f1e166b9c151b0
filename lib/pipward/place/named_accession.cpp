// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>

#include "pipward/place/accession_choice.h"
#include "pipward/place/named_place.h"
#include "pipward/record/name_index.h"
#include "pipward/value/complaint.h"
#include "pipward/value/listed_names.h"
#include "pipward/value/nearest.h"

namespace pipward::place {
namespace {

std::string plain(std::string_view name) {
    std::string text;
    for (const char letter : name) {
        const bool is_blank = letter == ' ' || letter == '\t';
        if (!is_blank || (!text.empty() && text.back() != ' ')) {
            text += is_blank ? ' ' : letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter + 32) : letter;
        }
    }
    return text.ends_with(' ') ? text.substr(0, text.size() - 1) : text;
}

std::optional<std::string> only_one_like(const Orchard& orchard, const std::string& who) {
    std::set<std::string> found;
    for (const auto& accession : orchard.accessions) {
        if (plain(accession.name) == plain(who)) {
            found.insert(accession.name);
        }
    }
    return found.size() == 1 ? std::optional{*found.begin()} : std::nullopt;
}

Sentence offer(const Orchard& orchard, const std::string& who) {
    std::vector<std::string> names;
    for (const auto& accession : orchard.accessions) {
        names.push_back(accession.name);
    }
    for (const auto& tree : orchard.trees) {
        names.push_back(tree.label);
    }
    const auto near = nearest_few(who, names);
    if (near.empty()) {
        return say("Give the name of an accession or the label of a tree as in the book.");
    }
    std::vector<Sentence> offered;
    for (const auto& name : near) {
        offered.push_back(verbatim(name));
    }
    return say("The nearest names are: {}.", joined(offered, verbatim(", ")));
}

}  // namespace

std::optional<std::string> accession_meant(const Orchard& orchard, const std::string& who,
                                           const std::string& key, Findings& findings) {
    if (first_named(orchard.accessions, &Accession::name, who) != nullptr) {
        return who;
    }
    if (auto found = only_one_like(orchard, who)) {
        return found;
    }
    const auto tree = tree_labelled(orchard, who);
    if (tree && orchard.trees[*tree].accession) {
        return orchard.trees[*tree].accession;
    }
    findings.push_back(
        tree ? about_parameter(key, who, say("It is not recorded of which accession this tree is."),
                               say("Name its accession in the book."))
             : about_parameter(key, who, say("The book has no accession and no tree of this name."),
                               offer(orchard, who)));
    return std::nullopt;
}

std::vector<std::string> accessions_meant(const Orchard& orchard, const std::string& text,
                                          const std::string& key, Findings& findings) {
    if (text.empty()) {
        return {};
    }
    Findings as_one_name;
    if (const auto only = accession_meant(orchard, text, key, as_one_name)) {
        return {*only};
    }
    const auto listed = listed_names(text);
    if (listed.empty()) {
        findings.insert(findings.end(), as_one_name.begin(), as_one_name.end());
    }
    std::vector<std::string> names;
    for (const auto& who : listed) {
        const auto name = accession_meant(orchard, who, key, findings);
        if (name && std::ranges::find(names, *name) == names.end()) {
            names.push_back(*name);
        }
    }
    return names;
}

}  // namespace pipward::place
