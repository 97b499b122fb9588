// The sheet that hangs by the board.

#include "paper/users_sheet.h"

#include "paper/written.h"

namespace toft::paper {
namespace {

page::Paper sheet_of(const char* name) { return users_sheet(subject_of(picture::example(name))); }

TEST(UsersSheet, IsOnePageForEachBuilding) {
    for (const char* name : {"demo", "own-rod-greenhouse", "tt-shed", "sunny-garage", "three-facts",
                             "steel-container", "tn-s-workshop"}) {
        EXPECT_EQ(page::pages(sheet_of(name)).size(), 1u) << name;
    }
    EXPECT_EQ(page::pages(sheet_of("garage-gym-stable")).size(), 3u);
}

TEST(UsersSheet, AnOwnRodIsToBeLeftAndKeptApart) {
    const page::Paper paper = sheet_of("own-rod-greenhouse");
    EXPECT_TRUE(reads(paper, "Do not remove the rod or its wire"));
    EXPECT_TRUE(reads(paper, "Keep it apart from the earth of the house"));
    EXPECT_FALSE(reads(paper, "Drive no earth rod"));
    EXPECT_TRUE(reads(paper, "Earth rod"));
}

TEST(UsersSheet, ACarriedEarthForbidsRodsAndPipes) {
    for (const char* name : {"demo", "tn-s-workshop"}) {
        const page::Paper paper = sheet_of(name);
        EXPECT_TRUE(reads(paper, "Drive no earth rod of your own"));
        EXPECT_TRUE(reads(paper, "Bring in no metal pipe"));
        EXPECT_FALSE(reads(paper, "Do not remove the rod"));
    }
}

TEST(UsersSheet, ASharedRodIsToBeLeftToo) {
    EXPECT_TRUE(
        reads(sheet_of("tt-shed"), "Do not remove that rod or its wire, and drive no other"));
}

TEST(UsersSheet, TheRouteIsThatOfTheJob) {
    for (const char* name : {"demo", "own-rod-greenhouse"}) {
        const auto& one = picture::example(name);
        for (const site::Leg& leg : one.job.runs.front().legs) {
            EXPECT_TRUE(reads(sheet_of(name), leg_plain(leg))) << name;
        }
    }
}

TEST(UsersSheet, ADepthThatNobodyStatedIsSaidToBeNotKnown) {
    site::Leg leg;
    leg.method = site::LegMethod::buried_direct;
    EXPECT_EQ(leg_plain(leg), "a length not known, buried, depth not known: take care");
    leg.length = {true, metres(20), metres(24)};
    leg.depth = {true, metres(0.5), metres(0.5)};
    leg.surface = site::Surface::lawn;
    EXPECT_EQ(leg_plain(leg), "20 to 24 m buried, 0.5 m deep, under lawn");
    leg.method = site::LegMethod::overhead;
    EXPECT_EQ(leg_plain(leg), "20 to 24 m overhead, height not known");
    leg.method = site::LegMethod::clipped;
    EXPECT_EQ(leg_plain(leg), "20 to 24 m fixed along a wall");
}

TEST(UsersSheet, TheDeviceThatFeedsItIsTheAnswers) {
    const auto& one = picture::example("demo");
    const auto& run = one.answer.schemes.front().run;
    EXPECT_TRUE(reads(sheet_of("demo"), significant(run.device.rating_a, 6) + " amp breaker"));
}

TEST(UsersSheet, ABlownFuseIsNotForTheHouseholder) {
    EXPECT_TRUE(reads(sheet_of("tn-s-workshop"), "Do not change it yourself"));
    EXPECT_FALSE(reads(sheet_of("demo"), "Do not change it yourself"));
    EXPECT_TRUE(reads(sheet_of("demo"), "no more than once"));
}

TEST(UsersSheet, TheTestButtonIsPressedAsOftenAsTheTableSays) {
    const std::string months =
        significant(support::catalogue().handover.terms.test_months.value, 3);
    EXPECT_TRUE(reads(sheet_of("demo"), "Every " + months + " months press the button"));
}

TEST(UsersSheet, ASecondSupplyIsNotStoppedByTheHousesSwitch) {
    EXPECT_TRUE(reads(sheet_of("sunny-garage"), "that does not stop the second supply"));
    EXPECT_FALSE(reads(sheet_of("demo"), "second supply"));
}

TEST(UsersSheet, DiggingIsAskedAboutOnlyWhereACableLiesInTheGround) {
    EXPECT_TRUE(reads(sheet_of("demo"), "along the route of the cable"));
    picture::Example one = copy_of("demo");
    for (site::Leg& leg : one.job.runs.front().legs) leg.method = site::LegMethod::clipped;
    EXPECT_FALSE(reads(users_sheet(subject_of(one)), "along the route of the cable"));
}

TEST(UsersSheet, WhomToCallIsWrittenInByHand) {
    for (const char* name : {"Electrician", "Network operator", "Next inspection due"}) {
        EXPECT_TRUE(reads(sheet_of("demo"), name));
    }
    EXPECT_TRUE(reads(sheet_of("demo"), "competent, licensed electrician"));
}

TEST(UsersSheet, OfATreeEachBuildingIsSentToTheBoardThatFeedsIt) {
    const page::Paper paper = sheet_of("garage-gym-stable");
    EXPECT_TRUE(reads(paper, "in the board of Gym"));
    EXPECT_TRUE(reads(paper, "If nothing is down in Stable, look at Gym"));
}

TEST(UsersSheet, ABoardThatFeedsAnotherBuildingSaysSo) {
    const page::Paper paper = sheet_of("garage-gym-stable");
    EXPECT_TRUE(reads(paper, "It feeds Gym"));
    EXPECT_TRUE(reads(paper, "It feeds Stable"));
    EXPECT_FALSE(reads(sheet_of("demo"), "It feeds"));
}

TEST(UsersSheet, HardNamesStayOnTheSheet) {
    for (const std::string& name : hard_names()) {
        expect_in_the_field(users_sheet(subject_of(renamed("own-rod-greenhouse", name))));
        expect_in_the_field(users_sheet(subject_of(renamed("sunny-garage", name))));
    }
}

}  // namespace
}  // namespace toft::paper
