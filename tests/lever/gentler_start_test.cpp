#include "lever/asking.h"

#include <gtest/gtest.h>

namespace toft::lever {
namespace {

site::Circuit motor(const char* name) {
    site::Circuit c;
    c.name = name;
    c.kind = site::CircuitKind::motor;
    c.load_w = support::measured(1500.0);
    return c;
}

TEST(GentlerStart, AMotorThatStartsHardMayBeStartedSoftly) {
    site::Job job = support::plain_job();
    site::Circuit soft = motor("fan");
    soft.starting_multiple = support::measured(2.0);
    site::Circuit driven = motor("lathe");
    driven.drive = site::Answer::yes;
    job.buildings[1].circuits = {motor("saw"), soft, driven};
    const Changes all = changes_of(gentler_start, job);
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].where, "saw");
    EXPECT_EQ(all[0].job.buildings[1].circuits[0].starting_multiple.high, 3);
    EXPECT_TRUE(changes_of(gentler_start, all[0].job).empty());
}

TEST(GentlerStart, AHeaterHasNoStart) {
    site::Job job = support::plain_job();
    site::Circuit heater = motor("heater");
    heater.kind = site::CircuitKind::fixed_load;
    job.buildings[1].circuits = {heater};
    EXPECT_TRUE(changes_of(gentler_start, job).empty());
}

}  // namespace
}  // namespace toft::lever
