#include "outage/dark.h"

#include "outage/looking.h"

#include <gtest/gtest.h>

namespace toft::outage {
namespace {

TEST(DarkPicture, NoWordsCoverOthersOnAnyExampleAtAnyWidth) {
    for (const std::string& name : support::example_names()) {
        const picture::Example& one = picture::example(name);
        for (const double width : terrain::looked_at_widths()) {
            const drawing::Scene scene = dark_picture(one.job, one.answer, 0, width);
            EXPECT_EQ(clashes_of(scene), "") << name << " " << width;
            EXPECT_EQ(scene.width, width);
            const std::string svg = drawing::to_svg(scene);
            EXPECT_EQ(svg.find("is missing"), std::string::npos) << name;
            EXPECT_EQ(svg.find("safe"), std::string::npos) << name;
        }
    }
}

TEST(DarkPicture, ManyCircuitsAndLongNamesStillGiveASheet) {
    for (const std::size_t circuits : {1u, 2u, 7u, 19u, 100u}) {
        for (const std::string& name : {std::string("c"), picture::hostile_name()}) {
            const MadeUp one = scheme_of(made_up(circuits, name));
            for (const double width : {320.0, 360.0, 794.0, 1400.0}) {
                const drawing::Scene scene = dark_picture(one.job, one.answer, 0, width);
                EXPECT_EQ(clashes_of(scene), "") << circuits << " " << width;
                EXPECT_EQ(drawing::to_svg(scene).find("<script"), std::string::npos);
            }
        }
    }
}

TEST(DarkPicture, SaysHowItIsReadAndWhatGoesFirst) {
    const picture::Example& one = picture::example("demo");
    const drawing::Scene scene = dark_picture(one.job, one.answer, 0, 794);
    for (const char* words : {"surely dark", "possibly dark", "stays on", "opens on overcurrent",
                              "weak earth fault on the run", "loss of the supply",
                              "A weak earth fault on a circuit", "30 mA, type A"}) {
        EXPECT_TRUE(tells(scene, words)) << words;
    }
}

TEST(DarkPicture, CircuitsThatAreNotDrawnAreSaid) {
    const MadeUp one = scheme_of(made_up(100));
    EXPECT_TRUE(tells(dark_picture(one.job, one.answer, 0, 360), "circuits more"));
    EXPECT_FALSE(
        tells(dark_picture(scheme_of(made_up(3)).job, scheme_of(made_up(3)).answer, 0, 360),
              "circuits more"));
}

TEST(DarkPicture, WithoutASchemeItSaysSo) {
    const MadeUp one = scheme_of(made_up(2));
    EXPECT_TRUE(tells(dark_picture(one.job, one.answer, 1, 794), "No scheme is sound"));
}

TEST(DarkPicture, SameInputSameBytes) {
    const picture::Example& one = picture::example("demo");
    EXPECT_EQ(drawing::to_svg(dark_picture(one.job, one.answer, 0, 500)),
              drawing::to_svg(dark_picture(one.job, one.answer, 0, 500)));
}

}  // namespace
}  // namespace toft::outage
