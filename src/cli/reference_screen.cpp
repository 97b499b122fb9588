#include "base/text.h"
#include "cli/layout.h"
#include "cli/screen.h"
#include "rules/rulebook.h"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace toft::cli {

namespace {

std::string with_unit(double value, const std::string& unit) {
    const std::string text = std::isfinite(value) ? significant(value, 6) : "no end";
    return unit.empty() ? text : text + " " + unit;
}

std::string origin_of(const Line& line) {
    if (line.citation) {
        return fmt::format("{}, {}: {}", line.citation->source, line.citation->locator,
                           basis_word(line.citation->basis));
    }
    return line.from;
}

}  // namespace

std::string working_screen(const answer::Working& w, const std::string& scheme_key) {
    std::string text = fmt::format("{} = {}\n", w.name, with_unit(w.value, w.unit));
    text += wrapped("", w.title, 0);
    text += fmt::format("scheme {}\n\n", scheme_key);
    for (const Line& line : w.lines) {
        text += wrapped("  ",
                        fmt::format("{} = {}   {}", line.symbol, with_unit(line.value, line.unit),
                                    line.meaning),
                        6);
        if (!line.formula.empty()) text += wrapped("      = ", line.formula, 8);
        const std::string origin = origin_of(line);
        if (!origin.empty()) text += wrapped("      [", origin + "]", 7);
    }
    return text;
}

std::string rules_screen() {
    std::string text = std::string(rules::edition()) + "\n";
    for (const rules::Rule& rule : rules::rulebook()) {
        const rules::RuleInfo& r = *rule.info;
        text += fmt::format("\n{}  [{}]\n", r.name, r.clause);
        text += wrapped("  ", r.title, 2);
        text += wrapped("  reads: ", r.reads, 9);
        text +=
            fmt::format("  longer run: {}; thicker cores: {}; more load: {}; larger device: {}\n",
                        rules::trend_word(r.longer), rules::trend_word(r.thicker),
                        rules::trend_word(r.heavier), rules::trend_word(r.larger));
    }
    return text;
}

std::string sources_screen(const tables::Catalogue& catalogue) {
    std::string text = fmt::format("data {}\n", catalogue.version);
    for (const tables::Source& source : catalogue.sources) {
        std::array<int, 4> counts{};
        for (const Citation& c : catalogue.citations) {
            if (c.source == source.key) ++counts[static_cast<std::size_t>(c.basis)];
        }
        text += fmt::format("\n{}  ({})\n", source.key, source.seen);
        text +=
            wrapped("  ", source.title + (source.edition == "-" ? "" : ", " + source.edition), 2);
        text += wrapped("  ", source.where, 2);
        text += fmt::format("  figures: {} published, {} derived, {} common practice, {} memory\n",
                            counts[0], counts[1], counts[2], counts[3]);
    }
    return text;
}

std::string faults_screen(const Faults& faults) {
    std::string text;
    for (const Fault& fault : faults) {
        const std::string where = fault.pointer.empty() ? "" : fault.pointer + ": ";
        text += wrapped("- ", where + fault.says, 2);
        if (!fault.nearest.empty()) text += fmt::format("  did you mean: {}\n", fault.nearest);
        if (fault.allowed.empty()) continue;
        std::string allowed;
        for (const std::string& word : fault.allowed)
            allowed += (allowed.empty() ? "" : ", ") + word;
        text += wrapped("  allowed: ", allowed, 4);
    }
    return text;
}

}  // namespace toft::cli
