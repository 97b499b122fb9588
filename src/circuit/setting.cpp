#include "circuit/setting.h"

#include "base/order.h"
#include "cable/harmonics.h"
#include "circuit/design.h"
#include "circuit/laying.h"

#include <fmt/format.h>

namespace toft::circuit {

namespace {

using site::CircuitKind;
using tables::Family;
using tables::Kind;

/// The family a circuit is wired in: stated, or what the trade fits indoors.
Family family_of(const site::Circuit& circuit) {
    if (circuit.cable) return *tables::family_of(circuit.cable->family);
    return circuit.phases == 3 ? Family::unarmoured_xlpe_copper : Family::flat_twin_and_earth;
}

/// What stands in the way of judging a circuit, or null.
const char* obstacle(const tables::Catalogue& catalogue, const site::Circuit& c, int board_phases) {
    if (c.kind == CircuitKind::sub_board) return "a board behind it is not judged here";
    if (c.phases > board_phases) return "the board has one phase";
    if (!c.length.known && !c.loop_length.known) return "its length is not stated";
    if (!c.load_w.known && !c.device && !tables::find_usual(catalogue.demand, site::word(c.kind)))
        return "neither its watts nor its device are stated";
    return nullptr;
}

/// How often its running current a circuit takes when it starts.
double start_of(const site::Circuit& c, const tables::CircuitKindRow& kind) {
    return c.starting_multiple.known ? c.starting_multiple.high : kind.start;
}

Duty duty_of(const site::Circuit& c, const tables::CircuitKindRow& kind) {
    if (c.kind == CircuitKind::solar || c.kind == CircuitKind::battery) return Duty::generates;
    return start_of(c, kind) > 1 && c.drive != site::Answer::yes ? Duty::starts : Duty::load;
}

/// What a circuit that is not judged may turn out to do; a board behind it may hold anything.
void note_duty(const tables::Catalogue& catalogue, const site::Circuit& c,
               std::array<bool, duties>& may_do) {
    const auto* kind = tables::find_circuit_kind(catalogue, site::word(c.kind));
    if (!kind) {
        may_do.fill(true);
        return;
    }
    may_do[static_cast<std::size_t>(duty_of(c, *kind))] = true;
}

template <class L>
class Preparer {
public:
    Preparer(L& ledger, const tables::Catalogue& catalogue, const site::Job& job,
             const site::Building& building, std::size_t place)
        : ledger_(ledger),
          catalogue_(catalogue),
          wishes_(job.wishes),
          ground_(job.ground),
          u0_(job.intake.u0),
          c_(building.circuits[place]),
          kind_(*tables::find_circuit_kind(catalogue, site::word(c_.kind))) {
        s_.facts = &c_;
        s_.place = place;
        s_.number = first_number + static_cast<int>(place);
        s_.phases = c_.phases;
        s_.ring = c_.kind == CircuitKind::socket_ring;
    }

    CircuitSetting<L> prepare() {
        laying();
        harmonics();
        current();
        ways();
        limits();
        options();
        return std::move(s_);
    }

private:
    template <class T>
    ValueIn<L, T> survey(const char* symbol, const char* meaning, const T& value,
                         const char* unit = "") {
        return ledger_.stated({symbol, meaning, s_.number, unit}, value, "survey");
    }

    /// What nobody states of the circuit's surroundings is read at the worse end of its range, as
    /// for a leg of the run.
    void laying() {
        const auto length = c_.length.known ? c_.length.high : c_.loop_length.high / 2.0;
        const cable::Surroundings around = surround(length);
        const cable::FactorTables tables{catalogue_.cable_constants,
                                         catalogue_.makes[static_cast<std::size_t>(family_of(c_))],
                                         catalogue_.limits.buried_cc};
        Silent silent;
        s_.factors = cable::leg_factors(ledger_, tables, around);
        s_.plain_factors = cable::leg_factors(silent, tables, around);
        if (!s_.ring) {
            s_.length = survey("L", "length of the circuit to its last point", length);
            return;
        }
        const auto round = survey("L.round", "length round the ring",
                                  c_.loop_length.known ? c_.loop_length.high : length * 2.0);
        s_.length =
            ledger_.let({"L", "length that both halves of the ring together amount to", s_.number},
                        round / 4.0);
    }

    cable::Surroundings surround(Metres length) {
        cable::Surroundings around;
        around.laying = laying_of(c_.method.value_or(site::LegMethod::clipped));
        around.leg = s_.number;
        const bool ground = tables::in_ground(around.laying);
        const Name name{"ta", "temperature around the circuit's cable", s_.number};
        if (ground && ground_.temperature.known) {
            s_.surroundings = ledger_.stated(name, ground_.temperature.high, "survey");
        } else {
            const Cited<double>& worse =
                worse_of(ground ? "ground_temperature" : "air_temperature");
            s_.surroundings =
                ledger_.table(name, Cited<Celsius>{celsius(worse.value), worse.citation});
        }
        around.temperature = plain(s_.surroundings);
        if (ground) {
            const auto& resistivity = ground_.thermal_resistivity;
            around.thermal_resistivity =
                resistivity.known ? resistivity.high : worse_of("thermal_resistivity").value;
            around.depth = metres(worse_of("depth").value);
        }
        if (around.laying == cable::Laying::insulated) around.in_insulation = length;
        return around;
    }

