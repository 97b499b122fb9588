#include "trench/lying.h"

#include "trench/duct.h"

#include "study/scheme.h"
#include "trench/digging_jobs.h"

#include <gtest/gtest.h>

namespace toft::trench {
namespace {

answer::StretchAnswer stretch(double overall_mm) {
    answer::StretchAnswer one;
    one.cores = 3;
    one.live_mm2 = 10;
    one.overall_mm = overall_mm;
    return one;
}

site::Leg leg(site::LegMethod method) { return support::plain_leg(method); }

// Share of the bore that a cable fills: 19.5 mm in a 38 mm bore 26 %, 21.6 mm 32 %, 26.7 mm in a
// 51 mm bore 27 % and in the 38 mm one 49 %, "too tight". Own computation from diameters of BS 5467
// data sheets (BS5467-datasheet) and bores as sold (duct-habit).
TEST(Lying, DuctsAsTheTradeTakesThem) {
    const auto outer = [](double cable_mm) {
        return duct_for(shop(), {millimetres(cable_mm)}).row->outside.number() * 1000;
    };
    EXPECT_NEAR(outer(19.5), 50, 1e-9);
    EXPECT_NEAR(outer(21.6), 63, 1e-9);  // "use 63 with bends": bends are taken to be there
    EXPECT_NEAR(outer(26.7), 63, 1e-9);
    EXPECT_EQ(duct_for(shop(), {millimetres(200)}).row, nullptr);
}

TEST(Lying, ACableInADuctIsOneThingOfTheDuctsSize) {
    const answer::StretchAnswer cable = stretch(19.5);
    const site::Run run;
    const auto all = lying_of(shop(), run, leg(site::LegMethod::buried_in_duct), &cable);
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].kind, Kind::duct);
    EXPECT_NEAR(all[0].across.number(), 0.05, 1e-12);
    EXPECT_EQ(all[0].says, "50 mm duct (bore 38 mm) with 3-core 10 mm² armoured cable");
}

TEST(Lying, EachOfAPairHasItsConductorAndDataADuctOfItsOwn) {
    answer::StretchAnswer cable = stretch(30);
    cable.parallel = 2;
    cable.separate_mm2 = 16;
    site::Run run;
    run.also_carries = {site::AlsoCarried::data, site::AlsoCarried::switching,
                        site::AlsoCarried::alarm};
    const auto all = lying_of(shop(), run, leg(site::LegMethod::buried_direct), &cable);
    ASSERT_EQ(all.size(), 5u);
    EXPECT_EQ(all[0].kind, Kind::cable);
    EXPECT_EQ(all[1].kind, Kind::core);
    EXPECT_EQ(all[2].kind, Kind::cable);
    EXPECT_EQ(all[4].kind, Kind::data);
    EXPECT_EQ(all[4].says, "50 mm duct for data and alarm");
}

TEST(Lying, WithoutASchemeNoCableIsMadeUp) {
    EXPECT_TRUE(
        lying_of(shop(), site::Run{}, leg(site::LegMethod::buried_direct), nullptr).empty());
}

TEST(Lying, OnlyAKeptCableWithNothingNewBesideItIsNotDugFor) {
    answer::StretchAnswer cable = stretch(20);
    EXPECT_FALSE(stays(cable));
    cable.laid = study::laid_word(study::Laid::kept);
    EXPECT_TRUE(stays(cable));
    cable.separate_mm2 = 10;
    EXPECT_FALSE(stays(cable));
    cable.separate_mm2.reset();
    cable.laid = study::laid_word(study::Laid::doubled);
    cable.parallel = 2;
    EXPECT_FALSE(stays(cable));
    const auto all = lying_of(shop(), site::Run{}, leg(site::LegMethod::buried_direct), &cable);
    EXPECT_TRUE(all[0].there);
    EXPECT_FALSE(all[1].there);
}

TEST(Lying, ACoreIsAsThickAsTheNextThatTheTablesKnow) {
    EXPECT_EQ(core_across(shop(), square_millimetres(10)), shop().ware.singles[2].overall);
    EXPECT_EQ(core_across(shop(), square_millimetres(500)), shop().ware.singles.back().overall);
}

}  // namespace
}  // namespace toft::trench
