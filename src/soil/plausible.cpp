#include "soil/plausible.h"

#include "soil/confidence.h"

#include <algorithm>
#include <cmath>

namespace toft::soil {

namespace {

constexpr double much = 10;  ///< times better or worse, what should not go unnoticed
constexpr double somewhat = 3;
constexpr double out_of_sight = 30;  ///< times the widest spacing, where nothing is noticed
constexpr double film = 1e-3;        ///< of the closest spacing, a crust that nothing notices

template <class Q>
Range<Q> range_between(const Outermost& low, const Outermost& high) {
    return {Q(std::exp(low.end)), Q(std::exp(high.end)), low.open, high.open};
}

double depth_of(const LogSoil& soil) {
    const std::size_t layers = (soil.size() + 1) / 2;
    double depth = 0;
    for (std::size_t f = layers; f < soil.size(); ++f) depth += std::exp(soil[f]);
    return depth;
}

class Search {
public:
    Search(const Curve& curve, const Settled& best, int layers)
        : curve_(&curve),
          best_(best.soil),
          layers_(static_cast<std::size_t>(layers)),
          limit_(allowed_sum(curve, layers, best.sum)),
          box_(search_box(curve, layers)) {
        allowed_.soils.push_back(strata_of(best.soil));
    }

    void ends_of_every_figure() {
        for (std::size_t f = 0; f < best_.size(); ++f) {
            const Outermost low = outermost(curve_->taken, box_, best_, {f, false, limit_});
            const Outermost high = outermost(curve_->taken, box_, best_, {f, true, limit_});
            ranges_.low.push_back(std::min(low.end, best_[f]));
            ranges_.high.push_back(std::max(high.end, best_[f]));
            if (f < layers_) {
                allowed_.resistivities.push_back(range_between<OhmMetres>(low, high));
            } else {
                allowed_.thicknesses.push_back(range_between<Metres>(low, high));
            }
            allowed_.soils.push_back(strata_of(low.soil));
            allowed_.soils.push_back(strata_of(high.soil));
        }
    }

    /// Other ground below the soil as found (all figures within their ranges), from as shallow as
    /// would not be noticed. Left out where the search ends before the ground is much different.
    void ground_below(double times) {
        const double wanted = best_[layers_ - 1] + std::log(times);
        const double rho = within_search(wanted);
        if (std::fabs(wanted - rho) > std::fabs(std::log(times)) / 3) return;
        LogSoil start = best_;
        Box box = ranges_;
        const double h = curve_->ln_spacing.back() + std::log(out_of_sight);
        insert(start, layers_, rho, h);
        insert(box.low, layers_, rho, box_thinnest());
        insert(box.high, layers_, rho, h);
        const Metres depth = add(box, start, {2 * layers_, false, limit_});
        if (allowed_.reach == metres(0) || depth < allowed_.reach) allowed_.reach = depth;
    }

    /// Another crust on top, as thick as would not be noticed.
    void crust(double times) {
        const double rho = within_search(best_[0] + std::log(times));
        const double h = box_thinnest();
        const Box box{{rho, ranges_.low[0], h}, {rho, ranges_.high[0], curve_->ln_spacing.back()}};
        add(box, {rho, best_[0], h}, {2, true, limit_});
    }

    const Allowed& allowed() const { return allowed_; }

private:
    double box_thinnest() const { return curve_->ln_spacing.front() + std::log(film); }

    double within_search(double ln_resistivity) const {
        return std::min(std::max(ln_resistivity, box_.low[0]), box_.high[0]);
    }

    /// A resistivity at the end of the resistivities, a thickness at the end.
    static void insert(LogSoil& soil, std::size_t layers, double rho, double h) {
        soil.insert(soil.begin() + static_cast<std::ptrdiff_t>(layers), rho);
        soil.push_back(h);
    }

    Metres add(const Box& box, const LogSoil& start, const Outwards& way) {
        const Outermost found = outermost(curve_->taken, box, start, way);
        allowed_.soils.push_back(strata_of(found.soil));
        return metres(depth_of(found.soil));
    }

    const Curve* curve_;
    LogSoil best_;
    std::size_t layers_;
    double limit_;
    Box box_;
    Box ranges_;
    Allowed allowed_;
};

}  // namespace

Allowed soils_allowed(const Curve& curve, const Settled& best, int layers) {
    Search search(curve, best, layers);
    search.ends_of_every_figure();
    search.ground_below(1 / much);
    search.ground_below(much);
    const Metres reach = search.allowed().reach;
    if (layers == 1) {
        search.ground_below(1 / somewhat);
        search.ground_below(somewhat);
        search.crust(1 / much);
        search.crust(much);
    }
    Allowed allowed = search.allowed();
    allowed.reach = reach;
    return allowed;
}

}  // namespace toft::soil
