#include "joins/rows.h"

#include "drawing/measure.h"
#include "joins/looking.h"

#include <gtest/gtest.h>

namespace toft::joins {
namespace {

TEST(Rows, StandOneUnderAnotherAndHoldTheirWords) {
    for_each_run([&](const std::string& name, const site::Job& job, const answer::SchemeAnswer& s) {
        const picture::Stage stage = picture::set_stage(job, &s);
        for (const double width : {300.0, 340.0, 714.0}) {
            const Frame f = frame_of(10, 10 + width);
            const auto conductors = conductors_of(s, 0);
            const auto rows = rows_of(conductors, f, end_of(stage, 0, Side::near),
                                      end_of(stage, 0, Side::far), 0);
            ASSERT_EQ(rows.size(), conductors.size());
            double before = 0;
            for (const Row& row : rows) {
                EXPECT_GE(row.top, before) << name;
                EXPECT_GT(row.y, row.top + static_cast<double>(lines_of(f, row)) * f.letters);
                EXPECT_GT(row.foot, row.y);
                before = row.foot;
                for (const auto* list : {&row.near, &row.what, &row.far}) {
                    ASSERT_FALSE(list->empty());
                    for (const std::string& line : *list) {
                        EXPECT_EQ(line.find("…"), std::string::npos) << name << " " << width;
                    }
                }
            }
        }
    });
}

TEST(Rows, AreTightOnAPhoneOnly) {
    EXPECT_TRUE(frame_of(10, 350).tight);
    EXPECT_FALSE(frame_of(40, 754).tight);
    const Conductor c{Kind::line, "L"};
    EXPECT_EQ(tag_room(frame_of(10, 350), c), 0);
    EXPECT_GT(tag_room(frame_of(40, 754), c), 0);
    EXPECT_GT(words_over(c), 0);
}

}  // namespace
}  // namespace toft::joins
