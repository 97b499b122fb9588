// Charging of vehicles: the routes of 722.411.4.1, as a choice with its cautions.

#include "base/text.h"
#include "special/parts.h"

#include <fmt/format.h>

namespace toft::special {

namespace {

constexpr const char* about = "vehicle charging";

std::string volts_words(Volts volts) { return significant(volts.number(), 3) + " V"; }

std::string limit_words(const Case& c) {
    return volts_words(
        c.view.catalogue->shock.limit(tables::Threshold::charging_point).limit.value);
}

/// One of the ways; that a person chooses is said with the whole.
void route(const Case& c, int number, std::string asks, std::string says,
           std::vector<Advice>& all) {
    all.push_back({fmt::format("{}, route {}", about, number), std::move(asks), std::move(says),
                   footing(c, "vehicle"), false});
}

void routes(const Case& c, std::vector<Advice>& all) {
    const bool three = c.view.job->intake.phases == 3;
    const std::string limit = limit_words(c);
    route(c, 1,
          fmt::format("a supply of three phases loaded so evenly that metal stays within {} if the "
                      "neutral is lost",
                      limit),
          three ? "open here: the designer shows the balance; later loads may upset it"
                : "not open here: the supply has one phase",
          all);
    route(
        c, 2,
        fmt::format("an electrode joined to the earth, low enough to hold metal within {}", limit),
        "seldom to be had: the step on charging, where the earth is argued, says how many ohms it "
        "takes here",
        all);
    route(c, 3,
          fmt::format("a device that takes off line, neutral and protective conductor when the "
                      "earth passes {}",
                      limit),
          "it needs an electrode of its own to measure against, clear of the house's earth", all);
    route(c, 4,
          fmt::format("on one phase, a device that does so when the supply leaves {} to {}",
                      volts_words(c.view.limits().charging_low.value),
                      volts_words(c.view.limits().charging_high.value)),
          three ? "only for a point on one phase: a lost neutral of three phases may keep that "
                  "phase within the band"
                : "built into many points; it also stops when the voltage is merely poor, and "
                  "sees no fault that leaves the voltage as it is",
          all);
    route(c, 5, "another way that is no less safe", "by its designer's own proof, in writing", all);
}

}  // namespace

void vehicle_charging(const Case& c, std::vector<Advice>& all) {
    const site::Answer outdoors = c.view.building->vehicle_outdoors;
    const bool point = guard::has_kind(c.view, site::CircuitKind::vehicle_charging);
    if (!point && outdoors != site::Answer::yes) return;
    if (c.view.on_tt()) {
        all.push_back({about, "a point outdoors keeps off a combined earth",
                       "met by a TT supply: the vehicle is on an electrode's earth",
                       footing(c, "vehicle"), false});
        return;
    }
    const bool combined = c.view.job->intake.earthing == site::Earthing::tn_c_s;
    const char* says =
        outdoors == site::Answer::no
            ? "it is said to stay indoors: if it can stand outdoors on its lead, the routes apply"
        : combined ? "choose one of the routes below, or give the building an electrode of its own"
                   : "this TN-S supply may be combined along the way: choose a route below, or ask "
                     "the operator and have the answer in writing";
    all.push_back({about,
                   "a point whose vehicle may stand outdoors must not use a combined earth but by "
                   "one of five routes",
                   says, footing(c, "vehicle"), true});
    routes(c, all);
}

}  // namespace toft::special
