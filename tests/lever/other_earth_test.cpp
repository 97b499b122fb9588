#include "lever/asking.h"

#include <gtest/gtest.h>

namespace toft::lever {
namespace {

TEST(OtherEarth, OneMoreRodWhereNoReadingSaysWhatThereIs) {
    site::Job job = support::plain_job();
    job.intake.earthing = site::Earthing::tn_s;
    job.buildings[1].electrode = {};
    const Changes all = changes_of(other_earth, job);
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].job.buildings[1].electrode.rods.low, 2);
    job.buildings[1].electrode.resistance = support::measured(ohms(40));
    EXPECT_TRUE(changes_of(other_earth, job).empty());
}

TEST(OtherEarth, TheOperatorsTerminalIsAskedForOnARodOnly) {
    site::Job job = support::plain_job();
    EXPECT_EQ(change_of(changes_of(other_earth, job), "operators-earth"), nullptr);
    job.intake.earthing = site::Earthing::tt;
    job.intake.ze = {};
    job.intake.electrode = support::measured(ohms(90));
    const Changes all = changes_of(other_earth, job);
    const Change* terminal = change_of(all, "operators-earth");
    ASSERT_NE(terminal, nullptr);
    EXPECT_EQ(terminal->job.intake.earthing, site::Earthing::tn_c_s);
    EXPECT_FALSE(terminal->job.intake.electrode.known);
}

}  // namespace
}  // namespace toft::lever
