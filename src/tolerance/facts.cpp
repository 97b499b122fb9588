#include "tolerance/facts.h"

#include <fmt/format.h>

namespace toft::tolerance {

namespace {

struct Named {
    std::string pointer, says, unit;
    Kind kind;
};

/// Fills the list; `one` is what one unit of the key is in the fact's own.
class Lister {
public:
    explicit Lister(const site::Job& job) : job_(job) {}

    template <class Get>
    void add(Named named, Get get, double one = 1) {
        const auto& fact = get(job_);
        using Q = decltype(fact.low);
        Figure f{std::move(named.pointer),
                 std::move(named.says),
                 std::move(named.unit),
                 named.kind,
                 fact.known,
                 number_of(fact.low) / one,
                 number_of(fact.high) / one,
                 fact.standing,
                 fact.spread,
                 {}};
        f.set = [get, one](site::Job& job, double low, double high) {
            auto& into = get(job);
            if (!into.known) into.standing = site::Standing::assumed;
            into.known = true;
            into.low = Q(low * one);
            into.high = Q(high * one);
        };
        all.push_back(std::move(f));
    }

    std::vector<Figure> all;

private:
    const site::Job& job_;
};

using site::Job;

void add_intake(Lister& list) {
    list.add(
        {"/intake/ze_ohm", "external earth fault loop Ze", "ohm", Kind::ze},
        [](auto& j) -> auto& { return j.intake.ze; });
    list.add(
        {"/intake/line_neutral_loop_ohm", "line-neutral loop at the origin", "ohm",
         Kind::neutral_loop},
        [](auto& j) -> auto& { return j.intake.line_neutral_loop; });
    list.add(
        {"/intake/pscc_ka", "fault current at the origin", "kA", Kind::fault_current},
        [](auto& j) -> auto& { return j.intake.pscc; }, 1000);
    list.add(
        {"/intake/pefc_ka", "earth fault current at the origin", "kA", Kind::fault_current},
        [](auto& j) -> auto& { return j.intake.pefc; }, 1000);
    list.add(
        {"/intake/electrode_ohm", "electrode of the house", "ohm", Kind::electrode},
        [](auto& j) -> auto& { return j.intake.electrode; });
    list.add(
        {"/intake/demand_a", "demand of the house", "A", Kind::other},
        [](auto& j) -> auto& { return j.intake.demand; });
}

void add_ground(Lister& list, auto& job) {
    // Readings come before a stated resistivity, which then only narrows what rods leave open.
    if (job.ground.pins.empty() && job.ground.rods.empty()) {
        list.add(
            {"/ground/resistivity_ohm_m", "resistivity of the soil", "ohm m", Kind::soil},
            [](auto& j) -> auto& { return j.ground.resistivity; });
        for (std::size_t i = 0; i < job.ground.layers.size(); ++i) {
            list.add(
                {fmt::format("/ground/layers/{}/resistivity_ohm_m", i),
                 fmt::format("resistivity of layer {} of the soil", i + 1), "ohm m", Kind::soil},
                [i](auto& j) -> auto& { return j.ground.layers[i].resistivity; });
        }
    }
    list.add(
        {"/ground/thermal_resistivity_k_m_per_w", "thermal resistivity of the soil", "K m/W",
         Kind::other},
        [](auto& j) -> auto& { return j.ground.thermal_resistivity; });
    list.add(
        {"/ground/temperature_c", "temperature of the ground", "C", Kind::temperature},
        [](auto& j) -> auto& { return j.ground.temperature; });
}

void add_legs(Lister& list, auto& job, std::size_t run) {
    for (std::size_t i = 0; i < job.runs[run].legs.size(); ++i) {
        const std::string at = fmt::format("/runs/{}/legs/{}", run, i);
        list.add(
            {at + "/length_m", fmt::format("length of leg {}", i + 1), "m", Kind::length},
            [ run, i ](auto& j) -> auto& { return j.runs[run].legs[i].length; });
        list.add(
            {at + "/ambient_c", fmt::format("air round leg {}", i + 1), "C", Kind::temperature},
            [ run, i ](auto& j) -> auto& { return j.runs[run].legs[i].ambient; });
        list.add(
            {at + "/depth_m", fmt::format("depth of leg {}", i + 1), "m", Kind::other},
            [ run, i ](auto& j) -> auto& { return j.runs[run].legs[i].depth; });
        list.add(
            {at + "/insulation_length_m",
             fmt::format("part of leg {} in thermal insulation", i + 1), "m", Kind::other},
            [ run, i ](auto& j) -> auto& { return j.runs[run].legs[i].insulation_length; });
    }
}

void add_loads(Lister& list, auto& job, std::size_t b) {
    const std::string at = fmt::format("/buildings/{}", b);
    const site::Building& building = job.buildings[b];
    const std::string name = building.name.empty() ? building.id : building.name;
    list.add(
        {at + "/load_a", "load of " + name, "A", Kind::load}, [b](auto& j) -> auto& {
            return j.buildings[b].load;
        });
    list.add(
        {at + "/load_w", "load of " + name, "W", Kind::load}, [b](auto& j) -> auto& {
            return j.buildings[b].load_w;
        });
    list.add(
        {at + "/future_load_a", "load that " + name + " may have later", "A", Kind::load},
        [b](auto& j) -> auto& { return j.buildings[b].future_load; });
    for (std::size_t i = 0; i < building.circuits.size(); ++i) {
        list.add(
            {fmt::format("{}/circuits/{}/load_w", at, i),
             "load of circuit " + building.circuits[i].name, "W", Kind::load},
            [ b, i ](auto& j) -> auto& { return j.buildings[b].circuits[i].load_w; });
    }
}

void add_building(Lister& list, std::size_t b) {
    const std::string at = fmt::format("/buildings/{}", b);
    list.add(
        {at + "/reach_of_house_earth_m", "distance to anything on the house's earth", "m",
         Kind::other},
        [b](auto& j) -> auto& { return j.buildings[b].reach_of_house_earth; });
    list.add(
        {at + "/electrode/resistance_ohm", "reading of the building's electrode", "ohm",
         Kind::electrode},
        [b](auto& j) -> auto& { return j.buildings[b].electrode.resistance; });
    list.add(
        {at + "/electrode/from_house_earth_m", "distance of the electrode from the house's earth",
         "m", Kind::other},
        [b](auto& j) -> auto& { return j.buildings[b].electrode.from_house_earth; });
}

/// The run's building and all fed through it, by place.
std::vector<std::size_t> buildings_of(const Place& place) {
    const site::Job& job = place.job;
    const std::string& own = job.runs[place.at.run].to;
    std::vector<std::size_t> all{site::building_index(job, own)};
    for (const site::Building* b : study::fed_through(job, *site::find_building(job, own))) {
        all.push_back(site::building_index(job, b->id));
    }
    return all;
}

}  // namespace

std::vector<Figure> figures_of(const Place& place) {
    Lister list(place.job);
    if (!place.at.incoming) add_intake(list);
    add_ground(list, place.job);
    add_legs(list, place.job, place.at.run);
    const auto buildings = buildings_of(place);
    for (const std::size_t b : buildings) add_loads(list, place.job, b);
    add_building(list, buildings.front());
    return std::move(list.all);
}

study::Setting<Silent> prepared_in(const Place& place, const site::Job& job) {
    Silent silent;
    return study::prepare(silent, place.catalogue, job, place.at, study::Corner{});
}

Set loads_times(const Place& place) {
    std::vector<Figure> loads;
    for (Figure& f : figures_of(place)) {
        if (f.kind == Kind::load && f.known && f.low == f.high) loads.push_back(std::move(f));
    }
    return [loads](site::Job& job, double low, double high) {
        for (const Figure& f : loads) f.set(job, f.low * low, f.high * high);
    };
}

}  // namespace toft::tolerance
