#include "study/soil.h"

#include "field/electrode_shape.h"
#include "field/field.h"
#include "soil/driven_rod.h"
#include "study/ground_memo.h"

namespace toft::study {

namespace {

constexpr const char* resistivity_pointer = "/ground/resistivity_ohm_m";

/// The range of the soil's word, or the widest of all soils.
site::Fact<OhmMetres> range_of_kind(const tables::Catalogue& catalogue, const std::string& soil) {
    site::Fact<OhmMetres> fact{true, ohm_metres(1e9), ohm_metres(0), site::Standing::assumed};
    for (const tables::Soil& row : catalogue.soils) {
        if (!soil.empty() && row.word != soil) continue;
        fact.low = least(fact.low, row.low.value);
        fact.high = most(fact.high, row.high.value);
    }
    return fact;
}

void by_resistivity(Settler& settler, const site::Fact<OhmMetres>& fact, SoilSetting& soil) {
    const auto rho =
        settler.settle(fact, {resistivity_pointer, "resistivity of the soil", "", "ohm m"});
    soil.from = rho.from;
    soil.worst = {even_soil(rho.bounds.most)};
    soil.best = {even_soil(rho.bounds.least)};
}

void by_layers(Settler& settler, const site::Ground& ground, SoilSetting& soil) {
    field::Strata worst;
    field::Strata best;
    for (std::size_t i = 0; i < ground.layers.size(); ++i) {
        const site::SoilLayer& layer = ground.layers[i];
        const auto rho = settler.settle(layer.resistivity,
                                        {fmt::format("/ground/layers/{}/resistivity_ohm_m", i),
                                         "resistivity of a layer of the soil", "", "ohm m"});
        if (layer.thickness) {
            worst.layers.push_back({rho.bounds.most, *layer.thickness});
            best.layers.push_back({rho.bounds.least, *layer.thickness});
        } else {
            worst.deepest = rho.bounds.most;
            best.deepest = rho.bounds.least;
        }
    }
    soil.from = "layers of the survey";
    soil.worst = {worst};
    soil.best = {best};
}

/// Calls `take` with the resistivity of every layer of the soils that count.
template <class Take>
void for_each_layer(const std::vector<field::Strata>& soils, bool identified, const Take& take) {
    for (const field::Strata& soil : soils) {
        for (const field::Stratum& layer : soil.layers) take(layer.resistivity);
        take(soil.deepest);
        if (identified) return;
    }
}

/// When the soil was read: wet is the worse answer, for then it will dry.
void settle_reading(Settler& settler, const site::Ground& ground, SoilSetting& soil) {
    site::Answer dry = site::Answer::unknown;
    if (ground.read_when) {
        dry = *ground.read_when == site::Season::dry ? site::Answer::yes : site::Answer::no;
    }
    soil.read_dry = settler.settle(
        dry, {"/ground/read_when", "the ground was read in its dry season", ""}, false);
}

/// soil::rod_over() for any number of layers.
Outcome<Ohms> in_any_layers(const field::Strata& soil, const soil::DrivenRod& rod) {
    auto field = field::solve_field(
        soil, {field::rod_wire({metres(0), metres(0), metres(0)}, rod.length, rod.diameter / 2)});
    if (!field) return failed(std::move(field.error()));
    return field->joined();
}

/// Soils held against a rod, or the range that a rod leaves of a soil known otherwise.
void hear_rod(const soil::DrivenRod& rod, const site::Fact<OhmMetres>& prior, ReadSoil& read) {
    if (!read.soils.empty()) {
        if (auto check = soil::held_against(read.soils, rod, in_any_layers)) {
            read.soils = std::move(check->soils);
            read.says.push_back(std::move(check->says));
        }
        return;
    }
    soil::Range<OhmMetres> before;
    before.low = prior.low;
    before.high = prior.high;
    if (auto update = soil::narrowed(before, rod)) {
        read.soils = {even_soil(update->range.high), even_soil(update->range.low)};
        read.says.push_back(std::move(update->says));
    }
}

}  // namespace

soil::SpacingReading reading_of(const site::PinReading& pin) {
    soil::SpacingReading reading;
    const bool wenner = pin.array == site::PinArray::wenner;
    reading.spread.array = wenner ? soil::PinArray::wenner : soil::PinArray::schlumberger;
    reading.spread.spacing = wenner ? pin.spacing : pin.spacing / 2;
    reading.spread.potential = pin.potential;
    reading.spread.depth = pin.pin_depth;
    reading.resistance = pin.resistance;
    return reading;
}

std::optional<ReadSoil> read_soil(const site::Ground& ground, const site::Fact<OhmMetres>& prior) {
    ReadSoil read;
    if (!ground.pins.empty()) {
        std::vector<soil::SpacingReading> readings;
        for (const site::PinReading& pin : ground.pins) readings.push_back(reading_of(pin));
        if (auto fit = soil::fit_soil(readings)) {
            read.soils = fit->plausible;
            if (read.soils.empty()) read.soils = {fit->best};
            read.fit = std::move(*fit);
        }
    }
    for (const site::RodReading& rod : ground.rods) {
        hear_rod({rod.length, rod.diameter, rod.resistance}, prior, read);
    }
    if (read.soils.empty()) return std::nullopt;
    return read;
}

const char* soil_word(SoilKnown known) {
    switch (known) {
        case SoilKnown::readings:
            return "readings";
        case SoilKnown::rods:
            return "driven rods";
        case SoilKnown::layers:
            return "stated layers";
        case SoilKnown::resistivity:
            return "stated resistivity";
        case SoilKnown::kind:
            return "kind of soil";
        case SoilKnown::nothing:
            break;
    }
    return "nothing";
}

field::Strata even_soil(OhmMetres resistivity) { return {{}, resistivity}; }

OhmMetres largest_in(const SoilSetting& soil) {
    OhmMetres found{};
    for_each_layer(soil.worst, soil.identified, [&](OhmMetres rho) { found = most(found, rho); });
    return found;
}

OhmMetres smallest_in(const SoilSetting& soil) {
    OhmMetres found = ohm_metres(1e9);
    for_each_layer(soil.best, soil.identified, [&](OhmMetres rho) { found = least(found, rho); });
    return found;
}

SoilSetting settle_soil(Settler& settler, const tables::Catalogue& catalogue,
                        const site::Ground& ground) {
    SoilSetting soil;
    const site::Fact<OhmMetres> prior =
        ground.resistivity.known ? ground.resistivity : range_of_kind(catalogue, ground.soil);
    std::optional<ReadSoil>& read = settler.memo().read;
    if (!read) read = read_soil(ground, prior);
    if (read) {
        soil.known = read->fit ? SoilKnown::readings : SoilKnown::rods;
        soil.from = read->fit ? "readings with four pins" : "readings of driven rods";
        soil.worst = soil.best = read->soils;
        if (!read->fit) {
            soil.worst.resize(1);
            soil.best.erase(soil.best.begin(), soil.best.end() - 1);
        }
        soil.whole_year = false;
        soil.identified = read->fit && read->fit->verdict != soil::Verdict::not_identifiable;
    } else if (!ground.layers.empty()) {
        soil.known = SoilKnown::layers;
        soil.whole_year = false;
        by_layers(settler, ground, soil);
    } else {
        soil.known = ground.resistivity.known ? SoilKnown::resistivity
                     : ground.soil.empty()    ? SoilKnown::nothing
                                              : SoilKnown::kind;
        by_resistivity(settler, prior, soil);
        // An assumed range is somebody's guess of the whole year; a figure was read on one day.
        soil.whole_year = prior.standing == site::Standing::assumed;
    }
    if (soil.whole_year) return soil;
    settle_reading(settler, ground, soil);
    return soil;
}

SoilSetting settle_season(Settler& settler, const site::Ground& ground,
                          const std::vector<field::Strata>& read) {
    SoilSetting soil;
    soil.worst = read;
    soil.best = read;
    soil.whole_year = false;
    settle_reading(settler, ground, soil);
    return soil;
}

}  // namespace toft::study
