#include "merge/likeness.h"

#include <algorithm>
#include <map>
#include <set>

namespace toft::merge {

namespace {

const std::vector<std::string> names{"id", "name", "what"};
constexpr std::size_t longest_list = 2000;  // pairing costs up to the square of it

bool all_have(const std::vector<const Json*>& lists, const std::string& key) {
    for (const Json* list : lists) {
        if (!list) continue;
        for (const Json& item : *list) {
            const auto found = item.find(key);
            if (found == item.end() || !found->is_string()) return false;
        }
    }
    return true;
}

bool any_has(const std::vector<const Json*>& lists, const std::string& key) {
    for (const Json* list : lists) {
        if (!list) continue;
        for (const Json& item : *list) {
            if (item.contains(key)) return true;
        }
    }
    return false;
}

bool unique_ids(const std::vector<const Json*>& lists) {
    for (const Json* list : lists) {
        if (!list) continue;
        std::set<std::string> seen;
        for (const Json& item : *list) {
            if (!seen.insert(item["id"].get<std::string>()).second) return false;
        }
    }
    return true;
}

bool all_objects(const std::vector<const Json*>& lists) {
    bool some = false;
    for (const Json* list : lists) {
        if (!list) continue;
        if (!list->is_array() || list->size() > longest_list) return false;
        for (const Json& item : *list) {
            if (!item.is_object()) return false;
            some = true;
        }
    }
    return some;
}

/// The same but for what they are called.
bool renamed(const Json& a, const Json& b) {
    if (!a.contains("name") || a.size() < 2 || a.size() != b.size()) return false;
    for (const auto& [key, value] : a.items()) {
        if (key != "name" && (!b.contains(key) || !same(value, b[key]))) return false;
    }
    return true;
}

using Places = std::vector<std::size_t>;

std::map<std::string, Places> by_name(const Json& list) {
    std::map<std::string, Places> groups;
    for (std::size_t i = 0; i < list.size(); ++i) groups[called(list[i])].push_back(i);
    return groups;
}

/// Two lists while their items are being paired.
struct Pairing {
    const Json& from;
    const Json& to;
    Pairs pairs = Pairs(from.size());

    /// Pairs items called alike; false when it cannot be told which is which.
    bool group(Places ours, Places theirs) {
        const bool as_many = ours.size() == theirs.size();
        if (ours.size() > 1 || theirs.size() > 1) take_equals(ours, theirs);
        if (ours.empty() || theirs.empty()) return true;
        if (!as_many) return false;
        for (std::size_t i = 0; i < ours.size(); ++i) pairs[ours[i]] = theirs[i];
        return true;
    }

    void take_equals(Places& ours, Places& theirs) {
        for (auto mine = ours.begin(); mine != ours.end();) {
            const auto equal = std::find_if(theirs.begin(), theirs.end(), [&](std::size_t other) {
                return same(from[*mine], to[other]);
            });
            if (equal == theirs.end()) {
                ++mine;
                continue;
            }
            pairs[*mine] = *equal;
            theirs.erase(equal);
            mine = ours.erase(mine);
        }
    }

    /// Pairs what stands at the same place under a new name.
    void renames() {
        if (from.size() != to.size()) return;
        std::set<std::size_t> taken;
        for (const auto& pair : pairs) {
            if (pair) taken.insert(*pair);
        }
        for (std::size_t i = 0; i < from.size(); ++i) {
            if (!pairs[i] && !taken.count(i) && renamed(from[i], to[i])) pairs[i] = i;
        }
    }
};

std::optional<Pairs> pairs_by_place(const Json& from, const Json& to) {
    if (from.size() != to.size()) return std::nullopt;
    Pairs found(from.size());
    for (std::size_t i = 0; i < from.size(); ++i) {
        found[i] = i;
        if (same(from[i], to[i])) continue;
        for (const Json& other : from) {
            if (same(other, to[i])) return std::nullopt;  // it came from another place
        }
    }
    return found;
}

}  // namespace

Told told(const std::vector<const Json*>& lists) {
    if (!all_objects(lists)) return Told::not_at_all;
    if (any_has(lists, "id")) {
        return all_have(lists, "id") && unique_ids(lists) ? Told::by_id : Told::not_at_all;
    }
    if (all_have(lists, "name") || all_have(lists, "what")) return Told::by_name;
    return Told::by_place;
}

std::string called(const Json& item) {
    for (const std::string& name : names) {
        const auto found = item.find(name);
        if (found != item.end() && found->is_string()) return found->get<std::string>();
    }
    return "";
}

std::optional<Pairs> pairs(const Json& from, const Json& to, Told told) {
    if (told == Told::not_at_all) return std::nullopt;
    if (told == Told::by_place) return pairs_by_place(from, to);
    Pairing pairing{from, to};
    auto theirs = by_name(to);
    for (const auto& [name, ours] : by_name(from)) {
        if (!pairing.group(ours, theirs[name])) return std::nullopt;
    }
    if (told == Told::by_name) pairing.renames();
    return pairing.pairs;
}

}  // namespace toft::merge
