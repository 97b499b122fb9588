#include "soil/soil_fit.h"

#include "soil/confidence.h"
#include "soil/layer_choice.h"
#include "soil/measured.h"
#include "soil/plausible.h"
#include "soil/soil_words.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace toft::soil {

namespace {

constexpr double guess = 3;    ///< times beyond the readings, where they identify nothing
constexpr double same = 1.05;  ///< spacings closer than this are one
constexpr double risk_of_odd = 0.01;

using Order = std::vector<std::size_t>;

/// From close to wide, so that the order in which readings were noted changes nothing.
Order order_of(const std::vector<SpacingReading>& readings) {
    Order order(readings.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto key = [&](std::size_t i) {
        const Spread& s = readings[i].spread;
        return std::vector<double>{s.spacing.number(), s.potential.number(), s.depth.number(),
                                   static_cast<double>(s.array), readings[i].resistance.number()};
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
    return order;
}

Curve curve_of(const std::vector<SpacingReading>& readings, const Order& order, double floor) {
    Curve curve;
    std::vector<Spread> spreads;
    for (std::size_t i : order) {
        spreads.push_back(readings[i].spread);
        curve.ln_spacing.push_back(std::log(readings[i].spread.spacing.number()));
        curve.taken.ln.push_back(std::log(apparent_resistivity(readings[i]).number()));
    }
    curve.taken.weight.assign(order.size(), 1);
    curve.taken.look = [sounding = Sounding(spreads)](const LogSoil& soil) {
        return sounding.look(soil);
    };
    curve.floor = floor;
    return curve;
}

int different_spacings(const Curve& curve) {
    int count = 1;
    double last = curve.ln_spacing.front();
    for (double x : curve.ln_spacing) {
        if (x - last < std::log(same)) continue;
        ++count;
        last = x;
    }
    return count;
}

/// Residuals and misfit of a soil, in the order in which readings were given.
void judge(SoilFit& fit, const Settled& settled, const Order& order) {
    fit.best = strata_of(settled.soil);
    fit.residuals.resize(order.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        fit.residuals[order[i]] = std::expm1(settled.apart[i]);
    }
    fit.misfit = std::sqrt(settled.sum / static_cast<double>(order.size()));
}

/// The soil as if uniform, with a wide guess around it.
SoilFit guessed(const Curve& curve, const Order& order) {
    SoilFit fit;
    judge(fit, best_of(curve, 1), order);
    const auto [least, most] = std::minmax_element(curve.taken.ln.begin(), curve.taken.ln.end());
    const Range<OhmMetres> range{ohm_metres(std::exp(*least) / guess),
                                 ohm_metres(std::exp(*most) * guess)};
    fit.resistivities = {range};
    fit.plausible = {fit.best, {{}, range.low}, {{}, range.high}};
    return fit;
}

/// True when three readings lie so far from uniform soil that they ask for layers which nothing
/// could check.
bool three_ask_for_layers(const Curve& curve) {
    const double uniform = best_of(curve, 1).sum;
    return pays(curve, {uniform, 2, 0, 0}, risk_of_odd);
}

/// The reading whose leaving out lowers the sum of squares by more than chance, if any.
std::optional<OddReading> odd_reading(Curve curve, const Settled& best, int layers,
                                      const Order& order) {
    const std::size_t n = order.size();
    const Box box = search_box(curve, layers);
    std::optional<OddReading> odd;
    double least = best.sum;
    for (std::size_t i = 0; i < n; ++i) {
        curve.taken.weight[i] = 0;
        const Settled without = settle(curve.taken, box, best.soil);
        const int free = free_readings(curve, layers);
        const double risk = risk_of_odd / static_cast<double>(n);
        if (free > 0 && without.sum < least &&
            pays(curve, {best.sum - without.sum, 1, without.sum, free}, risk)) {
            least = without.sum;
            odd = OddReading{order[i], std::sqrt(without.sum / static_cast<double>(n - 1))};
        }
        curve.taken.weight[i] = 1;
    }
    return odd;
}

bool nothing_settled(const SoilFit& fit) {
    return std::all_of(fit.resistivities.begin(), fit.resistivities.end(),
                       [](const auto& range) { return range.open_low && range.open_high; });
}

SoilFit fitted(const Curve& curve, const Order& order) {
    const std::vector<Settled> all = best_of_each(curve);
    const int layers = layers_asked_for(curve, all);
    const Settled& best = all[static_cast<std::size_t>(layers) - 1];
    SoilFit fit;
    fit.verdict = layers == 1   ? Verdict::uniform
                  : layers == 2 ? Verdict::two_layers
                                : Verdict::three_layers;
    judge(fit, best, order);
    const Allowed allowed = soils_allowed(curve, best, layers);
    fit.resistivities = allowed.resistivities;
    fit.thicknesses = allowed.thicknesses;
    fit.plausible = allowed.soils;
    fit.reach = allowed.reach;
    fit.odd = odd_reading(curve, best, layers, order);
    return nothing_settled(fit) ? guessed(curve, order) : fit;
}

Faults faults_of_all(const std::vector<SpacingReading>& readings, const FitOptions& options) {
    Faults faults = faults_of(readings);
    if (readings.empty()) {
        faults.push_back({"out-of-range", "", "there is no reading to fit a soil to", "", {}});
    }
    if (readings.size() > most_readings) {
        faults.push_back(
            {"out-of-range", "", "more than 200 readings: fit each traverse on its own", "", {}});
    }
    if (!(options.reading_error > 0) || !(options.reading_error <= 0.5)) {
        faults.push_back({"out-of-range",
                          "/reading_error",
                          "readings err by some share above 0 and up to a half",
                          "",
                          {}});
    }
    return faults;
}

}  // namespace

const char* words_of(Verdict verdict) {
    switch (verdict) {
        case Verdict::uniform:
            return "uniform";
        case Verdict::two_layers:
            return "two layers";
        case Verdict::three_layers:
            return "three layers";
        case Verdict::not_identifiable:
            return "not identifiable";
    }
    return "not identifiable";
}

Outcome<SoilFit> fit_soil(const std::vector<SpacingReading>& readings, const FitOptions& options) {
    if (Faults faults = faults_of_all(readings, options); !faults.empty()) {
        return failed(std::move(faults));
    }
    const Order order = order_of(readings);
    const Curve curve = curve_of(readings, order, options.reading_error);
    const bool few =
        different_spacings(curve) < 3 || (readings.size() == 3 && three_ask_for_layers(curve));
    SoilFit fit = few ? guessed(curve, order) : fitted(curve, order);
    fit.says = words_of(fit, readings.size());
    return fit;
}

}  // namespace toft::soil
