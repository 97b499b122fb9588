#include "answer/demand.h"

#include "demand/notice.h"
#include "study/path_load.h"

namespace toft::answer {

namespace {

constexpr site::Scenario scenarios[] = {site::Scenario::today, site::Scenario::likely,
                                        site::Scenario::everything};

std::vector<demand::Notice> operator_notices(const study::Setting<Silent>& s) {
    const site::Job& job = *s.job;
    demand::Occasion o;
    o.run = s.demand;
    if (const auto way = s.house.demand.best()) {
        o.house = s.house.demand.at(*way);
        o.house_known = demand::way_word(*way);
    }
    if (job.intake.service_fuse) o.fuse = job.intake.service_fuse->rating;
    if (job.intake.agreed.known) o.agreed = job.intake.agreed.low;
    o.looped = job.intake.looped;
    const site::Scenario scenario = study::wanted_scenario(job);
    o.load = demand::process_load(*s.building_facts, scenario);
    o.generation = demand::generation_of({&s.catalogue->demand, s.supply.u0, 1, ""}, job, scenario);
    o.generates = !o.generation || *o.generation > amperes(0);
    o.u0 = s.supply.u0;
    return demand::notices(s.catalogue->limits, o);
}

LoadAnswer load_of(const demand::Place<Silent>& place, const site::Building& building,
                   site::Scenario scenario) {
    Silent silent;
    const auto demand = demand::building_demand(silent, place, building, scenario);
    LoadAnswer load;
    load.scenario = site::word(scenario);
    for (int k = 0; k < place.phases; ++k) {
        const Amperes line = demand.lines.each[static_cast<std::size_t>(k)] + demand.later;
        load.lines_a.push_back(line.number());
    }
    load.neutral_a = (place.phases == 1 ? demand.total : demand.neutral).number();
    load.total_a = demand.total.number();
    return load;
}

/// Taken to that building: of several runs each has its own.
int phases_to(const study::Setting<Silent>& s, const site::Building& b) {
    if (s.job->runs.size() == 1) return s.phases;
    for (std::size_t i = 0; i < s.job->runs.size(); ++i) {
        if (s.job->runs[i].to == b.id) return study::phases_in_tree(*s.job, i);
    }
    return s.phases;
}

BuildingDemandAnswer building_of(const study::Setting<Silent>& s, const site::Building& b) {
    const tables::Demand& tables = s.catalogue->demand;
    BuildingDemandAnswer answer;
    answer.id = b.id;
    answer.name = b.name.empty() ? b.id : b.name;
    answer.premises = tables::premises_of(tables, b.use ? site::word(*b.use) : std::string());
    if (!demand::load_is_stated(b)) return answer;
    const int phases = b.origin ? s.job->intake.phases : phases_to(s, b);
    const demand::Place<Silent> place{&tables, s.supply.u0, phases, ""};
    for (const site::Scenario scenario : scenarios) {
        answer.scenarios.push_back(load_of(place, b, scenario));
    }
    return answer;
}

std::vector<LimitAnswer> limits_of(const demand::IntakeLimits<Silent>& limits) {
    std::vector<LimitAnswer> all{{"operator's fuse", limits.fuse.number(), limits.fuse_known}};
    if (limits.tails_known) all.push_back({"tails", limits.tails.number(), true});
    if (limits.switch_known) all.push_back({"main switch", limits.main_switch.number(), true});
    return all;
}

}  // namespace

std::vector<NoticeAnswer> notices_of(const study::Setting<Silent>& setting) {
    std::vector<NoticeAnswer> all;
    for (const demand::Notice& notice : operator_notices(setting)) {
        all.push_back({notice.when == demand::When::before ? "before" : "after", notice.why});
    }
    return all;
}

DemandAnswer demand_of(const study::Setting<Silent>& s) {
    DemandAnswer answer;
    answer.scenario = site::word(study::wanted_scenario(*s.job));
    answer.run_a = (s.others_beside ? s.demand + s.beside : s.demand).number();
    for (const site::Building& b : s.job->buildings) answer.buildings.push_back(building_of(s, b));
    answer.limits = limits_of(s.house.limits);
    Silent silent;
    for (const demand::Way way : demand::all_ways) {
        if (!s.house.demand.is_known(way)) continue;
        HouseDemandAnswer house{demand::way_word(way), s.house.demand.at(way).number(), {}};
        for (const LimitAnswer& limit : answer.limits) {
            house.left_a.push_back(
                demand::left_by(silent, amperes(limit.carries_a), s.house.demand, way).number());
        }
        answer.house.push_back(std::move(house));
    }
    answer.notice = demand::when_words(demand::heaviest(operator_notices(s)));
    answer.notices = notices_of(s);
    return answer;
}

}  // namespace toft::answer
