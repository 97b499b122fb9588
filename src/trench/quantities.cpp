#include "trench/quantities.h"

#include "base/pi.h"

#include <algorithm>
#include <cmath>

namespace toft::trench {

namespace {

/// Ducts of one diameter are one line.
void add_duct(std::vector<DuctLength>& ducts, const DuctLength& more) {
    for (DuctLength& one : ducts) {
        if (one.outer != more.outer) continue;
        one.length += more.length;
        one.to_buy += more.to_buy;
        return;
    }
    ducts.push_back(more);
    std::sort(ducts.begin(), ducts.end(),
              [](const DuctLength& a, const DuctLength& b) { return a.outer < b.outer; });
}

}  // namespace

Quantities quantities_of(const tables::TrenchSizes& sizes, const Section& section,
                         const std::vector<Lying>& lying, Metres length) {
    Quantities q;
    q.length = length;
    q.surface = section.width * length;
    q.dug = q.surface * section.depth;
    q.spoil = q.dug * (1 + sizes.bulking.value);
    SquareMetres things;
    for (const Lying& one : lying) {
        things += one.across * one.across * (pi / 4);
        const bool duct = one.kind == Kind::duct || one.kind == Kind::data;
        if (!duct || one.there) continue;
        add_duct(q.ducts, {one.across, length, length * (1 + sizes.duct_waste.value)});
    }
    q.sand = (section.width * section.sand - things) * length;
    q.left_over = (q.sand + things * length) * (1 + sizes.bulking.value);
    q.sand_to_buy = q.sand * (1 + sizes.sand_waste.value);
    q.sand_kg = q.sand_to_buy.number() * sizes.sand_kg_m3.value;
    q.tape = length * static_cast<double>(section.tapes);
    q.tape_to_buy = q.tape * (1 + sizes.tape_waste.value);
    return q;
}

Quantities sum(const Quantities& a, const Quantities& b) {
    Quantities all = a;
    all.length += b.length;
    all.dug += b.dug;
    all.spoil += b.spoil;
    all.left_over += b.left_over;
    all.sand += b.sand;
    all.sand_to_buy += b.sand_to_buy;
    all.sand_kg += b.sand_kg;
    all.tape += b.tape;
    all.tape_to_buy += b.tape_to_buy;
    all.surface += b.surface;
    for (const DuctLength& duct : b.ducts) add_duct(all.ducts, duct);
    return all;
}

int bags(double kg, double kg_a_bag) {
    return kg > 0 ? static_cast<int>(std::ceil(kg / kg_a_bag - 1e-9)) : 0;
}

}  // namespace toft::trench
