#include "codec/ground.h"

#include "codec/document.h"
#include "codec/scheme.h"

#include <cmath>

namespace toft::codec {

namespace {

/// JSON has no word for infinity: null says that there is no bound.
Json figure(double value) { return std::isfinite(value) ? Json(rounded(value)) : Json(); }
Json figure(const std::optional<double>& value) { return value ? figure(*value) : Json(); }

template <class T, class Write>
Json list(const std::vector<T>& items, const Write& write) {
    Json out = Json::array();
    for (const T& item : items) out.push_back(write(item));
    return out;
}

Json range(double low, double high) { return {{"low", figure(low)}, {"high", figure(high)}}; }

Json soil_json(const answer::SoilAnswer& soil) {
    return {{"known_by", soil.known_by},
            {"verdict", soil.verdict.empty() ? Json() : Json(soil.verdict)},
            {"says", soil.says},
            {"misfit_percent", figure(soil.misfit_percent)},
            {"layers", list(soil.strata,
                            [](const answer::StratumAnswer& s) {
                                const Json thickness = s.best_m ? Json{{"low", figure(s.low_m)},
                                                                       {"best", figure(s.best_m)},
                                                                       {"high", figure(s.high_m)}}
                                                                : Json();
                                return Json{{"resistivity_ohm_m",
                                             {{"low", figure(s.low_ohm_m)},
                                              {"best", figure(s.best_ohm_m)},
                                              {"high", figure(s.high_ohm_m)}}},
                                            {"thickness_m", thickness}};
                            })},
            {"readings", list(soil.readings, [](const answer::SoilReadingAnswer& r) {
                 return Json{{"array", r.array},
                             {"spacing_m", figure(r.spacing_m)},
                             {"apparent_ohm_m", figure(r.apparent_ohm_m)},
                             {"fitted_ohm_m", figure(r.fitted_ohm_m)},
                             {"off_percent", figure(r.off_percent)},
                             {"odd", r.odd}};
             })}};
}

Json target_json(const answer::RodTargetAnswer& target) {
    return {{"target_ohm", figure(target.target_ohm)},
            {"why", target.why},
            {"says", target.says},
            {"choices", list(target.choices, [](const answer::RodChoiceAnswer& c) {
                 return Json{{"rods", c.rods},
                             {"length_m", figure(c.length_m)},
                             {"spacing_m", figure(c.spacing_m)},
                             {"high_ohm", figure(c.high_ohm)},
                             {"net_price", figure(c.price)}};
             })}};
}

Json electrode_json(const answer::GroundSideAnswer& side) {
    Json read;
    if (side.read_ohm) {
        read = {{"resistance_ohm", figure(side.read_ohm)},
                {"error_ohm", figure(side.read_error_ohm)},
                {"says", side.read_says}};
    }
    Json year = range(side.year.low_ohm, side.year.high_ohm);
    year["low_when"] = side.year.low_when;
    year["high_when"] = side.year.high_when;
    return {{"what", side.electrode_words},
            {"resistance_ohm", year},
            {"fall_of_potential", read},
            {"by_length", list(side.over_length,
                               [](const answer::RodPointAnswer& p) {
                                   return Json{{"length_m", figure(p.length_m)},
                                               {"low_ohm", figure(p.low_ohm)},
                                               {"high_ohm", figure(p.high_ohm)}};
                               })},
            {"targets", list(side.targets, target_json)}};
}

Json separation_json(const answer::SeparationAnswer& s) {
    return {{"distance_m", figure(s.distance_m)},
            {"needed_m", figure(s.needed_m)},
            {"lift_v", figure(s.lift_v)},
            {"house_radius_m", figure(s.house_radius_m)},
            {"transferred", range(s.transferred_low, s.transferred_high)},
            {"apart_as_far_as_known", s.island},
            {"bridges", list(s.bridges, [](const answer::BridgeAnswer& b) {
                 return Json{{"what", b.what},
                             {"says", b.says},
                             {"joins", b.joins},
                             {"distance_m", figure(b.distance_m)}};
             })}};
}

Json way_json(const answer::LostNeutralWayAnswer& way) {
    return {{"way", way.way},
            {"volts", range(way.low_v, way.high_v)},
            {"volts_if_power_kept", figure(way.stiff_v)},
            {"electrode_a", range(way.electrode_low_a, way.electrode_high_a)},
            {"soil_warmer_k", figure(way.warmer_k)},
            {"dries_the_soil", way.dries},
            {"says", way.says},
            {"body_ma", list(way.body,
                             [](const answer::BodyAnswer& b) {
                                 Json json = range(b.low_ma, b.high_ma);
                                 json["condition"] = b.condition;
                                 return json;
                             })},
            {"by_load", list(way.over_load, [](const answer::LostNeutralPointAnswer& p) {
                 return Json{{"load_w", figure(p.load_w)},
                             {"low_v", figure(p.low_v)},
                             {"high_v", figure(p.high_v)}};
             })}};
}

Json lost_neutral_json(const answer::LostNeutralAnswer& lost) {
    if (!lost.applies) return {{"applies", false}};
    Json earth = range(lost.earth_low_ohm, lost.earth_high_ohm);
    earth["known_by"] = lost.earth_known_by;
    return {{"applies", true},         {"load_w", figure(lost.load_w)},
            {"phases", lost.phases},   {"house_earth_ohm", earth},
            {"marks_v", lost.marks_v}, {"ways", list(lost.ways, way_json)}};
}

}  // namespace

std::string write_ground(const answer::GroundAnswer& g) {
    const Json sides = list(g.sides, [](const answer::GroundSideAnswer& side) {
        return Json{{"building", side.building},
                    {"electrode", electrode_json(side)},
                    {"separation", separation_json(side.separation)},
                    {"lost_neutral", lost_neutral_json(side.lost_neutral)}};
    });
    const Json asked = list(g.asked, [](const answer::UnknownAnswer& u) {
        Json json = range(u.low, u.high);
        json["fact"] = u.fact;
        json["says"] = u.says;
        json["unit"] = u.unit;
        return json;
    });
    const Json json{{"format", "toft-ground/1"}, {"job", g.job},   {"soil", soil_json(g.soil)},
                    {"buildings", sides},        {"asked", asked}, {"cautions", g.cautions}};
    return json.dump(2) + "\n";
}

}  // namespace toft::codec
