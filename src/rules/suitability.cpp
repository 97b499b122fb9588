#include "rules/suitability.h"

#include "finding/judge.h"

namespace toft::rules {

const RuleInfo suitability_rule{
    .name = "suitability",
    .title =
        "the cable fits where it lies; in the ground it has an earthed covering or equal "
        "protection",
    .clause = "522.3, 522.8.10, 522.11, 543.1.1, Table 54.1",
    .unit = "mm²",
    .reads = "the legs' methods, depths, heights and surfaces, whether they lie indoors",
};

namespace {

template <class L>
bool too_shallow(const study::LegSetting<L>& leg) {
    return leg.advice && site::buried(leg.method) && leg.depth_least < leg.advice->depth.value;
}

/// Nothing is known of what an overhead leg crosses, or it hangs lower than is advised over it.
template <class L>
bool too_low(const study::LegSetting<L>& leg) {
    if (leg.method != site::LegMethod::overhead) return false;
    return !leg.height_advice || leg.height_least < leg.height_advice->height.value;
}

bool enclosed(site::LegMethod method) {
    return method == site::LegMethod::in_conduit || method == site::LegMethod::in_trunking;
}

/// Why the cable may not lie there; empty when it may.
template <class L>
const char* objection(const study::LegSetting<L>& leg, const study::Stretch& laid) {
    const auto family = static_cast<std::size_t>(laid.cable->family);
    if (!laid.armoured() && site::buried(leg.method)) {
        return "a cable in the ground needs an earthed covering or equal protection: this one has "
               "none";
    }
    if (!leg.factors[family].method) {
        return "no rating is tabulated for this cable laid that way: choose another cable or "
               "method";
    }
    if (!laid.armoured() && !leg.indoors && !enclosed(leg.method)) {
        return "this sheath does not last in sun and wet: it belongs indoors or in conduit";
    }
    return "";
}

/// Smallest separate conductor for where it lies: bare of a duct in the ground, on a wall, or
/// inside something that guards it.
template <class L>
const Cited<SquareMillimetres>& smallest_separate(const Case<L>& c, std::size_t stretch) {
    const tables::Limits& limits = c.setting.catalogue->limits;
    bool guarded = true;
    for (const auto& leg : c.setting.legs) {
        if (leg.stretch != stretch) continue;
        if (leg.method == site::LegMethod::buried_direct) return limits.separate_buried;
        guarded =
            guarded && (leg.method == site::LegMethod::buried_in_duct || enclosed(leg.method));
    }
    return guarded ? limits.separate_min_protected : limits.separate_min;
}

/// The separate conductor that is closest to being too small, if there is any.
template <class L>
Finding<L> separate_finding(L& ledger, const Case<L>& c, Finding<L> f) {
    for (std::size_t i = 0; i < c.scheme.stretches; ++i) {
        const study::Stretch& s = c.scheme.stretch[i];
        if (!s.separate) continue;
        const int part = c.scheme.stretches == 1 ? 0 : static_cast<int>(i) + 1;
        const auto least =
            ledger.table({"S.sep.min", "smallest separate conductor that may lie there", part},
                         smallest_separate(c, i));
        const auto own = ledger.stated({"S.sep", "section of the separate conductor", part},
                                       s.separate->section, "scheme");
        const Finding<L> found = reaches(ledger, suitability_rule, own, least);
        if (!f.limited || plain(f.use) < plain(found.use)) f = found;
    }
    return f;
}

}  // namespace

template <class L>
Finding<L> suitability(L& ledger, const Case<L>& c) {
    Finding<L> f =
        plain_finding<L>(suitability_rule, Verdict::meets,
                         "every cable may lie where it does; armour is earthed at its near end");
    f = separate_finding(ledger, c, f);
    if (f.verdict != Verdict::fails && lacks(c.setting, study::Unsaid::depth)) {
        f = plain_finding<L>(suitability_rule, Verdict::not_known,
                             "how deep the cable lies is not stated, so nothing says that it lies "
                             "deep enough: settle it with whoever digs");
    }
    for (const auto& leg : c.setting.legs) {
        const char* against = objection(leg, c.scheme.stretch[leg.stretch]);
        if (*against) {
            f.verdict = Verdict::fails;
            f.says = against;
            return f;
        }
        if (f.verdict == Verdict::fails) continue;
        if (f.verdict == Verdict::not_known) continue;
        if (too_shallow(leg)) {
            f.verdict = Verdict::caution;
            f.says = "shallower than is advised under that surface: lay it deeper or guard it";
        } else if (too_low(leg)) {
            f.verdict = Verdict::caution;
            f.says =
                "hangs lower than is advised over what it crosses: raise it or take another way";
        }
    }
    return f;
}

template Finding<Silent> suitability(Silent&, const Case<Silent>&);
template Finding<Recording> suitability(Recording&, const Case<Recording>&);

}  // namespace toft::rules
