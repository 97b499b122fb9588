#include "field/growing.h"

#include "field/moments.h"

namespace toft::field {

Outcome<std::vector<Ohms>> growing(const Medium& medium, const std::vector<Piece>& pieces,
                                   const std::vector<std::size_t>& stages) {
    const Eigen::LLT<Eigen::MatrixXd, Eigen::Lower> factor(moments(medium, pieces));
    if (factor.info() != Eigen::Success) return failed(wires_in_each_other());
    const Eigen::VectorXd steps =
        factor.matrixL().solve(Eigen::VectorXd::Ones(static_cast<Eigen::Index>(pieces.size())));
    std::vector<double> conductance{0};
    for (double step : steps) conductance.push_back(conductance.back() + step * step);
    std::vector<Ohms> result;
    for (std::size_t stage : stages) result.push_back(ohms(1 / conductance.at(stage)));
    return result;
}

}  // namespace toft::field
