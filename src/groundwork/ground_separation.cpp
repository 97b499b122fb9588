#include "base/pi.h"
#include "groundwork/ground_parts.h"

#include <algorithm>

namespace toft::answer {

namespace {

/// A fact of the part at that pointer was read from a range.
bool open_below(const std::vector<study::OpenFact>& open, const std::string& pointer) {
    return std::any_of(open.begin(), open.end(), [&](const study::OpenFact& fact) {
        return fact.pointer.compare(0, pointer.size(), pointer) == 0;
    });
}

void add_bridges(const GroundCase& c, SeparationAnswer& answer) {
    const site::Building& b = *c.setting.building_facts;
    for (const study::MetalPart& part : c.setting.building.parts) {
        if (!part.bridges) continue;
        if (open_below(c.setting.open, part.pointer)) {
            answer.bridges.push_back({part.name,
                                      "may run on between the house's earth and the building: "
                                      "nobody has looked",
                                      false, std::nullopt});
            continue;
        }
        answer.bridges.push_back(
            {part.name, "runs on between the house's earth and the building", true, std::nullopt});
    }
    const Metres reach = c.question.catalogue.limits.reach.value;
    if (c.setting.building.reach_least < reach) {
        answer.bridges.push_back({"something on the house's earth",
                                  b.reach_of_house_earth.known
                                      ? "is within arm's reach of the building"
                                      : "may be within arm's reach: nobody has looked",
                                  false, c.setting.building.reach_least.number()});
    }
    for (const site::Metalwork& metal : b.metalwork) {
        if (!metal.distance.known || metal.distance.low <= reach) continue;
        answer.bridges.push_back({site::word(metal.what), "out of reach of the building", false,
                                  metal.distance.low.number()});
    }
}

}  // namespace

SeparationAnswer separation_answer(const GroundCase& c) {
    SeparationAnswer answer;
    const study::BuildingSetting<Silent>& b = c.setting.building;
    const tables::Catalogue& catalogue = c.question.catalogue;
    const site::Fact<Metres>& stated = c.setting.building_facts->electrode.from_house_earth;
    answer.distance_m = b.gap_judged   ? b.gap_least.number()
                        : stated.known ? stated.low.number()
                                       : b.reach_least.number();
    answer.needed_m = b.gap_judged ? b.gap_needed.number() : 0;
    answer.lift_v = b.gap_judged ? b.lift_most.number() : 0;
    answer.allowed = catalogue.limits.touch_voltage.value / c.setting.supply.u0;
    const HouseEarth house = house_earth(c);
    const OhmMetres high = study::largest_in(c.soil);
    const OhmMetres low = study::smallest_in(c.soil);
    answer.house_radius_m = high / (2 * pi * house.low) / metres(1);
    const Metres gap = metres(answer.distance_m);
    answer.transferred_high = share_reached(high, house.low, gap);
    answer.transferred_low = share_reached(low, house.high, gap);
    add_bridges(c, answer);
    answer.island = std::none_of(answer.bridges.begin(), answer.bridges.end(), [&](const auto& x) {
        return x.joins || !x.distance_m || (*x.distance_m < catalogue.limits.reach.value.number());
    });
    return answer;
}

double share_reached(OhmMetres resistivity, Ohms earth, Metres gap) {
    return 1 / root(1 + squared(gap * earth / (resistivity / (2 * pi))));
}

HouseEarth house_earth(const GroundCase& c) {
    const site::Intake& intake = c.question.job.intake;
    if (intake.earthing == site::Earthing::tt) {
        return {c.setting.supply.ra_least, c.setting.supply.ra_most, "the house's electrode"};
    }
    const site::Fact<Ohms>& known = intake.earth_without_neutral;
    if (known.known) return {known.low, known.high, site::standing_word(known.standing)};
    const tables::OpenRange& range =
        *tables::find_open_range(c.question.catalogue, "earth.without.neutral");
    return {ohms(range.low.value), ohms(range.high.value), "not stated: the range met in houses"};
}

}  // namespace toft::answer
