#include "rules/suitability.h"

#include "rules/judge.h"

namespace toft::rules {

const RuleInfo suitability_rule{
    .name = "suitability",
    .title =
        "the cable fits where it lies; in the ground it has an earthed covering or equal "
        "protection",
    .clause = "522.8.10, 543.1.1, Table 54.1",
    .unit = "mm²",
    .reads = "the legs' methods, depths and surfaces",
};

namespace {

bool rated(site::LegMethod method) {
    switch (method) {
        case site::LegMethod::in_conduit:
        case site::LegMethod::in_trunking:
        case site::LegMethod::above_ceiling:
        case site::LegMethod::overhead:
            return false;
        default:
            return true;
    }
}

template <class L>
bool too_shallow(const study::LegSetting<L>& leg) {
    return leg.advice && site::buried(leg.method) && leg.depth_least < leg.advice->depth.value;
}

/// Smallest separate conductor for where it lies: bare of a duct in the ground, on a wall, or
/// inside something that guards it.
template <class L>
const Cited<SquareMillimetres>& smallest_separate(const Case<L>& c) {
    const tables::Limits& limits = c.setting.catalogue->limits;
    bool guarded = true;
    for (const auto& leg : c.setting.legs) {
        if (leg.method == site::LegMethod::buried_direct) return limits.separate_buried;
        guarded = guarded && leg.method == site::LegMethod::buried_in_duct;
    }
    return guarded ? limits.separate_min_protected : limits.separate_min;
}

template <class L>
Finding<L> separate_finding(L& ledger, const Case<L>& c) {
    const auto least = ledger.table({"S.sep.min", "smallest separate conductor that may lie there"},
                                    smallest_separate(c));
    const auto own = ledger.stated({"S.sep", "section of the separate conductor"},
                                   c.scheme.separate->section, "scheme");
    return reaches(ledger, suitability_rule, own, least);
}

}  // namespace

template <class L>
Finding<L> suitability(L& ledger, const Case<L>& c) {
    Finding<L> f =
        plain_finding<L>(suitability_rule, Verdict::meets,
                         "the armour is the earthed covering; it is earthed at the house");
    if (c.scheme.separate) f = separate_finding(ledger, c);
    for (const auto& leg : c.setting.legs) {
        if (!rated(leg.method)) {
            f.verdict = Verdict::fails;
            f.says =
                "no rating is tabulated for armoured cable laid that way; choose another method";
        } else if (too_shallow(leg)) {
            f.verdict = heavier(f.verdict, Verdict::caution);
            if (f.verdict == Verdict::caution) {
                f.says = "shallower than is advised under that surface: lay it deeper or guard it";
            }
        }
    }
    return f;
}

template Finding<Silent> suitability(Silent&, const Case<Silent>&);
template Finding<Recording> suitability(Recording&, const Case<Recording>&);

}  // namespace toft::rules
