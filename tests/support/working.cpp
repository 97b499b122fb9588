#include "support/working.h"

#include "base/text.h"
#include "support/formula.h"

#include <cmath>
#include <cstdlib>
#include <stdexcept>

namespace toft::support {

namespace {

/// The figure as a reader would copy it, rounded to twelve digits.
double printed(double value) { return std::strtod(significant(value, 12).c_str(), nullptr); }

double figure_of_input(const std::vector<Line>& lines, const Line& line,
                       const std::string& symbol) {
    const Line* found = nullptr;
    for (int input : line.inputs) {
        const Line& candidate = lines.at(static_cast<std::size_t>(input));
        if (candidate.symbol != symbol) continue;
        if (found && !agree(found->value, candidate.value)) {
            throw std::runtime_error("two inputs are called " + symbol + " but differ");
        }
        found = &candidate;
    }
    if (!found) throw std::runtime_error("no input is called " + symbol);
    return printed(found->value);
}

std::string complaint(const Line& line, const std::string& says) {
    return line.symbol + " = " + line.formula + ": " + says;
}

}  // namespace

bool agree(double a, double b, double tolerance) {
    if (std::isinf(a) || std::isinf(b)) return a == b;
    return std::fabs(a - b) <=
           tolerance * std::fmax(std::fabs(a), std::fabs(b)) + 1e-8;  // printed to 12 digits
}

std::vector<std::string> wrong_lines(const std::vector<Line>& lines) {
    std::vector<std::string> wrong;
    for (const Line& line : lines) {
        if (line.origin != Origin::computed) {
            if (!line.formula.empty())
                wrong.push_back(complaint(line, "a given figure has no formula"));
            continue;
        }
        try {
            const double result = work_out_formula(line.formula, [&](const std::string& symbol) {
                return figure_of_input(lines, line, symbol);
            });
            if (!agree(result, line.value)) {
                wrong.push_back(complaint(line, "gives " + significant(result, 12) +
                                                    ", printed is " + significant(line.value, 12)));
            }
        } catch (const std::exception& error) {
            wrong.push_back(complaint(line, error.what()));
        }
    }
    return wrong;
}

}  // namespace toft::support
