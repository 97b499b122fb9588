#include "base/ledger.h"

#include <algorithm>

namespace toft {

Line Recording::start(const Name& name, std::string unit, double value) {
    Line line;
    line.symbol = name.symbol;
    if (*name.of) line.symbol += std::string(".") + name.of;
    if (name.part > 0) line.symbol += "." + std::to_string(name.part);
    line.meaning = name.meaning;
    line.value = value;
    line.unit = std::move(unit);
    return line;
}

Expression Recording::add(Line line) {
    Expression symbol{line.symbol, Binding::atom, {static_cast<int>(lines_.size())}};
    line.place = static_cast<int>(lines_.size());
    lines_.push_back(std::move(line));
    return symbol;
}

std::vector<Line> Recording::working(const Expression& expression) const {
    std::vector<int> wanted;
    std::vector<int> open = expression.inputs;
    while (!open.empty()) {
        const int id = open.back();
        open.pop_back();
        if (std::find(wanted.begin(), wanted.end(), id) != wanted.end()) continue;
        wanted.push_back(id);
        const Line& line = lines_[static_cast<std::size_t>(id)];
        open.insert(open.end(), line.inputs.begin(), line.inputs.end());
    }
    std::sort(wanted.begin(), wanted.end());
    std::vector<Line> lines;
    for (int id : wanted) lines.push_back(lines_[static_cast<std::size_t>(id)]);
    return lines;
}

}  // namespace toft
