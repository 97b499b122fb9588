#include "rules/bonding_size.h"

#include "rules/judge.h"
#include "rules/main_bonding.h"

namespace toft::rules {

const RuleInfo bonding_size_rule{
    .name = "bonding-size",
    .title =
        "where metalwork enters, one conductor of the run is a main bonding conductor of full size",
    .clause = "544.1.1, Table 54.8, 411.3.1.2",
    .unit = "mm²",
    .thicker = Trend::better,
    .reads =
        "the supply's earthing, its neutral, the house's earthing conductor, the building's "
        "metalwork",
};

namespace {

template <class L>
using Section = ValueIn<L, SquareMillimetres>;

/// Copper section of the best single conductor of the run. Armour counts by resistance: as much
/// copper as has its resistance per metre. Armour and core are never added up.
template <class L>
Section<L> provided(L& ledger, const Case<L>& c) {
    const study::RunScheme& s = c.scheme;
    Section<L> best =
        ledger.stated({"Sb.none", "no conductor yet"}, square_millimetres(0), "scheme");
    if (study::core_serves(s.protective)) {
        best = most(best, ledger.stated({"S.core", "section of the protective core"},
                                        s.cable->section, "scheme"));
    }
    if (study::separate_serves(s.protective)) {
        best = most(best, ledger.stated({"S.sep", "section of the separate conductor"},
                                        s.separate->section, "scheme"));
    }
    if (study::armour_serves(s.protective)) {
        const auto core = ledger.stated({"S", "section of a core"}, s.cable->section, "scheme");
        const auto r =
            ledger.table({"r20", "resistance of a core per metre at 20 °C"}, s.cable->r20);
        const auto armour = ledger.table(
            {"r.armour", "resistance of the armour per metre at 20 °C"}, s.cable->armour_r20);
        best = most(best, ledger.let({"S.armour", "copper that conducts as well as the armour"},
                                     core * r / armour));
    }
    return ledger.let({"Sb", "bonding conductor the run provides, as copper"}, best * 1.0);
}

}  // namespace

template <class L>
Finding<L> bonding_size(L& ledger, const Case<L>& c) {
    if (c.scheme.earthing == study::BuildingEarthing::own_electrode) {
        return plain_finding<L>(bonding_size_rule, Verdict::meets,
                                "bonded to the building's own electrode, not through the run");
    }
    if (!c.setting.building.extraneous) {
        return plain_finding<L>(bonding_size_rule, Verdict::meets,
                                "no metalwork brings in a potential: the run need not bond");
    }
    const bool combined = c.setting.supply.system == site::Earthing::tn_c_s;
    const auto need = combined ? bonding_for_combined(ledger, c)
                               : bonding_for_separate(ledger, c, c.setting.house.earthing_most);
    const auto have = provided(ledger, c);
    Finding<L> f = reaches(ledger, bonding_size_rule, have, need);
    if (c.setting.supply.system != site::Earthing::tn_s || f.verdict != Verdict::meets) return f;
    if (plain(have) < plain(bonding_for_combined(ledger, c))) {
        f.verdict = Verdict::caution;
        f.says =
            "many TN-S supplies are in fact combined along the way: the next larger bond would "
            "serve both";
    }
    return f;
}

template Finding<Silent> bonding_size(Silent&, const Case<Silent>&);
template Finding<Recording> bonding_size(Recording&, const Case<Recording>&);

}  // namespace toft::rules
