#include "trench/words.h"

#include "base/text.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::trench {

namespace {

std::string overhead_words(const site::Leg& leg) {
    std::string words = "overhead";
    if (leg.surface) words += " over " + site::word(*leg.surface);
    return words +
           (leg.height.known ? ", " + length_words(leg.height) + " high" : ", height not known");
}

const char* frometre_words(site::ComesFrom from) {
    switch (from) {
        case site::ComesFrom::ground:
            return "out of the ground";
        case site::ComesFrom::house:
            return "from the house";
        case site::ComesFrom::other_building:
            return "from another building";
    }
    return "";
}

}  // namespace

std::string metre_words(Metres length) { return significant(length.number(), 3) + " m"; }

std::string length_words(const site::Fact<Metres>& length) {
    if (!length.known) return "not known";
    if (length.single()) return metre_words(length.high);
    return significant(length.low.number(), 3) + " to " + metre_words(length.high);
}

std::string fixed_words(const site::Leg& leg) {
    switch (leg.method) {
        case site::LegMethod::clipped:
            return "clips or cleats on the surface";
        case site::LegMethod::tray:
            return "cable tray";
        case site::LegMethod::free_air:
            return "brackets, clear of the wall";
        case site::LegMethod::in_conduit:
            return "conduit on saddles";
        case site::LegMethod::in_trunking:
            return "trunking";
        case site::LegMethod::in_insulation:
            return "inside thermal insulation";
        case site::LegMethod::above_ceiling:
            return "clips above the ceiling";
        case site::LegMethod::overhead:
            return "catenary wire between fixings";
        case site::LegMethod::buried_direct:
        case site::LegMethod::buried_in_duct:
            break;
    }
    return "the ground";
}

std::string leg_words(const Works& works, const LegWork& leg) {
    if (leg.leg.method == site::LegMethod::overhead) return overhead_words(leg.leg);
    if (!site::buried(leg.leg.method)) return site::word(leg.leg.method);
    std::string words = site::word(leg.leg.method);
    if (leg.leg.surface) words += " under " + site::word(*leg.leg.surface);
    if (leg.stays) return words + ", there today: nobody digs";
    if (!leg.trench) return words;
    const Trench& trench = works.trenches[*leg.trench];
    words += trench.cover.stated ? ", " + metre_words(trench.cover.depth) + " deep"
                                 : ", depth not stated";
    const LegWork& dug = works.legs[trench.legs.front()];
    if (dug.sign != leg.sign) words += ", in the trench of " + dug.sign;
    return words;
}

std::string place_words(const site::Job& job, const std::string& id) {
    const site::Building* building = site::find_building(job, id);
    if (!building || (building->name.empty() && !building->origin)) return id;
    return building->name.empty() ? "the house" : building->name;
}

std::string run_words(const Works& works, std::size_t run) {
    const site::Run& one = works.job.runs[run];
    return fmt::format("{}: {} to {}", run_sign(run), place_words(works.job, one.from),
                       place_words(works.job, one.to));
}

std::vector<Service> services_of(const Works& works) {
    std::vector<Service> all;
    for (const site::Building& building : works.job.buildings) {
        for (const site::Metalwork& metal : building.metalwork) {
            std::string says = site::word(metal.what);
            if (!metal.material.empty()) says += " (" + metal.material + ")";
            says += std::string(", ") + frometre_words(metal.comes_from);
            if (metal.distance.known) says += ", " + length_words(metal.distance) + " away";
            all.push_back({place_words(works.job, building.id), std::move(says)});
        }
    }
    return all;
}

std::string volume_words(CubicMetres volume) { return significant(volume.number(), 2) + " m³"; }

std::string metres_to_buy(Metres length) {
    return significant(std::ceil(2 * length.number() - 1e-9) / 2, 6) + " m";
}

}  // namespace toft::trench
