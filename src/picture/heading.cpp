#include "picture/heading.h"

#include "base/text.h"
#include "drawing/measure.h"
#include "parts/words.h"
#include "picture/ink.h"
#include "picture/stage.h"
#include "picture/use_bars.h"
#include "picture/verdict_mark.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::picture {

namespace {

constexpr double heading_wide = sheet_wide - 2 * margin;

/// The cautions that the rules themselves gave, and those of the scheme, one a line; the last line
/// says how many more there are.
std::vector<std::string> caution_lines(const answer::SchemeAnswer& scheme, std::size_t most) {
    std::vector<std::string> lines;
    for (std::size_t i = 0; i < scheme.cautions.size() && i < most; ++i) {
        std::string line = scheme.cautions[i];
        const std::size_t more = scheme.cautions.size() - i - 1;
        if (i + 1 == most && more > 0) line = fmt::format("(and {} more) {}", more, line);
        lines.push_back(std::move(line));
    }
    return lines;
}

}  // namespace

rules::Verdict standing_of(const answer::SchemeAnswer& scheme) {
    rules::Verdict worst = rules::Verdict::meets;
    for (const answer::FindingAnswer& f : scheme.findings) worst = std::max(worst, f.verdict);
    if (!scheme.conditional_on.empty()) worst = std::max(worst, rules::Verdict::not_known);
    return worst;
}

std::string standing_words(const answer::Answer& answer, const answer::SchemeAnswer& scheme) {
    std::string words = fmt::format("scheme {} of {}; ", scheme.rank, answer.schemes.size());
    if (scheme.conditional_on.empty()) {
        const bool plain = standing_of(scheme) == rules::Verdict::meets;
        words += plain ? "every rule judged is met" : "no rule fails; heed the cautions";
    } else {
        words += "sound only if these facts turn out well: ";
        for (std::size_t i = 0; i < scheme.conditional_on.size(); ++i) {
            words += (i > 0 ? ", " : "") + scheme.conditional_on[i];
        }
    }
    words += fmt::format("; headroom {} %", significant(100 * scheme.headroom, 2));
    if (scheme.governed_by.empty()) return words;
    words += ", set by ";
    for (const Span& span : rule_words(scheme.governed_by)) words += span.text;
    return words;
}

std::string no_scheme_words() {
    return "No sound scheme: nothing that can be bought and laid meets every rule as things stand.";
}

Heading heading(const answer::Answer& answer, const answer::SchemeAnswer* scheme) {
    Items items;
    TextStyle title{.size = 23, .weight = Weight::bold};
    items.emplace_back(
        text({margin, 52}, shortened(answer.job, heading_wide, title.size, Weight::bold), title));
    TextStyle style{.size = 14};
    double y = 78;
    const std::string sentence = scheme ? scheme->sentence : no_scheme_words();
    for (const std::string& line : paragraph(sentence, heading_wide, style.size, 3)) {
        items.emplace_back(text({margin, y}, line, style));
        y += 18.5;
    }
    const rules::Verdict verdict = scheme ? standing_of(*scheme) : rules::Verdict::fails;
    y += 3;
    append(items, verdict_words(verdict, {margin, y}, 12));
    const double left =
        margin + 18 + text_width(rules::verdict_word(verdict), 12, Weight::bold) + 12;
    TextStyle second{.size = 12, .colour = palette::graphite};
    const std::string words =
        scheme ? standing_words(answer, *scheme)
               : fmt::format("{} ways to build it were judged", answer.search.candidates);
    items.emplace_back(text({left, y}, shortened(words, margin + heading_wide - left, 12), second));
    if (!scheme) return {std::move(items), y + 12};
    for (const std::string& line : caution_lines(*scheme, 2)) {
        y += 17;
        append(items, verdict_mark(rules::Verdict::caution, {margin + 6.6, y - 4.3}, 12));
        items.emplace_back(
            text({margin + 18, y}, shortened(line, heading_wide - 18, 12), TextStyle{.size = 12}));
    }
    return {std::move(items), y + 12};
}

Items footing(const answer::Answer& answer) {
    Items items;
    const double y = sheet_high - 30;
    items.emplace_back(
        Line{{margin, y - 18}, {sheet_wide - margin, y - 18}, stroked(palette::faint)});
    const std::string who =
        "A competent, licensed person, the local code and the network operator decide.";
    TextStyle bold{.size = 12, .weight = Weight::bold};
    items.emplace_back(text({margin, y}, who, bold));
    TextStyle small{.size = 10, .anchor = Anchor::end, .colour = palette::graphite};
    const double room = heading_wide - text_width(who, 12, Weight::bold) - 24;
    items.emplace_back(
        text({sheet_wide - margin, y}, shortened("data " + answer.data_version, room, 10), small));
    items.emplace_back(
        text({sheet_wide - margin, y + 14}, shortened(answer.edition, heading_wide, 10), small));
    return items;
}

}  // namespace toft::picture
