#include "earth/layered_rod.h"

#include "earth/estimating.h"

namespace toft::earth {
namespace {

template <class L>
LayeredRod<L> layered(L& ledger, const LayeredSoil& soil, double length) {
    return {given(ledger, "rho.1", soil.upper), given(ledger, "rho.2", soil.lower),
            given(ledger, "h", soil.thickness), given(ledger, "L", metres(length)),
            given(ledger, "d", metres(0.016))};
}

double resistance(const LayeredSoil& soil, double length) {
    return worked([&](auto& ledger) {
        return layered_rod(ledger, {"R", ""}, layered(ledger, soil, length)).resistance;
    });
}

Trust trust(const LayeredSoil& soil, double length) {
    Silent ledger;
    return layered_rod(ledger, {"R", ""}, layered(ledger, soil, length)).trust;
}

double over_field(const LayeredSoil& soil, double length) {
    return resistance(soil, length) / joined(soil, {rod(0, 0, length, 0.016)}, 0.1, 24);
}

TEST(LayeredRod, IsUnsafeWhereTheLowerSoilIsWorseAndReadsLowThere) {
    for (const LayeredSoil& soil : {layers(100, 300, 1), layers(50, 500, 1), layers(50, 500, 2)}) {
        for (double length : {1.2, 2.4, 3.6}) {
            EXPECT_EQ(trust(soil, length), Trust::unsafe);
            EXPECT_LT(over_field(soil, length), 0.99) << length;
            EXPECT_GT(over_field(soil, length), 0.7) << length;
        }
    }
}

TEST(LayeredRod, ReadsHighWhereTheLowerSoilIsBetter) {
    for (const LayeredSoil& soil :
         {layers(300, 100, 1), layers(1000, 100, 0.5), layers(500, 50, 1)}) {
        for (double length : {1.2, 2.4, 3.6}) {
            const bool half_through = soil.thickness <= metres(length / 2);
            EXPECT_EQ(trust(soil, length), half_through ? Trust::within : Trust::outside);
            EXPECT_GT(over_field(soil, length), 1.0) << length;
            EXPECT_LT(over_field(soil, length), half_through ? 1.12 : 1.36) << length;
        }
    }
}

TEST(LayeredRod, InEqualLayersIsOneRod) {
    EXPECT_EQ(trust(layers(100, 100, 1), 2.4), Trust::within);
    EXPECT_NEAR(over_field(layers(100, 100, 1), 2.4), 1, 0.015);
    EXPECT_EQ(trust(layers(300, 100, 4), 2.4), Trust::outside);
}

}  // namespace
}  // namespace toft::earth
