#include "cli/layout.h"
#include "cli/screen.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::cli {

namespace {

using walk::Bearing;
using walk::Choice;

/// A bearing is a shape and a word.
const char* bearing_mark(Bearing bearing) {
    switch (bearing) {
        case Bearing::required:
            return "◆";
        case Bearing::ruled_out:
            return "■";
        case Bearing::speaks_against:
            return "▲";
        case Bearing::speaks_for:
            return "●";
        case Bearing::neutral:
            break;
    }
    return "·";
}

const char* standing_mark(walk::Standing standing) {
    switch (standing) {
        case walk::Standing::required:
            return "◆";
        case walk::Standing::open:
            return "●";
        case walk::Standing::judgement:
            return "▲";
        case walk::Standing::not_known:
            return "○";
        case walk::Standing::ruled_out:
            return "■";
    }
    return "";
}

bool same(const walk::Consequence& a, const walk::Consequence& b) {
    return a.bearing == b.bearing && std::string(a.why) == b.why;
}

/// Names of the ways for which the step means the same as for `choice`, that one first.
std::string alike(const walk::Walk& w, const walk::Step& step, std::size_t choice) {
    std::string names;
    for (std::size_t i = choice; i < w.ways.size(); ++i) {
        const Choice other = w.ways[i].choice;
        if (!same(step.ruling[w.ways[choice].choice], step.ruling[other])) continue;
        names += (names.empty() ? "" : "; ") + std::string(walk::choice_word(other));
    }
    return names;
}

bool said_before(const walk::Walk& w, const walk::Step& step, std::size_t choice) {
    for (std::size_t i = 0; i < choice; ++i) {
        if (same(step.ruling[w.ways[i].choice], step.ruling[w.ways[choice].choice])) return true;
    }
    return false;
}

std::string consequences_text(const walk::Walk& w, const walk::Step& step) {
    std::string text;
    for (std::size_t i = 0; i < w.ways.size(); ++i) {
        const walk::Consequence& c = step.ruling[w.ways[i].choice];
        if (*c.why == '\0' || said_before(w, step, i)) continue;
        const std::string bearing =
            c.bearing == Bearing::neutral ? "" : std::string(walk::bearing_word(c.bearing)) + ": ";
        text += wrapped(fmt::format("    {} ", bearing_mark(c.bearing)),
                        fmt::format("{}: {}{}", alike(w, step, i), bearing, c.why), 6);
    }
    return text;
}

std::string basis_text(const walk::Step& step) {
    if (!step.basis) return "";
    const tables::EarthingBasis& b = *step.basis;
    const std::string authority = tables::authority_word(b.authority);
    return wrapped("      [",
                   fmt::format("{}, {}; {}, {}: {}]", authority, b.clause, b.citation->source,
                               b.citation->locator, basis_word(b.citation->basis)),
                   7);
}

bool bears(const walk::Walk& w, const walk::Step& step) {
    for (const walk::Way& way : w.ways) {
        if (step.ruling[way.choice].bearing != Bearing::neutral) return true;
    }
    return false;
}

std::string step_text(const walk::Walk& w, const walk::Step& step, std::size_t number) {
    const bool open = step.ruling.known == walk::Known::unknown && bears(w, step);
    std::string text = "\n" + wrapped(fmt::format("{:>3} ", number), step.asks, 4);
    text += wrapped("    ", step.found + (open ? " (not known: taken at its worse end)" : ""), 6);
    return text + consequences_text(w, step) + basis_text(step);
}

std::string listed(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) text += (text.empty() ? "" : ", ") + word;
    return text;
}

std::string way_text(const walk::Way& way) {
    std::string text =
        fmt::format("\n  {} {}: {}\n", standing_mark(way.standing), walk::choice_word(way.choice),
                    walk::standing_word(way.standing));
    if (!way.reasons.empty()) text += wrapped("    because of: ", listed(way.reasons), 6);
    text += wrapped("    risk left: ", way.residual_risk, 6);
    text += "    would change it:\n";
    for (const std::string& change : way.would_change) text += wrapped("      - ", change, 8);
    return text;
}

/// All that is said of a building but its name.
std::string walk_text(const walk::Walk& w) {
    std::string text;
    std::size_t number = 0;
    for (const walk::Step& step : w.steps) text += step_text(w, step, ++number);
    text += "\nWHERE THE WAYS STAND\n";
    for (const walk::Way& way : w.ways) text += way_text(way);
    return text + "\nIN SHORT\n" + wrapped("  ", w.conclusion, 2);
}

/// Buildings of which the same is to be said.
struct SaidOfAll {
    std::vector<std::string> names;
    std::string text;
};

std::vector<SaidOfAll> alike_in(const std::vector<walk::Walk>& walks) {
    std::vector<SaidOfAll> all;
    for (const walk::Walk& w : walks) {
        const std::string text = walk_text(w);
        const auto same = std::find_if(all.begin(), all.end(),
                                       [&](const SaidOfAll& told) { return told.text == text; });
        if (same != all.end()) {
            same->names.push_back(w.name);
        } else {
            all.push_back({{w.name}, text});
        }
    }
    return all;
}

std::string heading_of(const std::vector<std::string>& names) {
    if (names.size() == 1) return fmt::format("HOW IS {} TO BE EARTHED?", names.front());
    return fmt::format("HOW ARE {} TO BE EARTHED, EACH ALIKE?", listed(names));
}

}  // namespace

std::string why_screen(const std::string& job, const std::vector<walk::Walk>& walks,
                       const std::vector<std::string>& cautions) {
    std::string text = job + "\n";
    for (const SaidOfAll& told : alike_in(walks)) {
        text += wrapped("\n", heading_of(told.names), 2) + told.text;
    }
    text += "\nBEFORE ANYONE ACTS ON THIS\n";
    for (const std::string& caution : cautions) text += wrapped("  ", caution, 2);
    return text;
}

}  // namespace toft::cli
