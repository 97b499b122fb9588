// What each rule declares of itself must be true of any job and scheme: the search prunes by it and
// the answer explains by it.

#include "base/limit.h"
#include "support/catalogue.h"
#include "support/draws.h"
#include "support/judging.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::rules {
namespace {

using support::Drawn;

/// Use may fall by rounding of the tables without the trend being false: the armour of two-core 16
/// and 25 mm2 is the same, and their cores' largest resistances are not quite in proportion.
constexpr double table_rounding = 0.02;

bool no_heavier(Verdict a, Verdict b) { return a <= b; }

bool no_more(double a, double b, double slack = 0) { return a <= b || within(a, b * (1 + slack)); }

/// One finding moved from `before` to `after` the way `trend` says, when the thing it speaks of
/// grew.
void assert_moves(Trend trend, const Finding<Silent>& before, const Finding<Silent>& after) {
    RC_LOG() << before.rule->name << ": use " << before.use << " -> " << after.use << "\n";
    RC_ASSERT(before.limited == after.limited);
    if (trend == Trend::worse) {
        RC_ASSERT(no_heavier(before.verdict, after.verdict));
        RC_ASSERT(no_more(before.use, after.use));
    } else if (trend == Trend::better) {
        RC_ASSERT(no_heavier(after.verdict, before.verdict));
        RC_ASSERT(no_more(after.use, before.use, table_rounding));
    } else if (trend == Trend::none) {
        RC_ASSERT(before.verdict == after.verdict);
        RC_ASSERT(no_more(before.use, after.use) && no_more(after.use, before.use));
    }
}

void assert_trend(Trend RuleInfo::*trend, const Drawn& less, const Drawn& more) {
    const auto before = support::evaluated(support::job_of(less), support::scheme_of(less));
    const auto after = support::evaluated(support::job_of(more), support::scheme_of(more));
    for (std::size_t i = 0; i < rule_count; ++i) {
        assert_moves(rulebook()[i].info->*trend, before.findings[i], after.findings[i]);
    }
}

RC_GTEST_PROP(RuleTrends, Longer, ()) {
    const Drawn near = *support::any_drawn();
    Drawn far = near;
    for (auto& leg : far.legs) {
        // What lies in insulation is another fact, drawn as a share of such a leg: leave both
        // alone.
        if (leg.method == site::LegMethod::in_insulation) continue;
        leg.length_m *= support::number_between(1, 3);
    }
    assert_trend(&RuleInfo::longer, near, far);
}

RC_GTEST_PROP(RuleTrends, Thicker, ()) {
    const Drawn thin = *support::any_drawn();
    const std::size_t sizes = support::sizes_of(thin);
    RC_PRE(thin.size + 1 < sizes);
    Drawn thick = thin;
    thick.size = *rc::gen::inRange<std::size_t>(thin.size + 1, sizes);
    assert_trend(&RuleInfo::thicker, thin, thick);
}

RC_GTEST_PROP(RuleTrends, Heavier, ()) {
    const Drawn light = *support::any_drawn();
    Drawn heavy = light;
    heavy.load_a += support::number_between(0.5, 40);
    assert_trend(&RuleInfo::heavier, light, heavy);
}

RC_GTEST_PROP(RuleTrends, Larger, ()) {
    const Drawn small = *support::any_drawn();
    const auto& devices = support::catalogue().devices;
    const tables::Device& from = devices[small.device];
    std::vector<std::size_t> larger;
    for (std::size_t i = 0; i < devices.size(); ++i) {
        if (devices[i].standard == from.standard && devices[i].curve == from.curve &&
            devices[i].breaking.value == from.breaking.value && devices[i].rating > from.rating) {
            larger.push_back(i);
        }
    }
    RC_PRE(!larger.empty());
    Drawn large = small;
    large.device = *rc::gen::elementOf(larger);
    assert_trend(&RuleInfo::larger, small, large);
}

/// Something must move for the test to mean anything: what is declared better or worse really is,
/// somewhere.
TEST(RuleTrends, EveryDeclaredTrendIsSeenToMove) {
    const auto moved = [](const char* rule, const Drawn& a, const Drawn& b) {
        const auto x = support::finding_of(rule, support::job_of(a), support::scheme_of(a));
        const auto y = support::finding_of(rule, support::job_of(b), support::scheme_of(b));
        return y.use - x.use;
    };
    Drawn plain;
    plain.legs.resize(1);
    plain.device =
        static_cast<std::size_t>(&support::fuse(32) - support::catalogue().devices.data());
    Drawn far = plain;
    far.legs[0].length_m = 30;
    EXPECT_GT(moved("voltage-drop", plain, far), 0);
    EXPECT_GT(moved("disconnection", plain, far), 0);
    Drawn thick = plain;
    thick.size += 1;
    EXPECT_LT(moved("voltage-drop", plain, thick), 0);
    EXPECT_LT(moved("disconnection", plain, thick), 0);
    EXPECT_LT(moved("current-rating", plain, thick), 0);
    Drawn heavy = plain;
    heavy.load_a += 10;
    EXPECT_GT(moved("overload", plain, heavy), 0);
    EXPECT_GT(moved("voltage-drop", plain, heavy), 0);
    Drawn large = plain;
    large.device += 1;
    EXPECT_GT(moved("current-rating", plain, large), 0);
    EXPECT_GT(moved("feed-point", plain, large), 0);
    EXPECT_GT(moved("disconnection", plain, large), 0);
    EXPECT_LT(moved("overload", plain, large), 0);
}

}  // namespace
}  // namespace toft::rules
