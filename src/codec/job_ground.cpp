#include "codec/job_parts.h"

#include <fmt/format.h>

namespace toft::codec {

namespace {

constexpr Range distances{0.05, 1000};
constexpr Range resistances{0.0001, 1e6};

/// Faults a reading that stands behind one with a larger distance: most often a slip of the pen.
void check_order(Reader& in, const char* key, double distance, double& before) {
    if (distance < before) {
        in.fault("out-of-order", key,
                 fmt::format("{} is less than the {} of the reading before: list readings from the "
                             "nearest to the farthest",
                             distance, before));
    }
    before = distance;
}

void read_wenner(Reader& in, site::Ground& ground) {
    double before = 0;
    for (Reader& reading : in.objects("wenner", 200)) {
        site::PinReading pin;
        const auto spacing = reading.number("spacing_m", distances, true);
        const auto resistance = reading.number("resistance_ohm", resistances, true);
        const double depth = reading.number("pin_depth_m", {0, 5}).value_or(0);
        if (spacing && resistance) {
            check_order(reading, "spacing_m", *spacing, before);
            if (2 * depth >= *spacing) {
                reading.fault("contradiction", "pin_depth_m",
                              "pins driven half as deep as they stand apart are rods, not points: "
                              "widen the spacing or leave the reading out");
            }
            pin.spacing = metres(*spacing);
            pin.pin_depth = metres(depth);
            pin.resistance = ohms(*resistance);
            ground.pins.push_back(pin);
        }
        reading.finish();
    }
}

void read_schlumberger(Reader& in, site::Ground& ground) {
    double before = 0;
    for (Reader& reading : in.objects("schlumberger", 200)) {
        site::PinReading pin;
        pin.array = site::PinArray::schlumberger;
        const auto current = reading.number("current_pins_m", distances, true);
        const auto potential = reading.number("potential_pins_m", distances, true);
        const auto resistance = reading.number("resistance_ohm", resistances, true);
        if (current && potential && resistance) {
            check_order(reading, "current_pins_m", *current, before);
            if (*potential >= *current) {
                reading.fault("contradiction", "potential_pins_m",
                              "the potential pins stand between the current pins: their distance "
                              "is the smaller one");
            }
            pin.spacing = metres(*current);
            pin.potential = metres(*potential);
            pin.resistance = ohms(*resistance);
            ground.pins.push_back(pin);
        }
        reading.finish();
    }
}

void read_rods(Reader& in, site::Ground& ground) {
    for (Reader& reading : in.objects("driven_rod", 40)) {
        const auto length = reading.number("length_m", {0.3, 30}, true);
        const auto diameter = reading.number("diameter_mm", {5, 60}, true);
        const auto resistance = reading.number("resistance_ohm", {0.01, 1e6}, true);
        reading.finish();
        if (length && diameter && resistance) {
            ground.rods.push_back({metres(*length), millimetres(*diameter), ohms(*resistance)});
        }
    }
}

void read_layers(Reader& in, site::Ground& ground) {
    auto layers = in.objects("layers", 3);
    for (std::size_t i = 0; i < layers.size(); ++i) {
        Reader& layer = layers[i];
        site::SoilLayer stated;
        stated.resistivity = layer.fact<OhmMetres>("resistivity_ohm_m", {0.5, 50000});
        const auto thickness = layer.number("thickness_m", {0.05, 100});
        if (thickness) stated.thickness = metres(*thickness);
        const bool last = i + 1 == layers.size();
        if (!layer.has("resistivity_ohm_m")) {
            layer.fault("missing", "resistivity_ohm_m", "a layer needs its resistivity");
        }
        if (!last && !thickness) {
            layer.fault("missing", "thickness_m", "a layer over another needs its thickness");
        }
        if (last && thickness) {
            layer.fault("contradiction", "thickness_m",
                        "the deepest layer has no end: leave its thickness out, or add what lies "
                        "below");
        }
        layer.finish();
        ground.layers.push_back(stated);
    }
}

/// A fact that only one kind of electrode has.
template <class Fits>
void only_for(Reader& in, const char* key, const site::Electrode& e, const Fits& fits) {
    if (!in.has(key) || fits(e.kind)) return;
    in.fault("contradiction", key,
             fmt::format("{} says nothing of an electrode of kind {}", key, site::word(e.kind)));
}

void check_shape(Reader& in, const site::Electrode& e) {
    using site::ElectrodeKind;
    const auto rods = [](ElectrodeKind k) { return k == ElectrodeKind::rods; };
    for (const char* key : {"rods", "arrangement", "spacing_m"}) only_for(in, key, e, rods);
    const auto meshed = [](ElectrodeKind k) { return k == ElectrodeKind::mesh; };
    for (const char* key : {"meshes_along", "meshes_across"}) only_for(in, key, e, meshed);
    only_for(in, "membrane", e, [](ElectrodeKind k) { return k == ElectrodeKind::foundation; });
    only_for(in, "width_m", e, [](ElectrodeKind k) {
        return k == ElectrodeKind::plate || k == ElectrodeKind::mesh ||
               k == ElectrodeKind::foundation;
    });
    const Metres thickness = e.diameter.known ? e.diameter.high : millimetres(10);
    if (e.spacing.known && e.spacing.low <= thickness) {
        in.fault("contradiction", "spacing_m",
                 "rods that close touch: count them as one, or state how far apart they stand");
    }
    const double count = e.rods.known ? e.rods.low : 1;
    if (e.arrangement == site::Arrangement::triangle && count != 3) {
        in.fault("contradiction", "arrangement", "a triangle has three rods", "", {"line"});
    }
    if (e.arrangement == site::Arrangement::square && count != 4) {
        in.fault("contradiction", "arrangement", "a square here has four rods", "", {"line"});
    }
    if (!rods(e.kind) && !in.has("resistance_ohm") && !in.has("length_m")) {
        in.fault("missing", "length_m",
                 fmt::format("an electrode of kind {} needs its length, or its reading in "
                             "resistance_ohm",
                             site::word(e.kind)));
    }
}

void read_spikes(Reader& in, site::Electrode& electrode) {
    double before = 0;
    for (Reader& reading : in.objects("fall_of_potential", 100)) {
        const auto current = reading.number("current_m", distances, true);
        const auto potential = reading.number("potential_m", distances, true);
        const auto resistance = reading.number("resistance_ohm", {0.001, 1e6}, true);
        if (current && potential && resistance) {
            check_order(reading, "potential_m", *potential, before);
            if (*potential >= *current) {
                reading.fault("contradiction", "potential_m",
                              "the potential spike stands between the electrode and the current "
                              "spike: its distance is the smaller one");
            }
            if (!electrode.spikes.empty() && electrode.spikes.front().current != metres(*current)) {
                reading.fault("contradiction", "current_m",
                              "one test has one place of the current spike: leave readings with "
                              "another out");
            }
            electrode.spikes.push_back({metres(*current), metres(*potential), ohms(*resistance)});
        }
        reading.finish();
    }
}

}  // namespace

void read_ground(Reader& in, const tables::Catalogue& catalogue, site::Job& job) {
    std::vector<std::string> soils;
    for (const tables::Soil& soil : catalogue.soils) soils.push_back(soil.word);
    site::Ground& ground = job.ground;
    ground.soil = in.listed("soil", soils);
    ground.resistivity = in.fact<OhmMetres>("resistivity_ohm_m", {0.5, 50000});
    read_layers(in, ground);
    read_wenner(in, ground);
    read_schlumberger(in, ground);
    read_rods(in, ground);
    ground.read_when = in.word<site::Season>("read_when");
    if (ground.resistivity.known && !ground.layers.empty()) {
        in.fault("contradiction", "layers", "state resistivity_ohm_m or layers, not both");
    }
    if (!ground.layers.empty() && !ground.pins.empty()) {
        in.fault("contradiction", "layers",
                 "state layers or the readings they were found by, not both");
    }
    ground.thermal_resistivity = in.fact<double>("thermal_resistivity_k_m_per_w", {0.5, 3});
    ground.temperature = in.fact<Celsius>("temperature_c", {0, 40});
    in.finish();
}

site::Electrode read_electrode(Reader& in) {
    site::Electrode e;
    if (const auto kind = in.word<site::ElectrodeKind>("kind")) e.kind = *kind;
    e.rods = in.fact<double>("rods", {1, 10, true});
    if (const auto shape = in.word<site::Arrangement>("arrangement")) e.arrangement = *shape;
    e.spacing = in.fact<Metres>("spacing_m", {0.005, 100});
    e.length = in.fact<Metres>("length_m", {0.3, e.kind == site::ElectrodeKind::rods ? 30.0 : 200});
    e.width = in.fact<Metres>("width_m", {0.1, 200});
    e.diameter = in.fact<Metres>("diameter_mm", {3, 100}, 1e-3);
    e.depth = in.fact<Metres>("depth_m", {0, 10});
    const auto count = [&](const char* key) -> std::optional<int> {
        const auto n = in.number(key, {1, 10, true});
        if (!n) return std::nullopt;
        return static_cast<int>(*n);
    };
    e.meshes_along = count("meshes_along");
    e.meshes_across = count("meshes_across");
    e.membrane = in.answer("membrane");
    e.resistance = in.fact<Ohms>("resistance_ohm", {0.1, 100000});
    read_spikes(in, e);
    e.from_house_earth = in.fact<Metres>("from_house_earth_m", {0, 2000});
    in.place("at_m");
    check_shape(in, e);
    in.finish();
    return e;
}

}  // namespace toft::codec
