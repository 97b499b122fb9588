#include "base/text.h"
#include "cli/layout.h"
#include "cli/screen.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::cli {

namespace {

std::string pounds(double amount) { return "£" + fixed(amount, 0); }

std::string title(const char* text) { return fmt::format("\n{}\n", text); }

std::string stands_text(const std::string& scheme, double total, bool sound) {
    if (scheme.empty()) {
        return wrapped("  ", "Nothing is sound, whatever the open facts turn out to be.", 2);
    }
    return wrapped("  ",
                   fmt::format("{}{}, {} with tax.", sound ? "" : "Only on conditions: ", scheme,
                               pounds(total)),
                   2);
}

using Alike = std::vector<const answer::UnknownAnswer*>;

/// The same question at several places, to be told once.
bool alike(const answer::UnknownAnswer& a, const answer::UnknownAnswer& b) {
    return !a.place.empty() && !b.place.empty() && a.question == b.question && a.ask == b.ask &&
           a.why == b.why && a.effect == b.effect;
}

/// The facts to be asked for, or those to be left, in order; those alike in one.
std::vector<Alike> grouped(const std::vector<answer::UnknownAnswer>& unknowns, bool ask) {
    std::vector<Alike> groups;
    for (const answer::UnknownAnswer& u : unknowns) {
        if (u.ask != ask) continue;
        const auto same = std::find_if(groups.begin(), groups.end(), [&](const Alike& group) {
            return alike(*group.front(), u);
        });
        if (same != groups.end()) {
            same->push_back(&u);
        } else {
            groups.push_back({&u});
        }
    }
    return groups;
}

/// "Gym", "Gym, Stable and 3 more".
std::string places_of(const Alike& group) {
    constexpr std::size_t most_named = 4;
    const bool all = group.size() <= most_named;
    const std::size_t named = all ? group.size() : most_named - 1;
    std::string text;
    for (std::size_t i = 0; i < named; ++i) {
        const bool last = all && i + 1 == named;
        text += (i == 0 ? "" : last ? " and " : "; ") + group[i]->place;
    }
    return all ? text : text + fmt::format(" and {} more", group.size() - named);
}

std::string in_the_job(const Alike& group) {
    std::string text;
    for (const answer::UnknownAnswer* u : group) text += (text.empty() ? "" : " ") + u->fact;
    return text;
}

std::string worth_text(const answer::UnknownAnswer& u) {
    if (u.saves && *u.saves >= 0.5) return fmt::format("may save {}; ", pounds(*u.saves));
    if (u.saves_with && *u.saves_with >= 0.5) {
        return fmt::format("may save {} once others are known; ", pounds(*u.saves_with));
    }
    return "";
}

std::string worth_text(const Alike& group) {
    const answer::UnknownAnswer& first = *group.front();
    if (group.size() == 1) return worth_text(first);
    std::string text = worth_text(first);
    if (!text.empty()) text = first.place + ": " + text;
    if (first.saves_alike && *first.saves_alike >= 0.5) {
        text +=
            fmt::format("all {} together may save {}; ", group.size(), pounds(*first.saves_alike));
    }
    return text;
}

std::string with_text(const answer::AskAnswer& a, const answer::UnknownAnswer& u) {
    constexpr std::size_t most_named = 3;
    std::string with;
    std::size_t named = 0;
    for (const answer::UnknownAnswer& other : a.unknowns) {
        const bool partner = std::find(u.with.begin(), u.with.end(), other.fact) != u.with.end();
        if (!partner || ++named > most_named) continue;
        with += (with.empty() ? "" : "; ") + (u.place.empty() ? other.fact : other.says);
    }
    return named > most_named ? with + fmt::format("; {} more", named - most_named) : with;
}

std::string asked_text(const answer::AskAnswer& a, const Alike& group, std::size_t number) {
    const answer::UnknownAnswer& u = *group.front();
    const std::string question = u.question.empty() ? u.says : u.question;
    const std::string place = u.place.empty() ? "" : places_of(group) + ": ";
    std::string text = wrapped(fmt::format("  {:>2}. ", number), place + question, 6);
    text += wrapped("      how: ",
                    fmt::format("{}; about {} minutes{}, {}", u.how, significant(u.minutes, 3),
                                group.size() > 1 ? " each" : "", u.by),
                    11);
    text += wrapped("      why: ", worth_text(group) + u.why, 11);
    if (!u.hangs.empty()) {
        const std::string lead = group.size() > 1 ? u.place + ": " : "";
        text += wrapped("      on it hangs: ", lead + u.hangs, 8);
    }
    const std::string with = with_text(a, u);
    if (!with.empty()) text += wrapped("      together with: ", with, 8);
    return text + wrapped("      in the job: ", in_the_job(group), 8);
}

std::string left_text(const answer::AskAnswer& a) {
    std::string text;
    for (const Alike& group : grouped(a.unknowns, false)) {
        const answer::UnknownAnswer& u = *group.front();
        const std::string says =
            group.size() > 1 ? places_of(group) + ": " + u.says.substr(u.place.size() + 2) : u.says;
        text += wrapped("  - ", fmt::format("{}: {}; {}", says, u.effect, u.why), 4);
    }
    return text.empty() ? "" : title("NOT WORTH A JOURNEY FOR THE DESIGN") + text;
}

std::string nothing_to_ask(const answer::AskAnswer& a) {
    return a.unknowns.empty() ? "Nothing is left open: measure what tests ask for anyway."
                              : "Nothing that would pay: measure what tests ask for anyway.";
}

/// Of a change at several places, what the best of them bring alone.
std::string singly_text(const answer::LeverAnswer& l) {
    constexpr std::size_t most_named = 3;
    std::string text;
    std::size_t named = 0;
    for (const auto& [place, brings] : l.singly) {
        if (brings < 0.5 || ++named > most_named) break;
        text += fmt::format("{}{} {}", text.empty() ? "" : ", ", place, pounds(brings));
    }
    if (l.opens || text.empty()) return "";
    return wrapped("           made alone: ", text, 13);
}

constexpr const char* not_proved =
    "Not every way to build these runs could be proved to be the cheapest: a figure here may be "
    "bettered.";

constexpr const char* facts_left =
    "Some facts were not looked at before it was stopped. They are listed as worth finding out: "
    "nobody knows yet whether they matter.";
constexpr const char* changes_left =
    "Some changes were not tried before it was stopped: another may bring more.";

std::string sum_text(const answer::LeverAnswer& l) {
    if (l.opens) return pounds(l.total);
    const double brings = l.net.value_or(l.saves);
    return (brings < -0.5 ? "-" : "") + pounds(std::abs(brings));
}

}  // namespace

