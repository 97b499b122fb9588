#include "gallery/pictures.h"

#include "picture/looking.h"
#include "picture/place.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::gallery {
namespace {

TEST(Pictures, AreFoundByNameAndByNoOther) {
    std::set<std::string> names;
    for (const Picture& one : pictures()) {
        EXPECT_EQ(find_picture(one.name), &one);
        EXPECT_NE(std::string(one.says), "");
        names.insert(one.name);
    }
    EXPECT_EQ(names.size(), pictures().size());
    EXPECT_EQ(names.count("place") + names.count("curves"), 2u);
    for (const char* other : {"", "Place", "plac", "places"}) {
        EXPECT_EQ(find_picture(other), nullptr);
    }
}

TEST(Pictures, TheUsualOneIsThePlaceAndEachShowsSomethingElse) {
    const picture::Example& one = picture::example("demo");
    const Subject subject{support::catalogue(), one.job, one.answer, 0};
    std::set<std::string> drawn;
    for (const Picture& each : pictures()) drawn.insert(drawing::to_svg(each.draw(subject)));
    EXPECT_EQ(drawn.size(), pictures().size());
    EXPECT_EQ(drawing::to_svg(pictures().front().draw(subject)),
              drawing::to_svg(picture::place_picture(one.job, one.answer, 0)));
}

TEST(Pictures, EachHasTheWidthThatIsAskedFor) {
    const picture::Example& one = picture::example("demo");
    for (const Picture& each : pictures()) {
        for (const double width : {least_width, 360.0, 794.0, most_width}) {
            const auto scene = each.draw({support::catalogue(), one.job, one.answer, 0, width});
            EXPECT_EQ(scene.width, width) << each.name;
        }
    }
}

}  // namespace
}  // namespace toft::gallery
