#include "digging/route_plan.h"

#include "digging/reading.h"
#include "trench/digging_jobs.h"

#include <gtest/gtest.h>

namespace toft::digging {
namespace {

const std::vector<std::string>& places() {
    static const std::vector<std::string> all{"demo",           "hurdle-farm-yard", "tansy-bank",
                                              "lapwing-field",  "tt-shed",          "three-facts",
                                              "overhead-stable"};
    return all;
}

TEST(RoutePlan, NoWordCoversAnotherAtAnyWidth) {
    for (const std::string& name : places()) {
        const trench::Works works = trench::works_of_example(name);
        for (const double width : {0.0, 320.0, 500.0, 1400.0}) {
            const Measured one = route_plan(works, {width, true});
            EXPECT_EQ(picture::clashes(one.scene.items, sheet_of(one.scene)), "")
                << name << " " << width;
        }
        const Measured part = route_plan(works, {0, false});
        EXPECT_EQ(picture::clashes(part.scene.items, sheet_of(part.scene)), "") << name;
    }
}

TEST(RoutePlan, EveryLegIsOnThePlanOrInTheList) {
    for (const std::string& name : places()) {
        const trench::Works works = trench::works_of_example(name);
        const std::string words = all_words(route_plan(works, {}).scene);
        for (const trench::LegWork& leg : works.legs) {
            EXPECT_NE(words.find(leg.sign + " "), std::string::npos) << name << " " << leg.sign;
        }
    }
}

TEST(RoutePlan, ASheetPrintsUnshrunkOnA4) {
    for (const char* name : {"demo", "hurdle-farm-yard", "lapwing-field", "tt-shed"}) {
        const drawing::Scene scene = route_plan(trench::works_of_example(name), {}).scene;
        EXPECT_LE(drawing::mm_of_units(scene.width), 200) << name;
        EXPECT_LE(drawing::mm_of_units(scene.height), 287) << name;
    }
}

TEST(RoutePlan, WhatIsNotToPlanSaysSo) {
    EXPECT_NE(
        all_words(route_plan(trench::works_of_example("tt-shed"), {}).scene).find("Not to plan"),
        std::string::npos);
    EXPECT_EQ(all_words(route_plan(trench::works_of_example("demo"), {}).scene).find("Not to plan"),
              std::string::npos);
}

TEST(RoutePlan, HostileAndForeignNamesKeepToTheSheet) {
    for (const std::string& name : {picture::hostile_name(), std::string("مشغل النجارة القديم خلف"),
                                    std::string("緑の谷の大きな金属製の納屋と干し草置き場")}) {
        site::Job job = picture::example("hurdle-farm-yard").job;
        job.title = name;
        for (site::Building& building : job.buildings) building.name = name;
        const answer::SchemeAnswer& scheme =
            picture::example("hurdle-farm-yard").answer.schemes.front();
        const Measured one = route_plan(trench::works_of({trench::shop(), job, &scheme}), {});
        EXPECT_EQ(picture::clashes(one.scene.items, sheet_of(one.scene)), "");
    }
}

}  // namespace
}  // namespace toft::digging
