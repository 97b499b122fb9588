#include "base/pi.h"
#include "base/text.h"
#include "groundwork/ground_parts.h"
#include "network/lost_neutral.h"
#include "network/ways_to_earth.h"
#include "shock/body.h"
#include "shock/electrode_heat.h"

#include <algorithm>
#include <cmath>

namespace toft::answer {

namespace {

using network::WayToEarth;

struct Ends {
    double low = 0, high = 0;

    void widen(double value) {
        low = std::min(low, value);
        high = std::max(high, value);
    }
};

/// One of the corners of what is not known.
struct At {
    double load_w = 0;
    OhmMetres rho{};
    Ohms house{}, electrode{};
    bool stiff = false;  ///< look at loads that keep their power too
};

/// Metal and electrode of one way at one load, over all that the survey leaves open.
struct Outcomes {
    Ends volts, amperes;
    double stiff = 0;  ///< volts, at most, were every load to keep its power
};

class LostNeutralCase {
public:
    explicit LostNeutralCase(const GroundCase& c, const YearAnswer& year)
        : c_(c), house_(house_earth(c)), year_(year) {
        const bool judged = c.setting.building.gap_judged;
        gap_ = judged ? c.setting.building.gap_least : c.setting.building.reach_least;
    }

    LostNeutralAnswer answer() const {
        LostNeutralAnswer out;
        out.applies = c_.question.job.intake.earthing == site::Earthing::tn_c_s;
        if (!out.applies) return out;
        const Ends load = load_w();
        out.load_w = load.high;
        out.phases = c_.question.job.intake.phases;
        out.earth_low_ohm = house_.low.number();
        out.earth_high_ohm = house_.high.number();
        out.earth_known_by = house_.from;
        for (const tables::TouchThreshold& t : c_.question.catalogue.shock.limits) {
            out.marks_v.push_back(t.limit.value.number());
        }
        for (const WayToEarth way :
             {WayToEarth::carried, WayToEarth::carried_and_added, WayToEarth::own}) {
            out.ways.push_back(way_answer(way, load));
        }
        return out;
    }

private:
    /// What is switched on: from a house at rest to all that would send current into the ground.
    Ends load_w() const {
        const tables::OpenRange& range =
            *tables::find_open_range(c_.question.catalogue, "house.load.now");
        const double most = c_.setting.building.returning.number() * c_.setting.supply.u0.number();
        return {std::min(range.low.value, most), most};
    }

    LostNeutralWayAnswer way_answer(WayToEarth way, const Ends& load) const {
        LostNeutralWayAnswer answer;
        answer.way = words(way);
        answer.says = consequence(way);
        const Outcomes now = over(way, load, true);
        answer.low_v = now.volts.low;
        answer.high_v = now.volts.high;
        answer.stiff_v = now.stiff;
        if (way == WayToEarth::carried_and_added) {
            answer.electrode_low_a = now.amperes.low;
            answer.electrode_high_a = now.amperes.high;
            heat(answer);
        }
        add_body(answer);
        const double most = std::max(10000.0, 1.25 * load.high);
        constexpr int points = 25;
        for (int i = 0; i < points; ++i) {
            const double w = most * i / (points - 1);
            const Outcomes at = over(way, {w, w});
            answer.over_load.push_back({w, at.volts.low, at.volts.high});
        }
        return answer;
    }

    static const char* words(WayToEarth way) {
        switch (way) {
            case WayToEarth::carried:
                return "carry the supply earth";
            case WayToEarth::carried_and_added:
                return "carry it and add an electrode";
            case WayToEarth::own:
                break;
        }
        return "own electrode";
    }

    static const char* consequence(WayToEarth way) {
        switch (way) {
            case WayToEarth::carried:
                return "all metal on the house's earth is lifted, here and at the house, for as "
                       "long as a load is on";
            case WayToEarth::carried_and_added:
                return "the electrode becomes a way home for the neutral's current, the "
                       "neighbours' too: the protective conductor carries it day and night";
            case WayToEarth::own:
                break;
        }
        return "the two earths meet only through the ground between them; residual current "
               "devices must then clear every earth fault here";
    }

