#include "rules/separation.h"

#include "rules/judge.h"

namespace toft::rules {

const RuleInfo separation_rule{
    .name = "separation",
    .title =
        "a building with its own electrode is out of touch with everything on the house's earth",
    .clause = "410.3.5, 542.1.3.3, 411.5",
    .unit = "m",
    .reads = "the building's metalwork and its distance to anything on the house's earth",
};

template <class L>
Finding<L> separation(L& ledger, const Case<L>& c) {
    if (c.scheme.earthing != study::BuildingEarthing::own_electrode) {
        return plain_finding<L>(separation_rule, Verdict::meets,
                                "one earth serves house and building");
    }
    const auto reach =
        ledger.table({"reach.min", "arm's reach"}, c.setting.catalogue->limits.reach);
    Finding<L> f = reaches(ledger, separation_rule, c.setting.building.reach_least, reach);
    if (f.verdict == Verdict::fails) {
        f.says = "something on the house's earth is, or may be, within arm's reach of the building";
    }
    if (c.setting.building.bridged) {
        f.verdict = Verdict::fails;
        f.says =
            "metal runs on between the house's earth and the building: fit an insulating section "
            "where it enters";
    }
    return f;
}

template Finding<Silent> separation(Silent&, const Case<Silent>&);
template Finding<Recording> separation(Recording&, const Case<Recording>&);

}  // namespace toft::rules
