#include "rules/overload.h"

#include "finding/judge.h"

namespace toft::rules {

const RuleInfo overload_rule{
    .name = "overload",
    .title = "the device carries the design current of the run",
    .clause = "433.1.1 (i)",
    .unit = "A",
    .sees = Sees::head,
    .graded = true,
    .heavier = Trend::worse,
    .larger = Trend::better,
    .reads = "the building's load and the allowance for later",
};

template <class L>
Finding<L> overload(L& ledger, const Case<L>& c) {
    return keeps_under(
        ledger, overload_rule, c.setting.ib,
        ledger.stated({"In", "rating of the device"}, c.scheme.device->rating, "scheme"));
}

template Finding<Silent> overload(Silent&, const Case<Silent>&);
template Finding<Recording> overload(Recording&, const Case<Recording>&);

}  // namespace toft::rules
