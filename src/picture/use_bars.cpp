#include "picture/use_bars.h"

#include "base/text.h"
#include "drawing/hatch.h"
#include "drawing/measure.h"
#include "parts/words.h"
#include "picture/ink.h"
#include "picture/verdict_mark.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::picture {

namespace {

constexpr double label_wide = 166;
constexpr double verdict_wide = 82;
constexpr double figures_wide = 190;
constexpr double most_name = 260;  // of a label in a row of verdicts

struct RuleWords {
    const char* rule;
    const char* plain;
    const char* letter;
    const char* below;
};

constexpr RuleWords known_rules[] = {
    {"voltage-drop", "voltage drop", "", ""},
    {"disconnection", "loop impedance ", "Z", "s"},
    {"current-rating", "rating of the cable ", "I", "z"},
    {"overload", "current drawn ", "I", "b"},
    {"fault-heat", "fault heat ", "I²t", ""},
    {"breaking-capacity", "fault current at device", "", ""},
    {"bonding-size", "bonding conductor", "", ""},
    {"house-earthing", "house's earthing", "", ""},
    {"electrode", "electrode ", "R", "A"},
    {"separation", "reach of the house's earth", "", ""},
    {"suitability", "earthed covering", "", ""},
    {"feed-point", "where it is fed from", "", ""},
    {"earthing-choice", "choice of earth", "", ""},
    {"residual-current", "residual current devices", "", ""},
    {"selectivity", "selectivity of the devices", "", ""},
    {"circuit-rating", "circuit's rating", "", ""},
    {"circuit-breaking", "circuit's fault current", "", ""},
    {"circuit-drop", "circuit's drop", "", ""},
    {"circuit-disconnection", "circuit's loop ", "Z", "s"},
    {"circuit-heat", "circuit's fault heat", "", ""},
    {"motor-start", "motor's start", "", ""},
    {"voltage-rise", "voltage rise", "", ""},
};

std::string figure_words(double value, const std::string& unit) {
    if (unit == "A" && value >= 1000) return significant(value / 1000, 3) + " kA";
    if (unit.empty()) return significant(value, 3);
    return significant(value, 3) + " " + unit;
}

/// The circuit a finding is about; empty when it is about the run.
std::string circuit_of(const answer::FindingAnswer& f, const answer::SchemeAnswer& scheme) {
    return f.subject == scheme.run.id ? "" : f.subject;
}

Items row_items(const UseBar& bar, const Box& row, double full) {
    Items items;
    const double base = row.bottom - 4.5;
    TextStyle style{.size = plain_letters};
    const Spans label = named_label(bar.subject, bar.label, label_wide - 8, style);
    items.emplace_back(Text{{row.left, base}, label, style});
    const double left = row.left + label_wide;
    const Box whole{left, row.top + 3, left + full, row.bottom - 3};
    append(items, bar_alone(bar, whole));
    const double after = left + full * most_use + 10;
    items.emplace_back(text({after, base}, bar.figures, style));
    append(items, verdict_words(bar.verdict, {row.right - verdict_wide, base}, plain_letters));
    return items;
}

}  // namespace

Spans rule_words(const std::string& rule) {
    for (const RuleWords& known : known_rules) {
        if (rule != known.rule) continue;
        Spans spans{Span{std::string(known.plain) + known.letter}};
        if (known.below[0] != '\0') spans.push_back({known.below, Script::below});
        return spans;
    }
    std::string words = rule;
    std::replace(words.begin(), words.end(), '-', ' ');
    return plain(shortened(words, label_wide - 8, plain_letters));
}

Spans named_label(const std::string& subject, const Spans& label, double room,
                  const TextStyle& style) {
    if (subject.empty()) return label;
    Spans spans = label;
    // The name says whose it is.
    const std::string whose = "circuit's ";
    std::string& first = spans.front().text;
    if (first.rfind(whose, 0) == 0) first.erase(0, whose.size());
    first = ": " + first;
    const double left = room - text_width(spans, style);
    spans.insert(spans.begin(), Span{shortened(subject, left, style.size)});
    return spans;
}

std::vector<UseBar> bars_of(const answer::SchemeAnswer& scheme) {
    std::vector<UseBar> bars;
    for (const answer::FindingAnswer& f : scheme.findings) {
        if (!f.value || !f.limit || !f.use) continue;
        // A bare share of 1 reads better in per cent.
        const bool share = f.unit.empty() && *f.limit == 1;
        const double by = share ? 100 : 1;
        const std::string unit = share ? "%" : f.unit;
        const std::string figures =
            fmt::format("{}, at {} {}", figure_words(by * *f.value, unit),
                        f.at_least ? "least" : "most", figure_words(by * *f.limit, unit));
        bars.push_back({rule_words(f.rule), figures, *f.use, f.verdict, circuit_of(f, scheme)});
    }
    std::stable_sort(bars.begin(), bars.end(),
                     [](const UseBar& a, const UseBar& b) { return a.use > b.use; });
    return bars;
}

