#include "rules/house_earthing.h"

#include "earthing/main_bonding.h"
#include "finding/judge.h"

namespace toft::rules {

const RuleInfo house_earthing_rule{
    .name = "house-earthing",
    .title = "the house's earthing conductor and main bonding are of the size its supply asks for",
    .clause = "542.3.1, 544.1.1, 132.16",
    .unit = "mm²",
    .reads = "the house's earthing conductor and main bonding, the supply's earthing and neutral",
};

template <class L>
Finding<L> house_earthing(L& ledger, const Case<L>& c) {
    const study::HouseSetting<L>& house = c.setting.house;
    if (c.scheme.earthing == study::BuildingEarthing::own_electrode) {
        return plain_finding<L>(house_earthing_rule, Verdict::meets,
                                "the house's earth is not extended into the building");
    }
    if (c.setting.supply.island) {
        return plain_finding<L>(house_earthing_rule, Verdict::meets,
                                "the earth there is a building's own electrode, not the house's");
    }
    const bool combined = c.setting.supply.system == site::Earthing::tn_c_s;
    const auto need = study::bonding_asked(ledger, c.setting);
    Finding<L> bonding = reaches(ledger, house_earthing_rule, house.bonding_least, need);
    if (bonding.verdict == Verdict::fails) {
        bonding.verdict = Verdict::caution;
        bonding.says =
            "the house's main bonding is, or may be, too small: look, and put it right first";
        bonding.remedy = "house bonding upgrade";
        return bonding;
    }
    if (!combined) return bonding;
    Finding<L> earthing = reaches(ledger, house_earthing_rule, house.earthing_least, need);
    if (earthing.verdict == Verdict::fails) {
        earthing.verdict = Verdict::caution;
        earthing.says =
            "the house's earthing conductor is, or may be, too small: look, and put it "
            "right first";
        earthing.remedy = "earthing conductor upgrade";
        return earthing;
    }
    return bonding;
}

template Finding<Silent> house_earthing(Silent&, const Case<Silent>&);
template Finding<Recording> house_earthing(Recording&, const Case<Recording>&);

}  // namespace toft::rules
