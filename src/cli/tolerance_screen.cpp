#include "outlook/tolerances.h"

#include "base/text.h"
#include "cli/layout.h"
#include "cli/screen.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::cli {

namespace {

using outlook::chance_words;
using outlook::figure_words;
using tolerance::RuleOver;
using tolerance::Tolerance;

constexpr std::size_t name_wide = 24;
constexpr std::size_t half_bar = 16;
constexpr double least_swing = 5e-4;
constexpr std::size_t most_bounds = 3;  // of one figure in one direction

std::string headline(const char* text) { return fmt::format("\n{}\n", text); }

std::string share_text(double use, bool holds) {
    if (holds && use > 1) return "see design";  // allowed with a caution, or put right in the price
    if (!std::isfinite(use) || use > 99.9) return "no end";
    return fixed(use * 100, 0) + " %";
}

std::string error_text(const tolerance::Share& share) {
    if (share.error <= 0) return "";
    return fmt::format(" (give or take {} %)", significant(share.error * 100, 2));
}

std::string robust_text(const Tolerance& t) {
    std::string text = headline("HOW SURE");
    std::string says = fmt::format("{}{}: the chance that every rule holds.",
                                   chance_words(t.robust), error_text(t.robust));
    if (t.robust.error <= 0) {
        says = t.robust.holds > 0.5
                   ? "Every rule holds wherever in their ranges the figures are."
                   : "At least one rule fails wherever in their ranges the figures are.";
    }
    text += wrapped("  ", says, 2);
    if (t.samples > 0) {
        text += wrapped("  ",
                        fmt::format("{} cases by a quasi-random sequence, from {} settings "
                                    "prepared by the engine that designs.",
                                    t.samples, t.prepared),
                        2);
    }
    return text;
}

std::string varies_text(const Tolerance& t) {
    if (t.varied.empty()) return "";
    std::string text = headline("WHAT VARIES");
    for (const auto& v : t.varied) {
        std::string from = tolerance::word_of(v.word);
        if (v.citation) from += fmt::format(", {}", basis_word(v.citation->basis));
        text += wrapped("  - ",
                        fmt::format("{}: {} to {}, {} ({})", v.says, significant(v.low, 3),
                                    figure_words(v.high, v.unit),
                                    v.spread == site::Spread::bell ? "a bell" : "evenly", from),
                        4);
    }
    return text;
}

std::string stays_text(const Tolerance& t) {
    if (t.stays.empty()) return "";
    std::string text = headline("NOT KNOWN, AND KEPT AT ITS WORSE END");
    for (const auto& s : t.stays) text += wrapped("  - ", s.says, 4);
    return text;
}

std::string rules_text(const Tolerance& t) {
    std::string text = headline("RULE BY RULE");
    text += fmt::format("  {}{}{}{}\n", padded("", name_wide), padded("chance it holds", 20),
                        padded("likely", 10), "at its worst");
    std::string always;
    for (const RuleOver& r : t.rules) {
        if (r.holds_at_worst && !(r.limited && r.worst > 0)) {
            always += (always.empty() ? "" : ", ") + std::string(r.rule->name);
            continue;
        }
        text += fmt::format("  {}{}{}{}\n", padded(r.rule->name, name_wide),
                            padded(chance_words(r.chance), 20),
                            padded(r.limited ? share_text(r.likely, r.holds_at_likely) : "-", 10),
                            r.limited ? share_text(r.worst, r.holds_at_worst) : "-");
    }
    if (!always.empty()) text += wrapped("  always, with no figure: ", always, 4);
    return text;
}

/// A bar from the likeliest headroom to either end.
std::string swing_bar(const tolerance::Swing& s, double likely, double widest) {
    const auto cells = [&](double size) {
        return static_cast<std::size_t>(std::lround(std::max(0.0, size) / widest * half_bar));
    };
    const std::size_t left = cells(likely - std::min(s.low.headroom, s.high.headroom));
    const std::size_t right = cells(std::max(s.low.headroom, s.high.headroom) - likely);
    return std::string(half_bar - std::min(half_bar, left), ' ') + std::string(left, '=') + "|" +
           std::string(right, '=');
}

double widest_of(const tolerance::Tornado& tornado) {
    double widest = 0;
    for (const auto& s : tornado.swings) {
        for (const double h : {s.low.headroom, s.high.headroom}) {
            widest = std::max(widest, std::abs(h - tornado.likely.headroom));
        }
    }
    return widest;
}

std::string from_to(double a, double b, const tolerance::Varied& v) {
    return fmt::format("{} % at {}, {} % at {}", fixed(a * 100, 1), figure_words(v.low, v.unit),
                       fixed(b * 100, 1), figure_words(v.high, v.unit));
}

std::string swings_text(const Tolerance& t) {
    if (t.tornado.swings.empty()) return "";
    const double likely = t.tornado.likely.headroom;
    std::string text = headline("WHAT MOVES THE HEADROOM, EACH ALONE");
    text +=
        fmt::format("  with every figure at its likeliest: {} % ({})\n", fixed(likely * 100, 0),
                    t.tornado.likely.governed_by ? t.tornado.likely.governed_by->name : "no rule");
    const double widest = widest_of(t.tornado);
    std::string still;
    for (const auto& s : t.tornado.swings) {
        const auto& v = t.varied[s.varied];
        if (s.size() >= least_swing) {
            text += wrapped("  ", v.says + ": " + from_to(s.low.headroom, s.high.headroom, v), 4);
            text += "    " + swing_bar(s, likely, widest) + "\n";
        } else if (s.use_moved() >= least_swing) {
            still += wrapped("  - ",
                             fmt::format("{}, but moves {}: {} of its limit", v.says,
                                         rules::rulebook()[s.moved].info->name,
                                         from_to(s.low.use[s.moved], s.high.use[s.moved], v)),
                             4);
        } else {
            still += wrapped("  - ", v.says, 4);
        }
    }
    return still.empty() ? text : text + "  not moved by:\n" + still;
}

std::string bounds_text(const std::vector<tolerance::Bound>& bounds, const std::string& unit,
                        const char* word) {
    std::string text;
    std::size_t shown = 0;
    for (const auto& bound : bounds) {
        if (++shown > most_bounds) break;
        text += fmt::format("{}{} {} {}", text.empty() ? "" : ", ",
                            rules::rulebook()[bound.rule].info->name, word,
                            figure_words(bound.value, unit));
    }
    return text;
}

std::string farthest_text(const Tolerance& t) {
    if (t.farthest.empty()) return "";
    std::string text = headline("HOLDS UP TO (ALL OTHER FIGURES AT THEIR WORSE ENDS)");
    for (const auto& f : t.farthest) {
        std::string bounds = bounds_text(f.up_to, f.unit, "up to");
        const std::string down = bounds_text(f.down_to, f.unit, "down to");
        if (!bounds.empty() && !down.empty()) bounds += "; ";
        text += wrapped(
            "  - ",
            fmt::format("{}, {} now: {}{}", f.says, figure_words(f.now, f.unit), bounds, down), 4);
    }
    return text;
}

}  // namespace

std::string tolerance_screen(const outlook::ToleranceAnswer& a) {
    std::string text = a.job + "\n" + headline("THE SCHEME") +
                       wrapped("  ", "Of run " + a.run + " alone: " + a.scheme, 2);
    text += robust_text(a.found) + varies_text(a.found) + stays_text(a.found);
    text += rules_text(a.found) + swings_text(a.found) + farthest_text(a.found);
    text += headline("BEFORE ANYONE ACTS ON THIS");
    for (const std::string& note : a.notes) text += wrapped("  ", note, 2);
    for (const std::string& caution : a.cautions) text += wrapped("  ", caution, 2);
    return text;
}

}  // namespace toft::cli
