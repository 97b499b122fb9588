#include "base/text.h"
#include "cli/layout.h"
#include "cli/screen.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::cli {

namespace {

constexpr std::size_t says_wide = 46;
constexpr std::size_t first_wide = 11;
constexpr std::size_t column_wide = 13;
constexpr std::size_t most_ceilings = 3;

std::string caption(const char* text) { return fmt::format("\n{}\n", text); }

std::string more_text(const std::optional<double>& pounds) {
    if (!pounds) return "-";
    return fmt::format("{}£{}", *pounds < -0.5 ? "-" : "+", fixed(std::abs(*pounds), 0));
}

std::string ceilings_text(const outlook::LaterAnswer& a) {
    std::string text = caption("WHAT IT CAN STILL FEED");
    if (a.ceilings.empty()) {
        return text + wrapped("  ", "No rule that hangs on the load was found to end it.", 2);
    }
    std::string says = fmt::format("It is sized for {} A. More on the same line:",
                                   significant(a.design_current_a, 3));
    std::size_t shown = 0;
    for (const auto& c : a.ceilings) {
        if (++shown > most_ceilings) break;
        says += fmt::format("{} {} A ({} kW) until {}", shown > 1 ? "," : "",
                            significant(c.more_a, 3), significant(c.more_kw, 2), c.rule);
    }
    return text + wrapped("  ", says + ".", 2);
}

std::string addition_text(const outlook::AdditionAnswer& a) {
    const std::string says = fmt::format("{}, {} kW", a.says, significant(a.load_w / 1000, 3));
    std::string text = "  " + padded(says, says_wide) +
                       padded(outlook::keeps_word(a.keeps), first_wide) +
                       padded(more_text(a.more_now), column_wide) + more_text(a.more_later) + "\n";
    if (!a.fails.empty()) {
        std::string rules;
        for (const std::string& rule : a.fails) rules += (rules.empty() ? "" : ", ") + rule;
        text += wrapped("      as built it fails: ", rules, 8);
    }
    if (a.scheme.empty()) return text + "      nothing sound was found for it\n";
    return a.keeps == outlook::Keeps::all
               ? text
               : text + wrapped("      planned for it now: ", a.scheme, 8);
}

}  // namespace

std::string later_screen(const outlook::LaterAnswer& a) {
    std::string text = a.job + "\n" + caption("AS RECOMMENDED");
    if (a.scheme.empty()) {
        text += "  Nothing is sound.\n";
    } else {
        text += wrapped("  ", fmt::format("{}, £{} with tax", a.scheme, fixed(a.total, 0)), 2);
        text += ceilings_text(a) + caption("ADDED LATER");
        text += "  " + padded("", says_wide) + padded("as built", first_wide) +
                padded("planned now", column_wide) + "left until later\n";
    }
    for (const auto& addition : a.additions) text += addition_text(addition);
    text += caption("BEFORE ANYONE ACTS ON THIS");
    for (const std::string& note : a.notes) text += wrapped("  ", note, 2);
    for (const std::string& caution : a.cautions) text += wrapped("  ", caution, 2);
    return text;
}

}  // namespace toft::cli
