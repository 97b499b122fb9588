#include "spread/plan.h"

#include <algorithm>
#include <numeric>

namespace toft::spread {

namespace {

/// Joins what hangs at a node two by two, in order, until one is left.
std::uint32_t joined(std::vector<Stage>& stages, std::vector<std::uint32_t> parts,
                     std::uint32_t node) {
    if (parts.empty()) return none;
    while (parts.size() > 1) {
        std::vector<std::uint32_t> next;
        for (std::size_t i = 0; i + 1 < parts.size(); i += 2) {
            Stage stage{node, none, parts[i], parts[i + 1], 0};
            stage.covers = stages[parts[i]].covers + stages[parts[i + 1]].covers;
            next.push_back(static_cast<std::uint32_t>(stages.size()));
            stages.push_back(stage);
        }
        if (parts.size() % 2) next.push_back(parts.back());
        parts = std::move(next);
    }
    return parts.front();
}

std::vector<Stage> smallest_first(const std::vector<Stage>& stages) {
    std::vector<std::uint32_t> order(stages.size());
    std::iota(order.begin(), order.end(), 0U);
    std::stable_sort(order.begin(), order.end(), [&](std::uint32_t a, std::uint32_t b) {
        return stages[a].covers < stages[b].covers;
    });
    std::vector<std::uint32_t> place(stages.size());
    for (std::uint32_t i = 0; i < order.size(); ++i) place[order[i]] = i;
    std::vector<Stage> sorted;
    for (const std::uint32_t i : order) {
        Stage stage = stages[i];
        if (stage.left != none) stage.left = place[stage.left];
        if (stage.right != none) stage.right = place[stage.right];
        sorted.push_back(stage);
    }
    return sorted;
}

}  // namespace

std::vector<Stage> planned(const Compact& compact) {
    std::vector<Stage> stages;
    std::vector<std::uint32_t> grown(compact.twigs.size());
    const auto join_children = [&](std::uint32_t node) {
        std::vector<std::uint32_t> parts;
        for (const std::uint32_t t : compact.fed_from(node)) parts.push_back(grown[t]);
        return joined(stages, std::move(parts), node);
    };
    for (auto t = static_cast<std::uint32_t>(compact.twigs.size()); t-- > 0;) {
        const std::uint32_t below = join_children(t);
        const std::uint32_t covers = below == none ? 1 : stages[below].covers + 1;
        grown[t] = static_cast<std::uint32_t>(stages.size());
        stages.push_back({compact.twigs[t].parent, t, below, none, covers});
    }
    join_children(none);
    return smallest_first(stages);
}

}  // namespace toft::spread
