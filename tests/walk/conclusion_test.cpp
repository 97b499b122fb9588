#include "walk/conclusion.h"

#include "walk/walking.h"

#include <gtest/gtest.h>

namespace toft::walk {
namespace {

using site::Earthing;

TEST(Conclusion, SaysWhenNothingSpeaksAgainstAWay) {
    site::Job job = support::plain_job();
    job.buildings[1].electrode.resistance = support::measured(ohms(40));
    const std::string text = walked(job).conclusion;
    EXPECT_TRUE(holds(text, "More than one way of earthing serves.")) << text;
    EXPECT_TRUE(holds(text,
                      "Nothing speaks against the supply's earth, with an added electrode or "
                      "without."))
        << text;
    EXPECT_FALSE(holds(text, "found out")) << text;
}

TEST(Conclusion, SaysThatOnlyOneWillDo) {
    site::Job job = support::plain_job();
    job.buildings[1].use = site::Use::caravan_pitch;
    const std::string text = walked(job).conclusion;
    EXPECT_TRUE(holds(text, "Only an electrode of its own will do here.")) << text;
    EXPECT_TRUE(holds(text, "The law forbids") || holds(text, "the law forbids")) << text;
}

TEST(Conclusion, SaysThatNoneStandsAndWhatToChange) {
    site::Job job = with_pipe(site::ComesFrom::house, site::Answer::yes);
    job.buildings[1].use = site::Use::caravan_pitch;
    const std::string text = walked(job).conclusion;
    EXPECT_TRUE(holds(text, "no way of earthing stands")) << text;
    EXPECT_TRUE(holds(text, "insulating section")) << text;
}

TEST(Conclusion, NamesWhatIsToBeFoundOut) {
    site::Job job = support::plain_job();
    job.buildings[1].reach_of_house_earth = {};
    job.buildings[1].wet_floor = site::Answer::unknown;
    const std::string text = walked(job).conclusion;
    EXPECT_TRUE(holds(text, "To be found out: whether the floor is wet")) << text;
    EXPECT_TRUE(holds(text, "the distance to the nearest thing")) << text;
}

TEST(Conclusion, EveryWayLeavesARisk) {
    for (const auto system : {Earthing::tn_s, Earthing::tn_c_s, Earthing::tt}) {
        for (std::size_t i = 0; i < choice_count; ++i) {
            EXPECT_GT(residual_risk(static_cast<Choice>(i), system).size(), 40u);
        }
    }
    EXPECT_NE(residual_risk(Choice::supply_earth, Earthing::tn_s),
              residual_risk(Choice::supply_earth, Earthing::tn_c_s));
}

}  // namespace
}  // namespace toft::walk
