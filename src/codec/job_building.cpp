#include "codec/job_parts.h"

#include <algorithm>

namespace toft::codec {

namespace {

const std::vector<std::string> metals{"copper", "steel", "iron", "lead", "aluminium", "other"};
site::Metalwork read_metal(Reader& in) {
    site::Metalwork metal;
    if (const auto what = in.word<site::Metal>("what", true)) metal.what = *what;
    metal.material = in.listed("material", metals);
    if (const auto from = in.word<site::ComesFrom>("comes_from")) metal.comes_from = *from;
    metal.insulating_section = in.answer("insulating_section");
    metal.bonded_at_house = in.answer("bonded_at_house");
    metal.resistance_to_met = in.fact<Ohms>("resistance_to_met_kohm", {0, 1e6}, 1000);
    metal.distance = in.fact<Metres>("distance_m", {0, 1000});
    in.places("through_m");
    in.finish();
    return metal;
}

site::CircuitCable read_cable(Reader& in) {
    site::CircuitCable cable;
    cable.family = in.listed("family", offered_families(), true);
    cable.live = square_millimetres(in.number("live_mm2", {0.5, 400}, true).value_or(0));
    if (const auto cpc = in.number("cpc_mm2", {0.5, 400})) cable.cpc = square_millimetres(*cpc);
    in.finish();
    return cable;
}

/// What a load does besides taking current.
void read_ways(Reader& in, site::Circuit& circuit) {
    circuit.continuous = in.answer("continuous");
    circuit.starting_multiple = in.fact<double>("starting_multiple", {1, 15});
    circuit.starts_per_hour = in.fact<double>("starts_per_hour", {0, 1000});
    circuit.duty_percent = in.fact<double>("duty_percent", {1, 100});
    circuit.drive = in.answer("drive");
    circuit.leakage = in.fact<Amperes>("leakage_ma", {0, 500}, 1e-3);
    circuit.third_harmonic = in.fact<double>("third_harmonic_percent", {0, 100});
    circuit.later = in.answer("later");
    circuit.keeps_supply = in.word<site::KeepsSupply>("keeps_supply");
}

site::Circuit read_circuit(Reader& in) {
    site::Circuit circuit;
    circuit.name = in.text("name", true);
    if (const auto kind = in.word<site::CircuitKind>("kind", true)) circuit.kind = *kind;
    circuit.load_w = in.fact<double>("load_w", {0, 1e5});
    circuit.power_factor = in.fact<double>("power_factor", {0.1, 1});
    circuit.length = in.fact<Metres>("length_m", {0.1, 1000});
    circuit.loop_length = in.fact<Metres>("loop_length_m", {0.1, 1000});
    circuit.device = read_device(in, "device");
    if (const auto phases = read_phases(in)) circuit.phases = *phases;
    circuit.method = in.word<site::LegMethod>("method");
    read_ways(in, circuit);
    if (auto cable = in.object("cable")) circuit.cable = read_cable(*cable);
    in.finish();
    return circuit;
}

void read_load(Reader& in, site::Building& b) {
    b.load = in.fact<Amperes>("load_a", {0.1, 400});
    b.load_w = in.fact<double>("load_w", {1, 1e5});
    b.power_factor = in.fact<double>("power_factor", {0.1, 1});
    b.energy_kwh_year = in.fact<double>("energy_kwh_year", {0, 1e6});
    b.future_load = in.fact<Amperes>("future_load_a", {0, 400});
    b.spare_ways = in.fact<double>("spare_ways", {0, 40, true});
    if (b.load.known && b.load_w.known) {
        in.fault("contradiction", "load_w", "state load_a or load_w, not both");
    }
}

void read_place(Reader& in, site::Building& b) {
    b.origin = in.listed("at", {"origin"}) == "origin";
    b.use = in.word<site::Use>("use");
    b.construction = in.word<site::Construction>("construction");
    b.stands_in_ground = in.answer("stands_in_ground");
    b.reach_of_house_earth = in.fact<Metres>("reach_of_house_earth_m", {0, 1000});
    b.livestock = in.answer("livestock");
    b.wet_floor = in.answer("wet_floor");
    b.barefoot = in.answer("barefoot");
    b.vehicle_outdoors = in.answer("vehicle_outdoors");
    b.spread_of_fire_risk = in.answer("spread_of_fire_risk");
}

site::Building read_building(Reader& in, const tables::Catalogue& catalogue) {
    site::Building b;
    b.id = in.text("id", true);
    b.name = in.text("name");
    read_place(in, b);
    if (const auto at = in.place("at_m")) {
        b.at_x_m = at->east;
        b.at_y_m = at->north;
    }
    b.metalwork_surveyed = in.has("metalwork");
    for (Reader& metal : in.objects("metalwork", 50)) b.metalwork.push_back(read_metal(metal));
    if (auto electrode = in.object("electrode")) b.electrode = read_electrode(*electrode);
    for (Reader& circuit : in.objects("circuits", 100)) {
        b.circuits.push_back(read_circuit(circuit));
    }
    read_load(in, b);
    b.found = in.list_of("found", tables::found_words(catalogue.found, {"house", "building"}));
    in.finish();
    return b;
}

/// A supply that is kept where nothing here looks at it.
void say_what_keeps_unseen(const site::Building& b, site::Job& job) {
    for (const site::Circuit& c : b.circuits) {
        if (c.keeps_supply.value_or(site::KeepsSupply::nothing) == site::KeepsSupply::nothing) {
            continue;
        }
        if (c.kind != site::CircuitKind::battery && c.kind != site::CircuitKind::solar) {
            job.unused.push_back(fmt::format(
                "circuit {}: only solar and batteries keep a supply; keeps_supply is not used",
                c.name));
        } else if (b.origin) {
            job.unused.push_back(fmt::format(
                "circuit {} keeps a supply at the house: faults and drop on the run while the "
                "mains is off are not judged",
                c.name));
        }
    }
}

/// What can be found wrong at a house and not at an outbuilding, or the other way round.
void say_what_is_found_elsewhere(const site::Building& b, const tables::Catalogue& catalogue,
                                 site::Job& job) {
    const auto here = tables::found_words(catalogue.found, {b.origin ? "house" : "building"});
    for (const std::string& word : b.found) {
        if (std::find(here.begin(), here.end(), word) != here.end()) continue;
        job.unused.push_back(fmt::format("{}: \"{}\" says nothing of {}", b.id, word,
                                         b.origin ? "a house" : "an outbuilding"));
    }
}

}  // namespace

void read_buildings(Reader& in, const tables::Catalogue& catalogue, site::Job& job) {
    for (Reader& building : in.objects("buildings", 200)) {
        job.buildings.push_back(read_building(building, catalogue));
        say_what_keeps_unseen(job.buildings.back(), job);
        const site::Building& read = job.buildings.back();
        if (read.origin && read.energy_kwh_year.known) {
            job.unused.push_back("energy_kwh_year of the house is not used: only what runs lose");
        }
        say_what_is_found_elsewhere(job.buildings.back(), catalogue, job);
    }
}

}  // namespace toft::codec
