#include "curves/legend.h"

#include "curves/looking.h"

#include <gtest/gtest.h>

namespace toft::curves {
namespace {

const drawing::Box column{990, 140, 1356, 900};

drawing::Items legend_of(const answer::SchemeAnswer& scheme) {
    const auto lines = withstands(support::catalogue(), scheme.scheme);
    return legend({*scheme.scheme.device, scheme, lines}, column);
}

TEST(Legend, NamesEveryLineAndTheRules) {
    const auto& scheme = picture::example("demo").answer.schemes.front();
    const drawing::Items items = legend_of(scheme);
    for (const char* words : {"sure to have operated", "sure to hold up to here", "may do either",
                              "design current", "rating of the cable", "armour", "k²S²/I²",
                              "loop impedance", "fault heat", "maker's own curve"}) {
        EXPECT_TRUE(picture::says(items, words)) << words;
    }
    EXPECT_FALSE(picture::says(items, "RCD"));
    EXPECT_TRUE(
        picture::says(legend_of(picture::example("tt-shed").answer.schemes.front()), "RCD"));
}

TEST(Legend, SaysWhenTheTablesPromiseNoHolding) {
    const auto& scheme = picture::example("demo").answer.schemes.front();
    tables::Device device = *scheme.scheme.device;
    device.holds.clear();
    const drawing::Items items = legend({device, scheme, {}}, column);
    EXPECT_FALSE(picture::says(items, "may do either"));
    EXPECT_TRUE(picture::says(items, "not in the tables"));
}

TEST(Legend, PointsFromMemoryAreOwnedUpTo) {
    static const Citation seen{"book", "table", Basis::published, ""};
    static const Citation recalled{"book", "table", Basis::memory, ""};
    tables::Device device = breaker();
    for (auto* list : {&device.points, &device.holds}) {
        for (tables::CurvePoint& p : *list) p.current.citation = &seen;
    }
    EXPECT_EQ(curve_basis(device), "None of its 4 points is from memory.");
    device.points.front().current.citation = &recalled;
    EXPECT_EQ(curve_basis(device), "1 of its 4 points are from memory: check them.");
}

}  // namespace
}  // namespace toft::curves
