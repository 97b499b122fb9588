// Which schemes are laid before a client.

#include "client/choices.h"

#include "paper/written.h"

#include <rapidcheck/gtest.h>

#include <set>

namespace toft::paper {
namespace {

using answer::SchemeAnswer;

SchemeAnswer scheme_of(double total, double headroom, int dependability,
                       const char* earthing = "supply earth", bool hangs = false) {
    SchemeAnswer one;
    one.price.total = total;
    one.headroom = headroom;
    one.dependability = dependability;
    one.building.id = "shed";
    one.building.earthing = earthing;
    if (hangs) one.conditional_on = {"the soil"};
    return one;
}

std::vector<std::size_t> places(const std::vector<SchemeAnswer>& schemes, std::size_t named = 0) {
    static const site::Job job;
    answer::Answer answer;
    answer.schemes = schemes;
    std::vector<std::size_t> all;
    for (const Choice& one : choices_of({support::catalogue(), job, answer, named, ""})) {
        EXPECT_NE(one.reason, "");
        all.push_back(one.scheme);
    }
    return all;
}

using Places = std::vector<std::size_t>;

TEST(Choices, TheFirstIsTheCheapestThatIsSound) {
    for (const char* name : {"demo", "own-rod-greenhouse", "tt-shed", "steel-container"}) {
        const auto& one = picture::example(name);
        const auto choices = choices_of(subject_of(one));
        ASSERT_FALSE(choices.empty()) << name;
        for (const SchemeAnswer& each : one.answer.schemes) {
            EXPECT_LE(one.answer.schemes[choices.front().scheme].price.total, each.price.total);
        }
    }
}

TEST(Choices, AnotherWayOfEarthingStandsBesideTheCheapest) {
    EXPECT_EQ(places({scheme_of(1000, 0.3, 3), scheme_of(1010, 0.3, 5),
                      scheme_of(1100, 0.3, 1, "own electrode")}),
              (Places{0, 2}));
}

TEST(Choices, WithoutAnotherEarthAMoreDependablePathStandsThere) {
    EXPECT_EQ(places({scheme_of(1000, 0.3, 3), scheme_of(1010, 0.3, 5)}), (Places{0, 1}));
}

TEST(Choices, OfTwoAtOnePriceTheMoreDependableIsTheCheapest) {
    EXPECT_EQ(places({scheme_of(1000, 0.3, 4), scheme_of(1000, 0.3, 5)}, 1), (Places{1}));
}

TEST(Choices, MoreRoomIsTheCheapestThatComesNearTheMostForAQuarterMore) {
    ASSERT_EQ(support::catalogue().handover.terms.choice_dearer.value, 25);
    ASSERT_EQ(support::catalogue().levers.worth.more_headroom.value, 0.1);
    EXPECT_EQ(places({scheme_of(1000, 0.2, 5), scheme_of(1050, 0.45, 5), scheme_of(1200, 0.5, 5),
                      scheme_of(3000, 0.9, 5)}),
              (Places{0, 1}));
}

TEST(Choices, RoomThatIsNotWorthALineIsNoChoice) {
    EXPECT_EQ(places({scheme_of(1000, 0.2, 5), scheme_of(1050, 0.25, 5)}), (Places{0}));
}

TEST(Choices, MoreRoomIsNotBoughtWithALessDependablePath) {
    EXPECT_EQ(places({scheme_of(1000, 0.2, 5), scheme_of(1050, 0.6, 4)}), (Places{0}));
}

TEST(Choices, WhatHangsOnOpenFactsComesLastAndOnlyIfItSaves) {
    EXPECT_EQ(places({scheme_of(1000, 0.3, 3), scheme_of(800, 0.3, 3, "supply earth", true)}),
              (Places{0, 1}));
    EXPECT_EQ(places({scheme_of(1000, 0.3, 3), scheme_of(1200, 0.9, 5, "supply earth", true)}),
              (Places{0}));
}

TEST(Choices, WhereNothingIsSoundTheCheapestThatHangsComesFirst) {
    EXPECT_EQ(places({scheme_of(900, 0.3, 3, "supply earth", true),
                      scheme_of(800, 0.3, 3, "own electrode", true)}),
              (Places{1, 0}));
}

TEST(Choices, TheSchemeOfTheOtherPapersIsAlwaysAmongThem) {
    EXPECT_EQ(places({scheme_of(1000, 0.3, 3), scheme_of(1001, 0.3, 3)}, 1), (Places{0, 1}));
}

TEST(Choices, NothingIsOfferedWhereNothingCanBeBuilt) {
    EXPECT_TRUE(choices_of(subject_of(picture::example("caravan-no-scheme"))).empty());
}

RC_GTEST_PROP(Choices, AreFewDifferAndBeginWithTheCheapestSound, ()) {
    const auto count = *rc::gen::inRange<std::size_t>(1, 12);
    std::vector<SchemeAnswer> schemes;
    bool any_sound = false;
    for (std::size_t i = 0; i < count; ++i) {
        const char* earth = *rc::gen::element("supply earth", "own electrode");
        const bool hangs = *rc::gen::inRange(0, 3) == 0;
        any_sound = any_sound || !hangs;
        schemes.push_back(scheme_of(*rc::gen::inRange(900, 1500), 0.01 * *rc::gen::inRange(0, 90),
                                    *rc::gen::inRange(1, 6), earth, hangs));
    }
    const auto named = *rc::gen::inRange<std::size_t>(0, count);
    const auto chosen = places(schemes, named);
    RC_ASSERT(!chosen.empty() && chosen.size() <= most_choices);
    RC_ASSERT(std::set<std::size_t>(chosen.begin(), chosen.end()).size() == chosen.size());
    const SchemeAnswer& first = schemes[chosen.front()];
    RC_ASSERT(first.conditional_on.empty() == any_sound);
    for (const SchemeAnswer& one : schemes) {
        if (any_sound && !one.conditional_on.empty()) continue;
        RC_ASSERT(first.price.total <= one.price.total);
    }
    for (std::size_t i = 1; i < chosen.size(); ++i) {
        const SchemeAnswer& one = schemes[chosen[i]];
        const bool saves = !one.conditional_on.empty() && one.price.total < first.price.total;
        RC_ASSERT(chosen[i] == named || saves || one.dependability > first.dependability ||
                  !earthed_differently(first, one).empty() || one.headroom > first.headroom);
    }
}

}  // namespace
}  // namespace toft::paper
