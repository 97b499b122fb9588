#include "codec/demand.h"

#include "codec/object.h"
#include "codec/scheme.h"

namespace toft::codec {

namespace {

Json scenario_json(const answer::LoadAnswer& load) {
    Json lines = Json::array();
    for (const double line : load.lines_a) lines.push_back(rounded(line));
    return object({{"lines_a", lines},
                   {"neutral_a", rounded(load.neutral_a)},
                   {"total_a", rounded(load.total_a)}});
}

Json building_demand_json(const answer::BuildingDemandAnswer& building) {
    Json json = object({{"premises", building.premises}});
    for (const char* scenario : {"today", "likely", "everything"}) json[scenario] = nullptr;
    for (const answer::LoadAnswer& load : building.scenarios) {
        json[load.scenario] = scenario_json(load);
    }
    return json;
}

Json house_json(const answer::HouseDemandAnswer& house,
                const std::vector<answer::LimitAnswer>& limits) {
    Json left = Json::array();
    for (std::size_t i = 0; i < limits.size(); ++i) {
        left.push_back(object({{"part", limits[i].part}, {"left_a", rounded(house.left_a[i])}}));
    }
    return object({{"way", house.way}, {"demand_a", rounded(house.demand_a)}, {"left", left}});
}

}  // namespace

Json demand_json(const answer::DemandAnswer& demand) {
    Json json = object({{"scenario", demand.scenario},
                        {"run_a", rounded(demand.run_a)},
                        {"buildings", Json::object()},
                        {"limits", Json::array()},
                        {"house", Json::array()}});
    for (const auto& b : demand.buildings) json["buildings"][b.id] = building_demand_json(b);
    for (const auto& limit : demand.limits) {
        json["limits"].push_back(object({{"part", limit.part},
                                         {"carries_a", rounded(limit.carries_a)},
                                         {"known", limit.known}}));
    }
    for (const auto& house : demand.house) {
        json["house"].push_back(house_json(house, demand.limits));
    }
    Json reasons = Json::array();
    for (const auto& notice : demand.notices) {
        reasons.push_back(object({{"when", notice.when}, {"why", notice.why}}));
    }
    json["operator"] = object({{"do", demand.notice}, {"reasons", reasons}});
    return json;
}

}  // namespace toft::codec
