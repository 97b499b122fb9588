#include "finals/circuits.h"

#include "finding/judge.h"

namespace toft::rules {

using circuit::Matter;
using study::Stage;

namespace {

/// What sets one of these rules apart.
struct OnCircuits {
    const char *name, *title, *clause, *unit, *reads;
    bool adds = false;
    Trend heavier = Trend::none;
};

/// A run may let another cable or device be chosen for the circuit: use may go either way with it.
constexpr RuleInfo on_circuits(const OnCircuits& own) {
    return {.name = own.name,
            .title = own.title,
            .clause = own.clause,
            .unit = own.unit,
            .needs = Stage::circuits,
            .adds = own.adds,
            .longer = Trend::either,
            .thicker = Trend::either,
            .heavier = own.heavier,
            .reads = own.reads};
}

}  // namespace

const RuleInfo circuit_rating_rule{
    .name = "circuit-rating",
    .title = "each circuit's device carries its load, and its cable the device",
    .clause = "433.1.1, 433.1.204",
    .unit = "A",
    .needs = Stage::circuits,
    .heavier = Trend::worse,
    .reads = "the circuits' loads, cables, devices and how they lie",
};

const RuleInfo circuit_breaking_rule = on_circuits(
    {.name = "circuit-breaking",
     .title = "each circuit's device can break the largest fault at the building's board",
     .clause = "434.5.1",
     .unit = "A",
     .reads = "the fault current at the origin, the legs' lengths, the circuits' devices"});

const RuleInfo circuit_drop_rule =
    on_circuits({.name = "circuit-drop",
                 .title = "run and circuit together leave enough voltage at the last point",
                 .clause = "525, Appendix 4 item 6",
                 .unit = "%",
                 .reads = "what the run loses, the circuits' loads and lengths, the wishes",
                 .adds = true,
                 .heavier = Trend::either});

const RuleInfo circuit_disconnection_rule =
    on_circuits({.name = "circuit-disconnection",
                 .title = "an earth fault at the last point of each circuit clears in time",
                 .clause = "411.3.2.2, 411.4.4, 411.5.3",
                 .unit = "Ω",
                 .reads = "Ze, the legs' lengths, the circuits' lengths and devices",
                 .adds = true});

const RuleInfo circuit_heat_rule = on_circuits(
    {.name = "circuit-heat",
     .title = "the conductors of each circuit survive the smallest and the largest fault",
     .clause = "434.5.2, 543.1.3",
     .unit = "",
     .reads = "the loops at the building's board, the circuits' lengths and devices"});

const RuleInfo motor_start_rule = on_circuits(
    {.name = "motor-start",
     .title = "motors start: their device holds, and enough voltage is left",
     .clause = "525.102, 552.1",
     .unit = "%",
     .reads = "the line-neutral loop, the legs' lengths, the starting currents, the wishes"});

const RuleInfo voltage_rise_rule = on_circuits(
    {.name = "voltage-rise",
     .title = "a source behind the run does not lift the voltage so far that it has to switch off",
     .clause = "551, ESQCR 27",
     .unit = "%",
     .reads = "the legs' lengths, the sources' power and the lengths of their circuits",
     .adds = true});

namespace {

template <class L>
struct Worst {
    const circuit::CircuitDesign<L>* design = nullptr;
    const circuit::Judged<L>* judged = nullptr;
};

/// The circuit that uses most of its limit in that matter.
template <class L>
void consider(const Case<L>& c, Matter matter, Worst<L>& worst) {
    for (const auto& design : c.figures.circuits) {
        const circuit::Judged<L>& j = design.at(matter);
        if (!j.applies) continue;
        if (worst.judged && plain(j.use) <= plain(worst.judged->use)) continue;
        worst = {&design, &j};
    }
}

template <class L>
Finding<L> finding_of(const RuleInfo& rule, const Worst<L>& worst) {
    if (!worst.judged) {
        return plain_finding<L>(rule, Verdict::meets, "no circuit is judged by it");
    }
    Finding<L> f;
    f.rule = &rule;
    f.limited = true;
    f.value = worst.judged->value;
    f.limit = worst.judged->limit;
    f.use = worst.judged->use;
    f.circuit = static_cast<int>(worst.design->place);
    f.verdict = within(plain(f.use), 1.0) ? Verdict::meets : Verdict::fails;
    return f;
}

template <class L>
Finding<L> on(const Case<L>& c, const RuleInfo& rule, Matter matter) {
    Worst<L> worst;
    consider(c, matter, worst);
    return finding_of(rule, worst);
}

/// A start or a source concerns nobody who has neither, nor a circuit that may turn out to be one.
template <class L>
Finding<L> on_duty(const Case<L>& c, Finding<L> f, circuit::Duty duty) {
    f.concerns = f.limited || c.setting.circuits.leaves_out(duty);
    return f;
}

/// Whether the building's earth is an electrode of the house that nobody measured.
template <class L>
bool hangs_on_electrode(const Case<L>& c) {
    return c.scheme.earthing != study::BuildingEarthing::own_electrode &&
           lacks(c.setting, study::Unsaid::house_electrode);
}

template <class L>
void caution(Finding<L>& f, const char* says) {
    f.verdict = Verdict::caution;
    f.says = says;
}

}  // namespace

template <class L>
Finding<L> circuit_rating(L&, const Case<L>& c) {
    Worst<L> worst;
    consider(c, Matter::carries, worst);
    consider(c, Matter::rating, worst);
    return finding_of(circuit_rating_rule, worst);
}

template <class L>
Finding<L> circuit_breaking(L&, const Case<L>& c) {
    return on(c, circuit_breaking_rule, Matter::breaking);
}

template <class L>
Finding<L> circuit_drop(L&, const Case<L>& c) {
    return on(c, circuit_drop_rule, Matter::drop);
}

template <class L>
Finding<L> circuit_disconnection(L&, const Case<L>& c) {
    Finding<L> f = on(c, circuit_disconnection_rule, Matter::disconnect);
    if (f.verdict != Verdict::fails && !c.figures.circuits.empty() && hangs_on_electrode(c)) {
        f.verdict = Verdict::not_known;
        f.says =
            "faults go back through the house's electrode, which was not measured: measure it "
            "before anything is built on it";
        return f;
    }
    if (!f.limited && !c.figures.circuits.empty()) {
        f.says =
            "the residual current device of each circuit clears it: faults go back through "
            "the ground";
        return f;
    }
    if (f.verdict == Verdict::fails) return f;
    for (const auto& design : c.figures.circuits) {
        if (!design.by_residual) continue;
        f.circuit = static_cast<int>(design.place);
        caution(f,
                "only the residual current device clears an earth fault there in time; the "
                "overcurrent device alone would not");
    }
    return f;
}

template <class L>
Finding<L> circuit_heat(L&, const Case<L>& c) {
    return on(c, circuit_heat_rule, Matter::heat);
}

template <class L>
Finding<L> motor_start(L&, const Case<L>& c) {
    Finding<L> f = on_duty(c, on(c, motor_start_rule, Matter::start_dip), circuit::Duty::starts);
    const Finding<L> trip = on(c, motor_start_rule, Matter::start_trip);
    const bool trips = trip.limited && trip.verdict == Verdict::fails;
    if (f.verdict == Verdict::fails && !c.setting.job->wishes.start_dip.known) {
        caution(f, trips
                       ? "the start takes so much voltage that lights dim and the motor may stall, "
                         "and a circuit's device may trip: a soft start, another curve, a thicker "
                         "run or a smaller motor"
                       : "the start takes so much voltage that lights dim and the motor may stall: "
                         "a soft start, a thicker run or a smaller motor");
    }
    if (trips && f.verdict == Verdict::meets) {
        f.circuit = trip.circuit;
        caution(f,
                "the circuit's device may trip when the motor starts: another curve or a soft "
                "start");
    }
    return f;
}

template <class L>
Finding<L> voltage_rise(L&, const Case<L>& c) {
    Finding<L> f = on_duty(c, on(c, voltage_rise_rule, Matter::rise), circuit::Duty::generates);
    if (f.verdict == Verdict::fails) {
        caution(f,
                "where the supply is already high the inverter will switch off in the sun: a "
                "thicker run, or ask the operator what the voltage reaches");
    }
    return f;
}

#define TOFT_BOTH_LEDGERS(rule)                                  \
    template Finding<Silent> rule(Silent&, const Case<Silent>&); \
    template Finding<Recording> rule(Recording&, const Case<Recording>&);
TOFT_BOTH_LEDGERS(circuit_rating)
TOFT_BOTH_LEDGERS(circuit_breaking)
TOFT_BOTH_LEDGERS(circuit_drop)
TOFT_BOTH_LEDGERS(circuit_disconnection)
TOFT_BOTH_LEDGERS(circuit_heat)
TOFT_BOTH_LEDGERS(motor_start)
TOFT_BOTH_LEDGERS(voltage_rise)
#undef TOFT_BOTH_LEDGERS

}  // namespace toft::rules
