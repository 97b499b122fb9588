#include "support/random_jobs.h"

#include "base/pi.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <random>

namespace toft::support {

namespace {

/// Draws that do not hang on a standard library's distributions.
class Dice {
public:
    explicit Dice(unsigned seed) : engine_(seed) {}

    std::size_t below(std::size_t count) { return engine_() % count; }
    bool once_in(std::size_t count) { return below(count) == 0; }
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(below(1001)) / 1000;
    }
    template <class E>
    E word() {
        return static_cast<E>(below(site::words<E>().size()));
    }
    site::Answer answer() { return static_cast<site::Answer>(below(3)); }

    /// Measured, bracketed or left out, about a third each; from `low` to `high`.
    site::Fact<double> number(double low, double high) {
        const double a = between(low, high);
        if (once_in(3)) return {};
        if (once_in(2)) return measured(a);
        return support::between(a, between(a, high));
    }
    template <class Q>
    site::Fact<Q> fact(double low, double high) {
        const auto n = number(low, high);
        return {n.known, Q(n.low), Q(n.high), n.standing};
    }
    site::Fact<double> whole(std::size_t low, std::size_t high) {
        if (once_in(4)) return {};
        return measured(static_cast<double>(low + below(high - low + 1)));
    }
    /// One of the sections of copper that are used for earthing and bonding.
    site::Fact<SquareMillimetres> section() {
        static constexpr double sections[] = {2.5, 4, 6, 10, 16, 25};
        if (once_in(4)) return {};
        return measured(square_millimetres(sections[below(6)]));
    }

private:
    std::mt19937 engine_;
};

/// The house's board, with ways for devices that are no longer fitted once in six.
site::HouseBoard board(Dice& dice) {
    site::HouseBoard b;
    b.spare_ways = dice.whole(0, 4);
    if (!dice.once_in(3)) b.max_device = measured(amperes(32 + 18.0 * double(dice.below(2))));
    if (!dice.once_in(3)) b.behind_rcd = measured(milliamperes(30.0 * double(dice.below(2))));
    if (dice.once_in(6)) b.takes = dice.once_in(2) ? "BS 3036" : "BS 1361";
    return b;
}

site::Intake intake(Dice& dice) {
    site::Intake in;
    if (dice.once_in(4)) in.phases = 3;
    in.earthing = dice.word<site::Earthing>();
    if (in.earthing == site::Earthing::tt) {
        in.electrode = dice.fact<Ohms>(5, 250);
    } else {
        in.ze = dice.fact<Ohms>(0.03, 0.8);
        if (dice.once_in(4)) in.ze_declared = measured(ohms(0.35));
    }
    if (dice.once_in(2)) in.line_neutral_loop = dice.fact<Ohms>(0.03, 0.8);
    if (dice.once_in(2)) in.pscc = dice.fact<Amperes>(300, 12000);
    if (!dice.once_in(4)) {
        const char* standard = dice.once_in(2) ? "BS 88-3" : "BS 1361";
        in.service_fuse =
            site::NamedDevice{standard, "", amperes(60 + 20.0 * double(dice.below(3)))};
    }
    static constexpr double neutrals[] = {16, 25, 35, 50, 70, 95};
    if (!dice.once_in(3)) in.supply_neutral = measured(square_millimetres(neutrals[dice.below(6)]));
    in.earthing_conductor = dice.section();
    in.main_bonding = dice.section();
    if (dice.once_in(2)) in.tails_length = dice.fact<Metres>(0.5, 5);
    in.board = board(dice);
    return in;
}

site::Circuit circuit(Dice& dice, const char* name, site::CircuitKind kind, int phases) {
    site::Circuit c;
    c.name = name;
    c.kind = kind;
    c.phases = phases;
    c.load_w = measured(dice.between(100, 4000 * phases));
    if (dice.once_in(2)) c.power_factor = measured(dice.between(0.7, 1));
    if (!dice.once_in(3)) c.length = dice.fact<Metres>(2, 40);
    return c;
}

/// One to six circuits of any kind, with what one may say of them.
std::vector<site::Circuit> any_circuits(Dice& dice, int phases) {
    std::vector<site::Circuit> all;
    for (std::size_t i = 1 + dice.below(6); i > 0; --i) {
        const auto kind = dice.word<site::CircuitKind>();
        site::Circuit c = circuit(dice, "any", kind, phases == 3 && dice.once_in(3) ? 3 : 1);
        c.later = dice.answer();
        c.continuous = dice.answer();
        c.duty_percent = dice.number(10, 100);
        if (dice.once_in(3)) c.third_harmonic = measured(dice.between(0, 50));
        all.push_back(c);
    }
    return all;
}

/// In amperes, in watts, or circuit by circuit.
void load(Dice& dice, bool three_phases, site::Building& b) {
    if (dice.once_in(3)) {
        b.circuits.push_back(circuit(dice, "lights", site::CircuitKind::lighting, 1));
    }
    if (dice.once_in(3)) {
        b.circuits.push_back(circuit(dice, "heater", site::CircuitKind::fixed_load, 1));
    }
    if (dice.once_in(4)) b.circuits.push_back(circuit(dice, "saw", site::CircuitKind::motor, 1));
    b.power_factor = measured(dice.between(0.7, 1));
    if (!three_phases) {
        b.load = measured(amperes(dice.between(2, 60)));
    } else if (dice.once_in(2)) {
        b.load_w = measured(dice.between(1000, 25000));
    } else {
        b.power_factor = {};
        b.circuits.push_back(circuit(dice, "lathe", site::CircuitKind::motor, 3));
        b.circuits.push_back(circuit(dice, "sockets", site::CircuitKind::socket_ring, 1));
        b.circuits.push_back(circuit(dice, "kiln", site::CircuitKind::kiln, 1));
    }
}

site::Building building(Dice& dice, bool three_phases) {
    site::Building b;
    b.id = "shed";
    if (!dice.once_in(6)) b.use = dice.word<site::Use>();
    if (!dice.once_in(6)) b.construction = dice.word<site::Construction>();
    b.stands_in_ground = dice.answer();
    b.metalwork_surveyed = !dice.once_in(5);
    for (std::size_t i = b.metalwork_surveyed ? dice.below(3) : 0; i > 0; --i) {
        site::Metalwork m;
        m.what = dice.word<site::Metal>();
        m.comes_from = dice.word<site::ComesFrom>();
        m.insulating_section = dice.answer();
        m.bonded_at_house = dice.answer();
        if (dice.once_in(4)) m.resistance_to_met = measured(ohms(dice.between(5000, 50000)));
        b.metalwork.push_back(m);
    }
    b.reach_of_house_earth = dice.fact<Metres>(0, 12);
    if (dice.once_in(2)) b.electrode.rods = measured(1.0 + double(dice.below(3)));
    if (dice.once_in(3)) b.electrode.length = measured(metres(dice.between(1.2, 3.6)));
    if (dice.once_in(4)) b.electrode.resistance = dice.fact<Ohms>(10, 2500);
    load(dice, three_phases, b);
    b.wet_floor = dice.answer();
    b.livestock = dice.answer();
    b.vehicle_outdoors = dice.answer();
    return b;
}

site::Leg leg(Dice& dice) {
    using site::LegMethod;
    static constexpr LegMethod methods[] = {LegMethod::clipped,       LegMethod::tray,
                                            LegMethod::buried_direct, LegMethod::buried_in_duct,
                                            LegMethod::in_insulation, LegMethod::free_air};
    site::Leg leg;
    leg.method = dice.once_in(6) ? dice.word<LegMethod>() : methods[dice.below(6)];
    const double length = dice.between(2, 60);
    leg.length = dice.once_in(3) ? between(metres(length), metres(length * dice.between(1, 1.5)))
                                 : measured(metres(length));
    leg.ambient = dice.fact<Celsius>(10, 40);
    leg.other_loaded_circuits = dice.whole(0, 3);
    leg.depth = dice.fact<Metres>(0.4, 1.1);
    if (dice.once_in(2)) leg.surface = dice.word<site::Surface>();
    leg.insulation_length = measured(metres(dice.between(0.05, 0.5)));
    leg.indoors = dice.answer();
    leg.concealed = dice.answer();
    leg.height = dice.fact<Metres>(3, 7);
    return leg;
}

site::Ground ground(Dice& dice) {
    site::Ground g;
    if (dice.once_in(2)) g.soil = "clay";
    g.resistivity = dice.fact<OhmMetres>(20, 3000);
    g.thermal_resistivity = dice.number(0.6, 3);
    g.temperature = dice.fact<Celsius>(5, 25);
    return g;
}

/// Whether a cable may be named for a run of so many phases: a core for each line and the neutral,
/// and one to protect where nothing else does.
bool serves(const tables::Cable& cable, int phases) {
    const int live = phases == 3 ? 4 : 2;
    if (cable.family == tables::Family::flat_twin_and_earth) return phases == 1;
    const bool armoured = tables::make_of(catalogue(), cable).armoured;
    return cable.cores == live + 1 || (armoured && cable.cores == live);
}

/// A cable of the tables for each leg: one all the way, or a change on the way.
void name_cables(Dice& dice, int phases, std::vector<site::Leg>& legs) {
    std::vector<const tables::Cable*> may;
    for (const tables::Cable& cable : catalogue().cables) {
        if (serves(cable, phases) && cable.section >= square_millimetres(4)) may.push_back(&cable);
    }
    for (site::Leg& leg : legs) {
        const tables::Cable& cable = *may[dice.below(may.size())];
        name_cable(leg, cable);
        leg.live = cable.section;
    }
    if (dice.once_in(3)) {
        for (site::Leg& leg : legs) {
            leg.family = legs.front().family;
            leg.cores = legs.front().cores;
            leg.live = legs.front().live;
        }
    }
}

/// One family or two, not all; the smallest core so that a few sizes are left.
void offer_families(Dice& dice, site::Wishes& wishes) {
    static constexpr double smallest[] = {6, 10, 16, 25, 35, 50};
    const auto armoured = static_cast<tables::Family>(dice.below(3));
    wishes.offer = {tables::family_word(armoured)};
    wishes.smallest_core = measured(square_millimetres(smallest[dice.below(6)]));
    if (dice.once_in(2)) return;
    const auto other = static_cast<tables::Family>(3 + dice.below(3));
    wishes.offer.push_back(tables::family_word(other));
}

/// Where the run is fed from and the standards offered there, few enough to try every device.
void choose_head(Dice& dice, site::Job& job) {
    using Words = std::vector<std::string>;
    site::Run& run = job.runs[0];
    Words& devices = job.wishes.devices;
    if (dice.once_in(2)) {
        run.fed_from = site::FedFrom::tails;
        devices = dice.once_in(2)   ? Words{"BS 88-3"}
                  : dice.once_in(2) ? Words{"BS 88-2"}
                                    : Words{"BS EN 60947-2"};
        return;
    }
    const std::string& takes = job.intake.board.takes;
    const bool new_board = dice.once_in(2);
    run.fed_from = new_board ? site::FedFrom::new_board : site::FedFrom::spare_way;
    const bool old = !new_board && !takes.empty();
    devices = {old ? takes : dice.once_in(2) ? "BS EN 60898" : "BS EN 61009"};
    if (old) return;
    static constexpr double ratings[] = {20, 32, 40, 50};
    run.device = site::NamedDevice{devices.front(), "", amperes(ratings[dice.below(4)])};
}

/// Wenner readings with the scatter of a field.
void read_pins(Dice& dice, site::Ground& g) {
    const double deep = dice.between(0.3, 3);
    const double rho = dice.between(20, 800);
    double spacing = dice.between(0.5, 2);
    for (std::size_t i = 2 + dice.below(4); i > 0; --i, spacing *= 2) {
        const double share = 1 / (1 + spacing / 4);
        const double apparent = rho * (share + (1 - share) * deep) * dice.between(0.95, 1.05);
        site::PinReading pin;
        pin.spacing = metres(spacing);
        pin.resistance = ohms(apparent / (2 * pi * spacing));
        g.pins.push_back(pin);
    }
}

void look_at(Dice& dice, site::Ground& g) {
    if (!dice.once_in(3)) g.read_when = dice.word<site::Season>();
    switch (dice.below(4)) {
        case 0:
            read_pins(dice, g);
            break;
        case 1:
            g.rods.push_back({metres(1.2), millimetres(14.2), ohms(dice.between(10, 600))});
            break;
        case 2:
            g.resistivity = {};
            g.layers = {{between(ohm_metres(dice.between(20, 200)), ohm_metres(400)),
                         metres(dice.between(0.4, 4))},
                        {measured(ohm_metres(dice.between(20, 2000))), std::nullopt}};
            break;
        default:
            break;
    }
}

site::Electrode any_electrode(Dice& dice) {
    using site::ElectrodeKind;
    site::Electrode e;
    e.kind = dice.word<ElectrodeKind>();
    if (e.kind == ElectrodeKind::rods) {
        e.rods = dice.whole(1, 4);
        if (dice.once_in(2)) e.length = measured(metres(dice.between(0.6, 5)));
        if (dice.once_in(2)) e.spacing = measured(metres(dice.between(0.5, 5)));
    } else {
        e.length = measured(metres(dice.between(0.5, 20)));
    }
    if (dice.once_in(2)) e.depth = measured(metres(dice.between(0.2, 1)));
    if (e.kind == ElectrodeKind::foundation) e.membrane = dice.answer();
    if (dice.once_in(4)) e.resistance = dice.fact<Ohms>(5, 1500);
    e.from_house_earth = dice.fact<Metres>(0.5, 40);
    return e;
}

}  // namespace

