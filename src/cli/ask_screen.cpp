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

std::string worth_text(const answer::UnknownAnswer& u) {
    if (u.saves && *u.saves >= 0.5) return fmt::format("may save {}; ", pounds(*u.saves));
    if (u.saves_with && *u.saves_with >= 0.5) {
        return fmt::format("may save {} once others are known; ", pounds(*u.saves_with));
    }
    return "";
}

std::string asked_text(const answer::UnknownAnswer& u, std::size_t number) {
    const std::string question = u.question.empty() ? u.says : u.question;
    std::string text = wrapped(fmt::format("  {:>2}. ", number), question, 6);
    text += wrapped("      how: ",
                    fmt::format("{}; about {} minutes, {}", u.how, significant(u.minutes, 3), u.by),
                    11);
    text += wrapped("      why: ", worth_text(u) + u.why, 11);
    if (!u.hangs.empty()) text += wrapped("      on it hangs: ", u.hangs, 8);
    if (!u.with.empty()) {
        std::string with;
        for (const std::string& fact : u.with) with += (with.empty() ? "" : ", ") + fact;
        text += wrapped("      together with: ", with, 8);
    }
    return text + wrapped("      in the job: ", u.fact, 8);
}

std::string left_text(const answer::AskAnswer& a) {
    std::string text;
    for (const answer::UnknownAnswer& u : a.unknowns) {
        if (u.ask) continue;
        text += wrapped("  - ", fmt::format("{}: {}; {}", u.says, u.effect, u.why), 4);
    }
    return text.empty() ? "" : title("NOT WORTH A JOURNEY FOR THE DESIGN") + text;
}

std::string sum_text(const answer::LeverAnswer& l) {
    if (l.opens) return pounds(l.total);
    const double brings = l.net.value_or(l.saves);
    return (brings < -0.5 ? "-" : "") + pounds(std::abs(brings));
}

}  // namespace

std::string ask_screen(const answer::AskAnswer& a) {
    std::string text = a.job + "\n" + title("AS THINGS STAND");
    text += stands_text(a.stands, a.total, a.sound);
    const bool any = std::any_of(a.unknowns.begin(), a.unknowns.end(),
                                 [](const answer::UnknownAnswer& u) { return u.ask; });
    text += title("GO AND FIND OUT");
    if (!any)
        text += wrapped("  ", "Nothing that would pay: measure what tests ask for anyway.", 2);
    std::size_t number = 0;
    for (const answer::UnknownAnswer& u : a.unknowns) {
        if (u.ask) text += asked_text(u, ++number);
    }
    text += left_text(a);
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
        text += wrapped("           the change: ", l.cost_says, 13);
        text += wrapped("           then: ",
                        fmt::format("{}, {} with tax, headroom {} %", l.scheme, pounds(l.total),
                                    fixed(l.headroom * 100, 0)),
                        13);
    }
    text += title("BEFORE ANYONE ACTS ON THIS");
    text += wrapped("  ",
                    "Each line is one change alone, solved anew; two together may bring more or "
                    "less than their sum.",
                    2);
    for (const std::string& caution : a.cautions) text += wrapped("  ", caution, 2);
    return text;
}

}  // namespace toft::cli
