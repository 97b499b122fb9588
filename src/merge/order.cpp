#include "merge/order.h"

#include <algorithm>

namespace toft::merge {

namespace {

using Place = std::optional<std::size_t> Item::*;
using Line = std::vector<const Item*>;

Line sorted_by(Place side, const std::vector<Item>& items) {
    Line line;
    for (const Item& item : items) {
        if (item.*side) line.push_back(&item);
    }
    std::sort(line.begin(), line.end(),
              [side](const Item* a, const Item* b) { return *(a->*side) < *(b->*side); });
    return line;
}

bool shared(const Item* item) { return item->mine && item->theirs; }

Line only_shared(const Line& line, bool with_base) {
    Line kept;
    for (const Item* item : line) {
        if (shared(item) && (!with_base || item->base)) kept.push_back(item);
    }
    return kept;
}

bool moved(const Line& line) {
    const Line kept = only_shared(line, true);
    return !std::is_sorted(kept.begin(), kept.end(),
                           [](const Item* a, const Item* b) { return *a->base < *b->base; });
}

/// What one side alone has right after `anchor` (null: before all that both have).
Line run_after(const Item* anchor, const Line& line) {
    Line run;
    const Item* last = nullptr;
    for (const Item* item : line) {
        if (shared(item)) {
            last = item;
        } else if (last == anchor) {
            run.push_back(item);
        }
    }
    return run;
}

/// The same whichever side is called mine.
std::string text_of(const Item* item, const Json& mine, const Json& theirs) {
    if (!item->mine) return theirs[*item->theirs].dump();
    if (!item->theirs) return mine[*item->mine].dump();
    return std::min(mine[*item->mine].dump(), theirs[*item->theirs].dump());
}

}  // namespace

std::vector<Item> in_order(const std::vector<Item>& items, const Json& mine, const Json& theirs) {
    const Line ours = sorted_by(&Item::mine, items);
    const Line others = sorted_by(&Item::theirs, items);
    Line spine = only_shared(others, false);
    const Line our_spine = only_shared(ours, false);
    if (spine != our_spine && !moved(others)) {
        const auto first = std::mismatch(spine.begin(), spine.end(), our_spine.begin());
        const bool lesser =
            text_of(*first.second, mine, theirs) < text_of(*first.first, mine, theirs);
        if (moved(ours) || lesser) spine = our_spine;
    }
    std::vector<Item> result;
    const auto add = [&](const Line& line) {
        for (const Item* item : line) result.push_back(*item);
    };
    spine.insert(spine.begin(), nullptr);
    for (const Item* anchor : spine) {
        if (anchor) result.push_back(*anchor);
        const Line a = run_after(anchor, ours);
        const Line b = run_after(anchor, others);
        const bool ours_first = !a.empty() && !b.empty() &&
                                text_of(a.front(), mine, theirs) < text_of(b.front(), mine, theirs);
        add(ours_first ? a : b);
        add(ours_first ? b : a);
    }
    return result;
}

}  // namespace toft::merge
