#include "outlook/tolerance_json.h"

#include "codec/scheme.h"
#include "site/words.h"

namespace toft::outlook {

namespace {

using codec::finite;
using codec::Json;
using codec::rounded;

using tolerance::Bound;

Json share_json(const tolerance::Share& share) {
    return {{"holds", rounded(share.holds)}, {"error", rounded(share.error)}};
}

Json varied_json(const tolerance::Varied& v) {
    return {{"fact", v.pointer},
            {"says", v.says},
            {"unit", v.unit},
            {"range", {rounded(v.low), rounded(v.high)}},
            {"likely", rounded(v.likely)},
            {"spread", site::words<site::Spread>()[static_cast<std::size_t>(v.spread)]},
            {"from", tolerance::word_of(v.word)},
            {"basis", v.citation ? Json(basis_word(v.citation->basis)) : Json()}};
}

Json rule_json(const tolerance::RuleOver& r) {
    const auto use = [&](double x) { return r.limited ? finite(x) : Json(); };
    return {{"rule", r.rule->name},
            {"title", r.rule->title},
            {"chance", share_json(r.chance)},
            {"always", r.holds_at_worst},
            {"holds_at_likely", r.holds_at_likely},
            {"use_likely", use(r.likely)},
            {"use_reached", use(r.reached)},
            {"use_worst", use(r.worst)}};
}

Json standing_json(const tolerance::Standing& s) {
    return {{"headroom", finite(s.headroom)},
            {"governed_by", s.governed_by ? Json(s.governed_by->name) : Json()},
            {"sound", s.sound}};
}

Json swing_json(const tolerance::Tolerance& t, const tolerance::Swing& swing) {
    Json json{{"fact", t.varied[swing.varied].pointer},
              {"low", standing_json(swing.low)},
              {"high", standing_json(swing.high)},
              {"moves", nullptr}};
    if (swing.moved == rules::rule_count) return json;
    json["moves"] = {{"rule", rules::rulebook()[swing.moved].info->name},
                     {"use_low", rounded(swing.low.use[swing.moved])},
                     {"use_likely", rounded(t.tornado.likely.use[swing.moved])},
                     {"use_high", rounded(swing.high.use[swing.moved])}};
    return json;
}

Json bounds_json(const std::vector<Bound>& bounds) {
    Json list = Json::array();
    for (const Bound& bound : bounds) {
        list.push_back({{"rule", rules::rulebook()[bound.rule].info->name},
                        {"value", rounded(bound.value)},
                        {"times", rounded(bound.times)}});
    }
    return list;
}

Json farthest_json(const tolerance::Farthest& f) {
    return {{"fact", f.pointer},
            {"says", f.says},
            {"unit", f.unit},
            {"now", rounded(f.now)},
            {"up_to", bounds_json(f.up_to)},
            {"down_to", bounds_json(f.down_to)}};
}

}  // namespace

std::string write_tolerance(const ToleranceAnswer& a) {
    const tolerance::Tolerance& t = a.found;
    Json json{{"format", "toft-tolerance/1"},
              {"job", a.job},
              {"run", a.run},
              {"scheme", a.scheme},
              {"key", a.scheme_key},
              {"robust", share_json(t.robust)},
              {"samples", t.samples},
              {"prepared", t.prepared},
              {"varies", Json::array()},
              {"stays_at_worse_end", Json::array()},
              {"rules", Json::array()},
              {"likely", standing_json(t.tornado.likely)},
              {"swings", Json::array()},
              {"holds_up_to", Json::array()},
              {"notes", a.notes},
              {"cautions", a.cautions}};
    for (const auto& v : t.varied) json["varies"].push_back(varied_json(v));
    for (const auto& s : t.stays) {
        json["stays_at_worse_end"].push_back({{"fact", s.pointer}, {"says", s.says}});
    }
    for (const auto& r : t.rules) json["rules"].push_back(rule_json(r));
    for (const auto& swing : t.tornado.swings) json["swings"].push_back(swing_json(t, swing));
    for (const auto& f : t.farthest) json["holds_up_to"].push_back(farthest_json(f));
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace toft::outlook
