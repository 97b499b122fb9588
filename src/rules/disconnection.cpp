#include "rules/disconnection.h"

#include "finding/judge.h"

namespace toft::rules {

using study::Stage;

const RuleInfo disconnection_rule{
    .name = "disconnection",
    .title =
        "an earth fault at the far end of the run clears in time on the system its armour is "
        "earthed to",
    .clause = "411.3.2.3, 411.3.2.4, 411.4.4, 411.5.3",
    .unit = "Ω",
    .sees = Sees::both,
    .needs = Stage::current,
    .graded = true,
    .adds = true,
    .longer = Trend::worse,
    .thicker = Trend::better,
    .larger = Trend::worse,
    .reads = "the supply's earthing, Ze, the house's electrode, the legs' lengths",
};

namespace {

/// The loop at the far end against what clears it, the electrode as it was read or taken.
template <class L>
Finding<L> loop_clears(L& ledger, const Case<L>& c) {
    const tables::Limits& limits = c.setting.catalogue->limits;
    const bool tt = c.setting.supply.system == site::Earthing::tt;
    const Cited<Seconds>& time = tt ? limits.disconnection_tt : limits.disconnection_tn;
    if (const auto residual = study::residual_at_head(c.scheme)) {
        const auto touch = ledger.table({"U.touch", "touch voltage allowed"}, limits.touch_voltage);
        const auto idn = ledger.stated({"IdN", "residual current rating of the RCD at the head"},
                                       residual->sensitivity, "scheme");
        const auto allowed =
            ledger.let({"Zs.rcd", "largest loop with that RCD", 0, "", "411.5.3"}, touch / idn);
        Finding<L> f = keeps_under(ledger, disconnection_rule, c.figures.zs_far, allowed);
        f.says = "the RCD at the head of the run clears it";
        if (!within(residual->longest.value.number(), time.value.number())) {
            f.verdict = Verdict::fails;
        }
        return f;
    }
    const auto allowed = study::largest_loop_for(ledger, c.setting, c.scheme, time.value);
    return keeps_under(ledger, disconnection_rule, c.figures.zs_far, allowed);
}

}  // namespace

template <class L>
Finding<L> disconnection(L& ledger, const Case<L>& c) {
    Finding<L> f = loop_clears(ledger, c);
    if (f.verdict == Verdict::fails || !lacks(c.setting, study::Unsaid::house_electrode)) return f;
    f.verdict = Verdict::not_known;
    f.says =
        "the fault returns through the house's electrode, which was not measured: measure it "
        "before anything is built on it";
    return f;
}

template Finding<Silent> disconnection(Silent&, const Case<Silent>&);
template Finding<Recording> disconnection(Recording&, const Case<Recording>&);

}  // namespace toft::rules
