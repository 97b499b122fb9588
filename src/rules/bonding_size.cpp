#include "rules/bonding_size.h"

#include "earthing/main_bonding.h"
#include "finding/judge.h"

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

/// Copper that conducts as well as something of that resistance per metre, judged against the
/// copper asked for: armour of no more resistance than that copper's counts as its section or more.
template <class L>
Section<L> as_copper(L& ledger, const Case<L>& c, const Section<L>& asked, const Name& name,
                     const ValueIn<L, OhmsPerMetre>& r) {
    const auto* copper = tables::find_conductor(*c.setting.catalogue, plain(asked));
    if (!copper) copper = &c.setting.catalogue->conductors.front();
    const auto section = ledger.stated({"S.cu", "section of the copper compared with", name.part},
                                       copper->section, "tables");
    const auto r_copper = ledger.table(
        {"r.cu", "resistance of that copper per metre at 20 °C", name.part}, copper->r20);
    return ledger.let(name, section * r_copper / r);
}

/// Copper section of the best single conductor of a stretch. Armour and core are never added up.
template <class L>
Section<L> provided(L& ledger, const Case<L>& c, const Section<L>& asked, std::size_t i) {
    const study::Stretch& s = c.scheme.stretch[i];
    const int part = c.scheme.stretches == 1 ? 0 : static_cast<int>(i) + 1;
    const bool copper =
        c.setting.catalogue->makes[static_cast<std::size_t>(s.cable->family)].metal ==
        tables::Metal::copper;
    Section<L> best =
        ledger.stated({"Sb.none", "no conductor yet", part}, square_millimetres(0), "scheme");
    if (study::core_serves(s.protective) && copper) {
        best = most(best, ledger.stated({"S.core", "section of the protective core", part},
                                        s.cable->cpc, "scheme"));
    }
    if (study::core_serves(s.protective) && !copper) {
        const auto r =
            ledger.table({"r.core", "resistance of the protective core", part}, s.cable->cpc_r20);
        best =
            most(best, as_copper(ledger, c, asked,
                                 {"S.core", "copper that conducts as well as the core", part}, r));
    }
    if (study::separate_serves(s.protective)) {
        best = most(best, ledger.stated({"S.sep", "section of the separate conductor", part},
                                        s.separate->section, "scheme"));
    }
    if (study::armour_serves(s.protective)) {
        const auto r = ledger.table(
            {"r.armour", "resistance of the armour per metre at 20 °C", part}, s.cable->armour_r20);
        best = most(best,
                    as_copper(ledger, c, asked,
                              {"S.armour", "copper that conducts as well as the armour", part}, r));
    }
    return best;
}

/// The run bonds as well as its weakest stretch.
template <class L>
Section<L> provided(L& ledger, const Case<L>& c, const Section<L>& asked) {
    Section<L> weakest = provided(ledger, c, asked, 0);
    for (std::size_t i = 1; i < c.scheme.stretches; ++i) {
        weakest = least(weakest, provided(ledger, c, asked, i));
    }
    return ledger.let({"Sb", "bonding conductor the run provides, as copper"}, weakest * 1.0);
}

}  // namespace

template <class L>
Finding<L> bonding_size(L& ledger, const Case<L>& c) {
    if (c.scheme.earthing == study::BuildingEarthing::own_electrode) {
        return plain_finding<L>(bonding_size_rule, Verdict::meets,
                                "bonded to the building's own electrode, not through the run");
    }
    if (!c.setting.building.extraneous && !c.setting.bonds_beyond) {
        return plain_finding<L>(bonding_size_rule, Verdict::meets,
                                "no metalwork brings in a potential: the run need not bond");
    }
    const auto need = study::bonding_asked(ledger, c.setting);
    const auto have = provided(ledger, c, need);
    Finding<L> f = reaches(ledger, bonding_size_rule, have, need);
    if (c.setting.supply.system != site::Earthing::tn_s || f.verdict != Verdict::meets) return f;
    if (plain(have) < plain(study::bonding_for_combined(ledger, c.setting))) {
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
