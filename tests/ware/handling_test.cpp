#include "ware/handling.h"

#include "study/scheme.h"
#include "ware/bills.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

std::vector<Handling> handling(const HandMade& made) {
    return handling_of(support::catalogue(), made.part());
}

HandMade with_cable() {
    HandMade made;
    made.line(price::Part::run, "cable 3x10", 36.92, 7.1);
    return made;
}

TEST(Handling, TellsLengthAndRadius) {
    const auto all = handling(with_cable());
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].to, "Garage");
    EXPECT_EQ(all[0].cut, "37 m");
    EXPECT_EQ(all[0].bend, "117 mm (6 × 19.5 mm)");
    EXPECT_EQ(all[0].pull, "");  // nothing to pull through
}

TEST(Handling, DuctAsksForThePullOfItsWholeLength) {
    HandMade made = with_cable();
    made.run().legs.resize(3);
    made.stretch().last_leg = 3;
    for (site::Leg& leg : made.run().legs) {
        leg.method = site::LegMethod::buried_in_duct;
        leg.length = support::measured(metres(10));
    }
    EXPECT_EQ(handling(made)[0].pull.rfind("30 m straight: about", 0), 0u);
    made.run().legs[1].method = site::LegMethod::clipped;
    EXPECT_EQ(handling(made)[0].pull.rfind("10 m straight: about", 0), 0u);
    made.run().legs[2].length = {};  // not stated: it may be the whole stretch
    EXPECT_EQ(handling(made)[0].pull.rfind("30 m straight: about", 0), 0u);
}

TEST(Handling, ACableThatStaysIsNotHandled) {
    HandMade made = with_cable();
    made.stretch().laid = study::laid_word(study::Laid::kept);
    EXPECT_TRUE(handling(made).empty());
}

}  // namespace
}  // namespace toft::ware
