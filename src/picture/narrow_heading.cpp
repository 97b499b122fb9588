#include "picture/narrow_heading.h"

#include "picture/heading.h"
#include "picture/ink.h"
#include "picture/use_bars.h"
#include "picture/verdict_mark.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::picture {

namespace {

constexpr double mark_wide = 18;
constexpr std::size_t most_cautions = 6;

/// A verdict's sign, and words right of it.
void marked(rules::Verdict verdict, const std::string& words, WordColumn& column) {
    column.gap(4);
    const Point centre{column.left() + 6.6, column.y() + 0.62 * narrow_letters};
    column.placed(verdict_mark(verdict, centre, narrow_letters), column.y());
    column.words(words, {.size = narrow_letters}, 8, mark_wide);
}

std::string plain_words(const std::string& rule) {
    std::string words;
    for (const Span& span : rule_words(rule)) words += span.text;
    return words;
}

}  // namespace

void narrow_heading(const answer::Answer& answer, const answer::SchemeAnswer* scheme,
                    WordColumn& column) {
    column.words(answer.job, {.size = 16, .weight = Weight::bold}, 3);
    column.gap(4);
    column.words(scheme ? scheme->sentence : no_scheme_words(), {.size = narrow_letters}, 10);
    const rules::Verdict verdict = scheme ? standing_of(*scheme) : rules::Verdict::fails;
    column.gap(20);
    column.placed(verdict_words(verdict, {column.left(), column.y()}, narrow_letters),
                  column.y() + 3);
    const std::string standing =
        scheme ? standing_words(answer, *scheme)
               : fmt::format("{} ways to build it were judged", answer.search.candidates);
    column.words(standing, {.size = narrow_letters, .colour = palette::graphite}, 8);
    if (!scheme) return;
    const std::size_t count = scheme->cautions.size();
    for (std::size_t i = 0; i < std::min(count, most_cautions); ++i) {
        marked(rules::Verdict::caution, scheme->cautions[i], column);
    }
    if (count > most_cautions) {
        column.words(fmt::format("and {} more cautions in the answer", count - most_cautions),
                     {.size = narrow_letters}, 2, mark_wide);
    }
}

void narrow_reasons(const answer::Answer& answer, WordColumn& column) {
    column.heading("no sound scheme: what fell, and why");
    std::vector<answer::DroppedAnswer> dropped = answer.dropped;
    std::stable_sort(dropped.begin(), dropped.end(),
                     [](const auto& a, const auto& b) { return a.count > b.count; });
    for (const answer::DroppedAnswer& d : dropped) {
        std::string words = fmt::format("{}: {} fell: {}", plain_words(d.rule), d.count, d.title);
        if (!d.nearest_says.empty()) words += "; nearest " + d.nearest_says;
        WordColumn reason(column.left(), column.right(), column.y());
        marked(rules::Verdict::fails, words, reason);
        const double foot = reason.y();
        column.placed({Group{reason.take(), {}, "", "reason", ""}}, foot);
    }
    for (const answer::UnknownAnswer& unknown : answer.unknowns) {
        if (unknown.effect != "decides") continue;
        marked(rules::Verdict::not_known, "not known, and decides: " + unknown.says, column);
    }
}

void narrow_footing(const answer::Answer& answer, WordColumn& column) {
    column.gap(12);
    column.placed(
        {Line{{column.left(), column.y()}, {column.right(), column.y()}, stroked(palette::faint)}},
        column.y() + 4);
    column.words("A competent, licensed person, the local code and the network operator decide.",
                 {.size = narrow_letters, .weight = Weight::bold});
    column.gap(4);
    column.words("data " + answer.data_version + "; " + answer.edition,
                 {.size = 10.5, .colour = palette::graphite}, 5);
}

}  // namespace toft::picture