    /// The loader promises a range for every fact that may be left open.
    const Cited<double>& worse_of(const char* fact) const {
        return tables::find_open_range(catalogue_, fact)->high;
    }

    void harmonics() {
        const site::Fact<double>& third = c_.third_harmonic;
        s_.neutral.loaded = s_.phases == 3 && third.known && third.high > 0;
        if (!s_.neutral.loaded) return;
        const auto share = survey("h.3", "third harmonic of the line current", third.high, "%");
        s_.neutral.over_line =
            ledger_.let({"n.N", "current of the neutral over that of the line", s_.number},
                        share * 3.0 / 100.0);
        s_.neutral.leaves = cable::harmonic_factor(
            ledger_, catalogue_.cable_constants.harmonic,
            cable::ThirdHarmonics<L>{share, s_.neutral.over_line, s_.number});
    }

    /// Ib: from the load, else from its device, else what is usual of its kind.
    void current() {
        const Name name{"Ib", "design current of the circuit", s_.number, "", "433.1.1"};
        const double pf = c_.power_factor.known ? c_.power_factor.low : 1.0;
        s_.power_factor = survey("cos.phi", "power factor of the circuit's load", pf);
        ValueIn<L, Amperes> whole{};
        if (c_.load_w.known) {
            const auto s =
                survey("S", "apparent power of the circuit", apparent(Watts{c_.load_w.high}, pf));
            const auto u0 = survey("U0", "voltage of a line to neutral", u0_);
            whole = ledger_.let({"I.full", "current while it is at work", s_.number},
                                s_.phases == 1 ? s / u0 : s / (u0 * 3.0));
        } else {
            whole = nameplate();
        }
        if (c_.duty_percent.known) {
            const auto duty =
                survey("duty", "share of ten minutes at work", c_.duty_percent.high, "%");
            s_.ib = ledger_.let(name, whole * root(duty / 100.0));
        } else {
            s_.ib = ledger_.let(name, whole * 1.0);
        }
        if (!s_.ring) {
            s_.drop_current = whole;
            return;
        }
        const auto point = ledger_.table({"I.point", "taken at the far point of a ring", s_.number},
                                         catalogue_.limits.ring_point);
        s_.drop_current = ledger_.let(
            {"I.drop", "current that loses as much at the far point as the load along the ring",
             s_.number},
            (whole + least(whole, point)) / 2.0);
    }

    /// What a circuit without watts is taken to draw: the rating of its device, or the usual one.
    ValueIn<L, Amperes> nameplate() {
        if (c_.device) return survey("I.full", "rating of the circuit's device", c_.device->rating);
        return ledger_.table({"I.full", "what circuits of its kind are usually rated", s_.number},
                             tables::find_usual(catalogue_.demand, site::word(c_.kind))->rating);
    }

    void ways() {
        s_.duty = duty_of(c_, kind_);
        if (s_.duty == Duty::generates) {
            s_.rise_limit = ledger_.table({"rise.max", "voltage rise allowed", s_.number, "%"},
                                          catalogue_.limits.source_rise);
            return;
        }
        if (s_.duty != Duty::starts) return;
        s_.start = ledger_.let(
            {"I.start", "starting current", s_.number},
            s_.ib * survey("n.start", "starting over running current", start_of(c_, kind_)));
        s_.dip_wished = wishes_.start_dip.known;
        const Name dip{"dip.max", "voltage that a start may take", s_.number, "%"};
        s_.dip_limit = s_.dip_wished ? ledger_.stated(dip, wishes_.start_dip.low, "wish")
                                     : ledger_.table(dip, catalogue_.limits.start_dip);
    }

    void limits() {
        const tables::Limits& limits = catalogue_.limits;
        const bool lighting = c_.kind == CircuitKind::lighting;
        const site::Fact<double>& wish = lighting ? wishes_.drop_lighting : wishes_.drop_other;
        const Name drop{"drop.max", "voltage drop allowed to the last point", s_.number, "%",
                        "525"};
        s_.drop_limit =
            wish.known ? ledger_.stated(drop, wish.low, "wish")
                       : ledger_.table(drop, lighting ? limits.drop_lighting : limits.drop_other);
    }

