#include "picture/narrow_place.h"

#include "parts/word_column.h"
#include "picture/looking.h"
#include "picture/place.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

TEST(NarrowPlace, SaysWhatMattersFromTheTopDown) {
    const Example& one = example("demo");
    const drawing::Scene scene = place_picture(one.job, one.answer, 0, 360);
    EXPECT_EQ(scene.width, 360);
    EXPECT_EQ(scene.description, one.answer.schemes[0].sentence);
    const std::string words = words_in(scene.items);
    std::size_t at = 0;
    for (const char* part : {"Potter's studio", "caution", "House", "supply TN-C-S",
                             "the run, leg by leg", "the cable cut through", "how its armour ends",
                             "use of each limit", "voltage drop", "A competent, licensed person"}) {
        at = words.find(part, at);
        ASSERT_NE(at, std::string::npos) << part;
    }
}

TEST(NarrowPlace, NoWordsCoverOthersOnAnyExample) {
    const std::vector<std::string>& names = support::example_names();
    for (const std::string& name : names) {
        const Example& one = example(name);
        for (std::size_t i = 0; i <= one.answer.schemes.size(); i += 5) {
            for (const double width : {360.0, 794.0}) {
                const drawing::Scene scene = place_picture(one.job, one.answer, i, width);
                EXPECT_EQ(clashes(scene.items, {0, 0, scene.width, scene.height}), "")
                    << name << " " << i << " " << width;
                EXPECT_EQ(drawing::to_svg(scene).find("is missing"), std::string::npos);
            }
        }
    }
}

TEST(NarrowPlace, EveryRuleIsTold) {
    const Example& one = example("demo");
    const drawing::Scene scene = place_picture(one.job, one.answer, 0, 360);
    int bars = 0;
    for (const answer::FindingAnswer& f : one.answer.schemes[0].findings) {
        bars += f.value && f.limit && f.use;
    }
    EXPECT_GT(bars, 5);
    EXPECT_EQ(count_kind(scene.items, "use-bar"), bars);
}

TEST(NarrowPlace, IsNeverNarrowerThanItCanBeLaidOutAndPaperIsAsBefore) {
    const Example& one = example("demo");
    EXPECT_EQ(place_picture(one.job, one.answer, 0, 10).width, parts::narrowest_sheet);
    EXPECT_EQ(drawing::to_svg(place_picture(one.job, one.answer, 0, 2000)),
              drawing::to_svg(place_picture(one.job, one.answer, 0)));
}

TEST(NarrowPlace, WithoutASchemeTheReasonsStand) {
    const Example& one = example("caravan-no-scheme");
    const drawing::Scene scene = narrow_place(one.job, one.answer, nullptr, 360);
    EXPECT_EQ(count_kind(scene.items, "reason"), static_cast<int>(one.answer.dropped.size()));
    EXPECT_FALSE(says(scene.items, "the cable cut through"));
}

TEST(NarrowPlace, HostileNamesAreHarmless) {
    Example one = example("demo");
    one.job.title = one.answer.job = hostile_name();
    for (site::Building& building : one.job.buildings) building.name = hostile_name();
    const drawing::Scene scene = place_picture(one.job, one.answer, 0, 360);
    EXPECT_EQ(drawing::to_svg(scene).find("<script"), std::string::npos);
    EXPECT_EQ(clashes(scene.items, {0, 0, scene.width, scene.height}), "");
}

}  // namespace
}  // namespace toft::picture