site::Job random_demand_job(unsigned seed) {
    site::Job job = random_job(seed);
    Dice dice(seed + 2);
    site::Building& shed = job.buildings[1];
    shed.load = {};
    shed.load_w = {};
    shed.power_factor = {};
    const int phases = job.runs[0].phases.value_or(1);
    shed.circuits = any_circuits(dice, phases);
    if (dice.once_in(3)) shed.future_load = measured(amperes(dice.between(0, 20)));
    if (dice.once_in(2)) job.buildings[0].circuits = any_circuits(dice, job.intake.phases);
    job.intake.demand = dice.fact<Amperes>(5, 90);
    job.intake.demand.standing = dice.word<site::Standing>();
    if (dice.once_in(3)) job.intake.agreed = measured(amperes(dice.between(20, 100)));
    if (dice.once_in(3)) job.intake.main_switch = measured(amperes(dice.between(40, 100)));
    job.intake.tails = dice.section();
    job.intake.looped = dice.answer();
    if (dice.once_in(2)) job.wishes.scenario = dice.word<site::Scenario>();
    return job;
}

site::Job random_job(unsigned seed) {
    Dice dice(seed);
    std::vector<site::Leg> legs;
    for (std::size_t i = 1 + dice.below(2); i > 0; --i) legs.push_back(leg(dice));
    site::Job job = job_with_legs(std::move(legs));
    job.title = "drawn at random";
    job.intake = intake(dice);
    job.ground = ground(dice);
    const bool three = job.intake.phases == 3 && !dice.once_in(3);
    if (job.intake.phases == 3) job.runs[0].phases = three ? 3 : 1;
    job.buildings[1] = building(dice, three);
    if (dice.once_in(3)) {
        name_cables(dice, three ? 3 : 1, job.runs[0].legs);
    } else {
        offer_families(dice, job.wishes);
    }
    choose_head(dice, job);
    job.wishes.prefer = dice.word<site::Prefer>();
    return job;
}

site::Job random_ground_job(unsigned seed) {
    site::Job job = random_job(seed);
    Dice dice(seed + 1);
    look_at(dice, job.ground);
    job.buildings[1].electrode = any_electrode(dice);
    job.intake.earth_without_neutral = dice.fact<Ohms>(0.5, 200);
    return job;
}

}  // namespace toft::support
