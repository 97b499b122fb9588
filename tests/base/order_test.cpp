#include "base/order.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <string>

using toft::put_in_order;

using Named = std::pair<int, std::string>;

RC_GTEST_PROP(Order, IsThatOfTheStandardLibraryAndEqualOnesStayAsTheyWere,
              (std::vector<std::pair<unsigned char, std::string>> given)) {
    std::vector<Named> ours;
    for (const auto& [rank, name] : given) ours.emplace_back(rank % 4, name);
    std::vector<Named> theirs = ours;
    const auto before = [](const Named& a, const Named& b) { return a.first < b.first; };
    put_in_order(ours, before);
    std::stable_sort(theirs.begin(), theirs.end(), before);
    RC_ASSERT(ours == theirs);
}

TEST(Order, OfNothingIsNothing) {
    std::vector<Named> none;
    put_in_order(none, [](const Named&, const Named&) { return false; });
    EXPECT_TRUE(none.empty());
}
