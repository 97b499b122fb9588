#include "study/setting_parts.h"

namespace toft::study {

namespace {

using site::Earthing;

constexpr const char* electrode_pointer = "/intake/electrode_ohm";
constexpr const char* ze_pointer = "/intake/ze_ohm";
constexpr const char* zn_pointer = "/intake/line_neutral_loop_ohm";
constexpr const char* pscc_pointer = "/intake/pscc_ka";

template <class L>
void earth_loop(L& ledger, Settler& settler, Setting<L>& s) {
    const site::Intake& in = s.job->intake;
    SupplySetting<L>& out = s.supply;
    const Name most_name{"Ze", "external earth fault loop, the largest it may be", 0, "",
                         "411.4.4"};
    const Name least_name{"Ze.least", "external earth fault loop, the smallest it may be"};
    if (in.earthing == Earthing::tt && !in.ze.known) {
        const auto source = ledger.table({"R.source", "source electrode of the distributor"},
                                         s.catalogue->limits.declared_tt_source);
        out.ze_most = ledger.let(most_name, out.ra_most + source);
        out.ze_least = ledger.let(least_name, out.ra_least * 1.0);
        s.assumed.push_back(
            "the loop of the TT supply is taken from the house electrode and the "
            "declared source electrode; measure it");
        return;
    }
    const char* range = in.earthing == Earthing::tn_s ? "ze.tn-s" : "ze.tn-c-s";
    site::Fact<Ohms> ze = in.ze;
    const bool maximum = ze.known && ze.standing == site::Standing::declared;
    if (maximum || (!ze.known && in.ze_declared.known)) {
        // What an operator declares is the largest it may be, not what it is.
        if (!maximum) ze = in.ze_declared;
        ze.low = ohms(tables::find_open_range(*s.catalogue, range)->low.value);
        ze.standing = site::Standing::declared;
    }
    const auto settled =
        settler.settle(ze, {ze_pointer, "external earth fault loop impedance Ze", range});
    Bounds<Ohms> bounds = settled.bounds;
    const char* from = settled.from;
    if (in.ze.known && in.ze_declared.known && in.ze_declared.high > bounds.most) {
        bounds.most = in.ze_declared.high;
        from = "declared; the measured value is lower";
        s.assumed.push_back(
            "the declared Ze is worse than the measured one for clearing faults and is used "
            "there; the measured one serves for the largest fault");
    }
    out.ze_most = ledger.stated(most_name, bounds.most, from);
    out.ze_least = ledger.stated(least_name, bounds.least, settled.from);
}

/// The range for an unknown fault current: that of three phases is larger.
template <class L>
const char* pscc_range(const Setting<L>& s) {
    return s.job->intake.phases == 3 ? "pscc.three" : "pscc";
}

/// A line's own part of the line-neutral loop, by which a three-phase fault current is the larger.
template <class L>
ValueIn<L, double> line_share(L& ledger, const Setting<L>& s) {
    return ledger.table({"share.line", "a line's part of the line-neutral loop"},
                        s.catalogue->limits.line_share);
}

/// A declared fault current is the largest there may be: it bounds the loop from below only.
template <class L>
void no_less_than_declared(L& ledger, Setting<L>& s) {
    const site::Fact<Amperes>& pscc = s.job->intake.pscc;
    if (!pscc.known || pscc.standing != site::Standing::declared) return;
    const auto current = ledger.stated({"Ipf.declared", "declared fault current at the origin"},
                                       pscc.high, "declared");
    const Name name{"Zn.least.declared", "line-neutral loop at the declared fault current"};
    s.supply.zn_least =
        s.job->intake.phases == 3
            ? ledger.let(name,
                         least(s.supply.zn_least, s.supply.u0 / (current * line_share(ledger, s))))
            : ledger.let(name, least(s.supply.zn_least, s.supply.u0 / current));
}

/// Line-neutral loop: stated, else from the stated fault current, else (TN-C-S) the earth loop,
/// whose return is the same conductor up to the origin, else the rulebook's range.
template <class L>
void neutral_loop(L& ledger, Settler& settler, Setting<L>& s) {
    const site::Intake& in = s.job->intake;
    SupplySetting<L>& out = s.supply;
    const Name most_name{"Zn", "external line-neutral loop, the largest it may be"};
    const Name least_name{"Zn.least", "external line-neutral loop, the smallest it may be"};
    const bool declared = in.pscc.known && in.pscc.standing == site::Standing::declared;
    if (!in.line_neutral_loop.known && in.pscc.known && !declared) {
        const auto settled = settler.settle(
            in.pscc, {pscc_pointer, "prospective fault current at the origin", pscc_range(s)},
            1000);
        const auto low = ledger.stated({"Ipf.low", "fault current at the origin, smallest"},
                                       settled.bounds.least, settled.from);
        const auto high = ledger.stated({"Ipf.high", "fault current at the origin, largest"},
                                        settled.bounds.most, settled.from);
        if (in.phases == 3) {
            const auto share = line_share(ledger, s);
            out.zn_most = ledger.let(most_name, out.u0 / (low * share));
            out.zn_least = ledger.let(least_name, out.u0 / (high * share));
            return;
        }
        out.zn_most = ledger.let(most_name, out.u0 / low);
        out.zn_least = ledger.let(least_name, out.u0 / high);
        return;
    }
    if (!in.line_neutral_loop.known && in.earthing == Earthing::tn_c_s) {
        out.zn_most = ledger.let(most_name, out.ze_most * 1.0);
        out.zn_least = ledger.let(least_name, out.ze_least * 1.0);
        no_less_than_declared(ledger, s);
        s.assumed.push_back(
            "on TN-C-S the line-neutral loop at the origin is taken as equal to Ze");
        return;
    }
    const auto settled = settler.settle(
        in.line_neutral_loop, {zn_pointer, "line-neutral loop at the origin", "ln_loop.tt"});
    out.zn_most = ledger.stated(most_name, settled.bounds.most, settled.from);
    out.zn_least = ledger.stated(least_name, settled.bounds.least, settled.from);
    if (!in.line_neutral_loop.known) no_less_than_declared(ledger, s);
}

/// Impedance of one line, for faults between lines.
template <class L>
void line_alone(L& ledger, Setting<L>& s) {
    SupplySetting<L>& out = s.supply;
    if (s.phases == 1) return;
    const auto share = line_share(ledger, s);
    out.zl_most = ledger.let({"Zl", "external impedance of a line, the largest it may be"},
                             out.zn_most * share);
    out.zl_least = ledger.let({"Zl.least", "external impedance of a line, the smallest"},
                              out.zn_least * share);
}

/// The fault current that the survey states, as the run's device may meet it.
template <class L>
ValueIn<L, Amperes> stated_level(L& ledger, Settler& settler, const Setting<L>& s) {
    const site::Intake& in = s.job->intake;
    const auto settled = settler.settle(in.pscc.known ? in.pscc : in.pefc,
                                        {in.pscc.known ? pscc_pointer : "/intake/pefc_ka",
                                         "prospective fault current at the origin", pscc_range(s)},
                                        1000);
    const auto stated = ledger.stated({"Ipf.stated", "fault current at the origin"},
                                      settled.bounds.most, settled.from);
    if (!in.pscc.known || in.phases == 1 || s.phases == 3) return stated;
    return ledger.let({"Ipf.one", "its part between one line and neutral"},
                      stated * line_share(ledger, s));
}

template <class L>
void fault_level(L& ledger, Settler& settler, Setting<L>& s) {
    const site::Intake& in = s.job->intake;
    SupplySetting<L>& out = s.supply;
    const Name name{"Ipf", "largest fault current at the origin", 0, "", "434.1"};
    const auto from_lines = s.phases == 3
                                ? ledger.let({"Ipf.3", "three lines together, from the loop"},
                                             out.c_max * out.u0 / out.zl_least)
                                : ledger.let({"Ipf.n", "line to neutral, from the loop"},
                                             out.c_max * out.u0 / out.zn_least);
    const auto from_earth =
        ledger.let({"Ipf.e", "line to earth, from the loop"}, out.c_max * out.u0 / out.ze_least);
    if (!in.pscc.known && !in.pefc.known) {
        out.pscc = ledger.let(name, most(from_lines, from_earth));
        return;
    }
    const auto stated = stated_level(ledger, settler, s);
    out.pscc = ledger.let(name, most(stated, in.pscc.known ? from_earth : from_lines));
}

/// What the runs before this one leave stands in place of the supply at the house.
template <class L>
void behind_runs(L& ledger, const Incoming& in, Setting<L>& s) {
    SupplySetting<L>& out = s.supply;
    constexpr const char* from = "left by the runs before";
    out.system = in.system;
    out.island = in.island;
    out.ra_most =
        ledger.stated({"RA.before", "electrode that the board's earth hangs on"}, in.ra_most, from);
    out.ra_least = ledger.stated({"RA.before.least", "… the smallest"}, in.ra_least, from);
    out.ze_most = ledger.stated(
        {"Ze.board", "earth fault loop at the board it is fed from", 0, "", "411.4.4"},
        in.ze_working, from);
    out.ze_hot = ledger.stated({"Ze.board.hot", "… with the conductors hot"}, in.ze_hot, from);
    out.ze_least = ledger.stated({"Ze.board.least", "… the smallest"}, in.ze_least, from);
    out.zn_most = ledger.stated({"Zn.board.hot", "line-neutral loop at that board, conductors hot"},
                                in.zn_hot, from);
    out.zn_working = ledger.stated({"Zn.board", "… at working temperature"}, in.zn_working, from);
    out.zn_least = ledger.stated({"Zn.board.least", "… the smallest"}, in.zn_least, from);
    out.runs = ledger.stated({"R.before", "line and neutral of the runs before"}, in.runs, from);
    if (s.phases == 3) {
        out.zl_most = ledger.stated({"Zl.board", "impedance of a line there"}, in.zl_hot, from);
        out.zl_least = ledger.stated({"Zl.board.least", "… the smallest"}, in.zl_least, from);
    }
    const auto live =
        s.phases == 3 ? least(out.zl_least, out.zn_least) : least(out.zn_least, out.zn_least);
    out.pscc = ledger.let({"Ipf.board", "largest fault current at that board", 0, "", "434.1"},
                          out.c_max * out.u0 / least(live, out.ze_least));
}

}  // namespace

template <class L>
void prepare_supply(L& ledger, Settler& settler, Setting<L>& s, const Incoming* incoming) {
    const site::Intake& in = s.job->intake;
    const tables::Limits& limits = s.catalogue->limits;
    s.supply.system = in.earthing;
    s.supply.u0 = ledger.stated({"U0", "voltage to earth"}, in.u0, "survey");
    s.supply.c_min = ledger.table({"c.min", "voltage factor for the smallest fault"}, limits.c_min);
    s.supply.c_max = ledger.table({"c.max", "voltage factor for the largest fault"}, limits.c_max);
    const Name ra_name{"RA.house", "electrode of the house, the largest it may be"};
    if (in.earthing == Earthing::tt) {
        const auto ra =
            settler.settle(in.electrode.known ? in.electrode : in.ze,
                           {in.electrode.known || !in.ze.known ? electrode_pointer : ze_pointer,
                            "resistance of the house's electrode", "electrode.house"});
        s.supply.ra_most = ledger.stated(ra_name, ra.bounds.most, ra.from);
        s.supply.ra_least = ledger.stated(
            {"RA.house.least", "electrode of the house, the smallest"}, ra.bounds.least, ra.from);
        const bool read = in.electrode.known || in.ze.known;
        const bool hangs_on_it = !incoming || !incoming->island;
        if (!read && hangs_on_it && settler.leaves_open(electrode_pointer)) {
            s.unsaid.push_back({Unsaid::house_electrode, electrode_pointer});
        }
    } else {
        s.supply.ra_most = ledger.stated(ra_name, ohms(0), "not a TT supply");
        s.supply.ra_least = s.supply.ra_most;
    }
    earth_loop(ledger, settler, s);
    neutral_loop(ledger, settler, s);
    line_alone(ledger, s);
    fault_level(ledger, settler, s);
    s.supply.ze_hot = s.supply.ze_most;
    s.supply.zn_working = s.supply.zn_most;
    s.supply.zn_origin = s.supply.zn_most;
    if (incoming) behind_runs(ledger, *incoming, s);
}

template void prepare_supply(Silent&, Settler&, Setting<Silent>&, const Incoming*);
template void prepare_supply(Recording&, Settler&, Setting<Recording>&, const Incoming*);

}  // namespace toft::study
