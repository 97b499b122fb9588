#include "earth/foundation.h"

#include "earth/estimating.h"

#include <cmath>

namespace toft::earth {
namespace {

template <class L>
EncasedRod<L> encased(L& ledger, double soil, double concrete, double column) {
    return {given(ledger, "rho", ohm_metres(soil)), given(ledger, "rho.c", ohm_metres(concrete)),
            given(ledger, "L", metres(1.2)), given(ledger, "d", metres(0.016)),
            given(ledger, "D", metres(column))};
}

double encased_resistance(double soil, double concrete, double column) {
    return worked([&](auto& ledger) {
        return encased_rod(ledger, {"R", ""}, encased(ledger, soil, concrete, column)).resistance;
    });
}

template <class L>
FoundationMember<L> member(L& ledger, double soil, double concrete, double length) {
    return {given(ledger, "rho", ohm_metres(soil)), given(ledger, "rho.c", ohm_metres(concrete)),
            given(ledger, "L", metres(length)),     given(ledger, "c", metres(0.05)),
            given(ledger, "z", metres(0.035)),      false};
}

double of_member(double soil, double concrete, double length) {
    return worked([&](auto& ledger) {
        return foundation_member(ledger, {"R", ""}, member(ledger, soil, concrete, length))
            .resistance;
    });
}

TEST(Foundation, RodInConcreteLikeItsSoilIsABareRod) {
    const double bare = joined(plain_soil(), {rod(0, 0, 1.2, 0.016)});
    EXPECT_NEAR(encased_resistance(100, 100, 0.2) / bare, 1, 0.015);
}

TEST(Foundation, ConcreteBetterThanTheSoilHelpsAndWorseHarms) {
    EXPECT_NEAR(encased_resistance(200, 50, 0.2), 92.9, 0.1);
    EXPECT_LT(encased_resistance(200, 50, 0.2), encased_resistance(200, 200, 0.2));
    EXPECT_GT(encased_resistance(200, 400, 0.2), encased_resistance(200, 200, 0.2));
}

TEST(Foundation, MemberFollowsItsSoilAndItsConcrete) {
    EXPECT_GT(of_member(100, 90, 10), of_member(100, 30, 10));
    EXPECT_GT(of_member(200, 90, 10), of_member(100, 90, 10));
    // Concrete like the soil leaves the bars alone in the ground, halved by the surface above.
    EXPECT_NEAR(of_member(100, 100, 10), 100 / (2 * pi * 10) * std::log(20 / 0.035), 1e-9);
}

TEST(Foundation, IsNeverTrustedBehindAMembrane) {
    Silent ledger;
    auto slab = member(ledger, 100, 60, 10);
    EXPECT_EQ(foundation_member(ledger, {"R", ""}, slab).trust, Trust::outside);
    slab.membrane = true;
    EXPECT_EQ(foundation_member(ledger, {"R", ""}, slab).trust, Trust::unsafe);
    EXPECT_TRUE(FoundationMember<Silent>().membrane) << "unknown must count as the worse";
    EXPECT_EQ(encased_rod(ledger, {"R", ""}, encased(ledger, 100, 60, 0.2)).trust, Trust::within);
    EXPECT_EQ(encased_rod(ledger, {"R", ""}, encased(ledger, 100, 60, 0.4)).trust, Trust::outside);
}

TEST(Foundation, TwoBarsActAsOneOfTheirMeanDistance) {
    EXPECT_NEAR(worked([](auto& ledger) {
                    return two_bars(ledger, {"z", ""}, given(ledger, "a", metres(0.006)),
                                    given(ledger, "s", metres(0.2)));
                }),
                std::sqrt(0.0012), 1e-12);
}

}  // namespace
}  // namespace toft::earth
