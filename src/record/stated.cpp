#include "record/stated.h"

#include "base/text.h"

#include <fmt/format.h>

namespace toft::paper {

namespace {

using site::Fact;

constexpr const char* open_words = "not stated";
constexpr const char* open_known = "taken at its worse end";

double bare(double x) { return x; }
template <class Q>
double bare(const Q& q) {
    return q.number();
}

struct Unit {
    const char* word = "";
    double per = 1;  ///< of it in the basic unit
};

constexpr Unit ohms_unit{"Ω", 1};
constexpr Unit amperes_unit{"A", 1};
constexpr Unit milliamperes_unit{"mA", 1e-3};
constexpr Unit kiloamperes_unit{"kA", 1e3};
constexpr Unit metres_unit{"m", 1};
constexpr Unit millimetres_unit{"mm", 1e-3};
constexpr Unit squares_unit{"mm²", 1};

std::string with_unit(const std::string& figure, const char* unit) {
    return *unit ? figure + " " + unit : figure;
}

class Listing {
public:
    explicit Listing(std::string about, bool read_by_meter = true) : by_meter_(read_by_meter) {
        group_.about = std::move(about);
    }

    /// Only where it is stated.
    template <class Q>
    void may(const char* name, const Fact<Q>& fact, Unit unit = {}) {
        if (!fact.known) return;
        const std::string low = significant(bare(fact.low) / unit.per, 4);
        const std::string high = significant(bare(fact.high) / unit.per, 4);
        say(name, with_unit(low == high ? low : low + " to " + high, unit.word),
            known_word(fact.standing));
    }

    /// Even where it is not.
    template <class Q>
    void must(const char* name, const Fact<Q>& fact, Unit unit = {}) {
        if (fact.known) {
            may(name, fact, unit);
        } else {
            say(name, open_words, open_known);
        }
    }

    void may(const char* name, site::Answer answer) {
        if (answer != site::Answer::unknown)
            say(name, answer == site::Answer::yes ? "yes" : "no", "stated");
    }

    void must(const char* name, site::Answer answer) {
        if (answer == site::Answer::unknown) {
            say(name, open_words, open_known);
        } else {
            may(name, answer);
        }
    }

    void say(const char* name, std::string value, std::string known = "stated") {
        group_.facts.push_back({name, std::move(value), std::move(known)});
    }

    FactGroup done() { return std::move(group_); }

private:
    /// A plain figure counts as measured; of what no meter reads that is saying too much.
    const char* known_word(site::Standing standing) const {
        if (!by_meter_ && standing == site::Standing::measured) return "stated";
        return site::standing_word(standing);
    }

