#include "study/electrode.h"

#include "base/pi.h"
#include "base/text.h"
#include "field/electrode_shape.h"
#include "field/field.h"
#include "field/season.h"
#include "study/setting_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace toft::study {

namespace {

using site::Arrangement;
using site::ElectrodeKind;

constexpr int sides_of_ring = 24;
constexpr int plate_strips = 12;
const field::Cutting fine{metres(0.4), 6};

field::Spot spot(double east, double north, Metres depth) {
    return {metres(east), metres(north), depth};
}

double smallest(const site::Fact<Metres>& fact, double otherwise) {
    return fact.known ? fact.low.number() : otherwise;
}

void stand_rods(const site::Electrode& e, const tables::Limits& usual, BuiltElectrode& b) {
    b.usual = !e.length.known && !e.rods.known;
    b.count = e.rods.known ? e.rods.low : 1;
    b.length = e.length.known ? e.length.low : usual.rod_length.value;
    b.diameter = e.diameter.known ? e.diameter.low : usual.rod_diameter.value;
    b.spacing = e.spacing.known ? e.spacing.low : b.length;
    const Metres top = e.depth.known ? e.depth.low : metres(0);
    const double s = b.spacing.number();
    for (int i = 0; i < static_cast<int>(b.count); ++i) {
        field::Spot at = spot(i * s, 0, top);
        if (e.arrangement == Arrangement::triangle && i == 2) {
            at = spot(s / 2, s * std::sqrt(0.75), top);
        } else if (e.arrangement == Arrangement::square) {
            at = spot(i % 2 * s, i / 2 * s, top);
        }
        b.wires.push_back(field::rod_wire(at, b.length, b.diameter / 2));
    }
}

/// A plate as strips side by side; a strip does as much as a wire of a quarter of its width.
std::vector<field::Wire> strips_of(double length, double width, Metres depth) {
    std::vector<field::Wire> wires;
    const double strip = width / plate_strips;
    for (int i = 0; i < plate_strips; ++i) {
        const double north = strip * (i + 0.5);
        wires.push_back({spot(0, north, depth), spot(length, north, depth), metres(strip / 4)});
    }
    return wires;
}

/// Wires, rings, plates and meshes; what is not stated is taken small and shallow.
void lay_metal(const site::Electrode& e, BuiltElectrode& b) {
    const double length = smallest(e.length, 1);
    const double width = smallest(e.width, length);
    const Metres depth = metres(smallest(e.depth, 0.5));
    b.rods = false;
    b.length = metres(length);
    b.diameter = metres(smallest(e.diameter, 0.008));
    const Metres radius = b.diameter / 2;
    switch (e.kind) {
        case ElectrodeKind::ring:
            b.wires = field::ring_wires(spot(0, 0, depth), b.length, radius, sides_of_ring);
            break;
        case ElectrodeKind::plate:
            b.wires = strips_of(length, width, depth);
            break;
        case ElectrodeKind::mesh:
            b.wires = field::mesh_wires({spot(0, 0, depth), b.length, metres(width),
                                         e.meshes_along.value_or(1), e.meshes_across.value_or(1)},
                                        radius);
            break;
        case ElectrodeKind::foundation: {
            const double concrete = smallest(e.width, 0.3);
            const Metres deep = metres(std::max(depth.number(), 0.75 * concrete));
            b.wires = {{spot(0, 0, deep), spot(length, 0, deep), metres(concrete / 2)}};
            b.concrete = b.length;
            b.concrete_share = std::log(std::max(1.0, concrete / b.diameter.number()));
            break;
        }
        case ElectrodeKind::rods:
        case ElectrodeKind::buried_wire:
            b.wires = {{spot(0, 0, depth), spot(length, 0, depth), radius}};
            break;
    }
}

const char* season_words(const tables::SeasonRow& row) {
    return row.word == "frozen crust" ? "top of the ground frozen" : "top of the ground dried out";
}

}  // namespace

BuiltElectrode built(const site::Electrode& electrode, const tables::Catalogue& catalogue) {
    BuiltElectrode b;
    if (electrode.kind == ElectrodeKind::rods) {
        stand_rods(electrode, catalogue.limits, b);
    } else {
        lay_metal(electrode, b);
    }
    return b;
}

std::optional<soil::FallResult> fall_result(const site::Electrode& e) {
    if (e.spikes.empty()) return std::nullopt;
    soil::FallTest test;
    test.current_spike = e.spikes.front().current;
    for (const site::SpikeReading& spike : e.spikes) {
        test.readings.push_back({spike.potential, spike.resistance});
    }
    const bool rod = e.kind == ElectrodeKind::rods && (!e.rods.known || e.rods.high <= 1);
    if (rod && e.length.known && e.diameter.known) {
        test.length = e.length.high;
        test.diameter = e.diameter.high;
    }
    auto result = soil::electrode_resistance(test);
    if (!result) return std::nullopt;
    return std::move(*result);
}

site::Fact<Ohms> reading_of(const site::Electrode& electrode) {
    if (electrode.resistance.known) return electrode.resistance;
    const auto fall = fall_result(electrode);
    if (!fall) return {};
    return {true, fall->low, fall->high, site::Standing::measured};
}

BuiltElectrode rods_in_a_line(int count, Metres length, Metres diameter, Metres spacing) {
    BuiltElectrode b;
    b.count = count;
    b.length = length;
    b.diameter = diameter;
    b.spacing = spacing;
    for (int i = 0; i < count; ++i) {
        b.wires.push_back(
            field::rod_wire({spacing * i, metres(0), metres(0)}, length, diameter / 2));
    }
    return b;
}

