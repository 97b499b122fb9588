#include "soil/least_squares.h"

#include "soil/soundings.h"

namespace toft::soil {
namespace {

Taken taken_over(const field::Strata& soil, const Numbers& spacings) {
    Taken taken;
    for (double rho : over(soil, wenners(spacings))) taken.ln.push_back(std::log(rho));
    taken.weight.assign(spacings.size(), 1);
    taken.look = [sounding = Sounding(wenners(spacings))](const LogSoil& at) {
        return sounding.look(at);
    };
    return taken;
}

Box wide(std::size_t figures) { return {LogSoil(figures, -7), LogSoil(figures, 12)}; }

TEST(LeastSquares, FindTheSoilThatReadingsWereMadeFrom) {
    const LogSoil truth = log_soil(two(300, 2, 60));
    const Settled found = settle(taken_over(two(300, 2, 60), {0.5, 1, 2, 4, 8, 16}), wide(3),
                                 log_soil(two(100, 1, 100)), 200);
    EXPECT_LT(found.sum, 1e-20);
    for (std::size_t f = 0; f < 3; ++f) EXPECT_NEAR(found.soil[f], truth[f], 1e-7);
}

TEST(LeastSquares, NeverClimbAndStayInTheBox) {
    const Taken taken = taken_over(three(200, 1, 30, 3, 500), usual_spacings);
    const Box box{log_soil(three(50, 0.5, 50, 0.5, 50)), log_soil(three(150, 2, 300, 9, 300))};
    double before = 1e9;
    for (int steps : {0, 1, 2, 4, 8, 100}) {
        const Settled found = settle(taken, box, log_soil(three(999, 1, 100, 2, 100)), steps);
        EXPECT_LE(found.sum, before);
        before = found.sum;
        for (std::size_t f = 0; f < found.soil.size(); ++f) {
            EXPECT_GE(found.soil[f], box.low[f]);
            EXPECT_LE(found.soil[f], box.high[f]);
        }
    }
    EXPECT_GT(before, 1e-6);  // the true soil lies outside
}

TEST(LeastSquares, LeaveOutWhatHasNoWeightAndHoldWhatHasNoRoom) {
    Taken taken = taken_over(two(300, 2, 60), {0.5, 1, 2, 4, 8, 16});
    taken.ln[3] += 1;
    taken.weight[3] = 0;
    const Settled without = settle(taken, wide(3), log_soil(two(200, 1, 100)), 200);
    EXPECT_LT(without.sum, 1e-20);
    EXPECT_NEAR(without.apart[3], 1, 1e-6);
    Box held = wide(3);
    held.low[2] = held.high[2] = std::log(1.0);
    const Settled at_one = settle(taken, held, log_soil(two(200, 1, 100)), 200);
    EXPECT_EQ(at_one.soil[2], 0);
    EXPECT_GT(at_one.sum, 1e-4);
}

}  // namespace
}  // namespace toft::soil
