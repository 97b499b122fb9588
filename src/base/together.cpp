#include "base/together.h"

#include <algorithm>

namespace toft {

namespace {

/// A name that ends in a number: what stands before it, and the number.
struct Numbered {
    std::string before;
    long number = -1;  ///< none
};

Numbered numbered(const std::string& name) {
    const std::size_t last = name.find_last_not_of("0123456789");
    const std::size_t from = last == std::string::npos ? 0 : last + 1;
    const std::size_t digits = name.size() - from;
    if (digits == 0 || digits > 6 || name[from] == '0') return {name, -1};
    return {name.substr(0, from), std::stol(name.substr(from))};
}

/// How many names from `first` on are only numbered on.
std::size_t run_of(const std::vector<std::string>& names, std::size_t first) {
    const Numbered begin = numbered(names[first]);
    std::size_t count = 1;
    while (begin.number >= 0 && first + count < names.size()) {
        const Numbered next = numbered(names[first + count]);
        if (next.before != begin.before || next.number != begin.number + static_cast<long>(count)) {
            break;
        }
        ++count;
    }
    return count;
}

/// Names that differ in their number only behind the first of them, by number.
std::vector<std::string> gathered(const std::vector<std::string>& names) {
    std::vector<std::string> order;
    for (const std::string& name : names) {
        const Numbered own = numbered(name);
        auto at = order.end();
        for (auto i = order.begin(); own.number >= 0 && i != order.end(); ++i) {
            const Numbered other = numbered(*i);
            if (other.number < 0 || other.before != own.before) continue;
            at = other.number <= own.number ? i + 1 : i;
            if (other.number > own.number) break;
        }
        order.insert(at, name);
    }
    return order;
}

}  // namespace

std::string names_together(const std::vector<std::string>& as_they_come) {
    const std::vector<std::string> names = gathered(as_they_come);
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < names.size();) {
        const std::size_t count = run_of(names, i);
        if (count < 3) {
            parts.push_back(names[i]);
            ++i;
            continue;
        }
        const Numbered last = numbered(names[i + count - 1]);
        parts.push_back(names[i] + " to " + std::to_string(last.number));
        i += count;
    }
    std::string text;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        text += (i == 0 ? "" : i + 1 == parts.size() ? " and " : ", ") + parts[i];
    }
    return text;
}

void Told::add(const std::string& line, const std::string& building) {
    auto known = std::find_if(all_.begin(), all_.end(),
                              [&](const Line& other) { return other.says == line; });
    if (known == all_.end()) known = all_.insert(all_.end(), {line, {}});
    auto& names = known->buildings;
    if (std::find(names.begin(), names.end(), building) == names.end()) names.push_back(building);
}

std::vector<std::string> Told::lines(std::size_t of) const {
    std::vector<std::string> lines;
    for (const Line& line : all_) {
        const bool all = line.buildings.size() >= of;
        lines.push_back(all ? line.says : names_together(line.buildings) + ": " + line.says);
    }
    return lines;
}

}  // namespace toft
