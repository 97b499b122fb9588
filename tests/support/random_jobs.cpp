#include "support/random_jobs.h"

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

site::Intake intake(Dice& dice) {
    site::Intake in;
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
    in.board.spare_ways = dice.whole(0, 2);
    if (dice.once_in(2)) in.board.max_device = measured(amperes(32 + 18.0 * double(dice.below(2))));
    if (dice.once_in(3)) in.board.behind_rcd = measured(milliamperes(30));
    return in;
}

site::Building building(Dice& dice) {
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
    b.load = measured(amperes(dice.between(2, 60)));
    b.power_factor = measured(dice.between(0.7, 1));
    b.wet_floor = dice.answer();
    b.livestock = dice.answer();
    b.vehicle_outdoors = dice.answer();
    if (dice.once_in(3)) {
        site::Circuit lights;
        lights.name = "lights";
        lights.kind = site::CircuitKind::lighting;
        lights.load_w = measured(100.0);
        b.circuits.push_back(lights);
    }
    return b;
}

site::Leg leg(Dice& dice) {
    using site::LegMethod;
    static constexpr LegMethod methods[] = {LegMethod::clipped,       LegMethod::tray,
                                            LegMethod::buried_direct, LegMethod::buried_in_duct,
                                            LegMethod::in_insulation, LegMethod::free_air};
    site::Leg leg;
    leg.method = dice.once_in(25) ? LegMethod::overhead : methods[dice.below(6)];
    const double length = dice.between(2, 60);
    leg.length = dice.once_in(3) ? between(metres(length), metres(length * dice.between(1, 1.5)))
                                 : measured(metres(length));
    leg.ambient = dice.fact<Celsius>(10, 40);
    leg.other_loaded_circuits = dice.whole(0, 3);
    leg.depth = dice.fact<Metres>(0.4, 1.1);
    if (dice.once_in(2)) leg.surface = dice.word<site::Surface>();
    leg.insulation_length = measured(metres(dice.between(0.05, 0.5)));
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

}  // namespace

site::Job random_job(unsigned seed) {
    Dice dice(seed);
    std::vector<site::Leg> legs;
    for (std::size_t i = 1 + dice.below(2); i > 0; --i) legs.push_back(leg(dice));
    site::Job job = job_with_legs(std::move(legs));
    job.title = "drawn at random";
    job.intake = intake(dice);
    job.ground = ground(dice);
    job.buildings[1] = building(dice);
    static constexpr double smallest[] = {6, 10, 16, 25, 35, 50};
    job.wishes.smallest_core = measured(square_millimetres(smallest[dice.below(6)]));
    // A run from the tails has eight fuses to choose from, one from a board 36 breakers.
    if (job.wishes.smallest_core.low < square_millimetres(50) || dice.once_in(2)) {
        job.runs[0].fed_from = site::FedFrom::tails;
    } else if (dice.once_in(2)) {
        job.runs[0].fed_from = dice.word<site::FedFrom>();
    }
    job.wishes.prefer = dice.word<site::Prefer>();
    return job;
}

}  // namespace toft::support