std::vector<PlainVerdict> plain_verdicts_of(const answer::SchemeAnswer& scheme) {
    std::vector<PlainVerdict> list;
    for (const answer::FindingAnswer& f : scheme.findings) {
        if (f.value && f.limit && f.use) continue;
        list.push_back({rule_words(f.rule), f.verdict, circuit_of(f, scheme)});
    }
    return list;
}

Items bar_alone(const UseBar& bar, const Box& whole) {
    Items items;
    items.emplace_back(Rect{whole, filled(palette::wash)});
    const double used = std::isfinite(bar.use) ? std::clamp(bar.use, 0.0, most_use) : most_use;
    Box part = whole;
    part.right = whole.left + whole.width() * used;
    const bool fails = bar.verdict == rules::Verdict::fails;
    if (part.width() > 0) {
        Style ink = stroked(palette::ink, weight::hair);
        ink.fill = fails ? palette::accent : palette::graphite;
        if (bar.verdict == rules::Verdict::not_known) ink.fill = palette::paper;
        items.emplace_back(Rect{part, ink});
        if (bar.verdict == rules::Verdict::not_known) append(items, hatched(part, masonry));
    }
    return items;
}

Items tall_use_bars(const std::vector<UseBar>& bars, const Box& box) {
    constexpr double size = 12;
    Items items;
    TextStyle figures{.size = size, .anchor = Anchor::end};
    const double full = std::max(40.0, (box.width() - figures_wide) / most_use - 10);
    double y = box.top;
    for (const UseBar& bar : bars) {
        Items one;
        const TextStyle plain_style{.size = size};
        const double room = box.width() - verdict_wide - 16;
        one.emplace_back(Text{{box.left, y + 13},
                              named_label(bar.subject, bar.label, room, plain_style),
                              plain_style});
        append(one, verdict_words(bar.verdict, {box.right - verdict_wide - 8, y + 13}, size));
        append(one, bar_alone(bar, {box.left, y + 19, box.left + full, y + 30}));
        const double limit = box.left + full;
        one.emplace_back(
            Line{{limit, y + 16}, {limit, y + 33}, stroked(palette::ink, weight::firm)});
        one.emplace_back(text({box.right, y + 29}, bar.figures, figures));
        items.emplace_back(Group{std::move(one), {}, "", "use-bar", ""});
        y += tall_bar_row;
    }
    return items;
}

Items use_bars(const std::vector<UseBar>& bars, const Box& box) {
    Items items;
    const double bars_wide = box.width() - label_wide - figures_wide - verdict_wide;
    const double full = std::max(40.0, (bars_wide - 10) / most_use);
    const double wanted = box.height() / static_cast<double>(std::max<std::size_t>(1, bars.size()));
    const double high = std::clamp(wanted, least_bar_row, bar_row);
    auto room = static_cast<std::size_t>(std::max(0.0, box.height() / high + 1e-6));
    const bool all = bars.size() <= room;
    if (!all && room > 0) --room;
    const std::size_t count = std::min(room, bars.size());
    for (std::size_t i = 0; i < count; ++i) {
        const double top = box.top + static_cast<double>(i) * high;
        const Box row{box.left, top, box.right, top + high};
        items.emplace_back(Group{row_items(bars[i], row, full), {}, "", "use-bar", ""});
    }
    const double limit = box.left + label_wide + full;
    const double foot = box.top + static_cast<double>(count) * high;
    if (count > 0) {
        items.emplace_back(
            Line{{limit, box.top - 2}, {limit, foot}, stroked(palette::ink, weight::firm)});
        TextStyle style{.size = 10, .anchor = Anchor::middle, .colour = palette::graphite};
        items.emplace_back(text({limit, box.top - 5}, "limit", style));
    }
    if (!all) {
        TextStyle style{.size = plain_letters, .colour = palette::graphite};
        items.emplace_back(text({box.left, foot + high - 4},
                                fmt::format("and {} more", bars.size() - count), style));
    }
    return items;
}

Items plain_verdicts(const std::vector<PlainVerdict>& verdicts, const Box& box) {
    Items items;
    Point at{box.left, box.top + plain_letters};
    for (const PlainVerdict& v : verdicts) {
        const TextStyle style{.size = plain_letters};
        const double room = std::min(most_name, box.width() - verdict_wide - 8);
        const Spans label = named_label(v.subject, v.label, room, style);
        const double label_length = text_width(label, style);
        const double wide = label_length + 6 + 1.5 * plain_letters +
                            text_width(rules::verdict_word(v.verdict), plain_letters, Weight::bold);
        if (at.x > box.left && at.x + wide > box.right)
            at = {box.left, at.y + 1.55 * plain_letters};
        items.emplace_back(Text{at, label, style});
        append(items, verdict_words(v.verdict, at + Point{label_length + 6, 0}, plain_letters));
        at.x += wide + 18;
    }
    return items;
}

}  // namespace toft::picture
