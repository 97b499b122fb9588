#include "codec/levers.h"

#include "codec/scheme.h"

namespace toft::codec {

namespace {

Json sum_json(const std::optional<double>& pounds) {
    return pounds ? Json(rounded(*pounds)) : Json();
}

Json singly_json(const answer::LeverAnswer& l) {
    Json json = Json::array();
    for (const auto& [place, brings] : l.singly) {
        json.push_back({{"place", place}, {"brings", rounded(brings)}});
    }
    return json;
}

Json lever_json(const answer::LeverAnswer& l) {
    return {{"lever", l.key},
            {"change", l.change},
            {"places", l.places},
            {"singly", singly_json(l)},
            {"brings", l.brings},
            {"opens", l.opens},
            {"saves", l.opens ? Json() : Json(rounded(l.saves))},
            {"cost", sum_json(l.cost)},
            {"cost_says", l.cost_says},
            {"net", sum_json(l.net)},
            {"headroom", rounded(l.headroom)},
            {"dependability", l.dependability},
            {"key", l.scheme_key},
            {"scheme", l.scheme},
            {"price", rounded(l.total)}};
}

}  // namespace

std::string write_levers(const answer::LeversAnswer& a) {
    const bool any = !a.scheme_key.empty();
    Json json{{"format", "toft-levers/1"},
              {"job", a.job},
              {"sound", a.sound},
              {"conditional", a.conditional},
              {"key", any ? Json(a.scheme_key) : Json()},
              {"scheme", any ? Json(a.scheme) : Json()},
              {"price", any ? Json(rounded(a.total)) : Json()},
              {"headroom", any ? Json(rounded(a.headroom)) : Json()},
              {"tried", a.tried},
              {"proved", a.proved},
              {"stopped", a.stopped},
              {"levers", Json::array()},
              {"cautions", a.cautions}};
    for (const answer::LeverAnswer& lever : a.levers) json["levers"].push_back(lever_json(lever));
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace toft::codec
