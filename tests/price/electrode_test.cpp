#include "price/electrode.h"

#include "price/price.h"
#include "support/catalogue.h"
#include "support/draws.h"
#include "support/jobs.h"
#include "support/questions.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::price {
namespace {

using support::demo_book;
using support::measured;

double priced(double pieces) {
    Silent silent;
    return electrode_price(silent, demo_book(), pieces).number();
}

TEST(RodPieces, ARodIsCoupledFromWholeSections) {
    EXPECT_EQ(rod_pieces(metres(2.4), metres(1.2)), 2);
    EXPECT_EQ(rod_pieces(metres(3.6), metres(1.2)), 3);  // 3.6/1.2 is a little over 3 in binary
    EXPECT_EQ(rod_pieces(metres(9.6), metres(1.2)), 8);
    EXPECT_EQ(rod_pieces(metres(2.5), metres(1.2)), 3);
    EXPECT_EQ(rod_pieces(metres(0.3), metres(1.2)), 1);
}

RC_GTEST_PROP(RodPieces, AreJustEnough, ()) {
    const double length = support::number_between(0.3, 30);
    const double section = support::number_between(0.6, 3);
    const double pieces = rod_pieces(metres(length), metres(section));
    RC_ASSERT(pieces >= 1);
    RC_ASSERT(pieces * section >= length - 1e-6);
    RC_ASSERT(pieces == 1 || (pieces - 1) * section < length);
}

TEST(ElectrodePrice, RodsAndLabourByThePieceOnePitForAll) {
    // The invented book: 14.50 a piece of 1.2 m, 19.00 the pit, 0.75 h a piece at 46.00.
    EXPECT_NEAR(priced(1), 14.50 + 19 + 0.75 * 46, 1e-9);
    EXPECT_NEAR(priced(6), 6 * 14.50 + 19 + 6 * 0.75 * 46, 1e-9);
}

TEST(ElectrodePrice, IsWrittenOutAsItIsReckoned) {
    Recording ledger;
    const auto price = electrode_price(ledger, demo_book(), 4);
    EXPECT_EQ(price.value.number(), priced(4));
    ledger.let({"p", "price of the electrode"}, price);
    EXPECT_EQ(support::wrong_lines(ledger.lines()), std::vector<std::string>{});
}

RC_GTEST_PROP(ElectrodePrice, EveryPieceMoreCostsTheSame, ()) {
    const double pieces = *rc::gen::inRange(1, 40);
    RC_ASSERT(std::abs(priced(pieces + 1) - priced(pieces) - (priced(2) - priced(1))) < 1e-9);
    RC_ASSERT(priced(2) > priced(1));
}

/// What a scheme pays more at the far end for an electrode of its own.
double paid_by_a_scheme(double rods, double length_m) {
    site::Job job = support::plain_job();
    job.buildings[1].electrode.rods = measured(rods);
    job.buildings[1].electrode.length = measured(metres(length_m));
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    Silent silent;
    const auto far_end = [&] {
        return price_of(silent, demo_book(), support::prepared(job), s, {}).far_end.number();
    };
    const double shared = far_end();
    s.earthing = study::BuildingEarthing::own_electrode;
    return far_end() - shared;
}

RC_GTEST_PROP(ElectrodePrice, ASchemePaysForThePiecesItDrives, ()) {
    const double rods = *rc::gen::inRange(1, 7);
    const double length = support::number_between(1, 10);
    const double pieces = rods * rod_pieces(metres(length), metres(1.2));
    RC_ASSERT(std::abs(paid_by_a_scheme(rods, length) - priced(pieces)) < 1e-9);
}

}  // namespace
}  // namespace toft::price
