#pragma once
// Tolerances made up for looking at their picture; no figure here is a result.

#include "outlook/tolerances.h"
#include "terrain/looking.h"

namespace toft::swing {

using terrain::clashes_of;
using terrain::tells;

/// So many figures that swing one rule, each less than the one before, and one rule that holds in
/// two cases of three.
inline outlook::ToleranceAnswer made_up(std::size_t figures, const std::string& name = "length") {
    outlook::ToleranceAnswer a;
    a.scheme = "3-core 6 mm², core";
    tolerance::Tolerance& t = a.found;
    std::size_t drop = 0;
    while (std::string(rules::rulebook()[drop].info->name) != "voltage-drop") ++drop;
    t.tornado.likely.use[drop] = 0.7;
    t.tornado.likely.headroom = 0.3;
    for (std::size_t i = 0; i < figures; ++i) {
        tolerance::Varied v;
        v.says = name + " " + std::to_string(i + 1);
        v.unit = "m";
        v.low = 10;
        v.high = 20;
        t.varied.push_back(v);
        tolerance::Swing swing;
        swing.varied = i;
        swing.moved = drop;
        const double by = 0.5 / static_cast<double>(i + 1);
        swing.low.use[drop] = 0.7 - by;
        swing.high.use[drop] = 0.7 + by;
        swing.low.headroom = 0.3 + by;
        swing.high.headroom = 0.3 - by;
        t.tornado.swings.push_back(swing);
    }
    tolerance::RuleOver rule;
    rule.rule = rules::rulebook()[drop].info;
    rule.limited = true;
    rule.chance = {2.0 / 3, 0.004};
    t.rules.push_back(rule);
    t.robust = {2.0 / 3, 0.004};
    t.samples = 65536;
    return a;
}

}  // namespace toft::swing