namespace {

std::string shape_words(const site::Electrode& e, const std::string& length) {
    const std::string width = significant(smallest(e.width, smallest(e.length, 1)), 3);
    switch (e.kind) {
        case ElectrodeKind::buried_wire:
            return fmt::format("{} m of buried wire", length);
        case ElectrodeKind::ring:
            return fmt::format("a ring {} m across", length);
        case ElectrodeKind::foundation:
            return fmt::format("{} m of foundation", length);
        case ElectrodeKind::plate:
        case ElectrodeKind::mesh:
        case ElectrodeKind::rods:
            break;
    }
    return fmt::format("a {} of {} by {} m", site::word(e.kind), length, width);
}

}  // namespace

std::string electrode_words(const BuiltElectrode& b, const site::Electrode& stated) {
    const std::string length = significant(b.length.number(), 3);
    if (!b.rods) return shape_words(stated, length);
    if (b.count < 2) return fmt::format("one rod of {} m", length);
    const char* shape = stated.arrangement == Arrangement::triangle ? " in a triangle"
                        : stated.arrangement == Arrangement::square ? " in a square"
                                                                    : "";
    return fmt::format("{} rods of {} m, {} m apart{}", b.count, length,
                       significant(b.spacing.number(), 3), shape);
}

namespace {

/// What the wires alone meet.
std::optional<Ohms> of_wires(const field::Medium* soil, const BuiltElectrode& electrode) {
    if (!soil) return std::nullopt;
    const auto field = field::solve_field(*soil, electrode.wires, fine);
    if (!field) return std::nullopt;
    return field->joined();
}

/// What concrete round the metal adds.
Ohms in_concrete(const BuiltElectrode& electrode, OhmMetres concrete) {
    if (!(electrode.concrete > metres(0))) return {};
    return concrete / (2 * pi * electrode.concrete) * electrode.concrete_share;
}

}  // namespace

std::optional<Ohms> resistance_in(const field::Medium* soil, const BuiltElectrode& electrode,
                                  OhmMetres concrete) {
    const auto wires = of_wires(soil, electrode);
    if (!wires) return std::nullopt;
    return *wires + in_concrete(electrode, concrete);
}

namespace {

/// An electrode under each crust in turn.
struct Season {
    Ohms r{};
    const char* when = "";
};

/// An electrode that is looked at in many soils, some of them more than once.
class Looked {
public:
    Looked(const tables::Catalogue& catalogue, const BuiltElectrode& electrode, Media& media)
        : catalogue_(catalogue), electrode_(electrode), media_(media) {}

    std::optional<Ohms> bare(const field::Strata& soil, OhmMetres concrete) {
        const field::Medium* medium = media_.in(soil);
        auto [found, fresh] = known_.try_emplace(medium);
        if (fresh) found->second = of_wires(medium, electrode_);
        if (!found->second) return std::nullopt;
        return *found->second + in_concrete(electrode_, concrete);
    }

    std::optional<std::vector<Season>> seasons(const field::Strata& soil, OhmMetres concrete) {
        std::vector<Season> all;
        for (const tables::SeasonRow& row : catalogue_.electrode.seasons) {
            const auto crust =
                field::with_crust(soil, field::Crust{row.depth.value, row.factor.value});
            if (!crust) return std::nullopt;
            const auto r = bare(*crust, concrete);
            if (!r) return std::nullopt;
            all.push_back({*r, season_words(row)});
        }
        return all;
    }

private:
    const tables::Catalogue& catalogue_;
    const BuiltElectrode& electrode_;
    Media& media_;
    std::map<const field::Medium*, std::optional<Ohms>> known_;
};

}  // namespace

ThroughTheYear through_the_year(const tables::Catalogue& catalogue, const SoilSetting& soil,
                                const BuiltElectrode& electrode, Media& media) {
    ThroughTheYear year;
    year.solved = true;
    const OhmMetres concrete = catalogue.electrode.concrete_high.value;
    const bool changes = !soil.whole_year && !soil.read_dry;
    Looked looked(catalogue, electrode, media);
    const auto high = [&](Ohms r, const char* when) {
        if (r > year.high) {
            year.high = r;
            year.high_when = when;
        }
    };
    for (const field::Strata& strata : soil.worst) {
        const auto bare = looked.bare(strata, concrete);
        if (!bare) return {};
        high(*bare, soil.whole_year ? "worst time of the year" : "as the soil was read");
        if (!changes) continue;
        const auto seasons = looked.seasons(strata, concrete);
        if (!seasons) return {};
        for (const Season& season : *seasons) {
            high(season.r, season.when);
            year.worst_season = std::max<double>(year.worst_season, season.r / *bare);
        }
    }
    for (const field::Strata& strata : soil.best) {
        const auto r = looked.bare(strata, catalogue.electrode.concrete_low.value);
        if (!r) return {};
        if (year.low == ohms(0) || *r < year.low) year.low = *r;
        if (!changes || soil.known != SoilKnown::layers) continue;
        // Stated layers at their better end may feel a season more than at their worse.
        const auto bare = looked.bare(strata, concrete);
        const auto seasons = looked.seasons(strata, concrete);
        if (!bare || !seasons) return {};
        for (const Season& season : *seasons) {
            year.worst_season = std::max<double>(year.worst_season, season.r / *bare);
        }
    }
    year.low_when = soil.whole_year ? "best time of the year" : "as the soil was read";
    return year;
}

ThroughTheYear through_the_year(const tables::Catalogue& catalogue, const SoilSetting& soil,
                                const BuiltElectrode& electrode) {
    Media media;
    return through_the_year(catalogue, soil, electrode, media);
}

}  // namespace toft::study
