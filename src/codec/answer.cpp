#include "codec/answer.h"

#include "codec/demand.h"
#include "codec/scheme.h"
#include "codec/unknowns.h"
#include "codec/why_tree.h"

namespace toft::codec {

namespace {

Json dropped_json(const answer::DroppedAnswer& d) {
    Json json{{"rule", d.rule}, {"count", d.count}, {"says", d.title}, {"nearest", nullptr}};
    if (!d.nearest_key.empty()) {
        json["nearest"] = {{"key", d.nearest_key}, {"use", rounded(d.nearest_use)}};
    }
    return json;
}

Json feeds_json(const std::vector<answer::FeedAnswer>& feeds) {
    Json all = Json::array();
    for (const answer::FeedAnswer& feed : feeds) {
        Json others = Json::array();
        for (const answer::OtherFeedAnswer& other : feed.others) {
            others.push_back({{"run", other.run},
                              {"from", other.from},
                              {"more", other.more ? finite(*other.more) : Json()},
                              {"proved", other.proved},
                              {"rank", other.rank > 0 ? Json(other.rank) : Json()}});
        }
        all.push_back({{"building", feed.building},
                       {"run", feed.run},
                       {"from", feed.from},
                       {"others", others},
                       {"says", feed.says}});
    }
    return all;
}

Json advice_json(const special::Advice& a) {
    return {{"about", a.about},
            {"asks", a.asks},
            {"says", a.says},
            {"clause", a.footing ? a.footing->clause : "no clause"},
            {"basis", basis_json(a.footing)},
            {"needs_a_person", a.needs_a_person}};
}

std::string text_of(const Json& json, Layout layout = Layout::indented) {
    const int indent = layout == Layout::one_line ? -1 : 2;
    return json.dump(indent, ' ', false, Json::error_handler_t::replace) + "\n";
}

Json line_json(const Line& line) {
    Json json{{"symbol", line.symbol},
              {"meaning", line.meaning},
              {"value", finite(line.value)},
              {"unit", line.unit}};
    if (!line.formula.empty()) json["formula"] = line.formula;
    if (!line.from.empty()) json["from"] = line.from;
    if (line.citation) {
        json["source"] = line.citation->source;
        json["locator"] = line.citation->locator;
        json["basis"] = basis_word(line.citation->basis);
    }
    return json;
}

}  // namespace

std::string write_answer(const answer::Answer& a, Layout layout) {
    Json json;
    json["format"] = "toft-answer/1";
    json["job"] = a.job;
    json["rulebook"] = {{"id", "uk"}, {"edition", a.edition}, {"data_version", a.data_version}};
    json["sound"] = a.sound;
    json["schemes"] = Json::array();
    for (const auto& scheme : a.schemes) json["schemes"].push_back(scheme_json(scheme));
    json["dropped"] = Json::array();
    for (const auto& d : a.dropped) json["dropped"].push_back(dropped_json(d));
    json["unknowns"] = Json::array();
    for (const auto& u : a.unknowns) json["unknowns"].push_back(unknown_json(u));
    json["assumed"] = a.assumed;
    json["demand"] = demand_json(a.demand);
    if (!a.feeds.empty()) json["feeds"] = feeds_json(a.feeds);
    json["why"] = walks_json(a.walks);
    json["advice"] = Json::array();
    for (const special::Advice& advice : a.advice) json["advice"].push_back(advice_json(advice));
    json["cautions"] = a.cautions;
    json["search"] = {
        {"candidates", a.search.candidates},   {"evaluated", a.search.evaluated},
        {"set_aside", a.search.set_aside},     {"sound", a.search.sound},
        {"conditional", a.search.conditional}, {"milliseconds", rounded(a.search.milliseconds)}};
    if (a.search.stopped) json["search"]["stopped"] = true;
    if (a.search.rounds > 0) {
        json["search"]["proved"] = a.search.proved;
        json["search"]["no_way_below"] = rounded(a.search.at_least);
        json["search"]["followed_through"] = a.search.rounds;
        if (a.search.trees > 0) json["search"]["trees"] = a.search.trees;
    }
    json["sources"] = Json::array();
    for (const auto& s : a.sources) {
        json["sources"].push_back({{"key", s.key}, {"title", s.title}, {"basis", s.basis}});
    }
    return text_of(json, layout);
}

std::string write_faults(const Faults& faults, Layout layout) {
    Json json{{"format", "toft-faults/1"}, {"faults", Json::array()}};
    for (const Fault& fault : faults) {
        json["faults"].push_back({{"code", fault.code},
                                  {"pointer", fault.pointer},
                                  {"says", fault.says},
                                  {"nearest", fault.nearest.empty() ? Json() : Json(fault.nearest)},
                                  {"allowed", fault.allowed}});
    }
    return text_of(json, layout);
}

std::string write_working(const answer::Working& working, const std::string& scheme_key) {
    Json json{{"format", "toft-working/1"},     {"scheme", scheme_key},
              {"name", working.name},           {"title", working.title},
              {"value", finite(working.value)}, {"unit", working.unit},
              {"lines", Json::array()}};
    for (const Line& line : working.lines) json["lines"].push_back(line_json(line));
    return text_of(json);
}

}  // namespace toft::codec
