#include "curves/curves.h"

#include "curves/looking.h"
#include "picture/stage.h"

#include <gtest/gtest.h>

namespace toft::curves {
namespace {

const drawing::Box sheet{0, 0, picture::sheet_wide, picture::sheet_high};

drawing::Scene drawn(const picture::Example& one, std::size_t index) {
    return curves_picture(support::catalogue(), one.job, one.answer, index);
}

/// Level words only: those along slanting lines have a test of their own.
drawing::Items level(const drawing::Items& items) {
    drawing::Items out;
    for (const drawing::Text& text : picture::texts_in(items)) {
        if (text.style.turn == 0) out.emplace_back(text);
    }
    return out;
}

TEST(Curves, SayWhatMatters) {
    const picture::Example& one = picture::example("demo");
    const drawing::Scene scene = drawn(one, 0);
    for (const char* words :
         {"Potter's studio, Wrensnest, Ashlow Green", "Ib 17.9 A", "earth fault off within 5 s",
          "sure to hold", "sure to have operated", "earth fault, far end", "meets",
          "A competent, licensed person, the local code and the network operator decide."}) {
        EXPECT_TRUE(picture::says(scene.items, words)) << words;
    }
    EXPECT_EQ(picture::count_kind(scene.items, "operates"), 1);
}

TEST(Curves, NoWordsCoverOthersOnAnyExample) {
    for (const std::string& name : support::example_names()) {
        const picture::Example& one = picture::example(name);
        for (std::size_t i = 0; i <= one.answer.schemes.size(); ++i) {
            const drawing::Scene scene = drawn(one, i);
            EXPECT_EQ(picture::clashes(level(scene.items), sheet), "") << name << " " << i;
            EXPECT_EQ(drawing::to_svg(scene).find("is missing"), std::string::npos);
        }
    }
}

TEST(Curves, SameInputSameBytes) {
    const picture::Example& one = picture::example("steel-container");
    EXPECT_EQ(drawing::to_svg(drawn(one, 0)), drawing::to_svg(drawn(one, 0)));
    EXPECT_NE(drawing::to_svg(drawn(one, 0)), drawing::to_svg(drawn(one, 1)));
}

TEST(Curves, WithoutASchemeTheReasonsStand) {
    const picture::Example& one = picture::example("caravan-no-scheme");
    const drawing::Scene scene = drawn(one, 0);
    EXPECT_TRUE(picture::says(scene.items, "No sound scheme"));
    EXPECT_EQ(picture::count_kind(scene.items, "reason"),
              static_cast<int>(one.answer.dropped.size()));
    EXPECT_EQ(picture::count_kind(scene.items, "withstand"), 0);
}

TEST(Curves, HostileNamesAreHarmless) {
    picture::Example one = picture::example("demo");
    one.job.title = one.answer.job = picture::hostile_name();
    const drawing::Scene scene = drawn(one, 0);
    EXPECT_EQ(drawing::to_svg(scene).find("<script"), std::string::npos);
    EXPECT_EQ(picture::clashes(level(scene.items), sheet), "");
}

}  // namespace
}  // namespace toft::curves