    bool cable_fits(const tables::Cable& cable) const {
        if (cable.family != family_of(c_)) return false;
        if (cable.cpc <= square_millimetres(0)) return false;
        if (!cable.duty(s_.phases).drop_r.citation) return false;
        const int live = s_.phases == 3 ? 4 : 2;
        if (cable.family != Family::flat_twin_and_earth && cable.cores != live + 1) return false;
        if (c_.cable) {
            return cable.section == c_.cable->live &&
                   (!c_.cable->cpc || cable.cpc == *c_.cable->cpc);
        }
        return cable.section >= kind_.least &&
               (!s_.ring || cable.section >= catalogue_.limits.ring_section.value);
    }

    bool device_fits(const tables::Device& d) const {
        if (!c_.device) return d.kind == (s_.phases == 1 ? Kind::rcbo : Kind::breaker);
        return d.standard == c_.device->standard && d.rating == c_.device->rating &&
               (c_.device->curve.empty() || d.curve == c_.device->curve);
    }

    /// Devices worth a look, the gentlest first: by curve, then rating, then breaking capacity. The
    /// next ratings up are only for what has to start.
    std::vector<const tables::Device*> devices() const {
        std::vector<const tables::Device*> found;
        const Amperes from = most(plain(s_.ib), kind_.least_device);
        for (const char* curve : {"", "B", "C", "D"}) {
            std::size_t ratings = 0;
            Amperes last{};
            std::vector<const tables::Device*> of_curve;
            for (const tables::Device& d : catalogue_.devices) {
                if (d.curve != curve || !device_fits(d)) continue;
                if (!c_.device && d.rating < from) continue;
                of_curve.push_back(&d);
            }
            put_in_order(of_curve, [](const tables::Device* a, const tables::Device* b) {
                return std::make_pair(a->rating, a->breaking.value) <
                       std::make_pair(b->rating, b->breaking.value);
            });
            for (const tables::Device* d : of_curve) {
                if (d->rating != last) ++ratings;
                last = d->rating;
                if (ratings > (s_.duty == Duty::starts ? 3u : 1u)) break;
                found.push_back(d);
            }
        }
        return found;
    }

    void options() {
        const std::vector<const tables::Device*> fitting = devices();
        Silent silent;
        for (const tables::Cable& cable : catalogue_.cables) {
            if (!cable.offered || !cable_fits(cable)) continue;
            const Conductors<Silent> known = conductors(silent, plain_laid(cable));
            for (const tables::Device* device : fitting) {
                s_.options.push_back({&cable, device});
                s_.conductors.push_back(known);
            }
        }
    }

    Laid<Silent> plain_laid(const tables::Cable& cable) const {
        const Amperes each = plain(s_.drop_current) / (s_.ring ? 2.0 : 1.0);
        return {catalogue_,
                cable,
                s_.plain_factors,
                plain(s_.surroundings),
                plain(s_.length),
                each,
                s_.phases,
                s_.number,
                {s_.neutral.loaded, plain(s_.neutral.over_line), plain(s_.neutral.leaves)}};
    }

    L& ledger_;
    const tables::Catalogue& catalogue_;
    const site::Wishes& wishes_;
    const site::Ground& ground_;
    Volts u0_;
    const site::Circuit& c_;
    const tables::CircuitKindRow& kind_;
    CircuitSetting<L> s_;
};

}  // namespace

template <class L>
Laid<L> laid_for(L& ledger, const tables::Catalogue& catalogue, const CircuitSetting<L>& s,
                 const tables::Cable& cable) {
    const auto each = s.ring ? ledger.let({"I.half", "current of each half of the ring", s.number},
                                          s.drop_current / 2.0)
                             : s.drop_current;
    return {catalogue, cable,    s.factors, s.surroundings, s.length,
            each,      s.phases, s.number,  s.neutral};
}

template <class L>
Circuits<L> prepare(L& ledger, const tables::Catalogue& catalogue, const site::Job& job,
                    const site::Building& building, int board_phases) {
    Circuits<L> out;
    for (std::size_t i = 0; i < building.circuits.size(); ++i) {
        const site::Circuit& c = building.circuits[i];
        const char* why = obstacle(catalogue, c, board_phases);
        if (!why) {
            CircuitSetting<L> s = Preparer<L>(ledger, catalogue, job, building, i).prepare();
            if (!s.options.empty()) {
                out.judged.push_back(std::move(s));
                continue;
            }
            why = "no tabulated cable and device are what it states";
        }
        note_duty(catalogue, c, out.may_do);
        out.left_out.push_back(fmt::format("circuit {} is not judged: {}", c.name, why));
    }
    return out;
}

template Laid<Silent> laid_for(Silent&, const tables::Catalogue&, const CircuitSetting<Silent>&,
                               const tables::Cable&);
template Laid<Recording> laid_for(Recording&, const tables::Catalogue&,
                                  const CircuitSetting<Recording>&, const tables::Cable&);
template Circuits<Silent> prepare(Silent&, const tables::Catalogue&, const site::Job&,
                                  const site::Building&, int);
template Circuits<Recording> prepare(Recording&, const tables::Catalogue&, const site::Job&,
                                     const site::Building&, int);

}  // namespace toft::circuit
