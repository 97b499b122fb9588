#pragma once
// Random jobs and random edits of them. Every number is new, so that any can be looked for.

#include "merge/same.h"

#include <rapidcheck.h>

#include <set>
#include <string>

namespace toft::merge::testing {

/// Makes numbers that were never there before.
struct Mint {
    int last = 1000;
    Json number() { return ++last; }
    std::string name(const std::string& stem) { return stem + "-" + std::to_string(++last); }
};

inline int upto(int most) { return *rc::gen::inRange(0, most + 1); }

inline Json fact(Mint& mint) {
    if (upto(1)) return mint.number();
    return {{"value", mint.number()}, {"basis", "declared"}};
}

inline Json circuit(Mint& mint) {
    return {{"name", mint.name("circuit")}, {"kind", "socket radial"}, {"load_w", fact(mint)}};
}

inline Json metal(Mint& mint) {
    static const std::vector<std::string> kinds{"water pipe", "gas pipe", "fence"};
    return {{"what", kinds[static_cast<std::size_t>(upto(2))]}, {"distance_m", fact(mint)}};
}

inline Json leg(Mint& mint) {
    return {{"method", "buried direct"}, {"length_m", mint.number()}, {"depth_m", fact(mint)}};
}

inline Json some(Mint& mint, Json (*make)(Mint&), int least = 0) {
    Json list = Json::array();
    for (int i = upto(3); i >= -least + 1; --i) list.push_back(make(mint));
    return list;
}

inline Json building(Mint& mint) {
    Json made{{"id", mint.name("building")}, {"load_w", fact(mint)}, {"reach_m", fact(mint)}};
    if (upto(2)) made["circuits"] = some(mint, circuit);
    if (upto(2)) made["metalwork"] = some(mint, metal);
    if (upto(1)) made["at_m"] = {mint.number(), mint.number()};
    return made;
}

inline Json run(Mint& mint) {
    return {{"id", mint.name("run")}, {"from", "house"}, {"legs", some(mint, leg, 1)}};
}

inline Json job(Mint& mint) {
    return {{"format", "toft-job/1"},
            {"intake", {{"earthing", "TN-C-S"}, {"ze_ohm", fact(mint)}, {"demand_a", fact(mint)}}},
            {"ground", {{"layers", some(mint, leg)}}},
            {"buildings", some(mint, building, 1)},
            {"runs", some(mint, run, 1)}};
}

inline Json& any_of(Json& list) {
    return list[static_cast<std::size_t>(upto(static_cast<int>(list.size()) - 1))];
}

inline void drop_one(Json& list) {
    if (!list.empty())
        list.erase(static_cast<std::size_t>(upto(static_cast<int>(list.size()) - 1)));
}

inline void set_in_one(Json& list, const char* key, Mint& mint) {
    if (!list.empty()) any_of(list)[key] = fact(mint);
}

inline void swap_two(Json& list) {
    if (list.size() > 1) std::swap(any_of(list), any_of(list));
}

inline void edit_building(Json& one, Mint& mint) {
    switch (upto(9)) {
        case 0:
            one["load_w"] = fact(mint);
            break;
        case 1:
            one.erase("reach_m");
            break;
        case 2:
            one["reach_m"] = fact(mint);
            break;
        case 3:
            one["at_m"] = {mint.number(), mint.number()};
            break;
        case 4:
            one["circuits"].push_back(circuit(mint));
            break;
        case 5:
            drop_one(one["circuits"]);
            break;
        case 6:
            set_in_one(one["circuits"], "load_w", mint);
            break;
        case 7:
            one["metalwork"].push_back(metal(mint));
            break;
        case 8:
            drop_one(one["metalwork"]);
            break;
        default:
            set_in_one(one["metalwork"], "distance_m", mint);
    }
}

inline void edit_legs(Json& legs, Mint& mint) {
    const int how = upto(2);
    if (how == 0) set_in_one(legs, "depth_m", mint);
    if (how == 1) legs.push_back(leg(mint));
    if (how == 2) drop_one(legs);
}

/// One change by hand, somewhere.
inline void edit(Json& job, Mint& mint) {
    Json& buildings = job["buildings"];
    const int where = upto(16);
    if (where < 10 && !buildings.empty()) edit_building(any_of(buildings), mint);
    if (where == 10) buildings.push_back(building(mint));
    if (where == 11) drop_one(buildings);
    if (where == 12) swap_two(buildings);
    if (where > 12 && where < 16) edit_legs(any_of(job["runs"])["legs"], mint);
    if (where == 16) job["intake"]["ze_ohm"] = fact(mint);
}

inline Json edited(Json job, Mint& mint, int edits) {
    for (int i = 0; i < edits; ++i) edit(job, mint);
    return job;
}

/// Whether the buildings and metalwork that `side` kept stand in the order of `base`.
inline bool in_order_of(const Json& base, const Json& side) {
    std::size_t last = 0;
    for (const Json& kept : side["buildings"]) {
        for (std::size_t i = 0; i < base["buildings"].size(); ++i) {
            if (base["buildings"][i]["id"] != kept["id"]) continue;
            if (i < last) return false;
            last = i;
        }
    }
    return true;
}

/// Every number that a value holds.
inline void numbers(const Json& value, std::set<int>& found) {
    if (value.is_number()) found.insert(value.get<int>());
    if (value.is_structured()) {
        for (const Json& part : value) numbers(part, found);
    }
}

inline std::set<int> numbers(const Json& value) {
    std::set<int> found;
    numbers(value, found);
    return found;
}

inline std::set<int> numbers(const std::string& text) {
    return text.empty() ? std::set<int>{} : numbers(Json::parse(text));
}

}  // namespace toft::merge::testing
