#include "field/contact.h"

#include "support/grounds.h"

#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::field {
namespace {

Wire wire(const Spot& from, const Spot& to, int electrode) {
    return {from, to, metres(0.01), electrode};
}

std::size_t found(const Wire& a, const Wire& b) { return contacts({a, b}).size(); }

TEST(Contact, WiresThatCrossTouchOrLieInEachOtherAreFound) {
    const Wire level = wire(spot(0, 0, 1), spot(4, 0, 1), 0);
    EXPECT_EQ(found(level, wire(spot(2, -1, 0.5), spot(2, 1, 1.5), 1)), 1u) << "cross";
    EXPECT_EQ(found(level, wire(spot(2, 0.015, 0), spot(2, 0.015, 3), 1)), 1u) << "graze";
    EXPECT_EQ(found(level, wire(spot(1, 0, 1), spot(9, 0, 1), 1)), 1u) << "lie in each other";
    EXPECT_EQ(found(level, wire(spot(4, 0, 1), spot(5, 3, 2), 1)), 1u) << "end to end";
    EXPECT_EQ(found(level, wire(spot(3, 0, 1), spot(3, 0, 2), 1)), 1u) << "end on side";
    EXPECT_EQ(found(rod(0, 0, 2, 0.016, 0), rod(0, 0, 1, 0.016, 1)), 1u) << "same place";
}

TEST(Contact, WiresThatKeepApartOrAreOneElectrodeAreNot) {
    const Wire level = wire(spot(0, 0, 1), spot(4, 0, 1), 0);
    EXPECT_EQ(found(level, wire(spot(2, 0.025, 0), spot(2, 0.025, 3), 1)), 0u);
    EXPECT_EQ(found(level, wire(spot(4.1, 0, 1), spot(9, 0, 1), 1)), 0u);
    EXPECT_EQ(found(level, wire(spot(5, -1, 1), spot(5, 1, 1), 1)), 0u) << "lines would cross";
    EXPECT_EQ(found(level, wire(spot(2, -1, 0.5), spot(2, 1, 1.5), 0)), 0u);
}

TEST(Contact, EachPairOfElectrodesIsToldOnceByNumber) {
    auto wires = ring_wires(spot(0, 0, 0.5), metres(2), metres(0.004), 12, 2);
    wires.push_back(wire(spot(-2, 0.1, 0.5), spot(2, 0.1, 0.5), 0));
    wires.push_back(wire(spot(5, 0, 0.5), spot(6, 0, 0.5), 1));
    const Faults faults = contacts(wires);
    ASSERT_EQ(faults.size(), 1u);
    EXPECT_NE(faults[0].says.find("electrodes 0 and 2 touch"), std::string::npos);
}

RC_GTEST_PROP(Contact, IsWhatManyPlacesAlongBothWiresFind, ()) {
    const auto place = [] {
        const auto number = [] { return *rc::gen::inRange(0, 100) / 100.0; };
        return spot(number(), number(), number());
    };
    const Wire a = wire(place(), place(), 0);
    const Wire b = wire(place(), place(), 1);
    double best = 1e9;
    for (int i = 0; i <= 100; ++i) {
        for (int j = 0; j <= 100; ++j) {
            const Vector p = vector_of(a.from) + i / 100.0 * (vector_of(a.to) - vector_of(a.from));
            const Vector q = vector_of(b.from) + j / 100.0 * (vector_of(b.to) - vector_of(b.from));
            best = std::min(best, std::sqrt(dot(p - q, p - q)));
        }
    }
    if (best < 0.02) RC_ASSERT(found(a, b) == 1u);
    if (best > 0.04) RC_ASSERT(found(a, b) == 0u);
}

}  // namespace
}  // namespace toft::field
