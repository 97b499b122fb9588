#include "parts/ways.h"

#include "base/text.h"
#include "demand/lines.h"
#include "parts/device_words.h"
#include "parts/words.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::parts {

namespace {

using site::CircuitKind;

const answer::RcdAnswer* rcd_for(const std::string& name,
                                 const std::vector<answer::RcdAnswer>& rcds) {
    for (const answer::RcdAnswer& rcd : rcds) {
        for (const std::string& covered : rcd.covers) {
            if (covered == name || covered == "every circuit") return &rcd;
        }
    }
    return nullptr;
}

const answer::CircuitAnswer* design_of(int number,
                                       const std::vector<answer::CircuitAnswer>& designs) {
    for (const answer::CircuitAnswer& one : designs) {
        if (one.number == number) return &one;
    }
    return nullptr;
}

std::optional<answer::DeviceAnswer> device_of(const Way& way) {
    if (way.design) return way.design->device;
    if (!way.facts->device) return std::nullopt;
    const site::NamedDevice& stated = *way.facts->device;
    return answer::DeviceAnswer{stated.standard, stated.curve, "", stated.rating.number(), 0};
}

/// Current that decides on which line a single-phase circuit is put: from its watts, else as
/// designed, else the rating of its device.
Amperes full_current(const Way& way, double u0) {
    if (!way.facts) return amperes(0);
    const site::Circuit& c = *way.facts;
    if (c.load_w.known) {
        const double power_factor = c.power_factor.known ? c.power_factor.low : 1.0;
        return amperes(c.load_w.high / power_factor / u0);
    }
    if (way.design) return amperes(way.design->design_current_a);
    return amperes(way.device ? way.device->rating_a : 0);
}

void put_on_lines(std::vector<Way>& ways, double u0) {
    std::vector<demand::Spread> circuits;
    for (const Way& way : ways) {
        const bool later = way.facts && way.facts->later == site::Answer::yes;
        circuits.push_back({full_current(way, u0), way.phases, later});
    }
    const std::vector<int> lines = demand::spread(circuits, 3);
    for (std::size_t i = 0; i < ways.size(); ++i) {
        ways[i].line = lines[i] == demand::every_line ? every_line : lines[i];
    }
}

std::string of_limit(const answer::CircuitMatter& m, const char* unit) {
    return fmt::format("{} of {} {}", significant(m.value, 3), significant(m.limit, 3), unit);
}

}  // namespace

std::vector<Way> ways_of(const site::Job& job, const site::Building& building,
                         const answer::SchemeAnswer& scheme) {
    const answer::BuildingAnswer& designed = scheme.building;
    std::vector<Way> ways;
    for (const site::Circuit& circuit : building.circuits) {
        Way way{static_cast<int>(ways.size()) + 1, circuit.name, &circuit};
        way.design = design_of(way.number, designed.circuits);
        way.device = device_of(way);
        way.rcd = rcd_for(circuit.name, designed.rcds);
        way.phases = circuit.phases;
        ways.push_back(std::move(way));
    }
    for (const answer::RcdAnswer& rcd : designed.rcds) {
        for (const std::string& name : rcd.covers) {
            const bool told = std::any_of(ways.begin(), ways.end(), [&](const Way& way) {
                return way.name == name || name == "every circuit";
            });
            if (told) continue;
            Way way{0, name};
            way.rcd = &rcd;
            ways.push_back(std::move(way));
        }
    }
    if (scheme.run.phases == 3) put_on_lines(ways, job.intake.u0.number());
    return ways;
}

bool gives(const Way& way) {
    return way.facts &&
           (way.facts->kind == CircuitKind::solar || way.facts->kind == CircuitKind::battery);
}

bool turns(const Way& way) {
    return way.facts &&
           (way.facts->kind == CircuitKind::motor || way.facts->kind == CircuitKind::pump);
}

std::string way_device_words(const Way& way) {
    if (!way.device) return "not known: chosen with the circuit";
    const answer::DeviceAnswer& d = *way.device;
    answer::DeviceAnswer named = d;
    if (named.kind.empty() && way.residual_inside()) named.kind = "breaker with residual part";
    std::string words = device_words(named, way.phases);
    if (d.breaking_capacity_ka <= 0) words = words.substr(0, words.rfind(", 0 kA"));
    // The words of a fuse name its standard.
    return d.curve.empty() ? words : words + ", " + d.standard;
}

std::string circuit_cable_words(const answer::CircuitAnswer& c) {
    std::string words = mm2(c.live_mm2) + " " + c.family;
    if (c.cpc_mm2 != c.live_mm2) words += ", earth core " + mm2(c.cpc_mm2);
    return words;
}

std::string line_words(const Way& way, int board_phases) {
    if (board_phases != 3) return "";
    if (way.line == every_line) return "on L1, L2 and L3";
    return fmt::format("on L{}", way.line + 1);
}

std::vector<MatterWords> matters_of(const answer::CircuitAnswer& c) {
    std::vector<MatterWords> list;
    const auto add = [&](const char* word, const char* symbol,
                         const std::optional<answer::CircuitMatter>& m, const char* unit) {
        if (m) list.push_back({word, symbol, of_limit(*m, unit), m->use > 1});
    };
    add("drop from the origin", "", c.drop_percent, "%");
    add("loop, last point", "Zs", c.loop_ohm, "Ω");
    add("dip at the start", "", c.dip_percent, "%");
    add("starting current", "", c.start_a, "A");
    add("voltage rise", "", c.rise_percent, "%");
    return list;
}

std::vector<std::string> way_cautions(const Way& way) {
    std::vector<std::string> list;
    if (!way.design) return list;
    for (const MatterWords& m : matters_of(*way.design)) {
        if (m.over) list.push_back("past its limit: " + m.word + " " + m.value);
    }
    // Where no loop is asked for, that device is what an earth electrode is designed with.
    if (way.design->residual_clears && way.design->loop_ohm) {
        list.push_back("only the residual current device clears an earth fault");
    }
    return list;
}

}  // namespace toft::parts
