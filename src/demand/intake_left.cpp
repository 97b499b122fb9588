#include "demand/intake_left.h"

namespace toft::demand {

namespace {

using site::Standing;

const site::Building* origin_of(const site::Job& job) {
    for (const site::Building& building : job.buildings) {
        if (building.origin) return &building;
    }
    return nullptr;
}

template <class L>
void set(HouseDemand<L>& house, Way way, const ValueIn<L, Amperes>& demand) {
    house.known[static_cast<std::size_t>(way)] = true;
    house.by[static_cast<std::size_t>(way)] = demand;
}

Name house_name(Way way) {
    return {"I.house", "largest demand of the house", 0, "", "", way_word(way)};
}

template <class L>
void estimated(L& ledger, const Place<L>& place, const site::Job& job, site::Scenario scenario,
               HouseDemand<L>& house) {
    const site::Building* origin = origin_of(job);
    if (origin && load_is_stated(*origin)) {
        const auto wanted = scenario == site::Scenario::today ? scenario : site::Scenario::likely;
        const auto demand = building_demand(ledger, place, *origin, wanted);
        set(house, Way::estimated, ledger.let(house_name(Way::estimated), demand.total * 1.0));
        return;
    }
    const site::Fact<Amperes>& stated = job.intake.demand;
    if (!stated.known || stated.standing != Standing::assumed) return;
    set(house, Way::estimated, ledger.stated(house_name(Way::estimated), stated.high, "assumed"));
}

}  // namespace

const char* way_word(Way way) {
    switch (way) {
        case Way::estimated:
            return "estimated";
        case Way::measured:
            return "measured";
        case Way::declared:
            return "declared";
    }
    return "";
}

template <class L>
std::optional<Way> HouseDemand<L>::best() const {
    for (const Way way : all_ways) {
        if (is_known(way)) return way;
    }
    return std::nullopt;
}

template <class L>
HouseDemand<L> house_demand(L& ledger, const Place<L>& place, const site::Job& job,
                            site::Scenario scenario) {
    HouseDemand<L> house;
    const site::Intake& in = job.intake;
    estimated(ledger, place, job, scenario, house);
    if (in.demand.known && in.demand.standing == Standing::measured) {
        set(house, Way::measured,
            ledger.stated(house_name(Way::measured), in.demand.high, "measured"));
    }
    if (in.agreed.known) {
        set(house, Way::declared,
            ledger.stated(house_name(Way::declared), in.agreed.high, "agreed with the operator"));
    } else if (in.demand.known && in.demand.standing == Standing::declared) {
        set(house, Way::declared,
            ledger.stated(house_name(Way::declared), in.demand.high, "declared"));
    }
    return house;
}

template <class L>
IntakeLimits<L> intake_limits(L& ledger, const tables::Demand& tables, const site::Intake& intake,
                              const ValueIn<L, Amperes>& fuse) {
    IntakeLimits<L> limits;
    limits.fuse = fuse;
    limits.fuse_known = intake.service_fuse.has_value();
    if (intake.tails.known) {
        if (const tables::TailsRating* row = tables::find_tails(tables, intake.tails.low)) {
            limits.tails_known = true;
            limits.tails =
                ledger.table({"I.tails", "what tails of that section carry"}, row->rating);
        }
    }
    if (intake.main_switch.known) {
        limits.switch_known = true;
        limits.main_switch = ledger.stated({"I.switch", "rating of the main switch"},
                                           intake.main_switch.low, "survey");
    }
    return limits;
}

template <class L>
ValueIn<L, Amperes> least_limit(L& ledger, const IntakeLimits<L>& limits, bool behind_switch) {
    auto limit = limits.fuse;
    if (limits.tails_known) limit = least(limit, limits.tails);
    if (behind_switch && limits.switch_known) limit = least(limit, limits.main_switch);
    return ledger.let({"I.intake", "what the intake carries"}, limit * 1.0);
}

template <class L>
ValueIn<L, Amperes> left_by(L& ledger, const ValueIn<L, Amperes>& limit,
                            const HouseDemand<L>& house, Way way) {
    return ledger.let({"I.left", "left of the intake before the run", 0, "", "", way_word(way)},
                      limit - house.at(way));
}

template <class L>
ValueIn<L, Amperes> new_demand(L& ledger, const ValueIn<L, Amperes>& house,
                               const ValueIn<L, Amperes>& run) {
    return ledger.let({"I.new", "demand of house and run together", 0, "", "132.16, 313.1"},
                      house + run);
}

template struct HouseDemand<Silent>;
template struct HouseDemand<Recording>;
template HouseDemand<Silent> house_demand(Silent&, const Place<Silent>&, const site::Job&,
                                          site::Scenario);
template HouseDemand<Recording> house_demand(Recording&, const Place<Recording>&, const site::Job&,
                                             site::Scenario);
template IntakeLimits<Silent> intake_limits(Silent&, const tables::Demand&, const site::Intake&,
                                            const Amperes&);
template IntakeLimits<Recording> intake_limits(Recording&, const tables::Demand&,
                                               const site::Intake&, const Traced<Amperes>&);
template Amperes least_limit(Silent&, const IntakeLimits<Silent>&, bool);
template Traced<Amperes> least_limit(Recording&, const IntakeLimits<Recording>&, bool);
template Amperes left_by(Silent&, const Amperes&, const HouseDemand<Silent>&, Way);
template Traced<Amperes> left_by(Recording&, const Traced<Amperes>&, const HouseDemand<Recording>&,
                                 Way);
template Amperes new_demand(Silent&, const Amperes&, const Amperes&);
template Traced<Amperes> new_demand(Recording&, const Traced<Amperes>&, const Traced<Amperes>&);

}  // namespace toft::demand
