// The four pictures of every example, with the ground that the answer gives it.

#include "terrain/looking.h"
#include "terrain/lost_neutral.h"
#include "terrain/rod_length.h"
#include "terrain/separation_plan.h"
#include "terrain/surface_potential.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

struct Grounded {
    site::Job job;
    answer::GroundAnswer ground;
};

Grounded grounded(const std::string& name) {
    const tables::Catalogue& catalogue = support::catalogue();
    static const price::Book book = support::demo_book(catalogue);
    Grounded one{support::example_job(name, catalogue), {}};
    one.ground = answer::ground({catalogue, book, one.job});
    return one;
}

std::vector<drawing::Scene> pictures_of(const Grounded& one, double width) {
    const Metres reach = support::catalogue().limits.reach.value;
    return {rod_length_picture(one.job, one.ground, 0, width),
            separation_plan_picture({one.job, one.ground, 0, reach}, width),
            surface_potential_picture(one.job, one.ground, 0, width),
            lost_neutral_picture(one.job, one.ground, 0, width)};
}

TEST(OnExamples, NoWordsCoverOthersAndNothingIsMissing) {
    for (const std::string& name : support::example_names()) {
        const Grounded one = grounded(name);
        for (const double width : {320.0, 480.0, 794.0, 1400.0}) {
            for (const drawing::Scene& scene : pictures_of(one, width)) {
                EXPECT_EQ(clashes_of(scene), "") << name << " " << width << " " << scene.title;
                const std::string svg = drawing::to_svg(scene);
                EXPECT_EQ(svg.find("is missing"), std::string::npos) << name << scene.title;
                EXPECT_EQ(svg.find("safe"), std::string::npos) << name << scene.title;
            }
        }
    }
}

TEST(OnExamples, ThreeFactsAreNeverEnoughForSeparateEarths) {
    const Grounded one = grounded("three-facts");
    const Islands islands =
        islands_of(one.ground.sides[0].separation, support::catalogue().limits.reach.value);
    EXPECT_NE(islands, Islands::apart);
}

}  // namespace
}  // namespace toft::terrain
