#include "field/piece.h"

#include "support/grounds.h"

#include <cmath>

namespace toft::field {
namespace {

std::string refused(const std::vector<Wire>& wires, const Cutting& cutting = {}) {
    const auto pieces = cut(wires, plain_soil(), cutting);
    return pieces ? "" : pieces.error().front().says;
}

TEST(Piece, PiecesTogetherAreTheWire) {
    const auto pieces = *cut({{spot(1, 2, 0.5), spot(4, 6, 0.5), metres(0.004), 0}}, plain_soil(),
                             {metres(0.3), 4});
    EXPECT_EQ(pieces.size(), 17u);
    double length = 0;
    Vector centre;
    for (const Piece& piece : pieces) {
        length += 2 * piece.bar.half;
        centre = centre + (2 * piece.bar.half / 5) * piece.bar.middle;
        EXPECT_NEAR(dot(piece.bar.along, piece.bar.along), 1, 1e-12);
        EXPECT_LT(2 * piece.bar.half, 0.3 * 1.7);
    }
    EXPECT_NEAR(length, 5, 1e-12);
    EXPECT_NEAR(centre.x, 2.5, 1e-12);
    EXPECT_NEAR(centre.y, 4, 1e-12);
    EXPECT_LT(pieces.front().bar.half, pieces[8].bar.half);
    EXPECT_NEAR(pieces.front().bar.half, pieces.back().bar.half, 1e-12);
}

TEST(Piece, NoneCrossesTheBoundary) {
    for (double boundary : {0.01, 0.5, 1.0, 2.39, 2.4, 5.0}) {
        const auto soil = layers(100, 300, boundary);
        const auto pieces = *cut(
            {rod(0, 0, 2.4, 0.016), {spot(0, 0, 2), spot(3, 0, 0.2), metres(0.004), 1}}, soil, {});
        double length = 0;
        for (const Piece& piece : pieces) {
            const double reach = piece.bar.half * std::fabs(piece.bar.along.z);
            EXPECT_TRUE(piece.bar.middle.z + reach <= boundary + 1e-9 ||
                        piece.bar.middle.z - reach >= boundary - 1e-9);
            length += 2 * piece.bar.half;
        }
        EXPECT_NEAR(length, 2.4 + std::sqrt(9 + 1.8 * 1.8), 1e-9) << boundary;
    }
}

TEST(Piece, NoneCrossesAnyOfManyBoundaries) {
    const Strata soil = stack({{1000, 0.3}, {100, 0.9}, {300, 0.7}, {50, 5}}, 20);
    for (const Wire& wire :
         {rod(0, 0, 2.4, 0.016), Wire{spot(0, 0, 2.2), spot(3, 0, 0.1), metres(0.004), 0},
          rod(0, 0, 1.2, 0.016), rod(0, 0, 0.2, 0.016)}) {
        const auto pieces = *cut({wire}, soil, {});
        double length = 0;
        for (const Piece& piece : pieces) {
            const double reach = piece.bar.half * std::fabs(piece.bar.along.z);
            for (double depth : boundaries(soil)) {
                EXPECT_TRUE(piece.bar.middle.z + reach <= depth + 1e-9 ||
                            piece.bar.middle.z - reach >= depth - 1e-9);
            }
            length += 2 * piece.bar.half;
        }
        const Vector whole = vector_of(wire.to) - vector_of(wire.from);
        EXPECT_NEAR(length, std::sqrt(dot(whole, whole)), 1e-9);
    }
}

TEST(Piece, EndsOnABoundaryThatRoundingMovedLeaveNoSliver) {
    const auto pieces = *cut({rod(0, 0, 0.6, 0.016)}, stack({{10, 0.4}, {20, 0.2}}, 30), {});
    for (const Piece& piece : pieces) EXPECT_GT(piece.bar.half, 0.01);
}

TEST(Piece, StoutWiresGetFewerPieces) {
    const auto pieces = *cut({rod(0, 0, 1.2, 0.1)}, plain_soil(), {metres(0.01), 100});
    EXPECT_EQ(pieces.size(), 6u);
}

TEST(Piece, WhatIsNoThinWireInTheGroundIsRefused) {
    EXPECT_EQ(refused({rod(0, 0, 1.2, 0.016)}), "");
    EXPECT_NE(refused({}), "");
    EXPECT_NE(refused({rod(0, 0, 1.2, 0)}), "");
    EXPECT_NE(refused({rod(0, 0, 1.2, -0.01)}), "");
    EXPECT_NE(refused({rod(0, 0, 0.01, 0.016)}), "");
    EXPECT_NE(refused({rod(0, 0, NAN, 0.016)}), "");
    EXPECT_NE(refused({{spot(0, 0, -0.1), spot(0, 0, 1), metres(0.01), 0}}), "");
    EXPECT_NE(refused({rod(0, 0, 1.2, 0.016, 1)}), "");
    EXPECT_NE(refused({rod(0, 0, 1.2, 0.016, -1)}), "");
    EXPECT_NE(refused({rod(0, 0, 1.2, 0.016, 2000000000)}), "");
    EXPECT_NE(refused({rod(0, 0, 1.2, 0.016)}, {metres(0), 4}), "");
    EXPECT_NE(refused({rod(0, 0, 1.2, 0.016)}, {metres(1), 0}), "");
    EXPECT_NE(refused({rod(0, 0, 1000, 0.002)}, {metres(0.01), 4}), "");
}

}  // namespace
}  // namespace toft::field
