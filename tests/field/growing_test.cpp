#include "field/growing.h"

#include "support/grounds.h"

namespace toft::field {
namespace {

TEST(Growing, EachStageIsTheFieldOfItsPieces) {
    const Strata soil = stack({{300, 0.5}, {60, 2}}, 400);
    const Medium ready = medium(soil);
    const std::vector<Wire> wires{rod(0, 0, 2.4, 0.016),
                                  rod(3, 0, 1.8, 0.016),
                                  {spot(0, 2, 0.4), spot(4, 3, 0.9), metres(0.004), 0}};
    const auto pieces = *cut(wires, ready.soil(), {metres(0.2), 4});
    std::vector<std::size_t> stages(3);
    for (const Piece& piece : pieces) {
        for (std::size_t s = static_cast<std::size_t>(piece.wire); s < 3; ++s) ++stages[s];
    }
    const auto ohms = growing(ready, pieces, stages);
    ASSERT_TRUE(ohms);
    for (std::size_t s = 0; s < 3; ++s) {
        const std::vector<Wire> first(wires.begin(), wires.begin() + static_cast<long>(s) + 1);
        EXPECT_NEAR((*ohms)[s].number() / joined(soil, first, 0.2, 4), 1, 1e-9);
    }
}

TEST(Growing, NeverReadsHigherAsItGrows) {
    const Medium ready = medium(stack({{300, 0.5}, {2000, 1}}, 100));
    const auto pieces = *cut({rod(0, 0, 3, 0.016)}, ready.soil(), {metres(0.1), 4});
    std::vector<std::size_t> stages;
    for (std::size_t i = 1; i <= pieces.size(); ++i) stages.push_back(i);
    const auto ohms = *growing(ready, pieces, stages);
    for (std::size_t i = 1; i < ohms.size(); ++i) EXPECT_LT(ohms[i], ohms[i - 1]);
}

TEST(Growing, RefusesPiecesInEachOther) {
    const Medium ready = medium(stack({}, 100));
    auto pieces = *cut({rod(0, 0, 1.2, 0.016)}, ready.soil(), {});
    const auto again = pieces;
    pieces.insert(pieces.end(), again.begin(), again.end());
    EXPECT_FALSE(growing(ready, pieces, {pieces.size()}));
}

}  // namespace
}  // namespace toft::field