    bool by_meter_ = true;
    FactGroup group_;
};

std::string named_device(const site::NamedDevice& device) {
    return fmt::format("{} {}{}{} A", device.standard, device.curve,
                       device.curve.empty() ? "" : " ", significant(device.rating.number(), 4));
}

FactGroup intake_facts(const site::Intake& in) {
    Listing list("The intake");
    list.say("earthing", site::word(in.earthing));
    list.say("phases", std::to_string(in.phases));
    list.say("line to neutral", significant(in.u0.number(), 4) + " V");
    list.must("external loop Ze", in.ze, ohms_unit);
    list.may("largest Ze the operator declares", in.ze_declared, ohms_unit);
    list.may("line-neutral loop", in.line_neutral_loop, ohms_unit);
    list.must("prospective fault current", in.pscc, kiloamperes_unit);
    list.may("prospective earth fault current", in.pefc, kiloamperes_unit);
    if (in.service_fuse) {
        list.say("operator's fuse", named_device(*in.service_fuse));
    } else {
        list.say("operator's fuse", open_words, open_known);
    }
    list.must("supply looped to a neighbour", in.looped);
    list.may("operator's neutral", in.supply_neutral, squares_unit);
    list.must("tails", in.tails, squares_unit);
    list.may("length of the tails", in.tails_length, metres_unit);
    list.must("earthing conductor", in.earthing_conductor, squares_unit);
    list.must("main bonding at the house", in.main_bonding, squares_unit);
    list.may("house's electrode", in.electrode, ohms_unit);
    list.may("house's earth without the neutral", in.earth_without_neutral, ohms_unit);
    list.must("spare ways of its board", in.board.spare_ways);
    list.may("largest device a way takes", in.board.max_device, amperes_unit);
    list.may("ways behind an RCD of", in.board.behind_rcd, milliamperes_unit);
    if (in.board.rcd_type) list.say("type of that RCD", site::word(*in.board.rcd_type));
    list.may("that RCD is delayed", in.board.rcd_delayed);
    if (!in.board.takes.empty()) list.say("its ways take", in.board.takes);
    list.may("the board breaks", in.board.breaking, kiloamperes_unit);
    list.may("isolator in the tails", in.isolator);
    list.may("main switch", in.main_switch, amperes_unit);
    list.may("demand agreed with the operator", in.agreed, amperes_unit);
    list.must("largest demand of the house today", in.demand, amperes_unit);
    return list.done();
}

FactGroup ground_facts(const site::Ground& ground) {
    Listing list("The ground");
    if (!ground.soil.empty()) list.say("soil", ground.soil);
    list.may("resistivity", ground.resistivity, {"Ω m", 1});
    if (!ground.layers.empty()) list.say("layers", std::to_string(ground.layers.size()));
    if (!ground.pins.empty())
        list.say("four-pin readings", std::to_string(ground.pins.size()), "measured");
    if (!ground.rods.empty())
        list.say("driven-rod readings", std::to_string(ground.rods.size()), "measured");
    if (ground.read_when) list.say("season of the readings", site::word(*ground.read_when));
    list.may("thermal resistivity", ground.thermal_resistivity, {"K m/W", 1});
    list.may("temperature", ground.temperature, {"°C", 1});
    return list.done();
}

void add_metal(Listing& list, const site::Metalwork& metal) {
    const std::string name = metal.material.empty()
                                 ? site::word(metal.what)
                                 : fmt::format("{} ({})", site::word(metal.what), metal.material);
    std::string says = "comes from " + site::word(metal.comes_from);
    if (metal.insulating_section == site::Answer::yes) says += ", with an insulating section";
    if (metal.bonded_at_house == site::Answer::yes) says += ", bonded at the house";
    list.say(name.c_str(), std::move(says));
    list.may("– from it to the house's earth", metal.resistance_to_met, ohms_unit);
    list.may("– its distance from the building", metal.distance, metres_unit);
}

void add_electrode(Listing& list, const site::Electrode& electrode) {
    if (!electrode.stated()) return;
    list.say("electrode", site::word(electrode.kind));
    list.may("– number of rods", electrode.rods);
    list.may("– length", electrode.length, metres_unit);
    list.may("– diameter", electrode.diameter, millimetres_unit);
    list.may("– depth", electrode.depth, metres_unit);
    list.may("– resistance", electrode.resistance, ohms_unit);
    list.may("– from metal on the house's earth", electrode.from_house_earth, metres_unit);
}

void add_circuit(Listing& list, const site::Circuit& circuit, std::size_t number) {
    const std::string name = fmt::format("circuit {}, {}", number, circuit.name);
    std::string says = site::word(circuit.kind);
    if (circuit.phases == 3) says += ", three phases";
    if (circuit.device) says += ", " + named_device(*circuit.device);
    list.say(name.c_str(), std::move(says));
    list.may("– load", circuit.load_w, {"W", 1});
    list.may("– power factor", circuit.power_factor);
    list.may("– length", circuit.length, metres_unit);
    list.may("– starting current over running", circuit.starting_multiple);
    list.may("– leakage", circuit.leakage, milliamperes_unit);
}

FactGroup building_facts(const site::Building& b) {
    Listing list(b.name.empty() ? b.id : b.name, false);
    if (b.use) list.say("use", site::word(*b.use));
    if (b.construction) list.say("construction", site::word(*b.construction));
    list.must("metal frame stands in the ground", b.stands_in_ground);
    if (b.metalwork.empty()) {
        list.say("metal that enters or stands near", b.metalwork_surveyed ? "none" : open_words,
                 b.metalwork_surveyed ? "stated" : open_known);
    }
    for (const site::Metalwork& metal : b.metalwork) add_metal(list, metal);
    list.may("nearest thing on the house's earth", b.reach_of_house_earth, metres_unit);
    add_electrode(list, b.electrode);
    list.may("load", b.load, amperes_unit);
    list.may("load", b.load_w, {"W", 1});
    list.may("power factor", b.power_factor);
    list.may("energy in a year", b.energy_kwh_year, {"kWh", 1});
    list.may("load in later years", b.future_load, amperes_unit);
    list.may("livestock", b.livestock);
    list.may("wet floor", b.wet_floor);
    list.may("people barefoot", b.barefoot);
    list.may("a vehicle charged outdoors", b.vehicle_outdoors);
    list.may("risk of fire that spreads", b.spread_of_fire_risk);
    for (const std::string& wrong : b.found) list.say("found wrong", wrong);
    for (std::size_t i = 0; i < b.circuits.size(); ++i) add_circuit(list, b.circuits[i], i + 1);
    return list.done();
}

void add_leg(Listing& list, const site::Leg& leg, std::size_t number) {
    const std::string name = fmt::format("leg {}", number);
    std::string says = site::word(leg.method);
    if (leg.surface) says += ", under " + site::word(*leg.surface);
    if (!leg.trench.empty()) says += ", in the trench " + leg.trench;
    list.say(name.c_str(), std::move(says));
    list.must("– length", leg.length, metres_unit);
    if (site::buried(leg.method)) list.must("– depth", leg.depth, metres_unit);
    list.may("– air around it", leg.ambient, {"°C", 1});
    list.may("– other loaded circuits beside it", leg.other_loaded_circuits);
    list.may("– inside thermal insulation", leg.insulation_length, metres_unit);
    list.may("– height over what it crosses", leg.height, metres_unit);
}

void add_existing(Listing& list, const site::Existing& e) {
    list.say("cable that lies there",
             fmt::format("{}-core {} mm² {}", e.cores, significant(e.live.number(), 4), e.family));
    list.say("– found", e.condition ? site::word(*e.condition) : open_words,
             e.condition ? "stated" : open_known);
    list.may("– insulation", e.insulation, {"MΩ", 1e6});
    list.may("– R1+R2", e.r1_r2, ohms_unit);
    list.may("– R1+Rn", e.r1_rn, ohms_unit);
    list.may("– Zs at its far end", e.zs, ohms_unit);
    list.may("– armour, end to end", e.armour, ohms_unit);
}

FactGroup run_facts(const site::Job& job, const site::Run& run) {
    const auto name = [&](const std::string& id) {
        const site::Building* building = site::find_building(job, id);
        return building && !building->name.empty() ? building->name : id;
    };
    Listing list(fmt::format("Run {}, {} to {}", run.id, name(run.from), name(run.to)));
    for (std::size_t i = 0; i < run.legs.size(); ++i) add_leg(list, run.legs[i], i + 1);
    if (run.fed_from) list.say("fed from", site::word(*run.fed_from));
    if (run.phases) list.say("phases", std::to_string(*run.phases));
    if (run.device) list.say("device at its head", named_device(*run.device));
    if (run.existing) add_existing(list, *run.existing);
    for (const std::string& wrong : run.found) list.say("found wrong", wrong);
    return list.done();
}

FactGroup wishes_of(const site::Wishes& wishes) {
    Listing list("Wishes", false);
    list.may("drop of the run", wishes.drop_run, {"%", 1});
    list.may("drop to a lamp", wishes.drop_lighting, {"%", 1});
    list.may("drop to other points", wishes.drop_other, {"%", 1});
    list.may("smallest core", wishes.smallest_core, squares_unit);
    list.say("preferred", site::word(wishes.prefer));
    if (wishes.scenario) list.say("load the runs are sized for", site::word(*wishes.scenario));
    for (const std::string& family : wishes.offer) list.say("cable offered", family);
    for (const std::string& standard : wishes.devices) list.say("devices offered", standard);
    return list.done();
}

}  // namespace

std::vector<FactGroup> facts_of(const site::Job& job) {
    std::vector<FactGroup> all{intake_facts(job.intake), ground_facts(job.ground)};
    for (const site::Building& building : job.buildings) {
        if (!building.origin) all.push_back(building_facts(building));
    }
    for (const site::Run& run : job.runs) all.push_back(run_facts(job, run));
    all.push_back(wishes_of(job.wishes));
    std::vector<FactGroup> told;
    for (FactGroup& group : all) {
        if (!group.facts.empty()) told.push_back(std::move(group));
    }
    return told;
}

}  // namespace toft::paper
