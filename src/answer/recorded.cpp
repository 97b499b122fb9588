#include "answer/recorded.h"

#include "answer/design_parts.h"

#include <algorithm>

namespace toft::answer {

Recorded::Recorded(const Question& q, const study::RunScheme& scheme)
    : Worked(subject_of(q), scheme) {}

Recorded::Recorded(const Question& q, const study::Setting<Silent>& setting,
                   const study::RunScheme& scheme)
    : Worked(subject_of(q), setting, scheme) {}

std::vector<Line> Recorded::lines_of(const rules::Finding<Recording>& finding) const {
    return ledger().working(finding.use.expression);
}

std::vector<std::string> Recorded::names() const {
    std::vector<std::string> names;
    for (const auto& finding : findings()) {
        if (finding.limited) names.push_back(finding.rule->name);
    }
    for (const auto& figure : named()) names.push_back(figure.name);
    return names;
}

std::optional<Working> Recorded::working(const std::string& asked) const {
    // What the run provides as bonding is a line of the rule that asks for it.
    const std::string name = asked == "bond_equivalent_mm2" ? "bonding-size" : asked;
    for (const auto& finding : findings()) {
        if (name != finding.rule->name || !finding.limited) continue;
        return Working{name, finding.rule->title, finding.use.value, "of the limit",
                       lines_of(finding)};
    }
    for (const auto& figure : named()) {
        if (name != figure.name) continue;
        return Working{name, figure.title, figure.value, figure.unit,
                       ledger().working(figure.expression)};
    }
    return std::nullopt;
}

std::vector<const Citation*> Recorded::citations() const {
    std::vector<const Citation*> all;
    for (const Line& line : ledger().lines()) {
        if (line.citation && std::find(all.begin(), all.end(), line.citation) == all.end()) {
            all.push_back(line.citation);
        }
    }
    return all;
}

}  // namespace toft::answer
