#include "soil/layer_choice.h"

#include "soil/statistic.h"

#include <algorithm>
#include <cmath>

namespace toft::soil {

namespace {

constexpr double risk_of_a_layer = 0.01;
constexpr double risk_of_a_range = 0.05;
constexpr double coarse = 0.1;   ///< misfit above which a soil is no explanation
constexpr double finer = 0.5;    ///< of that misfit, for another to be the better explanation
constexpr double beyond = 50;    ///< times the readings that layers are sought
constexpr double contrast = 99;  ///< square root of the most between two layers
constexpr double thinnest = 0.1;
constexpr double thickest = 5;
constexpr int depths = 5;

double mean_square(const Curve& curve, const Settled& settled) {
    return settled.sum / counted(curve);
}

/// ln of the resistivity seen at a spacing, between readings on a straight line.
double seen_at(const Curve& curve, double ln_spacing) {
    const auto& x = curve.ln_spacing;
    const auto& y = curve.taken.ln;
    if (ln_spacing <= x.front()) return y.front();
    for (std::size_t i = 1; i < x.size(); ++i) {
        if (ln_spacing > x[i] || x[i] <= x[i - 1]) continue;
        const double share = std::max(0.0, (ln_spacing - x[i - 1]) / (x[i] - x[i - 1]));
        return y[i - 1] + share * (y[i] - y[i - 1]);
    }
    return y.back();
}

std::vector<double> ln_depths(const Curve& curve) {
    const double first = curve.ln_spacing.front() - 0.9;
    const double last = curve.ln_spacing.back();
    std::vector<double> all;
    for (int i = 0; i < depths; ++i) all.push_back(first + (last - first) * i / (depths - 1));
    return all;
}

std::vector<LogSoil> starts_of(const Curve& curve, int layers) {
    const double first = curve.taken.ln.front();
    const double last = curve.taken.ln.back();
    if (layers == 1) return {{first}};
    std::vector<LogSoil> starts;
    const std::vector<double> all = ln_depths(curve);
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (layers == 2) {
            starts.push_back({first, last, all[i]});
            starts.push_back({first, 2 * last - first, all[i]});
            continue;
        }
        for (std::size_t j = i + 1; j < all.size(); ++j) {
            const double thickness = std::log(std::exp(all[j]) - std::exp(all[i]));
            const double middle = seen_at(curve, (all[i] + all[j]) / 2);
            for (double more : {-1.2, 0.0, 1.2}) {
                starts.push_back({first, middle + more, last, all[i], thickness});
            }
        }
    }
    return starts;
}

}  // namespace

int counted(const Curve& curve) {
    return static_cast<int>(std::count_if(curve.taken.weight.begin(), curve.taken.weight.end(),
                                          [](double weight) { return weight > 0; }));
}

int free_readings(const Curve& curve, int layers) { return counted(curve) - (2 * layers - 1); }

Box search_box(const Curve& curve, int layers) {
    const auto [least, most] = std::minmax_element(curve.taken.ln.begin(), curve.taken.ln.end());
    const double widening = std::max(
        std::log(2.0), std::min(std::log(beyond), std::log(contrast) - (*most - *least) / 2));
    Box box;
    for (int i = 0; i < layers; ++i) {
        box.low.push_back(*least - widening);
        box.high.push_back(*most + widening);
    }
    for (int i = 0; i + 1 < layers; ++i) {
        box.low.push_back(curve.ln_spacing.front() + std::log(thinnest));
        box.high.push_back(curve.ln_spacing.back() + std::log(thickest));
    }
    return box;
}

Settled best_of(const Curve& curve, int layers) {
    constexpr int rough = 8;
    constexpr std::size_t polished = 4;
    const Box box = search_box(curve, layers);
    std::vector<Settled> all;
    for (const LogSoil& start : starts_of(curve, layers)) {
        all.push_back(settle(curve.taken, box, start, rough));
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Settled& a, const Settled& b) { return a.sum < b.sum; });
    if (all.size() > polished) all.resize(polished);
    for (Settled& one : all) one = settle(curve.taken, box, one.soil, 300);
    return *std::min_element(all.begin(), all.end(),
                             [](const Settled& a, const Settled& b) { return a.sum < b.sum; });
}

std::vector<Settled> best_of_each(const Curve& curve) {
    std::vector<Settled> best;
    for (int layers = 1; layers <= most_layers && free_readings(curve, layers) >= 1; ++layers) {
        best.push_back(best_of(curve, layers));
    }
    return best;
}

bool pays(const Curve& curve, const Gain& gain, double risk) {
    const double known = curve.floor * curve.floor * f_limit_of_known_noise(gain.figures, risk);
    const double estimated =
        gain.free > 0 ? gain.rest / gain.free * f_limit(gain.figures, gain.free, risk) : 0;
    return gain.drop / gain.figures > std::max(known, estimated);
}

int layers_asked_for(const Curve& curve, const std::vector<Settled>& best) {
    std::size_t chosen = 0;
    for (std::size_t more = 1; more < best.size(); ++more) {
        const Gain gain{best[chosen].sum - best[more].sum, 2 * static_cast<int>(more - chosen),
                        best[more].sum, free_readings(curve, static_cast<int>(more) + 1)};
        const double before = mean_square(curve, best[chosen]);
        const double after = mean_square(curve, best[more]);
        const bool plain = before > coarse * coarse && after < finer * finer * before;
        if (plain || pays(curve, gain, risk_of_a_layer)) {
            chosen = more;
        }
    }
    return static_cast<int>(chosen) + 1;
}

double allowed_sum(const Curve& curve, int layers, double best_sum) {
    const int free = free_readings(curve, layers);
    const double known = curve.floor * curve.floor * f_limit_of_known_noise(1, risk_of_a_range);
    const double estimated = free > 0 ? best_sum / free * f_limit(1, free, risk_of_a_range) : 0;
    return best_sum + std::max(known, estimated);
}

}  // namespace toft::soil
