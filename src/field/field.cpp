#include "field/field.h"

#include "field/contact.h"
#include "field/moments.h"

#include <algorithm>
#include <cmath>

namespace toft::field {

namespace {

/// Metal that is all at one potential takes in no current anywhere. Where pieces shorter than thick
/// meet at sharp corners a little does; more than this share of the whole is no solution.
constexpr double most_inflow = 0.05;

}  // namespace

Field::Field(const Medium& medium, std::vector<Piece> pieces)
    : medium_(medium), pieces_(std::move(pieces)) {
    for (const Piece& piece : pieces_) electrodes_ = std::max(electrodes_, piece.electrode + 1);
}

Outcome<Field> solve_field(const LayeredSoil& soil, const std::vector<Wire>& wires,
                           const Cutting& cutting) {
    auto medium = medium_of(soil);
    if (!medium) return failed(std::move(medium.error()));
    return solve_field(*medium, wires, cutting);
}

Outcome<Field> solve_field(const Strata& soil, const std::vector<Wire>& wires,
                           const Cutting& cutting) {
    auto medium = medium_of(soil);
    if (!medium) return failed(std::move(medium.error()));
    return solve_field(*medium, wires, cutting);
}

Outcome<Field> solve_field(const Medium& medium, const std::vector<Wire>& wires,
                           const Cutting& cutting) {
    auto pieces = cut(wires, medium.soil(), cutting);
    if (!pieces) return failed(std::move(pieces.error()));
    if (Faults faults = contacts(wires); !faults.empty()) return failed(std::move(faults));
    Field field(medium, std::move(*pieces));
    const auto n = static_cast<Eigen::Index>(field.pieces_.size());
    const Eigen::Index m = field.electrodes_;
    Eigen::MatrixXd unit_rises = Eigen::MatrixXd::Zero(n, m);
    for (Eigen::Index i = 0; i < n; ++i) {
        unit_rises(i, field.pieces_[static_cast<std::size_t>(i)].electrode) = 1;
    }
    const Eigen::LLT<Eigen::MatrixXd, Eigen::Lower> factor(moments(field.medium_, field.pieces_));
    const Fault unsolved = wires_in_each_other();
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

Driven Field::driven(const Currents& currents) const {
    Driven driven(medium_, rises(currents));
    const std::vector<double> current = amperes_of(currents);
    for (std::size_t i = 0; i < pieces_.size(); ++i) {
        driven.sources_.push_back({pieces_[i].bar, current[i]});
    }
    return driven;
}

Volts Field::potential(const Spot& spot, const Currents& currents) const {
    return driven(currents).potential(spot);
}

Driven::Driven(Medium medium, std::vector<Volts> rises)
    : medium_(std::move(medium)), rises_(std::move(rises)) {}

Volts Driven::potential(const Spot& spot) const {
    Bar point;
    point.middle = vector_of(spot);
    point.along = {0, 0, 1};
    double sum = 0;
    for (const Source& source : sources_)
        sum += source.amperes * medium_.between(point, source.bar);
    return volts(sum);
}

}  // namespace toft::field
