#include "rules/fault_heat.h"

#include "finding/judge.h"

namespace toft::rules {

using study::Stage;

const RuleInfo fault_heat_rule{
    .name = "fault-heat",
    .title = "live cores, protective path and armour survive the smallest and the largest fault",
    .clause = "434.5.2, 543.1.3",
    .sees = Sees::both,
    .needs = Stage::heat,
    .graded = true,
    .adds = true,
    .longer = Trend::either,
    .thicker = Trend::either,
    .larger = Trend::either,
    .reads = "Ze, the line-neutral loop, the fault current at the origin, the legs' lengths",
};

template <class L>
Finding<L> fault_heat(L& ledger, const Case<L>& c) {
    return keeps_under(ledger, fault_heat_rule, c.figures.heat,
                       ledger.stated({"heat.max", "all that is withstood"}, 1.0, "by definition"));
}

template Finding<Silent> fault_heat(Silent&, const Case<Silent>&);
template Finding<Recording> fault_heat(Recording&, const Case<Recording>&);

}  // namespace toft::rules
