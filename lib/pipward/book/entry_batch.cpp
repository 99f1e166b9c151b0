// SPDX-License-Identifier: MIT
#include <algorithm>
#include <charconv>
#include <map>

#include "pipward/book/detail/entry_completion.h"
#include "pipward/book/detail/entry_judgement.h"
#include "pipward/book/detail/entry_rules.h"
#include "pipward/book/detail/with_schema.h"
#include "pipward/book/records.h"

namespace pipward::book {
namespace {

// Entries have no number yet; in the book that they are judged with they have one below zero.
std::int64_t number_of(std::size_t entry) {
    return -1 - static_cast<std::int64_t>(entry);
}

std::optional<std::size_t> entry_numbered(const std::string& row) {
    constexpr std::string_view begin = "fid -";
    std::size_t number = 0;
    if (!row.starts_with(begin)) {
        return std::nullopt;
    }
    std::from_chars(row.data() + begin.size(), row.data() + row.size(), number);
    return number - 1;
}

/// What the rules say of the rows of a table, beside what the schema does.
Findings said_of(const Orchard& orchard, Day as_of, std::string_view table, Schema schema) {
    const OrchardIndex book(orchard);
    Findings findings;
    if (table == "accession") {
        detail::check_accessions(orchard, findings);
        detail::check_pedigree(orchard, findings);
        detail::check_descent(book, findings);
    } else if (table == "blend") {
        detail::check_blends(orchard, detail::names_of(orchard, schema), findings);
    } else if (table == "cross_goal") {
        detail::check_goals(book, detail::names_of(orchard, schema), as_of, findings);
    } else if (table == "tree") {
        detail::check_trees(orchard, as_of, findings);
    } else {
        detail::check_bloom_observations(book, as_of, findings);
        detail::check_time_of_bloom(orchard, as_of, findings);
        detail::check_pollen(book, as_of, findings);
        detail::check_branches(book, as_of, findings);
        detail::check_seed(book, as_of, findings);
    }
    return findings;
}

// A cell of the schema's own type: whole numbers do for numbers.
Cell stored_form(const BookColumn& column, const Cell& value) {
    const auto* whole = std::get_if<std::int64_t>(&value);
    return column.type == CellType::number && whole != nullptr ? Cell{static_cast<double>(*whole)} : value;
}

BookRow row_of(const detail::Judgement& judgement, std::size_t number) {
    BookRow row;
    row.fid = number_of(number);
    for (const auto& column : judgement.table.columns) {
        row.cells.push_back(stored_form(column, detail::value_of(judgement.entry, column.name)));
    }
    return row;
}

template <class Rows>
void judge_only(const Rows& rows, const Orchard& orchard, Findings& findings) {
    for (const auto& row : rows) {
        detail::judge(row, orchard, findings);
    }
}

void judge_alone(const Orchard& row, const Orchard& orchard, Findings& findings) {
    judge_only(row.bloom_observations, orchard, findings);
    judge_only(row.pollinations, orchard, findings);
    judge_only(row.branch_works, orchard, findings);
    judge_only(row.fruits, orchard, findings);
    judge_only(row.seed_lots, orchard, findings);
    judge_only(row.germination_counts, orchard, findings);
    judge_only(row.trait_scores, orchard, findings);
}

/// Judges one entry after the other, and in the end the book that has them all.
class Bench {
  public:
    /// `before` is the book as it is; `book` lacks the rows that entries complete.
    Bench(const BookReading& book, const Orchard& before, Day as_of, Schema schema)
        : known_(book, schema), before_(before), as_of_(as_of), present_(as_of) {
        orchard_ = book.orchard;
        orchard_.weather.clear();
    }

    void take(const Entry& entry) {
        const auto& table = detail::entry_table(entry, known_.schema);
        if (judgements_.empty()) {
            detail::fold_names(table, known_);
        }
        auto& judgement =
            judgements_.emplace_back(detail::Judgement{entry, table, as_of_, detail::row_name(entry, table)});
        detail::judge_cells(judgement);
        const bool readable = judgement.findings.empty();
        detail::judge_names(judgement, known_);
        const bool own_name = detail::judge_key(judgement, known_);
        detail::judge_day(judgement);
        if (readable) {
            judge_row(judgement, own_name);
        }
        detail::add_key(judgement, known_);
    }