    /// Over all corners of house's earth, electrode and soil.
    Outcomes over(WayToEarth way, const Ends& load, bool stiff = false) const {
        Outcomes out{{1e9, 0}, {1e9, 0}};
        const double balanced = c_.question.job.intake.phases == 3 ? 0.0 : load.low;
        for (const double w : {balanced, load.high}) {
            for (const OhmMetres rho : {study::smallest_in(c_.soil), study::largest_in(c_.soil)}) {
                for (const Ohms house : house_earths(rho, w)) {
                    for (const double ra : {year_.low_ohm, year_.high_ohm}) {
                        add(way, {w, rho, house, ohms(std::max(0.01, ra)), stiff}, out);
                    }
                }
            }
        }
        return out;
    }

    /// Both ends, and the one between them that lifts the ground at the electrode most.
    std::vector<Ohms> house_earths(OhmMetres rho, double load_w) const {
        std::vector<Ohms> earths{house_.low, house_.high};
        if (load_w > 0 && gap_ > Metres{}) {
            const double x = load_impedance(load_w) * gap_ / (rho / (2 * pi));
            const Ohms worst = load_impedance(load_w) / power(x, 2.0 / 3);
            earths.push_back(most(house_.low, least(house_.high, worst)));
        }
        return earths;
    }

    void add(WayToEarth way, const At& at, Outcomes& out) const {
        if (!(at.load_w > 0)) {
            out.volts.widen(0);
            out.amperes.widen(0);
            return;
        }
        const double k = share_reached(at.rho, at.house, gap_);
        const Ohms z = load_impedance(at.load_w);
        const Volts most = c_.setting.supply.u0 * c_.setting.supply.c_max;
        Silent silent;
        for (const Volts source : {c_.setting.supply.u0, most}) {
            const auto even =
                network::outbuilding_earth(silent, way, {at.house, at.electrode, k, z, source});
            out.volts.widen(even.metal.number());
            out.amperes.widen(even.electrode.number());
            if (!at.stiff) continue;
            // All earth paths together are what gives the impedance's rise of the house.
            const Ohms earth = z * (even.house / (source - even.house));
            const double more = constant_power(at.load_w, earth, source) / even.house;
            out.stiff = std::max(out.stiff, even.metal.number() * more);
        }
    }

    Ohms load_impedance(double load_w) const {
        const Volts u0 = c_.setting.supply.u0;
        return u0 / amperes(load_w / u0.number());
    }

    /// Rise of the house's terminal under a load that keeps its power; the bound where it cannot.
    Volts constant_power(double load_w, Ohms earth, Volts source) const {
        network::LostNeutral circuit;
        circuit.nominal = c_.setting.supply.u0;
        circuit.lines = network::single_phase(source);
        circuit.loads = {{network::LoadKind::constant_power, Watts{load_w}}};
        circuit.paths = {{"all", earth}};
        const auto solved = network::lost_neutral(circuit);
        if (!solved) return source;
        return solved->state == network::FloatingState::steady ? solved->magnitude : solved->bound;
    }

    void heat(LostNeutralWayAnswer& answer) const {
        const tables::ElectrodeHeat& heat = c_.question.catalogue.shock.heat;
        Silent silent;
        const auto rise = shock::steady_rise(
            silent, {"theta", ""}, heat, {study::smallest_in(c_.soil), heat.conductivity_low.value},
            volts(answer.high_v));
        answer.warmer_k = rise.rise.number();
        answer.dries = rise.heating == shock::Heating::dries;
    }

    void add_body(LostNeutralWayAnswer& answer) const {
        const tables::Shock& tables = c_.question.catalogue.shock;
        Silent silent;
        for (const tables::Condition& condition : tables.conditions) {
            const auto low = shock::body_current(silent, tables, condition, volts(answer.low_v));
            const auto high = shock::body_current(silent, tables, condition, volts(answer.high_v));
            answer.body.push_back(
                {condition.words, low.current.number() * 1000, high.current.number() * 1000});
        }
    }

    const GroundCase& c_;
    HouseEarth house_;
    YearAnswer year_;
    Metres gap_{};
};

}  // namespace

LostNeutralAnswer lost_neutral_answer(const GroundCase& c, const YearAnswer& year) {
    return LostNeutralCase(c, year).answer();
}

}  // namespace toft::answer
