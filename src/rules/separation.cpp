#include "rules/separation.h"

#include "finding/judge.h"

namespace toft::rules {

const RuleInfo separation_rule{
    .name = "separation",
    .title =
        "a building with its own electrode is out of touch with everything on the house's earth",
    .clause = "410.3.5, 542.1.3.3, 411.5",
    .unit = "m",
    .heavier = Trend::worse,  // a lost neutral lifts the house's earth further
    .reads =
        "the building's metalwork, its distance and that of its electrode to anything on the "
        "house's "
        "earth, the soil, what the house draws",
};

template <class L>
Finding<L> separation(L& ledger, const Case<L>& c) {
    if (c.scheme.earthing != study::BuildingEarthing::own_electrode) {
        return plain_finding<L>(separation_rule, Verdict::meets,
                                c.setting.house.at_house
                                    ? "one earth serves house and building"
                                    : "one earth serves the building and the board that feeds it");
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
    if (f.verdict != Verdict::meets || !c.setting.building.gap_judged) return f;
    Finding<L> far = reaches(ledger, separation_rule, c.setting.building.gap_least,
                             c.setting.building.gap_needed);
    if (far.verdict == Verdict::fails) {
        far.verdict = Verdict::caution;
        far.says =
            "if the supply loses its neutral the house's earth lifts the ground here too: set the "
            "electrode farther from buried metal on that earth, or find out how near it comes";
    }
    return far;
}

template Finding<Silent> separation(Silent&, const Case<Silent>&);
template Finding<Recording> separation(Recording&, const Case<Recording>&);

}  // namespace toft::rules
