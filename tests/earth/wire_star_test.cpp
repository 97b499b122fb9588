#include "earth/wire_star.h"

#include "earth/estimating.h"
#include "support/catalogue.h"

#include <cmath>

namespace toft::earth {
namespace {

const tables::StarRow& row_of(double arms) {
    for (const tables::StarRow& row : support::catalogue().electrode.stars) {
        if (row.arms == arms) return row;
    }
    throw std::runtime_error("no such star");
}

template <class L>
WireStar<L> star(L& ledger, double arm, double depth) {
    return {given(ledger, "rho", ohm_metres(100)), given(ledger, "l", metres(arm)),
            given(ledger, "a", metres(0.004)), given(ledger, "h", metres(depth))};
}

double star_resistance(double arms, double arm, double depth) {
    return worked([&](auto& ledger) {
        return wire_star(ledger, {"R", ""}, row_of(arms), star(ledger, arm, depth)).resistance;
    });
}

double by_field(int arms, double arm, double depth) {
    std::vector<Wire> wires;
    const double turn = arms == 2 ? pi / 2 : 2 * pi / arms;
    for (int i = 0; i < arms; ++i) {
        wires.push_back({spot(0, 0, depth),
                         spot(arm * std::cos(i * turn), arm * std::sin(i * turn), depth),
                         metres(0.004), 0});
    }
    return joined(plain_soil(), wires, 0.25, 20);
}

TEST(WireStar, ReadsHighAgainstTheFieldTheMoreTheMoreArms) {
    const std::vector<std::pair<int, double>> highest{
        {2, 1.015}, {3, 1.03}, {4, 1.05}, {6, 1.085}, {8, 1.12}};
    for (const auto& [arms, limit] : highest) {
        for (double arm : {3.0, 6.0}) {
            const double ratio = star_resistance(arms, arm, 0.6) / by_field(arms, arm, 0.6);
            EXPECT_GT(ratio, 1.0) << arms << " arms of " << arm;
            EXPECT_LT(ratio, limit) << arms << " arms of " << arm;
        }
    }
}

TEST(WireStar, SaysWhereItCannotBeTrusted) {
    Silent ledger;
    const auto trust = [&](double arm, double depth) {
        return wire_star(ledger, {"R", ""}, row_of(4), star(ledger, arm, depth)).trust;
    };
    EXPECT_EQ(trust(3, 0.6), Trust::within);
    EXPECT_EQ(trust(1, 0.6), Trust::outside);
    EXPECT_EQ(trust(3, 0.01), Trust::unsafe);
}

}  // namespace
}  // namespace toft::earth
