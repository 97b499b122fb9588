#include "terrain/sheet.h"

#include "terrain/looking.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

Content plain_content(Space& seen) {
    Content content{"What it shows", "Potter's studio", "The answer first.", {}, {}, {}};
    content.draw = [&seen](const Space& space) {
        seen = space;
        return Drawn{{drawing::Rect{{space.left, space.top, space.right, space.top + 100}}},
                     space.top + 100};
    };
    content.explain = [](parts::WordColumn& column) { say(column, "How to read it."); };
    return content;
}

double height_of(const drawing::Scene& scene, const std::string& line) {
    for (const drawing::Text& text : picture::texts_in(scene.items)) {
        if (picture::line_of(text) == line) return text.at.y;
    }
    return -1;
}

TEST(Sheet, WordsStandBesideTheDrawingOnPaperAndBelowItElsewhere) {
    Space space;
    const site::Job job = looked_at_job();
    const drawing::Scene wide = lay_out(job, plain_content(space), 1400);
    EXPECT_TRUE(space.beside);
    EXPECT_LT(height_of(wide, "How to read it."), space.top + 100);
    const drawing::Scene page = lay_out(job, plain_content(space), 794);
    EXPECT_FALSE(space.beside || space.phone);
    EXPECT_GT(height_of(page, "How to read it."), space.top + 100);
    lay_out(job, plain_content(space), 480);
    EXPECT_TRUE(space.phone);
}

TEST(Sheet, WidthsAreTakenIntoWhatIsLaidOut) {
    Space space;
    const site::Job job = looked_at_job();
    const double asked[][2] = {{10, 320}, {5000, 1400}, {no_number, 1400}, {360, 360}};
    for (const auto& [width, given] : asked) {
        EXPECT_EQ(lay_out(job, plain_content(space), width).width, given);
    }
}

TEST(Sheet, SaysWhoDecidesAndWhoseItIs) {
    Space space;
    const drawing::Scene scene = lay_out(looked_at_job(), plain_content(space), 794);
    for (const char* words : {"What it shows: Potter's studio", "The answer first.",
                              "Potter's studio, Wrensnest, Ashlow Green",
                              "A competent, licensed person, the local code and the network "
                              "operator decide."}) {
        EXPECT_TRUE(tells(scene, words)) << words;
    }
}

TEST(Sheet, ABuildingWithoutANameHasItsIdAndAStrangerItsOwnWord) {
    site::Job job = looked_at_job();
    EXPECT_EQ(building_words(job, "studio"), "Potter's studio");
    EXPECT_EQ(building_words(job, "house"), "house");
    EXPECT_EQ(building_words(job, "barn"), "barn");
}

}  // namespace
}  // namespace toft::terrain
