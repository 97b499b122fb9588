#include "diagram/title.h"

#include "drawing/measure.h"
#include "parts/fittings.h"
#include "parts/words.h"
#include "picture/heading.h"
#include "picture/verdict_mark.h"
#include "symbol/strokes.h"

#include <algorithm>

namespace toft::diagram {

namespace {

/// Sets `words` from left to right over the sheet in at most `most` lines.
void set_lines(const std::string& words, std::size_t most, const TextStyle& style, SetTitle& out,
               const Columns& c) {
    const double width = c.right - c.left;
    for (const std::string& line : broken(words, width, style, most)) {
        out.foot += style.size * 1.3;
        out.items.emplace_back(text({c.left, out.foot - style.size * 0.3}, line, style));
    }
}

rules::Verdict standing(const answer::SchemeAnswer& scheme) {
    rules::Verdict worst = rules::Verdict::meets;
    for (const answer::FindingAnswer& f : scheme.findings) worst = std::max(worst, f.verdict);
    if (!scheme.conditional_on.empty()) worst = std::max(worst, rules::Verdict::not_known);
    return worst;
}

std::string standing_words(const answer::SchemeAnswer& scheme) {
    if (scheme.conditional_on.empty()) {
        return standing(scheme) == rules::Verdict::meets ? "every rule judged is met"
                                                         : "no rule fails; heed the cautions";
    }
    std::string words = "sound only if these facts turn out well: ";
    for (std::size_t i = 0; i < scheme.conditional_on.size(); ++i) {
        words += (i > 0 ? ", " : "") + scheme.conditional_on[i];
    }
    return words;
}

struct KeyEntry {
    std::vector<Core> cores;
    std::string words;
};

/// One entry of the key: a short line with its strokes, and what they mean.
Items key_entry(Point at, const KeyEntry& entry, double letters) {
    Items items{Line{at - Point{0, 3.5}, at + Point{26, -3.5}, pen_existing()}};
    for (const Item& item : strokes({at + Point{13, -3.5}, {1, 0}}, entry.cores, pen_existing())) {
        if (std::holds_alternative<Group>(item.shape)) items.push_back(item);
    }
    items.emplace_back(text(at + Point{32, 0}, entry.words, TextStyle{.size = letters}));
    return items;
}

/// Entries one after another, on as many lines as they need.
void set_key(const Columns& c, SetTitle& out) {
    const double letters = 10;
    const KeyEntry strokes_key[] = {{{Core::line}, "line"},
                                    {{Core::neutral}, "neutral"},
                                    {{Core::protective}, "protective"},
                                    {{Core::pen}, "neutral and earth in one (PEN)"}};
    double x = c.left;
    out.foot += 20;
    const auto place = [&](double wide) {
        if (x > c.left && x + wide > c.right) {
            x = c.left;
            out.foot += 22;
        }
        const Point at{x, out.foot};
        x += wide + 18;
        return at;
    };
    for (const KeyEntry& entry : strokes_key) {
        const Point at = place(32 + text_width(entry.words, letters));
        append(out.items, key_entry(at, entry, letters));
    }
    const auto line = [&](const std::string& words, Items (*draw)(Point)) {
        const Point at = place(32 + text_width(words, letters));
        append(out.items, draw(at - Point{0, 3.5}));
        out.items.emplace_back(text(at + Point{32, 0}, words, TextStyle{.size = letters}));
    };
    line("protective conductor", [](Point at) {
        return parts::protective_line({at, at + Point{26, 0}});
    });
    line("armour", [](Point at) {
        return Items{Line{at, at + Point{26, 0}, dashed(palette::ink, 1.3, {5, 3})}};
    });
    line("there already", [](Point at) {
        return Items{Line{at, at + Point{26, 0}, pen_existing()}};
    });
    line("new", [](Point at) { return Items{Line{at, at + Point{26, 0}, pen_new()}}; });
    out.foot += 10;
}

/// Each text after `before` on lines of its own; no more than a sheet can bear.
void set_all(const std::string& before, const std::vector<std::string>& texts, SetTitle& out,
             const Columns& c) {
    constexpr std::size_t most = 6;
    for (std::size_t i = 0; i < texts.size() && i < most; ++i) {
        set_lines(before + texts[i], 3, TextStyle{.size = c.letters}, out, c);
    }
    if (texts.size() <= most) return;
    set_lines(before + std::to_string(texts.size() - most) + " more in the answer", 1,
              TextStyle{.size = c.letters}, out, c);
}

}  // namespace

SetTitle set_title(const answer::Answer& answer, const answer::SchemeAnswer* scheme,
                   const Columns& c) {
    SetTitle out;
    out.foot = c.figures_beside() ? 30 : 10;
    const double size = c.figures_beside() ? 19 : 15;
    set_lines(answer.job, 2, TextStyle{.size = size, .weight = Weight::bold}, out, c);
    set_lines("Single-line diagram, not to scale", 1,
              TextStyle{.size = c.letters, .colour = palette::graphite}, out, c);
    const TextStyle plain_style{.size = c.letters};
    out.foot += 3;
    set_lines(scheme ? scheme->sentence : picture::no_scheme_words(), 8, plain_style, out, c);
    out.foot += 17;
    const rules::Verdict verdict = scheme ? standing(*scheme) : rules::Verdict::fails;
    append(out.items, picture::verdict_words(verdict, {c.left, out.foot - 3}, c.letters));
    if (scheme) {
        Columns beside = c;
        beside.left += 28 + text_width(rules::verdict_word(verdict), c.letters, Weight::bold);
        out.foot -= c.letters * 1.3;
        set_lines(standing_words(*scheme), 4, plain_style, out, beside);
        set_all("caution: ", scheme->cautions, out, c);
    }
    out.foot += 8;
    return out;
}

SetTitle set_footing(const answer::Answer& answer, const answer::SchemeAnswer* scheme,
                     const Columns& c, double top) {
    SetTitle out;
    out.foot = top;
    out.items.emplace_back(Line{{c.left, top}, {c.right, top}, stroked(palette::faint)});
    set_key(c, out);
    if (scheme) {
        std::vector<std::string> duties;
        for (const answer::TellAnswer& tell : scheme->tell) {
            duties.push_back(tell.who + ", " + tell.when + " the work: " + tell.why);
        }
        set_all("", duties, out, c);
        out.foot += 4;
    }
    set_lines("A competent, licensed person, the local code and the network operator decide.", 3,
              TextStyle{.size = c.letters, .weight = Weight::bold}, out, c);
    const TextStyle small{.size = 9.5, .colour = palette::graphite};
    set_lines("data " + answer.data_version + "; " + answer.edition, 4, small, out, c);
    out.foot += 12;
    return out;
}

void draw_zone(const std::string& name, Ladder& ladder) {
    const Columns& c = ladder.columns();
    const TextStyle style{.size = 10, .weight = Weight::bold, .colour = palette::graphite};
    const double y = ladder.y() + 9;
    const std::string words =
        parts::shortened(parts::capital(name), c.right - c.words, style.size, style.weight);
    ladder.draw({Line{{c.words - 24, y}, {c.words - 6, y}, stroked(palette::pencil, 0.8)},
                 text({c.words, y + 3.6}, words, style),
                 Line{{c.words + text_width(words, style.size, style.weight) + 8, y},
                      {c.right, y},
                      stroked(palette::faint)}});
    ladder.live(ladder.y(), ladder.y() + 20);
    ladder.skip(20);
}

}  // namespace toft::diagram
