#include "diagram/stretches.h"

#include "diagram/sheet.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

TEST(Stretches, EachIsTheAnswersWithItsLegs) {
    std::size_t most = 0;
    each_scheme([&](const Example& one, const answer::SchemeAnswer& scheme) {
        const RunLine run = run_line(picture::set_stage(one.job, &scheme));
        ASSERT_EQ(run.stretches.size(), scheme.run.stretches.size());
        std::size_t legs = 0;
        for (std::size_t i = 0; i < run.stretches.size(); ++i) {
            const answer::StretchAnswer& cable = run.stretches[i].cable;
            EXPECT_EQ(cable.live_mm2, scheme.run.stretches[i].live_mm2);
            EXPECT_EQ(cores_of(cable).size(), cable.core_list.size());
            legs += run.stretches[i].legs.size();
        }
        EXPECT_EQ(legs, one.job.runs[0].legs.size()) << "every leg once";
        EXPECT_EQ(run.earth_stops, scheme.building.earthing == "own electrode");
        most = std::max(most, run.stretches.size());
    });
    EXPECT_EQ(most, 3u);
}

TEST(Stretches, CoresCountLinesFirst) {
    answer::CableAnswer cable;
    cable.core_list = {{"black", "green-yellow", "protective"},
                       {"brown", "", "line 1"},
                       {"black", "", "line 2"},
                       {"grey", "", "line 3"},
                       {"blue", "", "neutral"}};
    const std::vector<Core> wanted{Core::line, Core::line, Core::line, Core::neutral,
                                   Core::protective};
    EXPECT_EQ(cores_of(cable), wanted);
}

}  // namespace
}  // namespace toft::diagram
