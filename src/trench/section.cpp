#include "trench/section.h"

#include <cmath>

namespace toft::trench {

namespace {

constexpr double width_step = 0.05;  // metres: what somebody digs to

/// Clear distance that is kept between two neighbours.
Metres clear(const tables::TrenchSizes& sizes, const Lying& left, const Lying& right) {
    if (left.kind == Kind::data && right.kind == Kind::data) return metres(0);
    if (left.kind == Kind::data || right.kind == Kind::data) return sizes.data_apart.value;
    if (right.kind == Kind::core) return metres(0);
    return sizes.power_apart.value;
}

Metres stepped_up(Metres width) {
    return metres(width_step * std::ceil(width.number() / width_step - 1e-9));
}

}  // namespace

Section section_of(const tables::Trench& tables, const std::vector<Lying>& lying, Metres cover,
                   Metres layer) {
    const tables::TrenchSizes& sizes = tables.sizes;
    Section s;
    s.cover = cover;
    s.made_good = least(layer, cover);
    s.below = sizes.bedding_below.value;
    std::vector<Metres> middles;
    Metres tallest;
    for (std::size_t i = 0; i < lying.size(); ++i) {
        if (i > 0) s.bundle += clear(sizes, lying[i - 1], lying[i]);
        middles.push_back(s.bundle + lying[i].across / 2);
        s.bundle += lying[i].across;
        tallest = most(tallest, lying[i].across);
    }
    s.depth = cover + tallest + s.below;
    s.sand = s.below + tallest + least(sizes.bedding_above.value, cover - s.made_good);
    s.tape = cover - least(sizes.tape_above.value, cover / 2);
    s.tapes = std::max(1, static_cast<int>(std::ceil(s.bundle / sizes.tape_covers.value - 1e-9)));
    s.width = stepped_up(most(sizes.width.value, s.bundle + 2 * sizes.side_clear.value));
    const Metres left = (s.width - s.bundle) / 2;
    for (std::size_t i = 0; i < lying.size(); ++i) {
        s.placed.push_back({i, left + middles[i], s.depth - s.below - lying[i].across / 2});
    }
    return s;
}

}  // namespace toft::trench
