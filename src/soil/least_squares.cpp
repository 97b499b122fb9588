#include "soil/least_squares.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace toft::soil {

namespace {

constexpr double first_damping = 1e-2;
constexpr double most_damping = 1e10;
constexpr double least_gain = 1e-13;  ///< of the sum of squares, relative
constexpr double least_sum = 1e-26;   ///< of squares: all readings met to the last digits
constexpr double least_scale = 1e-9;  ///< of the steepest figure, for figures without effect
constexpr double least_move = 1e-10;

using Matrix = Eigen::MatrixXd;
using Vector = Eigen::VectorXd;

std::size_t at(Eigen::Index i) { return static_cast<std::size_t>(i); }

struct Place {
    Settled settled;
    Sight sight;
};

Place look_at(const Taken& taken, LogSoil soil) {
    Place place;
    place.sight = taken.look(soil);
    place.settled.soil = std::move(soil);
    place.settled.apart.resize(taken.ln.size());
    for (std::size_t i = 0; i < taken.ln.size(); ++i) {
        const double apart = taken.ln[i] - place.sight.seen[i];
        place.settled.apart[i] = apart;
        place.settled.sum += taken.weight[i] * apart * apart;
    }
    if (!std::isfinite(place.settled.sum)) place.settled.sum = HUGE_VAL;
    return place;
}

LogSoil into(const Box& box, LogSoil soil) {
    for (std::size_t f = 0; f < soil.size(); ++f) {
        soil[f] = std::min(std::max(soil[f], box.low[f]), box.high[f]);
    }
    return soil;
}

/// Normal equations of the figures that may move; the others have no step.
class Downhill {
public:
    Downhill(const Taken& taken, const Box& box, const Place& place)
        : figures_(static_cast<Eigen::Index>(box.low.size())) {
        const auto readings = static_cast<Eigen::Index>(taken.ln.size());
        const Eigen::Map<const Matrix> slopes(place.sight.slopes.data(), readings, figures_);
        const Eigen::Map<const Vector> apart(place.settled.apart.data(), readings);
        const Eigen::Map<const Vector> weight(taken.weight.data(), readings);
        normal_ = slopes.transpose() * weight.asDiagonal() * slopes;
        uphill_ = slopes.transpose() * weight.asDiagonal() * apart;
        for (Eigen::Index f = 0; f < figures_; ++f) {
            const double here = place.settled.soil[at(f)];
            const bool barred = (here >= box.high[at(f)] && uphill_(f) >= 0) ||
                                (here <= box.low[at(f)] && uphill_(f) <= 0) ||
                                box.low[at(f)] >= box.high[at(f)];
            if (barred) bar(f);
        }
    }

    Vector step(double damping) const {
        Matrix damped = normal_;
        const double least = least_scale * std::max(normal_.diagonal().maxCoeff(), 1e-30);
        for (Eigen::Index f = 0; f < figures_; ++f) {
            damped(f, f) += damping * std::max(normal_(f, f), least);
        }
        return damped.ldlt().solve(uphill_);
    }

private:
    void bar(Eigen::Index f) {
        normal_.row(f).setZero();
        normal_.col(f).setZero();
        normal_(f, f) = 1;
        uphill_(f) = 0;
    }

    Eigen::Index figures_;
    Matrix normal_;
    Vector uphill_;
};

}  // namespace

Settled settle(const Taken& taken, const Box& box, const LogSoil& start, int most_steps) {
    Place here = look_at(taken, into(box, start));
    double damping = first_damping;
    for (int round = 0; round < most_steps && here.settled.sum > least_sum; ++round) {
        const Downhill downhill(taken, box, here);
        bool moved = false;
        double gain = 0;
        double move = 0;
        while (!moved && damping < most_damping) {
            const Vector step = downhill.step(damping);
            LogSoil soil = here.settled.soil;
            for (std::size_t f = 0; f < soil.size(); ++f) {
                soil[f] += step(static_cast<Eigen::Index>(f));
            }
            Place there = look_at(taken, into(box, std::move(soil)));
            moved = there.settled.sum < here.settled.sum;
            if (!moved) {
                damping *= 6;
                continue;
            }
            gain = here.settled.sum - there.settled.sum;
            move = step.lpNorm<Eigen::Infinity>();
            here = std::move(there);
            damping = std::max(damping / 8, 1e-12);
        }
        if (!moved || gain <= least_gain * here.settled.sum || move < least_move) break;
    }
    return here.settled;
}

}  // namespace toft::soil
