#include "rules/voltage_drop.h"

#include "finding/judge.h"

namespace toft::rules {

using study::Stage;

const RuleInfo voltage_drop_rule{
    .name = "voltage-drop",
    .title = "the run loses no more of the voltage than is set aside for it",
    .clause = "525, Appendix 4 item 6",
    .unit = "%",
    .needs = Stage::drop,
    .graded = true,
    .adds = true,
    .longer = Trend::worse,
    .thicker = Trend::better,
    .heavier = Trend::worse,
    .reads = "the legs' lengths and surroundings, the load, the power factor, the wishes",
};

template <class L>
Finding<L> voltage_drop(L& ledger, const Case<L>& c) {
    return keeps_under(ledger, voltage_drop_rule, c.figures.drop_path, c.setting.drop_limit);
}

template Finding<Silent> voltage_drop(Silent&, const Case<Silent>&);
template Finding<Recording> voltage_drop(Recording&, const Case<Recording>&);

}  // namespace toft::rules
