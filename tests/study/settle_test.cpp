#include "study/settle.h"

#include "study/ground_memo.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::study {
namespace {

using support::between;
using support::measured;

class Settling : public ::testing::Test {
protected:
    template <class Fact>
    auto at(End end, const Fact& fact, const FactName& name, double unit = 1) {
        corner_.all = end;
        open_.clear();
        return Settler(support::catalogue(), corner_, open_, memo_).settle(fact, name, unit);
    }

    Corner corner_;
    std::vector<OpenFact> open_;
    GroundMemo memo_;
};

const FactName ze{"/intake/ze_ohm", "external loop", "ze.tn-s"};
const FactName no_range{"/runs/0/legs/0/length_m", "length", ""};

TEST_F(Settling, AStatedFigureIsBothBoundsAndNotOpen) {
    const auto settled = at(End::worse, measured(ohms(0.3)), ze);
    EXPECT_EQ(settled.bounds.most, ohms(0.3));
    EXPECT_EQ(settled.bounds.least, ohms(0.3));
    EXPECT_STREQ(settled.from, "measured");
    EXPECT_TRUE(open_.empty());
}

TEST_F(Settling, AMeasuredRangeIsScatterNotDoubt) {
    site::Fact<Ohms> fact = between(ohms(0.2), ohms(0.3));
    fact.standing = site::Standing::measured;
    const auto settled = at(End::better, fact, ze);
    EXPECT_EQ(settled.bounds.most, ohms(0.3));
    EXPECT_EQ(settled.bounds.least, ohms(0.2));
    EXPECT_TRUE(open_.empty());
}

TEST_F(Settling, AnAssumedRangeFollowsTheCorner) {
    const auto fact = between(ohms(0.2), ohms(0.3));
    EXPECT_EQ(at(End::worse, fact, ze).bounds.most, ohms(0.3));
    EXPECT_EQ(at(End::better, fact, ze).bounds.most, ohms(0.2));
    EXPECT_EQ(at(End::low, fact, ze).bounds.least, ohms(0.2));
    EXPECT_EQ(at(End::high, fact, ze).bounds.least, ohms(0.3));
    ASSERT_EQ(open_.size(), 1u);
    EXPECT_TRUE(open_[0].stated);
    EXPECT_EQ(open_[0].low, 0.2);
    EXPECT_EQ(open_[0].high, 0.3);
}

TEST_F(Settling, AMissingFactTakesTheRulebooksRangeInItsUnit) {
    const FactName pscc{"/intake/pscc_ka", "fault current", "pscc"};
    const auto settled = at(End::worse, site::Fact<Amperes>{}, pscc, 1000);
    EXPECT_EQ(settled.bounds.most, kiloamperes(16));
    EXPECT_EQ(settled.bounds.least, kiloamperes(0.25));
    ASSERT_EQ(open_.size(), 1u);
    EXPECT_FALSE(open_[0].stated);
    EXPECT_EQ(open_[0].high, 16);
    EXPECT_EQ(open_[0].unit, "kA");
    EXPECT_NE(open_[0].citation, nullptr);
}

TEST_F(Settling, AMissingFactWithoutARangeIsNotFound) {
    EXPECT_FALSE(at(End::worse, site::Fact<Metres>{}, no_range).found);
    EXPECT_TRUE(open_.empty());
}

TEST_F(Settling, AnUnknownYesOrNoIsAnsweredTheWorseWay) {
    const FactName name{"/buildings/1/stands_in_ground", "it stands in the ground", ""};
    Settler worse(support::catalogue(), corner_, open_, memo_);
    EXPECT_TRUE(worse.settle(site::Answer::unknown, name, true));
    EXPECT_FALSE(worse.settle(site::Answer::unknown, name, false));
    EXPECT_TRUE(worse.settle(site::Answer::yes, name, false));
    EXPECT_FALSE(worse.settle(site::Answer::no, name, true));
    EXPECT_EQ(open_.size(), 2u);
    corner_.all = End::better;
    EXPECT_FALSE(worse.settle(site::Answer::unknown, name, true));
    corner_.all = End::high;
    EXPECT_TRUE(worse.settle(site::Answer::unknown, name, false));
}

TEST_F(Settling, AFactNamedInTheCornerGoesItsOwnWay) {
    corner_.except = {{"/intake/ze_ohm", End::low}};
    EXPECT_EQ(at(End::worse, between(ohms(0.2), ohms(0.3)), ze).bounds.most, ohms(0.2));
}

}  // namespace
}  // namespace toft::study
