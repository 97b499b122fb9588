#include "field/field.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace toft::field {

namespace {

constexpr double most_contrast = 1e4;
/// Metal that is all at one potential takes in no current anywhere. Where pieces shorter than thick
/// meet at sharp corners a little does; more than this share of the whole is no solution.
constexpr double most_inflow = 0.05;

Faults faults_of(const LayeredSoil& soil) {
    const double upper = soil.upper.number();
    const double lower = soil.lower.number();
    Faults faults;
    const auto refuse = [&](const char* says) { faults.push_back({"soil", "", says, "", {}}); };
    if (!(upper > 0) || !(lower > 0) || !std::isfinite(upper) || !std::isfinite(lower)) {
        refuse("the soil needs a resistivity above 0");
    } else if (upper > most_contrast * lower || lower > most_contrast * upper) {
        refuse("the layers differ by more than 10 000 times");
    }
    if (!(soil.thickness > metres(0)) || !std::isfinite(soil.thickness.number())) {
        refuse("the upper layer needs a thickness above 0");
    }
    return faults;
}

Eigen::MatrixXd moments(const Ground& ground, const std::vector<Piece>& pieces) {
    const auto n = static_cast<Eigen::Index>(pieces.size());
    Eigen::MatrixXd matrix(n, n);
    for (Eigen::Index j = 0; j < n; ++j) {
        for (Eigen::Index i = j; i < n; ++i) {
            matrix(i, j) = ground.between(pieces[static_cast<std::size_t>(i)].bar,
                                          pieces[static_cast<std::size_t>(j)].bar);
        }
    }
    return matrix;  // the lower half; the upper is not read
}

}  // namespace

Field::Field(const LayeredSoil& soil, std::vector<Piece> pieces)
    : ground_(soil), pieces_(std::move(pieces)) {
    for (const Piece& piece : pieces_) electrodes_ = std::max(electrodes_, piece.electrode + 1);
}

Outcome<Field> solve_field(const LayeredSoil& soil, const std::vector<Wire>& wires,
                           const Cutting& cutting) {
    if (Faults faults = faults_of(soil); !faults.empty()) return failed(std::move(faults));
    auto pieces = cut(wires, soil, cutting);
    if (!pieces) return failed(std::move(pieces.error()));
    Field field(soil, std::move(*pieces));
    const auto n = static_cast<Eigen::Index>(field.pieces_.size());
    const Eigen::Index m = field.electrodes_;
    Eigen::MatrixXd unit_rises = Eigen::MatrixXd::Zero(n, m);
    for (Eigen::Index i = 0; i < n; ++i) {
        unit_rises(i, field.pieces_[static_cast<std::size_t>(i)].electrode) = 1;
    }
    const Eigen::LLT<Eigen::MatrixXd, Eigen::Lower> factor(moments(field.ground_, field.pieces_));
    const Fault unsolved{
        "field", "", "the wires lie in each other: the field has no solution", "", {}};
    if (factor.info() != Eigen::Success) return failed(unsolved);
    const Eigen::MatrixXd shares = factor.solve(unit_rises);
    const Eigen::VectorXd together = shares.rowwise().sum();
    if (together.minCoeff() < -most_inflow * together.sum()) return failed(unsolved);
    const Eigen::MatrixXd conductance = unit_rises.transpose() * shares;
    const Eigen::MatrixXd symmetric = (conductance + conductance.transpose()) / 2;
    const Eigen::LLT<Eigen::MatrixXd> inverse(symmetric);
    if (inverse.info() != Eigen::Success) return failed(unsolved);
    const Eigen::MatrixXd resistance = inverse.solve(Eigen::MatrixXd::Identity(m, m));
    field.shares_.assign(shares.data(), shares.data() + shares.size());
    field.resistance_.assign(resistance.data(), resistance.data() + resistance.size());
    return field;
}

Ohms Field::resistance(int i, int j) const {
    const auto m = static_cast<std::size_t>(electrodes_);
    const auto a = static_cast<std::size_t>(i);
    const auto b = static_cast<std::size_t>(j);
    return ohms((resistance_.at(a + m * b) + resistance_.at(b + m * a)) / 2);
}

Ohms Field::joined() const {
    double conductance = 0;
    for (double share : shares_) conductance += share;
    return ohms(1 / conductance);
}

std::vector<Volts> Field::rises(const Currents& currents) const {
    std::vector<Volts> rises(static_cast<std::size_t>(electrodes_));
    for (int i = 0; i < electrodes_; ++i) {
        for (int j = 0; j < electrodes_; ++j) {
            rises[static_cast<std::size_t>(i)] +=
                resistance(i, j) * currents.at(static_cast<std::size_t>(j));
        }
    }
    return rises;
}

std::vector<double> Field::amperes_of(const Currents& currents) const {
    const std::vector<Volts> rise = rises(currents);
    std::vector<double> amperes(pieces_.size());
    for (std::size_t e = 0; e < rise.size(); ++e) {
        for (std::size_t i = 0; i < pieces_.size(); ++i) {
            amperes[i] += shares_[i + pieces_.size() * e] * rise[e].number();
        }
    }
    return amperes;
}

std::vector<Leakage> Field::leakage(const Currents& currents) const {
    const std::vector<double> current = amperes_of(currents);
    std::vector<Leakage> leakage;
    for (std::size_t i = 0; i < pieces_.size(); ++i) {
        const Bar& bar = pieces_[i].bar;
        leakage.push_back({pieces_[i].wire,
                           {metres(bar.middle.x), metres(bar.middle.y), metres(bar.middle.z)},
                           metres(2 * bar.half),
                           amperes(current[i])});
    }
    return leakage;
}

Volts Field::potential(const Spot& spot, const Currents& currents) const {
    const std::vector<double> current = amperes_of(currents);
    Bar point;
    point.middle = vector_of(spot);
    point.along = {0, 0, 1};
    double sum = 0;
    for (std::size_t i = 0; i < pieces_.size(); ++i) {
        sum += current[i] * ground_.between(point, pieces_[i].bar);
    }
    return volts(sum);
}

}  // namespace toft::field
