#include "picture/lower_row.h"

#include "drawing/measure.h"
#include "parts/cable_section.h"
#include "parts/cable_words.h"
#include "parts/words.h"
#include "picture/cable_ends.h"
#include "picture/ink.h"
#include "picture/use_bars.h"
#include "picture/verdict_mark.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::picture {

namespace {

constexpr double row_step = 17;  // between rows of words

Text column_title(Point at, const std::string& words) {
    return text(at, words, TextStyle{.size = 13, .weight = Weight::bold});
}

/// The first reason of each rule, the most often met first.
Items reason_lines(const answer::DroppedAnswer& d, Point at, double room) {
    Items items;
    append(items, verdict_mark(rules::Verdict::fails, at + Point{6, -4}, 10));
    Spans head = rule_words(d.rule);
    TextStyle bold{.size = plain_letters, .weight = Weight::bold};
    items.emplace_back(Text{at + Point{20, 0}, head, bold});
    const double left = at.x + 210;
    std::string words = fmt::format("{} fell: {}", d.count, d.title);
    if (!d.nearest_says.empty()) words += "; nearest " + d.nearest_says;
    items.emplace_back(text({left, at.y}, shortened(words, at.x + room - left, plain_letters),
                            TextStyle{.size = plain_letters}));
    return items;
}

/// Facts that nobody knows yet and that decide.
Items deciding_facts(const answer::Answer& answer, const Box& box) {
    Items items;
    double y = box.top + 14;
    for (const answer::UnknownAnswer& unknown : answer.unknowns) {
        if (unknown.effect != "decides") continue;
        if (y > box.bottom) break;
        append(items, verdict_mark(rules::Verdict::not_known, {box.left + 6, y - 4}, 10));
        const std::string words = "not known, and decides: " + unknown.says;
        items.emplace_back(text({box.left + 20, y},
                                shortened(words, box.width() - 20, plain_letters),
                                TextStyle{.size = plain_letters}));
        y += row_step;
    }
    return items;
}

/// Bars, and below them the verdicts without figures; the bars take what room those leave. The
/// shortest bars that find none are told by their verdicts.
Items limits(const answer::SchemeAnswer& scheme, const Box& box) {
    Items items;
    std::vector<UseBar> bars = bars_of(scheme);
    std::vector<PlainVerdict> plain = plain_verdicts_of(scheme);
    const auto room = [&] {
        return box.height() - box_of(plain_verdicts(plain, box)).height() - 6;
    };
    while (!bars.empty() && least_bar_row * static_cast<double>(bars.size()) > room()) {
        const UseBar& last = bars.back();
        plain.insert(plain.begin(), {last.label, last.verdict, last.subject});
        bars.pop_back();
    }
    const double foot = box.top + std::min(room(), bar_row * static_cast<double>(bars.size()));
    append(items, use_bars(bars, {box.left, box.top, box.right, foot}));
    append(items, plain_verdicts(plain, {box.left, foot + 6, box.right, box.bottom}));
    return items;
}

}  // namespace

Items scheme_row(const Stage& s, const Box& row) {
    Items items;
    const double top = row.top + 26;
    const double glands = row.left + 400;
    const double bars = row.left + 740;
    const bool changes = s.scheme->run.stretches.size() > 1;
    items.emplace_back(column_title(
        {row.left, row.top + 8},
        changes ? "the cable of the longest stretch, cut through" : "the cable cut through"));
    append(items,
           cable_section(longest_stretch(s.scheme->run), {row.left, top, glands - 24, row.bottom}));
    items.emplace_back(column_title({glands, row.top + 8}, ends_title(s)));
    append(items, cable_ends(s, {glands, top - 4, bars - 30, row.bottom}));
    items.emplace_back(column_title({bars, row.top + 8}, "use of each limit"));
    append(items, limits(*s.scheme, {bars, top, row.right, row.bottom}));
    return items;
}

Items reasons_row(const answer::Answer& answer, const Box& row) {
    Items items;
    items.emplace_back(
        column_title({row.left, row.top + 8}, "no sound scheme: what fell, and why"));
    std::vector<answer::DroppedAnswer> dropped = answer.dropped;
    std::stable_sort(dropped.begin(), dropped.end(),
                     [](const auto& a, const auto& b) { return a.count > b.count; });
    double y = row.top + 34;
    for (std::size_t i = 0; i < dropped.size(); ++i) {
        if (y + row_step > row.bottom && i + 1 < dropped.size()) {
            items.emplace_back(text({row.left + 20, y},
                                    fmt::format("and {} more rules", dropped.size() - i),
                                    TextStyle{.size = plain_letters}));
            return items;
        }
        items.emplace_back(
            Group{reason_lines(dropped[i], {row.left, y}, row.width()), {}, "", "reason", ""});
        y += row_step;
    }
    append(items, deciding_facts(answer, {row.left, y + 4, row.right, row.bottom}));
    return items;
}

}  // namespace toft::picture
