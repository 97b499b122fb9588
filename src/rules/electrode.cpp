#include "rules/electrode.h"

#include "finding/judge.h"

namespace toft::rules {

const RuleInfo electrode_rule{
    .name = "electrode",
    .title =
        "the electrode keeps metal below the touch voltage when a 30 mA RCD acts, and is low "
        "enough to last",
    .clause = "411.5.3, Table 41.5, 542.2.4",
    .unit = "Ω",
    .reads = "the electrode, the soil",
};

namespace {

constexpr const char* not_measured =
    "the house's electrode was not measured, and nothing else says what it reads: measure it "
    "before anything is built on it";

}  // namespace

template <class L>
Finding<L> electrode(L& ledger, const Case<L>& c) {
    if (c.scheme.earthing == study::BuildingEarthing::supply_earth) {
        return plain_finding<L>(electrode_rule, Verdict::meets, "the building has no electrode");
    }
    const bool own = c.scheme.earthing == study::BuildingEarthing::own_electrode;
    if (!own && lacks(c.setting, study::Unsaid::house_electrode)) {
        return plain_finding<L>(electrode_rule, Verdict::not_known, not_measured);
    }
    const tables::Limits& limits = c.setting.catalogue->limits;
    const auto ra = own ? c.setting.building.ra_most : c.setting.supply.ra_most;
    const auto touch = ledger.table({"U.touch", "touch voltage allowed"}, limits.touch_voltage);
    const auto idn = ledger.table({"IdN.board", "residual current rating at the building"},
                                  limits.residual_socket);
    const auto allowed =
        ledger.let({"RA.max", "largest electrode resistance", 0, "", "411.5.3"}, touch / idn);
    Finding<L> f = keeps_under(ledger, electrode_rule, ra, allowed);
    if (f.verdict == Verdict::meets && plain(ra) > limits.electrode_stable.value) {
        f.verdict = Verdict::caution;
        f.says =
            "above 200 Ω an electrode may not stay low through a dry summer: drive it deeper or "
            "add rods";
    }
    return f;
}

template Finding<Silent> electrode(Silent&, const Case<Silent>&);
template Finding<Recording> electrode(Recording&, const Case<Recording>&);

}  // namespace toft::rules
