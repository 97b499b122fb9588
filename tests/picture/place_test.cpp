#include "picture/place.h"

#include "picture/looking.h"
#include "picture/stage.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

const drawing::Box place_sheet{0, 0, sheet_wide, sheet_high};

TEST(Place, SaysWhatMatters) {
    const Example& one = example("demo");
    const drawing::Scene scene = place_picture(one.job, one.answer, 0);
    for (const char* words :
         {"Potter's studio, Wrensnest, Ashlow Green", "House", "supply TN-C-S", "7 m", "21 m",
          "2 m", "voltage drop", "the cable cut through", "how its armour ends",
          "use of each limit",
          "A competent, licensed person, the local code and the network operator decide."}) {
        EXPECT_TRUE(says(scene.items, words)) << words;
    }
    EXPECT_TRUE(says(scene.items, "data " + one.answer.data_version));
    EXPECT_EQ(scene.description, one.answer.schemes[0].sentence);
}

TEST(Place, NoWordsCoverOthersOnAnyExample) {
    std::vector<std::string> names = support::example_names();
    names.insert(names.end(), drawn_job_names().begin(), drawn_job_names().end());
    for (const std::string& name : names) {
        const Example& one = example(name);
        for (std::size_t i = 0; i <= one.answer.schemes.size(); ++i) {
            const drawing::Scene scene = place_picture(one.job, one.answer, i);
            EXPECT_EQ(clashes(scene.items, place_sheet), "") << name << " " << i;
            EXPECT_FALSE(says(scene.items, "found no room")) << name << " " << i;
        }
    }
}

TEST(Place, SameInputSameBytes) {
    const Example& one = example("steel-container");
    const std::string first = drawing::to_svg(place_picture(one.job, one.answer, 0));
    EXPECT_EQ(first, drawing::to_svg(place_picture(one.job, one.answer, 0)));
    EXPECT_NE(first, drawing::to_svg(place_picture(one.job, one.answer, 1)));
}

TEST(Place, WithoutASchemeTheReasonsStand) {
    const Example& one = example("caravan-no-scheme");
    ASSERT_TRUE(one.answer.schemes.empty());
    const drawing::Scene scene = place_picture(one.job, one.answer, 0);
    EXPECT_TRUE(says(scene.items, "No sound scheme"));
    EXPECT_TRUE(says(scene.items, "run not settled"));
    EXPECT_EQ(count_kind(scene.items, "reason"), static_cast<int>(one.answer.dropped.size()));
    EXPECT_EQ(count_kind(scene.items, "cable"), 0);
    EXPECT_EQ(count_kind(scene.items, "bond"), 0);
    EXPECT_EQ(count_kind(scene.items, "armour-earthed"), 0);
}

TEST(Place, AnIndexOutOfRangeDrawsThePlaceAlone) {
    const Example& one = example("demo");
    const drawing::Scene scene = place_picture(one.job, one.answer, 999);
    EXPECT_EQ(count_kind(scene.items, "cable"), 0);
}

TEST(Place, HostileNamesAreHarmlessAndKeepToTheSheet) {
    Example one = example("demo");
    one.job.title = one.answer.job = hostile_name();
    for (site::Building& building : one.job.buildings) building.name = hostile_name();
    for (answer::SchemeAnswer& scheme : one.answer.schemes) {
        scheme.building.name = hostile_name();
        for (answer::RcdAnswer& rcd : scheme.building.rcds) rcd.covers.assign(30, hostile_name());
    }
    const drawing::Scene scene = place_picture(one.job, one.answer, 0);
    const std::string svg = drawing::to_svg(scene);
    EXPECT_EQ(svg.find("<script"), std::string::npos);
    EXPECT_NE(svg.find("&lt;script&gt;"), std::string::npos);
    EXPECT_EQ(svg.find("Part of this drawing is missing"), std::string::npos);
    EXPECT_EQ(clashes(scene.items, place_sheet), "");
}

TEST(Place, EveryMethodAndManyLegsAndPartsAreDrawnWhole) {
    std::vector<site::Leg> legs;
    const auto methods = site::words<site::LegMethod>().size();
    for (std::size_t i = 0; i < methods; ++i) {
        legs.push_back(support::plain_leg(static_cast<site::LegMethod>(i),
                                          1.0 + 4.0 * static_cast<double>(i)));
    }
    site::Job job = support::job_with_legs(legs);
    const auto metals = site::words<site::Metal>().size();
    for (std::size_t i = 0; i < metals; ++i) {
        site::Metalwork metal;
        metal.what = static_cast<site::Metal>(i);
        metal.comes_from = static_cast<site::ComesFrom>(i % 3);
        job.buildings[1].metalwork.push_back(metal);
    }
    const drawing::Scene scene = place_picture(job, answer::Answer{}, 0);
    EXPECT_EQ(clashes(scene.items, place_sheet), "");
    EXPECT_EQ(drawing::to_svg(scene).find("Part of this drawing is missing"), std::string::npos);
    for (std::size_t i = 0; i < methods; ++i) {
        EXPECT_TRUE(says(scene.items, site::words<site::LegMethod>()[i].substr(0, 6))) << i;
    }
}

}  // namespace
}  // namespace toft::picture
