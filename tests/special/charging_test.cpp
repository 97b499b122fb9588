#include "special/advising.h"

namespace toft::special {
namespace {

using site::Answer;
using site::Earthing;

constexpr const char* charging = "vehicle charging";

site::Job point(Earthing earthing, Answer outdoors) {
    site::Job job = with_circuit(site::CircuitKind::vehicle_charging);
    job.intake.earthing = earthing;
    if (earthing == Earthing::tt) job.intake.electrode = support::measured(ohms(60));
    job.buildings[1].vehicle_outdoors = outdoors;
    return job;
}

// 722.411.4.1 as told by the page "section-722-page": five ways.
TEST(Charging, ACombinedEarthOutdoorsHasFiveRoutesAndAPersonChooses) {
    const site::Job job = point(Earthing::tn_c_s, Answer::yes);
    EXPECT_TRUE(about(job, charging).needs_a_person);
    for (int i = 1; i <= 5; ++i) {
        EXPECT_TRUE(advises(job, std::string(charging) + ", route " + std::to_string(i)));
    }
    EXPECT_FALSE(advises(job, std::string(charging) + ", route 6"));
}

TEST(Charging, ASeparateEarthMayBeCombinedAlongTheWay) {
    EXPECT_TRUE(holds(about(point(Earthing::tn_s, Answer::yes), charging).says, "may be combined"));
}

TEST(Charging, OnTtNoRouteIsNeeded) {
    const site::Job job = point(Earthing::tt, Answer::yes);
    EXPECT_FALSE(about(job, charging).needs_a_person);
    EXPECT_FALSE(advises(job, std::string(charging) + ", route 1"));
}

TEST(Charging, APointOfWhichNobodySaidWhereTheCarStandsCountsAsOutdoors) {
    EXPECT_TRUE(
        holds(about(point(Earthing::tn_c_s, Answer::unknown), charging).says, "choose one"));
    EXPECT_TRUE(holds(about(point(Earthing::tn_c_s, Answer::no), charging).says, "indoors"));
}

TEST(Charging, TheBalanceOfThreePhasesIsNoRouteOnOne) {
    site::Job job = point(Earthing::tn_c_s, Answer::yes);
    EXPECT_TRUE(holds(about(job, "vehicle charging, route 1").says, "not open here"));
    EXPECT_TRUE(holds(about(job, "vehicle charging, route 4").asks, "207 V to 253 V"));
    EXPECT_TRUE(holds(about(job, "vehicle charging, route 3").asks, "70 V"));
    job = support::on_three_phases(job);
    EXPECT_FALSE(holds(about(job, "vehicle charging, route 1").says, "not open here"));
}

TEST(Charging, WithoutAPointOrACarNothingIsSaid) {
    site::Job job = with_circuit(site::CircuitKind::lighting);
    job.buildings[1].vehicle_outdoors = Answer::no;
    EXPECT_FALSE(advises(job, charging));
    job.buildings[1].vehicle_outdoors = Answer::yes;
    EXPECT_TRUE(advises(job, charging));
}

}  // namespace
}  // namespace toft::special
