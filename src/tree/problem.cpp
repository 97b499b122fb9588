#include "tree/problem.h"

#include <algorithm>

namespace toft::tree {

namespace {

/// Beside the axes: rating and phases of what stands before, negative, so that less is worse; which
/// earth arrives; how many runs before cannot bond a building behind them.
enum Extra : std::size_t { rating = axes, phases, island, not_island, unbonded, resources };
static_assert(resources <= spread::most_resources);

constexpr double plenty = 1e9;  ///< no device is rated so high

void set(spread::Change& change, double amount) {
    change.amount = amount;
    change.sets = true;
}

spread::Option option_of(const Choice& c, Depth depth) {
    spread::Option option;
    option.price = c.price;
    for (std::size_t i = 0; i < axes; ++i) {
        option.changes[i].amount = c.uses[i];
        option.changes[i].takes_at_most = c.takes[i];
    }
    const double in = c.scheme.device->rating.number();
    set(option.changes[rating], -in);
    if (depth == Depth::full) option.changes[rating].takes_at_most = -in;
    set(option.changes[phases], -c.scheme.phases);
    option.changes[phases].takes_at_most = -c.scheme.phases;
    const bool on_island = c.earth == Earth::island;
    option.changes[island].takes_at_most = on_island ? spread::no_limit : 0;
    option.changes[not_island].takes_at_most = on_island ? 0 : spread::no_limit;
    option.changes[unbonded].amount = c.bonds ? 0 : 1;
    if (c.asks_bond) option.changes[unbonded].takes_at_most = 0;
    if (!c.own_electrode()) return option;
    const Figures left = figures_of(c.leaves);
    set(option.changes[static_cast<std::size_t>(Axis::ze_working)],
        left[static_cast<std::size_t>(Axis::ze_working)]);
    set(option.changes[static_cast<std::size_t>(Axis::ze_hot)],
        left[static_cast<std::size_t>(Axis::ze_hot)]);
    set(option.changes[island], 1);
    set(option.changes[not_island], 0);
    set(option.changes[unbonded], 0);
    return option;
}

bool banned(const Choice& c, std::size_t place, std::size_t choice, const std::vector<Ban>& bans) {
    return std::any_of(bans.begin(), bans.end(), [&](const Ban& ban) {
        if (ban.place != place) return false;
        if (ban.choice) return *ban.choice == choice;
        return c.scheme.fed_from == site::FedFrom::spare_way;
    });
}

bool bought_all(const Choice& c, const std::vector<price::Item>& bought) {
    return std::all_of(c.once.begin(), c.once.end(), [&](price::Item item) {
        return std::find(bought.begin(), bought.end(), item) != bought.end();
    });
}

}  // namespace

Posed posed(const Tree& tree, const std::vector<RunChoices>& choices, const std::vector<Ban>& bans,
            const std::vector<price::Item>& bought, Depth depth) {
    Posed posed;
    posed.problem.resources = resources;
    posed.problem.at_root[rating] = -plenty;
    posed.problem.at_root[phases] = -3;
    posed.problem.at_root[not_island] = 1;
    for (std::size_t place = 0; place < tree.order.size(); ++place) {
        spread::Branch branch;
        if (tree.order[place].parent != from_house) branch.parent = tree.order[place].parent;
        posed.choice_of.emplace_back();
        for (std::size_t i = 0; i < choices[place].choices.size(); ++i) {
            const Choice& c = choices[place].choices[i];
            if (banned(c, place, i, bans) || !bought_all(c, bought)) continue;
            branch.options.push_back(option_of(c, depth));
            posed.choice_of.back().push_back(i);
        }
        posed.problem.branches.push_back(std::move(branch));
    }
    return posed;
}

}  // namespace toft::tree
