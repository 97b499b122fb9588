#pragma once
// What a bar that leaks one ampere evenly does to another bar or to a point in any number of
// layers: images fitted to the exact kernel (layer_images.h), whose nearest are exact. The error of
// points is `error()` of rho/(4 pi distance), rho that of the upper of the two; for bars that of
// bar.h comes on top. Two layers have their own exact series: ground.h.

#include "field/bar.h"
#include "field/layer_images.h"

namespace toft::field {

class StrataGround {
public:
    /// At least one layer over the deepest; nothing that faults_of() complains of.
    explicit StrataGround(const Strata& soil);

    /// Ohms: mean volts on `a` for one ampere out of `b`. Each bar lies wholly in one layer.
    double between(const Bar& a, const Bar& b) const;

    double error() const { return error_; }

private:
    struct Layer {
        double resistivity = 0;
        double top = 0;
        double bottom = 0;  ///< not read of the deepest
    };
    /// A row of images at heights w = base + up z(upper) + down z(lower), and beyond.
    struct Row {
        double up, down, base;
    };

    std::size_t layer_of(const Bar& bar) const;
    double in_top(const Bar& a, const Bar& b) const;
    double in_one(const Bar& a, const Bar& b, std::size_t layer) const;
    double across(const Bar& upper, const Bar& lower, std::size_t i, std::size_t j) const;

    static double row_sum(const Bar& a, const Bar& b, const Row& row,
                          const std::vector<LayerImage>& images);

    std::vector<Layer> layers_;
    std::vector<LayerImages> pairs_;
    double error_ = 0;
};

}  // namespace toft::field
