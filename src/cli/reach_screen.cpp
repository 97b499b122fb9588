#include "base/text.h"
#include "cli/layout.h"
#include "cli/screen.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::cli {

namespace {

using answer::ReachAnswer;
using answer::ReachCell;
using answer::ReachTable;

/// A letter for the rule that ends the reach, handed out in the order of their appearance.
class Letters {
public:
    char letter(const std::string& rule) {
        const auto at = std::find(rules_.begin(), rules_.end(), rule);
        if (at == rules_.end()) {
            rules_.push_back(rule);
            return static_cast<char>('a' + rules_.size() - 1);
        }
        return static_cast<char>('a' + (at - rules_.begin()));
    }
    const std::vector<std::string>& rules() const { return rules_; }

private:
    std::vector<std::string> rules_;
};

/// Metres are cut, never rounded up.
std::string cell_text(const ReachCell& cell, double longest, Letters& letters) {
    if (cell.metres <= 0) return fmt::format("- {}", letters.letter(cell.ended_by));
    if (cell.ended_by.empty()) return fmt::format("{:.0f}+  ", longest);
    return fmt::format("{:.0f} {}", std::floor(cell.metres), letters.letter(cell.ended_by));
}

std::string table_text(const ReachAnswer& a, const ReachTable& table, Letters& letters) {
    std::string text = fmt::format("\n{}, {}-core, protected by the {}\n", table.family,
                                   table.cores, table.protective_conductor);
    text += padded("  mm²", 8);
    for (const double load : a.loads_a) text += fmt::format("{:>7}", significant(load, 4) + " A");
    text += "\n";
    for (const auto& row : table.rows) {
        text += padded(fmt::format("  {}", significant(row.section_mm2, 4)), 8);
        for (const ReachCell& cell : row.cells) {
            text += fmt::format("{:>7}", cell_text(cell, a.longest_m, letters));
        }
        text += "\n";
    }
    return text;
}

}  // namespace

std::string reach_screen(const ReachAnswer& a) {
    Letters letters;
    std::string text = fmt::format("{}: how far a cable reaches, in metres\n", a.job);
    if (!a.run.empty()) text += fmt::format("Run {}, with nothing fed through its end.\n", a.run);
    text += wrapped("",
                    fmt::format("{}; {}; {}, fully loaded; {}.", a.supply,
                                a.phases == 3 ? "three phases" : "one phase", a.device, a.laid),
                    0);
    for (const ReachTable& table : a.tables) text += table_text(a, table, letters);
    text += "\n";
    for (std::size_t i = 0; i < letters.rules().size(); ++i) {
        text += fmt::format("  {}  ended by {}\n", static_cast<char>('a' + i), letters.rules()[i]);
    }
    text += "  -  does not serve that load at any length\n";
    if (!a.assumed.empty()) text += "\nTAKEN FOR GRANTED\n";
    for (const std::string& line : a.assumed) text += wrapped("  - ", line, 4);
    text += "\nBEFORE ANYONE ACTS ON THIS\n";
    for (const std::string& caution : a.cautions) text += wrapped("  ", caution, 2);
    return text;
}

}  // namespace toft::cli