std::string ask_screen(const answer::AskAnswer& a) {
    std::string text = a.job + "\n" + title("AS THINGS STAND");
    text += stands_text(a.stands, a.total, a.sound);
    text += title("GO AND FIND OUT");
    const std::vector<Alike> asked = grouped(a.unknowns, true);
    if (asked.empty()) text += wrapped("  ", nothing_to_ask(a), 2);
    std::size_t number = 0;
    for (const Alike& group : asked) text += asked_text(a, group, ++number);
    text += left_text(a);
    if (!a.proved) text += title("NOT PROVED") + wrapped("  ", not_proved, 2);
    if (a.stopped) text += title("STOPPED") + wrapped("  ", facts_left, 2);
    if (!a.assumed.empty()) text += title("TAKEN FOR GRANTED");
    for (const std::string& line : a.assumed) text += wrapped("  - ", line, 4);
    text += title("BEFORE ANYONE ACTS ON THIS");
    for (const std::string& caution : a.cautions) text += wrapped("  ", caution, 2);
    return text;
}

std::string levers_screen(const answer::LeversAnswer& a) {
    std::string text = a.job + "\n" + title("AS THINGS STAND");
    text += stands_text(a.scheme, a.total, a.sound);
    text += title("WHAT ONE CHANGE WOULD BRING");
    if (a.levers.empty()) {
        text += wrapped(
            "  ", fmt::format("No lever: none of {} changes the survey allows pays.", a.tried), 2);
    }
    for (const answer::LeverAnswer& l : a.levers) {
        text += wrapped(fmt::format("  {:>7}  ", sum_text(l)), l.change + ": " + l.brings, 11);
        text += singly_text(l);
        text += wrapped("           the change: ", l.cost_says, 13);
        text += wrapped("           then: ",
                        fmt::format("{}, {} with tax, headroom {} %", l.scheme, pounds(l.total),
                                    fixed(l.headroom * 100, 0)),
                        13);
    }
    if (!a.proved) text += title("NOT PROVED") + wrapped("  ", not_proved, 2);
    if (a.stopped) text += title("STOPPED") + wrapped("  ", changes_left, 2);
    text += title("BEFORE ANYONE ACTS ON THIS");
    text += wrapped("  ",
                    "Each line is one change alone, solved anew; two together may bring more or "
                    "less than their sum.",
                    2);
    for (const std::string& caution : a.cautions) text += wrapped("  ", caution, 2);
    return text;
}

}  // namespace toft::cli
