#include "answer/describe.h"

#include "support/catalogue.h"
#include "support/existing.h"
#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::answer {
namespace {

SchemeAnswer told(const std::vector<std::string>& found, study::BuildingEarthing earthing) {
    site::Job job = support::plain_job();
    job.buildings[1].name = "Garage";
    job.buildings[1].found = found;
    SchemeAnswer s;
    s.scheme = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    s.scheme.earthing = earthing;
    add_found(support::prepared(job), support::demo_book(), s);
    return s;
}

bool starts(const std::string& text, const std::string& with) { return text.rfind(with, 0) == 0; }

TEST(FoundTold, WhatIsDangerousAtOnceIsToldToEveryoneThere) {
    const auto s = told({"neutral and earth joined"}, study::BuildingEarthing::supply_earth);
    ASSERT_EQ(s.tell.size(), 1u);
    EXPECT_EQ(s.tell[0].who, "everyone there");
    EXPECT_EQ(s.tell[0].when, "now");
    ASSERT_EQ(s.cautions.size(), 1u);
    EXPECT_TRUE(starts(s.cautions[0], "Danger now. Garage: "));
    ASSERT_EQ(s.house_work.size(), 1u);
    EXPECT_NE(s.house_work[0].find("about £74"), std::string::npos) << s.house_work[0];
}

TEST(FoundTold, ARodOnTheHousesEarthIsOnlyRecorded) {
    const auto s = told({"rod joined to supply earth"}, study::BuildingEarthing::supply_earth);
    EXPECT_TRUE(s.tell.empty());
    EXPECT_TRUE(s.house_work.empty());
    ASSERT_EQ(s.cautions.size(), 1u);
    EXPECT_TRUE(starts(s.cautions[0], "To be recorded. "));
    const auto own = told({"rod joined to supply earth"}, study::BuildingEarthing::own_electrode);
    EXPECT_EQ(own.house_work.size(), 1u);
    EXPECT_FALSE(starts(own.cautions.at(0), "To be recorded. "));
}

TEST(FoundTold, TheWholeAnswerPricesWhatIsPutRight) {
    site::Job job = support::plain_job();
    const Answer before = design(support::question_of(job));
    job.buildings[1].found = {"borrowed neutral"};
    const Answer after = design(support::question_of(job));
    ASSERT_FALSE(before.schemes.empty());
    ASSERT_FALSE(after.schemes.empty());
    EXPECT_NEAR(after.schemes[0].price.put_right_first,
                before.schemes[0].price.put_right_first + 138, 1e-9);
    EXPECT_EQ(after.schemes[0].key, before.schemes[0].key);
}

TEST(FoundTold, AnOldCableThatMayNotStayIsADangerUntilItIsReplaced) {
    site::Job job = support::plain_job();
    job.runs[0].existing = support::sound_cable(support::cable(2, 10), 30);
    SchemeAnswer s;
    s.scheme = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    const auto warned = [&] {
        s.cautions.clear();
        s.tell.clear();
        add_found(support::prepared(job), support::demo_book(), s);
        return s.cautions.empty() ? std::string() : s.cautions.front();
    };
    EXPECT_EQ(warned(), "");
    job.runs[0].existing->insulation = support::measured(ohms(0.4e6));
    EXPECT_NE(warned().find("Danger now. run: the cable that is there reads 0.4 MΩ"),
              std::string::npos)
        << warned();
    ASSERT_EQ(s.tell.size(), 1u);
    EXPECT_EQ(s.tell[0].who, "everyone there");
    job.runs[0].existing->insulation = support::measured(ohms(50e6));
    job.runs[0].existing->condition = site::Condition::damaged;
    EXPECT_NE(warned().find("is damaged: isolate it"), std::string::npos) << warned();
}

}  // namespace
}  // namespace toft::answer
