#include "base/text.h"
#include "cli/layout.h"
#include "cli/screen.h"

#include <fmt/format.h>

namespace toft::cli {

namespace {

using guard::Certainty;

/// A certainty is a shape and a word.
const char* mark(Certainty certainty) {
    switch (certainty) {
        case Certainty::surely:
            return "■";
        case Certainty::possibly:
            return "□";
        case Certainty::no:
            break;
    }
    return "·";
}

std::string milli(double current) { return significant(current, 4) + " mA"; }

std::string reason_text(const guard::Reason& reason) {
    const tables::Footing& f = reason.row->footing;
    return wrapped(
        "      - ",
        fmt::format("{}{} [{}, {}; {}: {}]", reason.why, reason.sure ? "" : " (not certain)",
                    tables::authority_word(f.authority), f.clause, f.citation->source,
                    basis_word(f.citation->basis)),
        8);
}

std::string circuit_text(const answer::CircuitGuard& c) {
    std::string text =
        wrapped("  ",
                fmt::format("{}: {} of its own{}", c.name, milli(c.fitted_ma),
                            c.need.asked_for()
                                ? fmt::format("; {} asked for", milli(c.need.asked.number() * 1000))
                                : std::string("; none asked for")),
                4);
    for (const guard::Reason& reason : c.need.reasons) text += reason_text(reason);
    const std::string instead = answer::instead_of(c.sort);
    text += wrapped("      - ",
                    fmt::format("type {}{}: {}", site::word(c.sort.type),
                                instead.empty() ? "" : " (or " + instead + ")", c.sort.why),
                    8);
    text += wrapped(
        "      - ",
        fmt::format("leaks {} to {} in ordinary use, {}; its device bears {}",
                    milli(c.leakage.low.number() * 1000), milli(c.leakage.high.number() * 1000),
                    c.leakage.stated ? "as stated" : "as is usual for its kind",
                    milli(c.leakage_allowed_ma)),
        8);
    return text;
}

template <class Named>
std::string named(const std::vector<Named>& all, const std::vector<Certainty>& certainty,
                  Certainty wanted) {
    std::string names;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (certainty[i] != wanted) continue;
        names += (names.empty() ? "" : ", ") + all[i].name;
    }
    return names;
}

template <class Named>
std::string surety_text(const char* surely, const char* possibly, const std::vector<Named>& all,
                        const std::vector<Certainty>& certainty) {
    std::string text;
    const auto line = [&](Certainty wanted, const char* says) {
        const std::string names = named(all, certainty, wanted);
        if (names.empty()) return;
        text += wrapped(fmt::format("    {} {}: ", mark(wanted), says), names, 8);
    };
    line(Certainty::surely, surely);
    line(Certainty::possibly, possibly);
    return text;
}

std::string event_text(const guard::Darkness& dark, const guard::Event& event) {
    std::string text = "\n" + wrapped("  ", event.name, 4);
    text += surety_text("opens", "may open", dark.openers, event.opens);
    const std::string lost = surety_text("dark", "may go dark", dark.parts, event.dark);
    return text + (lost.empty() ? "    · nothing goes dark\n" : lost);
}

std::string chain_text(const answer::GuardAnswer& guard) {
    if (guard.pairs.empty() && guard.remarks.empty()) return "";
    std::string text = "\nIN A ROW\n";
    for (const guard::Pair& pair : guard.pairs) {
        text += wrapped(
            "  - ",
            fmt::format("{} ({}) in front of {} ({}): {}", guard::post_words(pair.upstream.post),
                        milli(pair.upstream.sensitivity.number() * 1000),
                        guard::post_words(pair.downstream.post),
                        milli(pair.downstream.sensitivity.number() * 1000), pair.says),
            4);
    }
    for (const guard::Remark& remark : guard.remarks) text += wrapped("  - ", remark.says, 4);
    return text;
}

}  // namespace

std::string dark_screen(const answer::Answer& answer, const answer::SchemeAnswer& scheme) {
    const answer::GuardAnswer& guard = scheme.guard;
    std::string text = answer.job + "\n\nSCHEME\n" + wrapped("  ", scheme.words, 2);
    text += "\nWHAT GOES DARK\n";
    for (const guard::Event& event : guard.dark.events) text += event_text(guard.dark, event);
    text += chain_text(guard) + "\nWHO ASKS FOR WHAT\n";
    for (const answer::CircuitGuard& circuit : guard.circuits) text += circuit_text(circuit);
    if (!guard.cautions.empty()) text += "\nCAUTIONS\n";
    for (const std::string& caution : guard.cautions) text += wrapped("  - ", caution, 4);
    text += "\nBEFORE ANYONE ACTS ON THIS\n";
    for (const std::string& caution : answer.cautions) text += wrapped("  ", caution, 2);
    return text;
}

}  // namespace toft::cli
