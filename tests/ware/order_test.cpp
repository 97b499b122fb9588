#include "ware/order.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

std::string words(const Draft& draft) { return order_words(support::catalogue().ware, draft); }

Draft cut(std::vector<double> lengths) {
    Draft draft;
    draft.bought = Bought::cut;
    for (const double length : lengths) {
        draft.pieces.push_back(metres(length));
        draft.where.push_back("Gym");
    }
    return draft;
}

TEST(Order, CableIsCutInPiecesOfWholeMetres) {
    EXPECT_EQ(words(cut({36.92})), "cut 37 m (Gym); or 1 drum of 50 m, 13 m left over");
    EXPECT_EQ(words(cut({36.92, 36.92, 22})),
              "cut 2 × 37 m (Gym), 22 m (Gym); or 1 drum of 100 m, 4 m left over");
}

TEST(Order, CableOfCircuitsComesOnReels) {
    Draft reel = cut({9, 8});
    reel.bought = Bought::reel;
    EXPECT_EQ(words(reel), "1 reel of 25 m, 8 m left over");
}

TEST(Order, ManyPiecesAreToldTogether) {
    EXPECT_EQ(words(cut(std::vector<double>(9, 10))),
              "cut 9 pieces, 90 m together; or 1 drum of 100 m, 10 m left over");
}

TEST(Order, SandIsByTheTonneAndTapeByTheRoll) {
    Draft draft;
    draft.bought = Bought::sand;
    draft.row.quantity = 20;
    draft.tonnes = 1.44;
    EXPECT_EQ(words(draft), "about 1.4 t of sand; tape 20 m of a roll of 365 m");
    draft.tonnes = 0;  // not known
    EXPECT_EQ(words(draft), "tape 20 m of a roll of 365 m");
}

TEST(Order, CleatsAreCountedAndDuctComesInCoils) {
    Draft cleats;
    cleats.bought = Bought::fixed;
    cleats.count = 61;
    EXPECT_EQ(words(cleats), "about 61");
    Draft duct;
    duct.bought = Bought::coupled;
    duct.row.quantity = 30;
    EXPECT_EQ(words(duct), "1 coil of 50 m, 20 m left over");
    EXPECT_EQ(words(Draft{}), "");
}

}  // namespace
}  // namespace toft::ware
