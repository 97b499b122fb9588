#include "paper/block_words.h"

namespace toft::paper {

namespace {

void read_words(const drawing::Items& items, std::string& out) {
    for (const drawing::Item& item : items) {
        if (const auto* text = std::get_if<drawing::Text>(&item.shape)) {
            for (const drawing::Span& span : text->spans) out += span.text;
            out += "\n";
        } else if (const auto* group = std::get_if<drawing::Group>(&item.shape)) {
            read_words(group->items, out);
        }
    }
}

struct WordReader {
    std::string operator()(const page::Heading& b) const { return b.words; }
    std::string operator()(const page::Words& b) const { return b.words; }
    std::string operator()(const page::Field& b) const { return b.name + "\n" + b.known; }
    std::string operator()(const page::Caution& b) const { return b.words; }
    std::string operator()(const page::Gap&) const { return ""; }
    std::string operator()(const page::NewPage&) const { return ""; }
    std::string operator()(const page::Picture& b) const {
        std::string words = b.under + "\n";
        read_words(b.scene.items, words);
        return words;
    }
    std::string operator()(const page::WholePage& b) const {
        std::string words;
        read_words(b.scene.items, words);
        return words;
    }
    std::string operator()(const page::Table& b) const {
        std::string words;
        for (const page::Column& column : b.columns) words += column.head + "\n";
        for (const page::Row& row : b.rows) {
            for (const std::string& cell : row.cells) words += cell + "\n";
        }
        return words;
    }
};

/// Letters of English and all bytes of other letters.
bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
           (static_cast<unsigned char>(c) >= 0x80);
}

/// Right behind a figure and a space, as units stand.
bool after_figure(const std::string& text, std::size_t at) {
    return at > 1 && text[at - 1] == ' ' && text[at - 2] >= '0' && text[at - 2] <= '9';
}

}  // namespace

std::string words_of(const page::Block& block) { return std::visit(WordReader{}, block); }

bool holds_word(const std::string& text, const std::string& word) {
    for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
        std::size_t end = at + word.size();
        if (end < text.size() && text[end] == 's') ++end;
        const bool before = at > 0 && is_letter(text[at - 1]);
        if (word.size() == 1 && !after_figure(text, at)) continue;
        if (!before && (end == text.size() || !is_letter(text[end]))) return true;
    }
    return false;
}

}  // namespace toft::paper
