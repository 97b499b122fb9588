#include "circuit/laying.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::circuit {
namespace {

using site::LegMethod;

TEST(Laying, EveryWayOfTheSurveyHasOneOfItsOwnInTheTables) {
    const auto& methods = site::words<LegMethod>();
    std::set<tables::Laying> layings;
    for (std::size_t i = 0; i < methods.size(); ++i) {
        layings.insert(laying_of(static_cast<LegMethod>(i)));
    }
    EXPECT_EQ(layings.size(), methods.size());
    EXPECT_EQ(layings.size(), tables::layings);
}

TEST(Laying, WhatIsBuriedLiesInTheGround) {
    for (std::size_t i = 0; i < site::words<LegMethod>().size(); ++i) {
        const auto method = static_cast<LegMethod>(i);
        EXPECT_EQ(tables::in_ground(laying_of(method)), site::buried(method)) << site::word(method);
    }
}

TEST(Laying, CableInAWallsInsulationIsRatedAsSuch) {
    EXPECT_EQ(laying_of(LegMethod::in_insulation), tables::Laying::insulated);
    EXPECT_EQ(laying_of(LegMethod::buried_in_duct), tables::Laying::duct);
}

}  // namespace
}  // namespace toft::circuit
