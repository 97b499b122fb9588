#include "device/selectivity.h"

#include "device/curve.h"
#include "support/catalogue.h"
#include "support/device_draws.h"
#include "support/draws.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace toft::device {
namespace {

using support::any_current;
using support::any_device;
using support::any_larger_than;
using support::any_smaller_device;
using support::breaker;
using support::fuse;
using tables::Device;

Selectivity<Silent> judged(const Device& up, const Device& down, double prospective) {
    Silent silent;
    return selectivity(silent, Pair{up, down}, amperes(prospective));
}

Selective verdict(const Device& up, const Device& down, double prospective) {
    return judged(up, down, prospective).verdict;
}

double reach(const Device& up, const Device& down, double prospective = 6000) {
    return judged(up, down, prospective).to.number();
}

const Device& rcbo(const char* curve, double rating) {
    return support::device("BS EN 61009", curve, rating);
}

const Device& industrial(double rating) { return support::device("BS 88-2", "", rating); }

TEST(Selectivity, GgFusesAreSelectiveWhereTheirRatingsAreFarEnoughApart) {
    // 1.6:1 in rated current, a fuse maker's application note; 63 over 40 and 100 over 63 are such
    // steps of the standard ratings.
    EXPECT_EQ(verdict(fuse(100), fuse(63), 16000), Selective::selective);
    EXPECT_EQ(verdict(fuse(80), industrial(50), 16000), Selective::selective);
    EXPECT_EQ(verdict(industrial(63), industrial(40), 16000), Selective::selective);
    EXPECT_NE(verdict(fuse(100), industrial(80), 16000), Selective::selective);
    EXPECT_NE(verdict(fuse(80), fuse(63), 16000), Selective::selective);
}

TEST(Selectivity, AFuseIsNeverHeldToMoreThanTheOneBelowItCanBreak) {
    const auto s = judged(fuse(100), industrial(63), 20000);
    EXPECT_EQ(s.verdict, Selective::partly);
    EXPECT_EQ(s.to, kiloamperes(16.5));
}

TEST(Selectivity, ABreakerOverABreakerEndsWhereItsMagneticBandBegins) {
    // BS EN 60898-1 Table 7: a type B may trip at once from 3 In, a type C from 5 In.
    EXPECT_NEAR(reach(breaker("B", 63), rcbo("B", 16)), 3 * 63, 1e-9);
    EXPECT_NEAR(reach(breaker("C", 63), rcbo("B", 16)), 5 * 63, 1e-9);
    EXPECT_EQ(verdict(breaker("B", 63), rcbo("B", 16), 1000), Selective::partly);
    EXPECT_EQ(verdict(breaker("B", 32), rcbo("B", 32), 1000), Selective::not_selective);
    EXPECT_EQ(verdict(breaker("B", 32), rcbo("B", 20), 1000), Selective::not_selective);
}

TEST(Selectivity, AFuseOverABreakerEndsWhereTheFuseMayMeltInATenthOfASecond) {
    // IEC 60269-1 Table 3: 80 A holds 610 A, 100 A holds 820 A for 0.1 s.
    EXPECT_NEAR(reach(fuse(80), rcbo("B", 32)), 610, 1e-9);
    EXPECT_NEAR(reach(fuse(100), rcbo("B", 40)), 820, 1e-9);
    EXPECT_EQ(verdict(fuse(100), rcbo("B", 40), 1500), Selective::partly);
}

TEST(Selectivity, UpToThreeKiloamperesASmallerClassLimitServes) {
    // 18000 A2s of a B32 up to 3 kA do not melt 100 A; at 4.5 kA it lets through 32000 A2s.
    EXPECT_NEAR(reach(fuse(100), rcbo("B", 32)), 3000, 1e-6);
    EXPECT_EQ(verdict(fuse(100), rcbo("B", 32), 1500), Selective::selective);
    EXPECT_EQ(verdict(fuse(100), rcbo("B", 32), 4000), Selective::partly);
}

TEST(Selectivity, ALargeFuseIsNotMeltedByTheEnergyOfABreakersClass) {
    // 160 A: at least 64000 A2s; B32 of 6 kA lets through at most 45000 A2s.
    EXPECT_EQ(verdict(industrial(160), breaker("B", 32, 6), 6000), Selective::selective);
    EXPECT_EQ(verdict(industrial(160), breaker("B", 32, 10), 6000), Selective::partly);
}

TEST(Selectivity, OverloadsOfWhichTheTablesPromiseNothingAreToldAsAGap) {
    // 40 A takes up to 120 s at 102 A; an 80 A fuse holds 100 A for long, and 215 A for 10 s.
    const auto s = judged(fuse(80), rcbo("B", 40), 500);
    EXPECT_EQ(s.verdict, Selective::partly);
    EXPECT_EQ(s.gap_from, amperes(100));
    EXPECT_EQ(s.gap_to, amperes(200));
    EXPECT_NEAR(s.to.number(), 610, 1e-9);
    EXPECT_FALSE(judged(fuse(80), rcbo("B", 32), 500).gap());
}

TEST(Selectivity, OfAnOldCutOutNothingIsKnown) {
    const auto& cut_out = support::device("BS 1361", "", 100);
    EXPECT_EQ(verdict(cut_out, rcbo("B", 16), 1000), Selective::not_known);
    EXPECT_EQ(verdict(cut_out, rcbo("B", 16), 100), Selective::selective);
    EXPECT_EQ(verdict(support::device("BS 3036", "", 30), rcbo("B", 6), 1000),
              Selective::not_known);
}

TEST(Selectivity, OfAFuseWhoseCurveEndsAtFiveSecondsNothingIsKnownEither) {
    EXPECT_EQ(verdict(fuse(100), support::device("BS 1361", "", 80), 2000), Selective::not_known);
}

TEST(Selectivity, EachVerdictHasItsWordAndItsReason) {
    std::set<std::string> words;
    for (const auto v : {Selective::selective, Selective::partly, Selective::not_selective,
                         Selective::not_known}) {
        words.insert(selective_word(v));
    }
    EXPECT_EQ(words.size(), 4u);
    EXPECT_NE(std::string(judged(fuse(80), rcbo("B", 32), 6000).why), "");
}

/// The two bands compared at one current in time rather than energy, by the rows themselves.
bool surely(const Device& up, const Device& down, double amps) {
    if (up.holds.empty() || down.breaking.value.number() < amps) return false;
    if (amps <= up.holds.front().current.value.number()) return true;
    Silent silent;
    double slow = operating_time(silent, {"t", ""}, down, amperes(amps)).number();
    for (const tables::CurvePoint& p : down.trips) {
        const double at = p.current.value.number();
        if (std::isinf(slow) && amps >= at) slow = p.time.number() * (at / amps) * (at / amps);
    }
    double quick = 0;
    for (const tables::CurvePoint& p : up.holds) {
        const double at = p.current.value.number();
        if (amps <= at) quick = std::max(quick, p.time.number() * (at / amps) * (at / amps));
    }
    if (slow <= quick * (1 + 1e-9)) return true;
    const double through = let_through(silent, {"I2t", ""}, down, amperes(amps)).number();
    return up.melting && through <= up.melting->value.number() * (1 + 1e-9);
}

bool by_ratio(const Device& up, const Device& down) {
    return up.fuse_ratio && down.fuse_ratio && up.rating.number() >= 1.56 * down.rating.number();
}

/// What a pair is called sure of at a current.
bool called_sure(const Selectivity<Silent>& s, double amps) {
    return amps <= s.to.number() && !(amps > s.gap_from.number() && amps < s.gap_to.number());
}

RC_GTEST_PROP(Selectivity, NoCurrentIsCalledSureAtWhichTheBandsAreNot, ()) {
    const Device& up = any_device();
    const Device& down = any_device();
    RC_PRE(!by_ratio(up, down));
    const auto s = judged(up, down, any_current());
    const double curve = down.points.front().current.value.number();
    for (double amps = 1; amps < 5e4; amps *= 1.003) {
        // Between two overload currents the comparison below knows the slower one only.
        if (amps < curve && amps > up.holds.front().current.value.number()) continue;
        if (!called_sure(s, amps)) continue;
        RC_LOG() << up.standard << up.curve << up.rating.number() << " over " << down.standard
                 << down.curve << down.rating.number() << " at " << amps << "\n";
        RC_ASSERT(surely(up, down, amps));
    }
}

RC_GTEST_PROP(Selectivity, PastItsEndTheBandsAreNoLongerSure, ()) {
    const Device& up = any_device();
    const Device& down = any_device();
    RC_PRE(!by_ratio(up, down));
    const auto s = judged(up, down, 5e4);
    RC_PRE(s.to > amperes(0));
    RC_ASSERT(!surely(up, down, s.to.number() * 1.0001));
}

/// Anything that heats as a linear body does: its temperature at a steady current, over the square
/// of the current, by time.
struct Body {
    double share[3];
    double constant[3];
    double at(double t) const {
        double g = 0;
        for (int i = 0; i < 3; ++i) g += share[i] * (1 - std::exp(-t / constant[i]));
        return g;
    }
};

/// A random one that just bears every hold of the device, and its least melting energy however
/// sudden; its limit is 1.
Body any_body_bearing(const Device& device) {
    Body body;
    double steepest = 0;
    for (int i = 0; i < 3; ++i) {
        body.share[i] = support::number_between(0.01, 1);
        body.constant[i] = std::pow(10.0, support::number_between(-2, 3.5));
        steepest += body.share[i] / body.constant[i];
    }
    double hottest = device.melting ? device.melting->value.number() * steepest : 0;
    for (const tables::CurvePoint& p : device.holds) {
        hottest = std::max(hottest, squared(p.current.value).number() * body.at(p.time.number()));
    }
    for (double& s : body.share) s /= hottest;
    return body;
}

/// The slowest that operates at each conventional current in its time.
Body any_body_tripping(const Device& device) {
    Body body;
    for (int i = 0; i < 3; ++i) {
        body.share[i] = support::number_between(0.01, 1);
        body.constant[i] = std::pow(10.0, support::number_between(0, 3.5));
    }
    double coolest = 1e300;
    for (const tables::CurvePoint& p : device.trips) {
        coolest = std::min(coolest, squared(p.current.value).number() * body.at(p.time.number()));
    }
    for (double& s : body.share) s /= coolest;
    return body;
}

double time_to_one(const Body& body, double amps) {
    double low = 1e-6;
    double high = 1e6;
    if (amps * amps * body.at(high) < 1) return INFINITY;
    for (int i = 0; i < 200; ++i) {
        const double middle = std::sqrt(low * high);
        (amps * amps * body.at(middle) < 1 ? low : high) = middle;
    }
    return low;
}

RC_GTEST_PROP(Selectivity, NoBodyThatBearsTheGatesMeltsSoonerThanIsSaidToBeBorne, ()) {
    const Device& device = any_device();
    const Body body = any_body_bearing(device);
    const double longest = device.holds.front().time.number();
    for (double amps = 1; amps < 2e4; amps *= 1.02) {
        const double melts = amps * amps * time_to_one(body, amps);
        const double held = std::min(borne(device, amperes(amps)).number(), amps * amps * longest);
        const double melting = device.melting ? device.melting->value.number() : 0;
        RC_ASSERT(melts >= std::max(held, melting) * (1 - 1e-6));
    }
}

RC_GTEST_PROP(Selectivity, NoThermalReleaseThatPassesItsTestsNeedsMoreThanIsSaid, ()) {
    const Device& device = any_device();
    RC_PRE(!device.trips.empty() && !device.fuse());
    const Body body = any_body_tripping(device);
    const double last = device.trips.back().current.value.number();
    const double curve = device.points.front().current.value.number();
    for (double amps = last; amps < curve; amps *= 1.02) {
        const double energy = amps * amps * time_to_one(body, amps);
        RC_ASSERT(energy <= needed(device, amperes(amps)).number() * (1 + 1e-6));
    }
}

RC_GTEST_PROP(Selectivity, ALargerUpstreamDeviceOfItsKindIsNeverLessSelective, ()) {
    const Device& small = any_smaller_device();
    const Device& large = any_larger_than(small);
    const Device& down = any_device();
    const double amps = any_current();
    const auto a = judged(small, down, amps);
    const auto b = judged(large, down, amps);
    RC_ASSERT(b.to.number() >= a.to.number() * (1 - 1e-9));
    if (a.verdict == Selective::selective) RC_ASSERT(b.verdict == Selective::selective);
    if (a.verdict == Selective::partly) {
        RC_ASSERT(b.verdict == Selective::selective || b.verdict == Selective::partly);
    }
}

RC_GTEST_PROP(Selectivity, ADeviceIsNeverSelectiveOverItself, ()) {
    const Device& device = any_device();
    const double amps =
        device.points.front().current.value.number() * support::number_between(1, 20);
    const auto s = judged(device, device, amps);
    RC_ASSERT(s.verdict == Selective::not_selective || s.verdict == Selective::not_known);
}

RC_GTEST_PROP(Selectivity, MoreProspectiveCurrentNeverMakesAPairSelective, ()) {
    const Device& up = any_device();
    const Device& down = any_device();
    const double amps = any_current();
    const double more = amps * support::number_between(1, 5);
    if (verdict(up, down, more) == Selective::selective) {
        RC_ASSERT(verdict(up, down, amps) == Selective::selective);
    }
}

RC_GTEST_PROP(Selectivity, WritesWorkingThatHoldsAndGivesTheSameFigures, ()) {
    const Device& up = any_device();
    const Device& down = any_device();
    const double amps = any_current();
    Recording ledger;
    const auto i = ledger.stated({"Ipf", "prospective current"}, amperes(amps), "survey");
    const auto written = selectivity(ledger, Pair{up, down, 1}, i);
    const auto plain = judged(up, down, amps);
    RC_ASSERT(written.to.value == plain.to);
    RC_ASSERT(written.verdict == plain.verdict);
    RC_ASSERT(written.why == plain.why);
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) RC_FAIL(wrong);
}

}  // namespace
}  // namespace toft::device
