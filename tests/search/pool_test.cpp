// What the search keeps of the schemes it finds.

#include "search/pool.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::search {
namespace {

constexpr site::Prefer by_price = site::Prefer::price;

/// Of one and the same combination.
Sound pooled(double total, double headroom, double lost) {
    Sound s;
    s.scheme = support::scheme(support::cable(3, 6), study::Protective::core,
                               support::device("BS EN 60898", "B", 32));
    s.total = total;
    s.headroom = headroom;
    s.lost = lost;
    s.dependability = 3;
    return s;
}

TEST(Pool, ADearerSchemeWithNoMoreHeadroomIsNotKept) {
    Pool pool;
    pool.add(pooled(100, 0.2, 10), by_price);
    pool.add(pooled(110, 0.2, 10), by_price);
    EXPECT_EQ(pool.found.size(), 1u);
}

TEST(Pool, ADearerSchemeThatLosesSoMuchLessIsKept) {
    Pool pool;
    pool.add(pooled(100, 0.2, 60), by_price);
    pool.add(pooled(110, 0.2, 10), by_price);
    ASSERT_EQ(pool.found.size(), 2u);
    EXPECT_EQ(pool.thrift->total, 110);
    EXPECT_EQ(pool.best.begin()->second.total, 100) << "it is not the one preferred";
}

TEST(Pool, OfEqualSumsThePreferredOneIsTheThriftiest) {
    EXPECT_TRUE(thriftier(pooled(100, 0.2, 20), pooled(110, 0.2, 10), by_price));
    EXPECT_FALSE(thriftier(pooled(110, 0.2, 10), pooled(100, 0.2, 20), by_price));
}

TEST(Pool, WhoPrefersHeadroomIsSureOnlyOfMoreHeadroom) {
    const Sound s = pooled(100, 0.3, 0);
    EXPECT_TRUE(surely_before(s, 90, 0.2, site::Prefer::headroom));
    EXPECT_FALSE(surely_before(s, 90, 0.2, by_price));
    EXPECT_TRUE(surely_before(s, 101, 0.9, by_price));
}

TEST(Pool, APriceIsAboveWhatComesBeforeItExactlyWhereItSurelyDoes) {
    for (const auto prefer : {by_price, site::Prefer::headroom, site::Prefer::dependability}) {
        for (const double headroom : {0.1, 0.3, 0.5}) {
            for (const double dependability : {2.0, 3.0, 4.0}) {
                for (const double total : {90.0, 100.0, 101.0}) {
                    const Sound s = pooled(100, 0.3, 0);
                    EXPECT_EQ(total > before_above(s, headroom, prefer),
                              surely_before(s, total, headroom, prefer));
                    const Hoped b{total, headroom, dependability};
                    EXPECT_EQ(total > first_above(s, b, prefer), surely_first(s, b, prefer));
                }
            }
        }
    }
}

}  // namespace
}  // namespace toft::search
