#pragma once
// Looking at pictures: the texts and things on them, and designed example jobs to draw.

#include "answer/answer.h"
#include "drawing/measure.h"
#include "drawing/scene.h"
#include "drawing/svg.h"
#include "support/catalogue.h"
#include "support/examples.h"

#include <algorithm>
#include <map>
#include <string>
#include <vector>

namespace toft::picture {

inline void collect(const drawing::Items& items, drawing::Point shift,
                    std::vector<drawing::Text>& texts) {
    for (const drawing::Item& item : items) {
        if (const auto* text = std::get_if<drawing::Text>(&item.shape)) {
            texts.push_back(*text);
            texts.back().at = text->at + shift;
        }
        if (const auto* group = std::get_if<drawing::Group>(&item.shape)) {
            collect(group->items, shift + group->shift, texts);
        }
    }
}

inline std::vector<drawing::Text> texts_in(const drawing::Items& items) {
    std::vector<drawing::Text> texts;
    collect(items, {}, texts);
    return texts;
}

inline std::string line_of(const drawing::Text& text) {
    std::string line;
    for (const drawing::Span& span : text.spans) line += span.text;
    return line;
}

/// All words, a line a text.
inline std::string words_in(const drawing::Items& items) {
    std::string words;
    for (const drawing::Text& text : texts_in(items)) words += line_of(text) + "\n";
    return words;
}

inline bool says(const drawing::Items& items, const std::string& words) {
    return words_in(items).find(words) != std::string::npos;
}

/// How many groups of that kind there are, at any depth; a kind is one of a group's class names.
inline int count_kind(const drawing::Items& items, const std::string& kind) {
    int count = 0;
    for (const drawing::Item& item : items) {
        const auto* group = std::get_if<drawing::Group>(&item.shape);
        if (!group) continue;
        count += (" " + group->kind + " ").find(" " + kind + " ") != std::string::npos;
        count += count_kind(group->items, kind);
    }
    return count;
}

/// The first group of that kind; null when there is none.
inline const drawing::Group* find_kind(const drawing::Items& items, const std::string& kind) {
    for (const drawing::Item& item : items) {
        const auto* group = std::get_if<drawing::Group>(&item.shape);
        if (!group) continue;
        if ((" " + group->kind + " ").find(" " + kind + " ") != std::string::npos) return group;
        if (const drawing::Group* inner = find_kind(group->items, kind)) return inner;
    }
    return nullptr;
}

/// The letters' own box: capitals to tails, without halo.
inline drawing::Box letters_of(const drawing::Text& text) {
    const double wide = drawing::text_width(text.spans, text.style);
    const double left = text.style.anchor == drawing::Anchor::start    ? text.at.x
                        : text.style.anchor == drawing::Anchor::middle ? text.at.x - wide / 2
                                                                       : text.at.x - wide;
    const double size = text.style.size;
    return {left, text.at.y - drawing::cap_height * size, left + wide,
            text.at.y + drawing::descent * size};
}

/// Pairs of texts that cover one another, and texts beyond `sheet`; empty when all is well.
inline std::string clashes(const drawing::Items& items, const drawing::Box& sheet) {
    const std::vector<drawing::Text> texts = texts_in(items);
    std::string found;
    for (std::size_t i = 0; i < texts.size(); ++i) {
        const drawing::Box box = letters_of(texts[i]);
        if (!drawing::contains(sheet, box))
            found += "beyond the sheet: " + line_of(texts[i]) + "\n";
        for (std::size_t k = 0; k < i; ++k) {
            if (!drawing::overlap(box, letters_of(texts[k]))) continue;
            found += line_of(texts[k]) + " | " + line_of(texts[i]) + "\n";
        }
    }
    return found;
}

inline answer::Answer designed(const site::Job& job) {
    static const price::Book book = support::demo_book(support::catalogue());
    return answer::design({support::catalogue(), book, job});
}

/// A job of tests/picture/jobs, of cables and supplies that no example has.
inline site::Job drawn_job(const std::string& name) {
    const std::string path = "tests/picture/jobs/" + name + ".json";
    return support::need(codec::read_job(support::project_text(path), support::catalogue()), path);
}

inline const std::vector<std::string>& drawn_job_names() {
    static const std::vector<std::string> names{"three-phase-barn", "hidden-flat-cable",
                                                "overhead-stable", "aluminium-pair-mill"};
    return names;
}

/// An example job, or one drawn for the pictures, with its answer, worked out once a program.
struct Example {
    site::Job job;
    answer::Answer answer;
};

inline const Example& example(const std::string& name) {
    static std::map<std::string, Example> kept;
    const auto found = kept.find(name);
    if (found != kept.end()) return found->second;
    Example one;
    const std::vector<std::string>& own = drawn_job_names();
    one.job = std::find(own.begin(), own.end(), name) != own.end()
                  ? drawn_job(name)
                  : support::example_job(name, support::catalogue());
    one.answer = designed(one.job);
    return kept.emplace(name, std::move(one)).first->second;
}

/// The first scheme of the example for which `wanted` holds; null when there is none.
template <class Wanted>
const answer::SchemeAnswer* scheme_where(const Example& one, Wanted wanted) {
    for (const answer::SchemeAnswer& scheme : one.answer.schemes) {
        if (wanted(scheme)) return &scheme;
    }
    return nullptr;
}

inline bool has_electrode(const answer::SchemeAnswer& s) {
    return s.building.electrode.has_value();
}

/// 200 bytes that try to break out of a drawing or to overrun it.
inline std::string hostile_name() {
    std::string name = "<script>alert(\"&'\")</script> ]]> \xE2\x80\xAE \xFF\xC0 \x01";
    while (name.size() < 200) name += 'W';
    return name;
}

}  // namespace toft::picture
