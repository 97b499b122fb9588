#include "answer/reader.h"

#include "base/text.h"
#include "support/formula.h"
#include "support/working.h"

#include <cstdlib>
#include <stdexcept>

namespace toft::answer {

namespace {

/// The figure as it is printed with twelve digits.
double printed(double value) { return std::strtod(significant(value, 12).c_str(), nullptr); }

double figure_above(const std::vector<Line>& lines, std::size_t end, const std::string& symbol) {
    const Line* found = nullptr;
    for (std::size_t i = 0; i < end; ++i) {
        if (lines[i].symbol != symbol) continue;
        if (found && !support::agree(found->value, lines[i].value)) {
            throw std::runtime_error(symbol + " stands above with two figures");
        }
        found = &lines[i];
    }
    if (!found) throw std::runtime_error(symbol + " stands nowhere above");
    return printed(found->value);
}

}  // namespace

std::vector<std::string> unreadable_lines(const std::vector<Line>& lines) {
    std::vector<std::string> complaints;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const Line& line = lines[i];
        if (line.origin != Origin::computed) continue;
        const std::string text = line.symbol + " = " + line.formula + ": ";
        try {
            const double result = support::work_out_formula(
                line.formula,
                [&](const std::string& symbol) { return figure_above(lines, i, symbol); });
            if (support::agree(result, line.value)) continue;
            complaints.push_back(text + significant(result, 12) + ", printed is " +
                                 significant(line.value, 12));
        } catch (const std::exception& error) {
            complaints.push_back(text + error.what());
        }
    }
    return complaints;
}

}  // namespace toft::answer
