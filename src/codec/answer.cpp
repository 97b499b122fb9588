#include "codec/answer.h"

#include "codec/demand.h"
#include "codec/object.h"
#include "codec/scheme.h"
#include "codec/unknowns.h"

namespace toft::codec {

namespace {

Json dropped_json(const answer::DroppedAnswer& d) {
    Json json =
        object({{"rule", d.rule}, {"count", d.count}, {"says", d.title}, {"nearest", nullptr}});
    if (!d.nearest_key.empty()) {
        json["nearest"] = object({{"key", d.nearest_key}, {"use", rounded(d.nearest_use)}});
    }
    return json;
}

Json feeds_json(const std::vector<answer::FeedAnswer>& feeds) {
    Json all = Json::array();
    for (const answer::FeedAnswer& feed : feeds) {
        Json others = Json::array();
        for (const answer::OtherFeedAnswer& other : feed.others) {
            others.push_back(object({{"run", other.run},
                                     {"from", other.from},
                                     {"more", other.more ? finite(*other.more) : Json()},
                                     {"proved", other.proved},
                                     {"rank", other.rank > 0 ? Json(other.rank) : Json()}}));
        }
        all.push_back(object({{"building", feed.building},
                              {"run", feed.run},
                              {"from", feed.from},
                              {"others", others},
                              {"says", feed.says}}));
    }
    return all;
}

Json advice_json(const special::Advice& a) {
    return object({{"about", a.about},
                   {"asks", a.asks},
                   {"says", a.says},
                   {"clause", a.footing ? a.footing->clause : "no clause"},
                   {"basis", basis_json(a.footing)},
                   {"needs_a_person", a.needs_a_person}});
}

std::string text_of(const Json& json, Layout layout = Layout::indented) {
    const int indent = layout == Layout::one_line ? -1 : 2;
    return json.dump(indent, ' ', false, Json::error_handler_t::replace) + "\n";
}

Json line_json(const Line& line) {
    Json json = object({{"symbol", line.symbol},
                        {"meaning", line.meaning},
                        {"value", finite(line.value)},
                        {"unit", line.unit}});
    if (!line.formula.empty()) json["formula"] = line.formula;
    if (!line.from.empty()) json["from"] = line.from;
    if (line.citation) {
        json["source"] = line.citation->source;
        json["locator"] = line.citation->locator;
        json["basis"] = basis_word(line.citation->basis);
    }
    return json;
}

/// What begins every answer; the schemes are left to be filled in.
Json head_json(const char* format, const answer::Answer& a) {
    Json json;
    json["format"] = format;
    json["job"] = a.job;
    json["rulebook"] =
        object({{"id", "uk"}, {"edition", a.edition}, {"data_version", a.data_version}});
    json["sound"] = a.sound;
    json["schemes"] = Json::array();
    return json;
}

void add_dropped(const answer::Answer& a, Json& json) {
    json["dropped"] = Json::array();
    for (const auto& d : a.dropped) json["dropped"].push_back(dropped_json(d));
}

Json search_json(const answer::SearchAnswer& s) {
    Json json = object({{"candidates", s.candidates},
                        {"evaluated", s.evaluated},
                        {"set_aside", s.set_aside},
                        {"sound", s.sound},
                        {"conditional", s.conditional},
                        {"milliseconds", rounded(s.milliseconds)}});
    if (s.stopped) json["stopped"] = true;
    if (s.rounds > 0) {
        json["proved"] = s.proved;
        json["no_way_below"] = rounded(s.at_least);
        json["followed_through"] = s.rounds;
        if (s.trees > 0) json["trees"] = s.trees;
    }
    return json;
}

}  // namespace

std::string write_answer(const answer::Answer& a, Layout layout) {
    Json json = head_json("toft-answer/1", a);
    for (const auto& scheme : a.schemes) json["schemes"].push_back(scheme_json(scheme));
    add_dropped(a, json);
    json["unknowns"] = Json::array();
    for (const auto& u : a.unknowns) json["unknowns"].push_back(unknown_json(u));
    json["assumed"] = a.assumed;
    json["demand"] = demand_json(a.demand);
    if (!a.feeds.empty()) json["feeds"] = feeds_json(a.feeds);
    json["why"] = walks_json(a.walks);
    json["advice"] = Json::array();
    for (const special::Advice& advice : a.advice) json["advice"].push_back(advice_json(advice));
    json["cautions"] = a.cautions;
    json["search"] = search_json(a.search);
    json["sources"] = Json::array();
    for (const auto& s : a.sources) {
        json["sources"].push_back(object({{"key", s.key}, {"title", s.title}, {"basis", s.basis}}));
    }
    return text_of(json, layout);
}

std::string write_first(const answer::FirstAnswer& first) {
    const answer::Answer& a = first.answer;
    Json json = head_json("toft-first/1", a);
    for (const auto& scheme : a.schemes) json["schemes"].push_back(brief_json(scheme));
    const answer::SchemeAnswer* chosen = first.chosen ? &a.schemes[*first.chosen] : nullptr;
    json["chosen"] = chosen ? scheme_json(*chosen) : Json();
    json["chosen_key"] = chosen ? Json(chosen->key) : Json();
    add_dropped(a, json);
    json["assumed"] = a.assumed;
    json["demand"] = demand_json(a.demand);
    if (!a.feeds.empty()) json["feeds"] = feeds_json(a.feeds);
    json["cautions"] = a.cautions;
    json["proved"] = a.search.proved;
    json["stopped"] = a.search.stopped;
    json["search"] = search_json(a.search);
    return text_of(json, Layout::one_line);
}

std::string write_faults(const Faults& faults, Layout layout) {
    Json json = object({{"format", "toft-faults/1"}, {"faults", Json::array()}});
    for (const Fault& fault : faults) {
        json["faults"].push_back(
            object({{"code", fault.code},
                    {"pointer", fault.pointer},
                    {"says", fault.says},
                    {"nearest", fault.nearest.empty() ? Json() : Json(fault.nearest)},
                    {"allowed", fault.allowed}}));
    }
    return text_of(json, layout);
}

std::string write_working(const answer::Working& working, const std::string& scheme_key) {
    Json json = object({{"format", "toft-working/1"},
                        {"scheme", scheme_key},
                        {"name", working.name},
                        {"title", working.title},
                        {"value", finite(working.value)},
                        {"unit", working.unit},
                        {"lines", Json::array()}});
    for (const Line& line : working.lines) json["lines"].push_back(line_json(line));
    return text_of(json);
}

}  // namespace toft::codec
