#include "digging/plan_field.h"

#include "trench/digging_jobs.h"

#include <gtest/gtest.h>

namespace toft::digging {
namespace {

const drawing::Group& layer(const PlanField& field, const std::string& kind) {
    return *picture::find_kind(field.items, kind);
}

PlanField field_of(const trench::Works& works, double width = paper_wide) {
    return plan_field(works, trench::plan_of(works), {0, width, 0, drawing::units_of_mm(190)});
}

TEST(PlanField, DistancesOnPaperAreTheJobsAtTheStatedScale) {
    for (const char* name : {"demo", "garage-gym-stable", "hurdle-farm-yard"}) {
        const trench::Works works = trench::works_of_example(name);
        const PlanField field = field_of(works);
        const double k = units_a_metre(field.one_to);
        int found = 0;
        for (const drawing::Item& item : layer(field, "buildings").items) {
            const auto* rect = std::get_if<drawing::Rect>(&item.shape);
            if (!rect) continue;
            for (const site::Building& b : works.job.buildings) {
                const drawing::Point at = field.zero + drawing::Point{b.at_x_m.value_or(0) * k,
                                                                      -b.at_y_m.value_or(0) * k};
                found += drawing::distance(at, rect->box.centre()) < 1e-6;
            }
        }
        EXPECT_EQ(found, static_cast<int>(works.job.buildings.size()) + 1) << name;
    }
}

TEST(PlanField, NorthIsShownOnlyWhereAPositionIsStated) {
    const auto has_north = [](const PlanField& field) {
        for (const drawing::Text& text : picture::texts_in(field.items)) {
            if (picture::line_of(text) == "N") return true;
        }
        return false;
    };
    EXPECT_TRUE(has_north(field_of(trench::works_of_example("demo"))));
    EXPECT_FALSE(has_north(field_of(trench::works_of_example("tt-shed"))));
}

TEST(PlanField, WordsThatFoundNoRoomAreOwnedUp) {
    EXPECT_TRUE(field_of(trench::works_of_example("demo")).all_said);
    EXPECT_FALSE(field_of(trench::works_of_example("hurdle-farm-yard"), 320).all_said);
}

}  // namespace
}  // namespace toft::digging
