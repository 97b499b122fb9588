#include "merge/facts.h"

#include "merge/likeness.h"
#include "merge/order.h"

#include <algorithm>

namespace toft::merge {

namespace {

/// An object that says how well one figure is known: a single fact.
bool is_fact(const Json& object) {
    static constexpr const char* parts[] = {"value", "low", "high", "basis", "spread"};
    for (const auto& entry : object.items()) {
        if (std::find(std::begin(parts), std::end(parts), entry.key()) == std::end(parts)) {
            return false;
        }
    }
    return !object.empty();
}

bool has_facts(const Json* value) { return value && value->is_object() && !is_fact(*value); }
bool is_list(const Json* value) { return value && value->is_array(); }

std::string text_of(const Json* value) { return value ? value->dump() : std::string(); }

std::vector<std::string> keys_of(const Three& three) {
    std::vector<std::string> keys;
    for (const Json* object : {three.base, three.theirs, three.mine}) {
        if (!object || !object->is_object()) continue;
        for (const auto& entry : object->items()) {
            if (std::find(keys.begin(), keys.end(), entry.key()) == keys.end()) {
                keys.push_back(entry.key());
            }
        }
    }
    return keys;
}

/// The three lists at one place, with nothing where there is none.
struct Lists {
    Json none = Json::array();
    const Json& base;
    const Json& mine;
    const Json& theirs;
    explicit Lists(const Three& three)
        : base(is_list(three.base) ? *three.base : none),
          mine(*three.mine),
          theirs(*three.theirs) {}
};

Three three_of(const Item& item, const Lists& lists) {
    return {item.base ? &lists.base[*item.base] : nullptr,
            item.mine ? &lists.mine[*item.mine] : nullptr,
            item.theirs ? &lists.theirs[*item.theirs] : nullptr};
}

/// What both put in: one thing when called alike (and alone so), or when the same.
std::optional<Pairs> both_added(const Lists& lists, Told told, const std::vector<bool>& mine_old,
                                const std::vector<bool>& theirs_old) {
    Json mine = Json::array(), theirs = Json::array();
    std::vector<std::size_t> from, to;
    for (std::size_t i = 0; i < lists.mine.size(); ++i) {
        if (mine_old[i]) continue;
        mine.push_back(lists.mine[i]);
        from.push_back(i);
    }
    for (std::size_t i = 0; i < lists.theirs.size(); ++i) {
        if (theirs_old[i]) continue;
        theirs.push_back(lists.theirs[i]);
        to.push_back(i);
    }
    Pairs all(lists.mine.size());
    if (told == Told::by_place) return mine.empty() ? std::optional(all) : std::nullopt;
    const auto found = pairs(mine, theirs, told);
    if (!found) return std::nullopt;
    for (std::size_t i = 0; i < found->size(); ++i) {
        if ((*found)[i]) all[from[i]] = to[*(*found)[i]];
    }
    return all;
}

std::optional<std::vector<Item>> items_of(const Lists& lists, Told told) {
    const auto mine = pairs(lists.base, lists.mine, told);
    const auto theirs = pairs(lists.base, lists.theirs, told);
    if (!mine || !theirs) return std::nullopt;
    std::vector<Item> items;
    std::vector<bool> mine_old(lists.mine.size()), theirs_old(lists.theirs.size());
    for (std::size_t i = 0; i < lists.base.size(); ++i) {
        items.push_back({i, (*mine)[i], (*theirs)[i]});
        if ((*mine)[i]) mine_old[*(*mine)[i]] = true;
        if ((*theirs)[i]) theirs_old[*(*theirs)[i]] = true;
    }
    const auto added = both_added(lists, told, mine_old, theirs_old);
    if (!added) return std::nullopt;
    for (std::size_t i = 0; i < lists.mine.size(); ++i) {
        if (mine_old[i]) continue;
        items.push_back({std::nullopt, i, (*added)[i]});
        if ((*added)[i]) theirs_old[*(*added)[i]] = true;
    }
    for (std::size_t i = 0; i < lists.theirs.size(); ++i) {
        if (!theirs_old[i]) items.push_back({std::nullopt, std::nullopt, i});
    }
    return items;
}

/// Whether an item is in the merged list: not when one side took out what the other left alone, nor
/// when theirs took it out at all.
bool stays(const Three& item) {
    if (!item.base) return true;
    if (!item.theirs) return false;
    return item.mine || !same(item.base, item.theirs);
}

}  // namespace

std::optional<Json> Facts::merged(const Three& three, const Where& where) {
    const auto [base, mine, theirs] = three;
    const auto kept = [](const Json* value) {
        return value ? std::optional<Json>(*value) : std::nullopt;
    };
    if (same(mine, theirs) || same(base, mine)) return kept(theirs);
    if (same(base, theirs)) return kept(mine);
    if (silent(mine) && silent(theirs)) return std::nullopt;
    if (silent(base) && silent(mine)) return kept(theirs);
    if (silent(base) && silent(theirs)) return kept(mine);
    if (has_facts(mine) && has_facts(theirs) && (silent(base) || has_facts(base))) {
        return objects(three, where);
    }
    if (is_list(mine) && is_list(theirs) && (silent(base) || is_list(base))) {
        if (auto list = lists(three, where)) return list;
    }
    return clash(three, where);
}

Json Facts::objects(const Three& three, const Where& where) {
    Json result = Json::object();
    for (const std::string& key : keys_of(three)) {
        auto value = merged({at(three.base, key), at(three.mine, key), at(three.theirs, key)},
                            at_key(where, key));
        if (value) result[key] = std::move(*value);
    }
    return result;
}

std::optional<Json> Facts::lists(const Three& three, const Where& where) {
    const Lists lists(three);
    const Told how = told({&lists.base, &lists.mine, &lists.theirs});
    const auto items = items_of(lists, how);
    if (!items) return std::nullopt;
    std::vector<Item> staying;
    std::vector<Item> leaving;
    for (const Item& item : *items) {
        (stays(three_of(item, lists)) ? staying : leaving).push_back(item);
    }
    Json result = Json::array();
    for (const Item& item : in_order(staying, lists.mine, lists.theirs)) {
        const Three values = three_of(item, lists);
        const std::size_t index = result.size();
        const Json& named = values.theirs ? *values.theirs : *values.mine;
        auto value = merged(values, at_item(where, named, &index));
        if (value) result.push_back(std::move(*value));
    }
    for (const Item& item : leaving) {
        const Three values = three_of(item, lists);
        if (values.mine && !same(values.base, values.mine)) {
            clash(values, at_item(where, *values.mine, nullptr));
        }
    }
    return result;
}

std::optional<Json> Facts::clash(const Three& three, const Where& where) {
    clashes.push_back({where.pointer, clash_words(where, three.base, three.mine, three.theirs),
                       text_of(three.base), text_of(three.mine), text_of(three.theirs)});
    return three.theirs ? std::optional<Json>(*three.theirs) : std::nullopt;
}

}  // namespace toft::merge
