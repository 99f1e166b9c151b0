// SPDX-License-Identifier: MIT
#include "pipward/paper/label_pages.h"

#include <algorithm>

#include "pipward/paper/detail/check_line.h"
#include "pipward/paper/text.h"
#include "pipward/value/utf8.h"

namespace pipward::paper {
namespace {

Finding about(const NamedLabel& label, Level level, Sentence message, Sentence remedy) {
    return {level, label.table, label.row, "", "", std::move(message), std::move(remedy)};
}

std::string all_text(const LabelText& text) {
    std::string all = text.headline;
    for (const auto& line : text.lines) {
        all += "\n" + line;
    }
    return all;
}

void judge_characters(const NamedLabel& label, const Typesetter& typesetter, Findings& findings) {
    const auto text = all_text(label.text);
    if (has_unseen_characters(label.text.headline)) {
        findings.push_back(about(label, Level::warning,
                                 say("The label has invisible characters; on paper they are blanks or "
                                     "question marks, in the code they are unchanged."),
                                 say("Type the label again in the book.")));
    }
    if (!typesetter.can_show(clean_text(text))) {
        findings.push_back(about(label, Level::warning,
                                 say("No font on this machine has every character of this label: boxes with "
                                     "their numbers stand in their place."),
                                 say("Install a font for that script, then print again.")));
    }
}

void judge_size(const NamedLabel& label, const LaidLabel& laid, const LabelGrid& grid, Findings& findings) {
    const auto least = least_small_letters({grid.width, grid.height});
    if (!laid.fits) {
        findings.push_back(about(label, Level::error, say("The text does not fit on a label of this size."),
                                 say("Take larger labels, or a shorter label for the tree.")));
        return;
    }
    if (small_letters(laid.smallest_points) < least) {
        findings.push_back(
            about(label, Level::warning,
                  say("The text fits only with an x-height below {:.1f} mm: hard to read.", least.value),
                  say("Take larger labels, or leave out the code or some of the text.")));
    }
    if (!laid.qr_fits) {
        findings.push_back(about(label, Level::warning,
                                 say("The text is too long for a QR code: it has none."),
                                 say("Shorten it.")));
    } else if (laid.qr_module && *laid.qr_module < least_qr_module) {
        findings.push_back(about(label, Level::warning,
                                 say("The modules of the QR code are smaller than {:.2f} mm: many readers "
                                     "will not read it, and printers of 300 dots per inch smear it.",
                                     least_qr_module.value),
                                 say("Use larger labels, or a shorter code.")));
    }
}

class SheetFiller {
  public:
    SheetFiller(const LabelJob& job, const Typesetter& typesetter, const Wording& wording)
        : job_(job), ruler_(typesetter.ruler()), wording_(wording), next_(job.first_place) {}

    int place() const { return next_ % job_.grid.labels_a_page(); }
    int page() const { return static_cast<int>(made_.pages.size()) - 1; }

    /// Whether the next label begins a page: then there is one.
    void turn_page() {
        if (made_.pages.empty() || place() == 0) {
            made_.pages.push_back(
                {job_.grid.page, detail::check_line_in_margin(job_.grid, ruler_, wording_)});
        }
    }
    LaidLabel laid(const LabelText& text) const {
        return lay_label(text, printable_box(job_.grid, place()), ruler_);
    }
    void put(std::size_t label, LaidLabel laid) {
        auto& pieces = made_.pages.back().pieces;
        if (job_.outline) {
            pieces.push_back(outline_of(label_box(job_.grid, place()), {0.1}, grey_paint));
        }
        std::ranges::move(laid.pieces, std::back_inserter(pieces));
        laid.pieces.clear();
        made_.labels.push_back({label, page(), place(), std::move(laid)});
        ++next_;
    }
    LabelPages take() { return std::move(made_); }

  private:
    const LabelJob& job_;
    TextRuler ruler_;
    const Wording& wording_;
    int next_ = 0;
    LabelPages made_;
};

}  // namespace

LabelPages label_pages(std::span<const NamedLabel> labels, const LabelJob& job, const Typesetter& typesetter,
                       const Wording& wording, Findings& findings,
                       const std::function<void(double share)>& tell) {
    SheetFiller filler(job, typesetter, wording);
    for (std::size_t i = 0; i < labels.size(); ++i) {
        judge_characters(labels[i], typesetter, findings);
        const auto before = findings.size();
        for (int copy = 0; copy < job.copies; ++copy) {
            filler.turn_page();
            auto laid = filler.laid(labels[i].text);
            // Places at a page's edge have less room than others.
            if (findings.size() == before) {
                judge_size(labels[i], laid, job.grid, findings);
            }
            filler.put(i, std::move(laid));
        }
        tell(static_cast<double>(i + 1) / static_cast<double>(labels.size()));
    }
    return filler.take();
}

Findings font_findings(const Typesetter& typesetter) {
    Findings findings;
    if (!typesetter.has_print_font()) {
        findings.push_back(
            {Level::warning, "", "", "", print_font,
             say("The font {} is not on this machine: another takes its place, and text is wider or "
                 "narrower than it should be.",
                 print_font),
             say("Install it (Debian: fonts-dejavu-core).")});
    }
    return findings;
}

}  // namespace pipward::paper