    std::vector<Findings> verdicts() {
        judge_by_the_book();
        std::vector<Findings> verdicts;
        for (std::size_t i = 0; i < judgements_.size(); ++i) {
            auto& findings = rules_[i];
            auto& all = verdicts.emplace_back(std::move(judgements_[i].findings));
            std::ranges::move(findings, std::back_inserter(all));
            std::ranges::move(alone_[i], std::back_inserter(all));
        }
        return verdicts;
    }

  private:
    void judge_row(const detail::Judgement& judgement, bool own_name) {
        const auto number = judgements_.size() - 1;
        const auto row = row_of(judgement, number);
        Orchard only;
        add_record(only, judgement.table, row);
        judge_alone(only, orchard_, alone_[number]);
        if (own_name) {
            add_record(orchard_, judgement.table, row);
            present_ = std::max(present_, detail::day_of(judgement));  // days to come are told already
            judged_.push_back(number);
        }
    }

    // The rules of the whole book, asked without the entries and with them: what is said only then is theirs.
    void judge_by_the_book() {
        if (judged_.empty()) {
            return;
        }
        const auto& table = judgements_.front().table.name;
        auto before = said_of(before_, present_, table, known_.schema);
        std::map<std::string, std::vector<const Finding*>> old;
        for (const auto& finding : before) {
            old[finding.table + '\n' + finding.row.text()].push_back(&finding);
        }
        const auto owners = owners_by_name();
        for (auto& finding : said_of(orchard_, present_, table, known_.schema)) {
            const auto same = old.find(finding.table + '\n' + finding.row.text());
            const bool known =
                same != old.end() &&
                std::ranges::any_of(same->second, [&](const Finding* other) { return *other == finding; });
            if (!known) {
                give(std::move(finding), owners);
            }
        }
    }

    // Rules about sums name the tag or the lot that was summed: the last entry of it gets to hear them.
    std::map<std::string, std::size_t> owners_by_name() const {
        std::map<std::string, std::size_t> owners;
        for (const auto number : judged_) {
            const auto& judgement = judgements_[number];
            const auto column = judgement.table.key.empty() ? judgement.table.columns.front().name
                                                            : judgement.table.key.front();
            owners[to_text(detail::value_of(judgement.entry, column))] = number;
        }
        return owners;
    }

    // A row that is there already may come to look odd beside the new ones; that is book-check's business.
    void give(Finding finding, const std::map<std::string, std::size_t>& owners) {
        const auto& table = judgements_.front().table.name;
        const auto number = entry_numbered(finding.row.text());
        const auto owner = owners.find(finding.row.text());
        if (finding.table != table || (!number && owner == owners.end())) {
            return;
        }
        if (number) {
            finding.row = judgements_[*number].row;
        }
        rules_[number ? *number : owner->second].push_back(std::move(finding));
    }

    detail::KnownNames known_;
    const Orchard& before_;
    Day as_of_;
    Day present_;
    Orchard orchard_;
    std::vector<detail::Judgement> judgements_{};
    std::vector<std::size_t> judged_{};        ///< those that stand in orchard_
    std::map<std::size_t, Findings> rules_{};  ///< what the rules of the whole book say of each
    std::map<std::size_t, Findings> alone_{};  ///< what the rules for single rows say
};

// Where an entry does not fit its row, nothing is said of the row that would come of it.
std::vector<Findings> check_completing(const BookReading& book, std::span<const Entry> entries, Day as_of,
                                       Schema schema) {
    auto completion = detail::complete(book, entries, schema);
    Bench bench(completion.without, book.orchard, as_of, schema);
    for (const auto& entry : completion.whole) {
        bench.take(entry);
    }
    auto verdicts = bench.verdicts();
    for (std::size_t i = 0; i < verdicts.size(); ++i) {
        if (!completion.findings[i].empty()) {
            verdicts[i] = std::move(completion.findings[i]);
        }
    }
    return verdicts;
}

}  // namespace

std::vector<Findings> check_entries(const BookReading& book, std::span<const Entry> entries, Day as_of) {
    return detail::check_entries(book, entries, as_of, book_tables());
}

std::vector<Findings> detail::check_entries(const BookReading& book, std::span<const Entry> entries,
                                            Day as_of, Schema schema) {
    if (!entries.empty() && entries.front().completes) {
        return check_completing(book, entries, as_of, schema);
    }
    Bench bench(book, book.orchard, as_of, schema);
    for (const auto& entry : entries) {
        bench.take(entry);
    }
    return bench.verdicts();
}

Findings check_entry(const BookReading& book, const Entry& entry, Day as_of) {
    return check_entries(book, std::span(&entry, 1), as_of).front();
}

}  // namespace pipward::book
