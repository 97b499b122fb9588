#include "search/front.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace toft::search {
namespace {

Sound of(double total, double headroom, double dependability) {
    Sound s;
    s.total = total;
    s.headroom = headroom;
    s.dependability = dependability;
    return s;
}

TEST(Front, AnEmptyOneBeatsNothing) { EXPECT_FALSE(Front().beats(1e9, -1e9, 0)); }

TEST(Front, OnlyACheaperOneBeats) {
    Front front;
    front.add(of(100, 0.5, 3));
    EXPECT_FALSE(front.beats(100, 0.1, 1));
    EXPECT_TRUE(front.beats(100.01, 0.5, 3));
    EXPECT_FALSE(front.beats(100.01, 0.51, 3));
    EXPECT_FALSE(front.beats(100.01, 0.5, 4));
}

/// Few figures, so that many are equal.
Sound any_sound() {
    return of(*rc::gen::inRange(0, 12), 0.1 * *rc::gen::inRange(-3, 8), *rc::gen::inRange(1, 5));
}

RC_GTEST_PROP(Front, AgreesWithAPlainScanWhateverTheOrder, ()) {
    Front front;
    std::vector<Sound> seen;
    const int count = *rc::gen::inRange(0, 60);
    for (int i = 0; i < count; ++i) {
        seen.push_back(any_sound());
        front.add(seen.back());
        const Sound asked = any_sound();
        const bool beaten = std::any_of(seen.begin(), seen.end(), [&](const Sound& s) {
            return s.total < asked.total && s.headroom >= asked.headroom &&
                   s.dependability >= asked.dependability;
        });
        RC_ASSERT(front.beats(asked.total, asked.headroom, asked.dependability) == beaten);
        const double above = front.beaten_above(asked.headroom, asked.dependability);
        RC_ASSERT((asked.total > above) == beaten);
    }
}

}  // namespace
}  // namespace toft::search
