#include "record/parts.h"

#include "base/text.h"

#include <fmt/format.h>

#include <cmath>
#include <map>

namespace toft::paper {

namespace {

using page::Heading;
using page::Row;
using page::Table;
using page::Words;

std::string value_words(double value, const std::string& unit) {
    const std::string text = std::isfinite(value) ? significant(value, 6) : "no end";
    return unit.empty() ? text : text + " " + unit;
}

std::string from_words(const Line& line) {
    if (!line.citation) return line.from;
    return fmt::format("{}, {}: {}", line.citation->source, line.citation->locator,
                       basis_word(line.citation->basis));
}

/// Numbers lines as they are first told.
class Told {
public:
    bool before(const Line& line) const { return numbers_.count(line.place) > 0; }

    Row row(const Line& line) {
        const std::size_t number = numbers_.size() + 1;
        numbers_[line.place] = number;
        std::string formula = line.formula;
        if (!formula.empty()) {
            formula = "= " + formula;
            std::string of;
            for (const int input : line.inputs) {
                const auto told = numbers_.find(input);
                if (told == numbers_.end()) continue;
                of += (of.empty() ? "" : ", ") + std::to_string(told->second);
            }
            if (!of.empty()) formula += "   [" + of + "]";
        }
        return {{std::to_string(number), line.symbol, value_words(line.value, line.unit),
                 line.meaning, formula.empty() ? from_words(line) : formula,
                 formula.empty() ? "" : from_words(line)}};
    }

    std::size_t number(const Line& line) const { return numbers_.at(line.place); }

private:
    std::map<int, std::size_t> numbers_;
};

Table empty_table() {
    return {{{"", 1.2},
             {"Symbol", 3},
             {"Value", 3.4},
             {"What it is", 6},
             {"How it comes about [lines it reads]", 8},
             {"Where it stands", 3.6}},
            {},
            false,
            true};
}

void add(Table& table, Told& told, const answer::Working& working) {
    table.rows.push_back({{fmt::format("{}: {} = {}", working.name, working.title,
                                       value_words(working.value, working.unit))},
                          true});
    bool any = false;
    for (const Line& line : working.lines) {
        if (told.before(line)) continue;
        table.rows.push_back(told.row(line));
        any = true;
    }
    if (any) return;
    const std::string where = working.lines.empty()
                                  ? "as stated"
                                  : fmt::format("line {} above", told.number(working.lines.back()));
    table.rows.push_back({{"", "", "", where}});
}

}  // namespace

Blocks record_of_workings(const Subject& s) {
    Blocks blocks;
    for (const RunWorkings& run : s.workings) {
        blocks.push_back(Heading{"Workings of run " + run.run});
        blocks.push_back(Words{
            "Each line stands once, where it is first needed; numbers in brackets are the lines "
            "whose figures a formula reads, in the order of the formula.",
            {},
            false,
            true});
        Told told;
        Table table = empty_table();
        for (const answer::Working& working : run.all) add(table, told, working);
        blocks.push_back(std::move(table));
    }
    return blocks;
}

}  // namespace toft::paper
