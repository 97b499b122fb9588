#include "demand/notice.h"

#include "demand/circuits.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::demand {
namespace {

using site::Answer;
using site::CircuitKind;
using site::Scenario;

/// Nothing to ask or tell: 38 A measured, 20 A more, behind 100 A, not looped.
Occasion quiet() {
    Occasion o;
    o.run = amperes(20);
    o.house = amperes(38);
    o.house_known = "measured";
    o.fuse = amperes(100);
    o.looped = Answer::no;
    return o;
}

std::vector<Notice> notices_for(const Occasion& o) {
    return notices(support::catalogue().limits, o);
}

When when(const Occasion& o) { return heaviest(notices_for(o)); }

std::string why(const Occasion& o) {
    std::string all;
    for (const Notice& notice : notices_for(o)) all += notice.why + "\n";
    return all;
}

bool holds(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

TEST(OperatorNotice, AnOrdinaryRunWithinTheFuseIsNobodysBusiness) {
    EXPECT_EQ(when(quiet()), When::nothing);
    EXPECT_TRUE(notices_for(quiet()).empty());
}

TEST(OperatorNotice, AChargePointUpToSixtyAmperesIsToldAfter) {
    Occasion o = quiet();
    o.load = "charge point";
    o.run = amperes(22);  // 60 A: a tie
    EXPECT_EQ(when(o), When::after);
    EXPECT_TRUE(holds(why(o), "house 38 A (measured) and run 22 A make 60 A")) << why(o);
    EXPECT_TRUE(holds(why(o), "60 A (13.8 kVA)"));
    EXPECT_TRUE(holds(why(o), "within 28 days"));
}

TEST(OperatorNotice, AChargePointOverSixtyAmperesIsAskedFirst) {
    Occasion o = quiet();
    o.load = "charge point";
    o.run = amperes(32);
    EXPECT_EQ(when(o), When::before);
    EXPECT_TRUE(holds(why(o), "make 70 A, over 60 A (13.8 kVA)")) << why(o);
    o.load.clear();
    EXPECT_EQ(when(o), When::nothing);
}

TEST(OperatorNotice, AHeatPumpOnASupplyThatMayBeLoopedIsAskedFirst) {
    Occasion o = quiet();
    o.load = "heat pump";
    EXPECT_EQ(when(o), When::after);
    for (const Answer looped : {Answer::yes, Answer::unknown}) {
        o.looped = looped;
        EXPECT_EQ(when(o), When::before);
    }
}

TEST(OperatorNotice, ALoopedSupplyIsAskedAboutWhateverIsFed) {
    Occasion o = quiet();
    o.looped = Answer::yes;
    EXPECT_EQ(when(o), When::before);
    EXPECT_TRUE(holds(why(o), "looped"));
}

TEST(OperatorNotice, AnUnreadFuseOrAnUnknownHouseIsAskedFirst) {
    Occasion o = quiet();
    o.fuse.reset();
    EXPECT_EQ(when(o), When::before);
    EXPECT_TRUE(holds(why(o), "read the fuse"));
    o = quiet();
    o.house.reset();
    EXPECT_EQ(when(o), When::before);
    EXPECT_TRUE(holds(why(o), "measure the house's demand"));
    EXPECT_FALSE(holds(why(o), "read the fuse"));
    o.load = "charge point";
    EXPECT_TRUE(holds(why(o), "cannot be shown"));
}

TEST(OperatorNotice, MoreThanTheFuseIsAskedFirst) {
    Occasion o = quiet();
    o.house = amperes(90);
    EXPECT_EQ(when(o), When::before);
    EXPECT_TRUE(holds(why(o), "house 90 A (measured) and run 20 A together exceed the 100 A fuse"))
        << why(o);
    o.house = amperes(80);
    EXPECT_EQ(when(o), When::nothing);
}

TEST(OperatorNotice, MoreThanWasAgreedIsAskedFirst) {
    Occasion o = quiet();
    o.agreed = amperes(50);
    EXPECT_EQ(when(o), When::before);
    EXPECT_TRUE(holds(why(o), "more than the 50 A they have agreed to")) << why(o);
    o.agreed = amperes(60);
    EXPECT_EQ(when(o), When::nothing);
    o.house = o.agreed;
    o.house_known = "declared";
    EXPECT_EQ(when(o), When::before);
}

TEST(OperatorNotice, SixteenAmperesAPhaseOfSolarAreToldAfterAndMoreAskedFirst) {
    Occasion o = quiet();
    o.generates = true;
    o.generation = amperes(16);
    EXPECT_EQ(when(o), When::after);
    EXPECT_TRUE(holds(why(o), "16 A (3.68 kVA) a phase")) << why(o);
    o.generation = amperes(16.1);
    EXPECT_EQ(when(o), When::before);
    o.generation.reset();
    EXPECT_EQ(when(o), When::before);
    EXPECT_TRUE(holds(why(o), "not stated"));
}

TEST(OperatorNotice, WhatIsAskedComesBeforeWhatIsTold) {
    Occasion o = quiet();
    o.generates = true;
    o.generation = amperes(10);
    o.house = amperes(90);
    const auto all = notices_for(o);
    ASSERT_EQ(all.size(), 2u);
    EXPECT_EQ(all[0].when, When::before);
    EXPECT_EQ(all[1].when, When::after);
    EXPECT_STREQ(when_words(When::before), "ask first");
    EXPECT_STREQ(when_words(When::after), "tell after");
    EXPECT_STREQ(when_words(When::nothing), "nothing to ask or tell");
}

TEST(OperatorNotice, TheOperatorsProcessSpeaksOfChargePointsAndHeatPumps) {
    site::Building b;
    b.circuits = {drawing(CircuitKind::kiln, 20)};
    EXPECT_EQ(process_load(b, Scenario::likely), "");
    b.circuits.push_back(drawing(CircuitKind::vehicle_charging, 32));
    EXPECT_EQ(process_load(b, Scenario::likely), "charge point");
    b.circuits.push_back(drawing(CircuitKind::heat_pump, 5));
    b.circuits.push_back(drawing(CircuitKind::heat_pump, 5));
    EXPECT_EQ(process_load(b, Scenario::likely), "charge point and heat pump");
    b.circuits[1].later = Answer::yes;
    EXPECT_EQ(process_load(b, Scenario::today), "heat pump");
}

TEST(OperatorNotice, AllThatSendsCurrentOutIsTakenTogether) {
    site::Job job = support::plain_job();
    EXPECT_EQ(generation_of(place(), job, Scenario::likely), amperes(0));
    job.buildings[1].circuits = {drawing(CircuitKind::solar, 10)};
    job.buildings[0].circuits = {drawing(CircuitKind::battery, 12)};
    EXPECT_EQ(generation_of(place(), job, Scenario::likely)->number(), 22);
    job.buildings[0].circuits = {drawing(CircuitKind::solar, 16, 3)};
    EXPECT_EQ(generation_of(place(), job, Scenario::likely)->number(), 26);
    job.buildings[1].circuits[0].later = Answer::yes;
    EXPECT_EQ(generation_of(place(), job, Scenario::today)->number(), 16);
    job.buildings[1].circuits = {circuit(CircuitKind::solar)};
    EXPECT_FALSE(generation_of(place(), job, Scenario::likely));
    job.buildings[1].circuits[0].device = site::NamedDevice{"BS EN 60898", "B", amperes(20)};
    EXPECT_EQ(generation_of(place(), job, Scenario::likely)->number(), 36);
}

RC_GTEST_PROP(OperatorNotice, MoreLoadNeverMakesTheOperatorLessConcerned, ()) {
    Occasion o = quiet();
    o.house = amperes(*rc::gen::inRange(0, 120));
    o.run = amperes(*rc::gen::inRange(0, 100));
    o.load = *rc::gen::element<std::string>("", "charge point");
    if (*rc::gen::inRange(0, 2)) o.agreed = amperes(*rc::gen::inRange(10, 120));
    const When before = when(o);
    o.run += amperes(*rc::gen::inRange(0, 50));
    RC_ASSERT(when(o) >= before);
}

}  // namespace
}  // namespace toft::demand
