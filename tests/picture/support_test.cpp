#include "picture/support.h"

#include "picture/looking.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

using site::LegMethod;

drawing::Items support_of(const site::Leg& leg) {
    const site::Job job = support::job_with_legs({leg, support::plain_leg(LegMethod::buried_direct),
                                                  support::plain_leg(LegMethod::clipped)});
    Sketch sketch;
    draw_support(set_stage(job, nullptr), 0, sketch);
    return std::move(sketch.items);
}

std::string bytes_of(const drawing::Items& items) {
    drawing::Scene scene{1400, 990};
    scene.items = items;
    return drawing::to_svg(scene);
}

TEST(Support, NoTwoWaysOfLayingLookAlike) {
    std::map<std::string, LegMethod> seen;
    for (const LegMethod method :
         {LegMethod::clipped, LegMethod::tray, LegMethod::free_air, LegMethod::in_conduit,
          LegMethod::in_trunking, LegMethod::in_insulation, LegMethod::above_ceiling,
          LegMethod::buried_direct, LegMethod::buried_in_duct, LegMethod::overhead}) {
        const auto [at, fresh] =
            seen.emplace(bytes_of(support_of(support::plain_leg(method))), method);
        EXPECT_TRUE(fresh) << site::word(method) << " as " << site::word(at->second);
    }
}

TEST(Support, AnOverheadLegTellsItsHeight) {
    site::Leg leg = support::plain_leg(LegMethod::overhead);
    leg.height = support::measured(metres(5.5));
    EXPECT_TRUE(says(support_of(leg), "5.5 m high"));
    leg.height = {};
    EXPECT_TRUE(says(support_of(leg), "height not known"));
}

TEST(Support, ABuriedLegTellsItsDepth) {
    EXPECT_TRUE(says(support_of(support::plain_leg(LegMethod::buried_in_duct)), "0.6 m deep"));
}

}  // namespace
}  // namespace toft::picture
