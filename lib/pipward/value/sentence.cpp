// SPDX-License-Identifier: MIT
#include "pipward/value/sentence.h"

#include <charconv>
#include <optional>

#include "pipward/value/day.h"

namespace pipward::value {
namespace {

/// Days are said by each host as its readers write them, so it is asked for them; all else that is verbatim
/// is the same for everybody.
std::string verbatim_in(const Wording& wording, const std::string& text) {
    return parse_iso_day(text) ? wording(text) : text;
}

/// A piece of a form: words, or the field that follows them.
struct Piece {
    std::string words;
    std::optional<std::size_t> number;  ///< of the filling; none for words alone
    std::string_view format;            ///< ":.1f"; empty for none
};

/// Reads a form piece by piece: "{{" and "}}" stand for themselves, as in fmt.
class Pieces {
  public:
    explicit Pieces(std::string_view form) : rest_(form) {}

    bool at_end() const { return rest_.empty(); }

    Piece next() {
        Piece piece;
        while (!rest_.empty()) {
            const char first = rest_.front();
            if (first == '{' && !rest_.starts_with("{{")) {
                read_field(piece);
                return piece;
            }
            rest_.remove_prefix(first == '{' || rest_.starts_with("}}") ? 2 : 1);
            piece.words += first;
        }
        return piece;
    }

  private:
    void read_field(Piece& piece) {
        const auto end = rest_.find('}');
        auto field = rest_.substr(1, end == rest_.npos ? end : end - 1);
        rest_.remove_prefix(end == rest_.npos ? rest_.size() : end + 1);
        const auto colon = field.find(':');
        if (colon != field.npos) {
            piece.format = field.substr(colon);
            field = field.substr(0, colon);
        }
        std::size_t number = 0;
        const auto read = std::from_chars(field.data(), field.data() + field.size(), number);
        piece.number = read.ec == std::errc{} ? number : next_number_++;
    }

    std::string_view rest_;
    std::size_t next_number_ = 0;
};

/// Nothing where the form asks for a filling that is not there.
std::optional<std::string> fill(std::string_view form, const std::vector<std::string>& fillings) {
    std::string text;
    for (Pieces pieces(form); !pieces.at_end();) {
        const auto piece = pieces.next();
        text += piece.words;
        if (piece.number) {
            if (*piece.number >= fillings.size()) {
                return std::nullopt;
            }
            text += fillings[*piece.number];
        }
    }
    return text;
}

/// The field of this number alone, with its format: "{1:.1f}".
std::string field_of(std::string_view form, std::size_t number) {
    std::string_view format;
    for (Pieces pieces(form); !pieces.at_end();) {
        if (const auto piece = pieces.next(); piece.number == number) {
            format = piece.format;
            break;
        }
    }
    return fmt::format("{{{}{}}}", number, format);
}

std::string in_a_row(const std::vector<std::string>& texts) {
    std::string all;
    for (const auto& text : texts) {
        all += text;
    }
    return all;
}

}  // namespace

std::string in_english(std::string_view form) {
    return std::string(form);
}

Sentence::Sentence() = default;
Sentence::Sentence(const Sentence& other) = default;
Sentence::Sentence(Sentence&& other) noexcept = default;
Sentence& Sentence::operator=(const Sentence& other) = default;
Sentence& Sentence::operator=(Sentence&& other) noexcept = default;
Sentence::~Sentence() = default;

std::string Sentence::in(const Wording& wording) const {
    if (fillings_.empty() && form_.empty()) {
        return verbatim_in(wording, text_);
    }
    std::vector<std::string> said;
    said.reserve(fillings_.size());
    for (const auto& filling : fillings_) {
        said.push_back(filling.in(wording));
    }
    return form_.empty() ? in_a_row(said) : fill(wording(form_), said).value_or(text_);
}

Sentence& Sentence::operator+=(const Sentence& more) {
    if (!form_.empty() || fillings_.empty()) {
        auto before = std::move(*this);
        *this = {};
        if (!before.empty()) {
            fillings_.push_back(before);
        }
        text_ = std::move(before.text_);
    }
    text_ += more.text_;
    fillings_.push_back(more);
    return *this;
}

Sentence verbatim(std::string text) {
    Sentence sentence;
    sentence.text_ = std::move(text);
    return sentence;
}

Sentence filled(std::string_view form, std::vector<Sentence> fillings) {
    Sentence sentence;
    sentence.form_ = form;
    sentence.fillings_ = std::move(fillings);
    std::vector<std::string> texts;
    texts.reserve(sentence.fillings_.size());
    for (const auto& filling : sentence.fillings_) {
        texts.push_back(filling.text());
    }
    sentence.text_ = fill(form, texts).value_or(std::string(form));
    return sentence;
}

Sentence joined(const std::vector<Sentence>& sentences, const Sentence& between) {
    Sentence all;
    for (std::size_t i = 0; i < sentences.size(); ++i) {
        if (i > 0) {
            all += between;
        }
        all += sentences[i];
    }
    return all;
}

Sentence operator+(Sentence a, const Sentence& b) {
    a += b;
    return a;
}

Sentence with_fillings(std::string_view form, const Fillings& fillings) {
    std::vector<Sentence> told;
    told.reserve(fillings.count);
    for (std::size_t i = 0; i < fillings.count; ++i) {
        told.push_back(fillings.sentences[i] != nullptr
                           ? *fillings.sentences[i]
                           : verbatim(fmt::vformat(field_of(form, i), fillings.all)));
    }
    return filled(form, std::move(told));
}

}  // namespace pipward::value
