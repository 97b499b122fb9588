#include "soil/fall_of_potential.h"

#include "base/text.h"
#include "soil/measured.h"
#include "soil/statistic.h"

#include <fmt/format.h>
#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace toft::soil {

namespace {

constexpr double golden = 0.6180339887498949;  ///< root of x^2 + x = 1
constexpr double either_side = 0.1;            ///< of D, about the golden place
constexpr double flat_to = 0.1;
constexpr double sloping_to = 0.2;
constexpr double regular_to = 0.1;  ///< misfit
constexpr double stoutest = 0.1;    ///< of D, the half ball guessed where nothing tells it
constexpr double astray = 0.05;     ///< of D, how far the electric middle may be off
constexpr double spike_risk = 0.05;

/// How the potential falls with distance, per c.
double fall(const FallTest& test, double x) {
    const double length = test.length.number();
    return length > 0 ? std::asinh(length / x) / length : 1 / x;
}

/// What is lacking from R at a place, per c.
double lack(const FallTest& test, double x) {
    const double d = test.current_spike.number();
    return fall(test, x) + fall(test, d) - 1 / (d - x);
}

/// c over R, in metres: the radius of the half ball of the same resistance in uniform soil.
double radius(const FallTest& test) {
    if (!(test.length > metres(0))) return stoutest * test.current_spike.number();
    return test.length.number() / (std::log(8 * (test.length / test.diameter)) - 1);
}

double change_about_middle(const FallTest& test, double radius) {
    const double d = test.current_spike.number();
    return radius *
           (lack(test, (golden - either_side) * d) - lack(test, (golden + either_side) * d));
}

/// The nearest current spike, from where it stands outwards, for a flat curve; to 5 %.
Metres far_enough(FallTest test, double radius) {
    constexpr double margin = 0.95;
    for (int i = 0; i < 200 && change_about_middle(test, radius) > margin * flat_to; ++i) {
        test.current_spike = 1.05 * test.current_spike;
    }
    return test.current_spike;
}

std::optional<Ohms> at_golden_place(const FallTest& test) {
    const Metres place = golden * test.current_spike;
    for (std::size_t i = 0; i < test.readings.size(); ++i) {
        const PotentialReading& after = test.readings[i];
        if (std::fabs(after.distance / place - 1) < 0.02) return after.resistance;
        if (i == 0 || !(after.distance > place)) continue;
        const PotentialReading& before = test.readings[i - 1];
        if (before.distance > place) return std::nullopt;
        if (after.distance - before.distance > 0.3 * test.current_spike) return std::nullopt;
        const double share = (place - before.distance) / (after.distance - before.distance);
        return before.resistance + share * (after.resistance - before.resistance);
    }
    return std::nullopt;
}

/// R and c by least squares of shares, with half the width of R's range as a share: by the known
/// noise of the meter or by the scatter of the readings, whichever is wider.
struct FallCurve {
    double r = 0;
    double c = 0;
    double error = 0;
    double misfit = 0;
};

FallCurve fitted(const FallTest& test) {
    const auto n = static_cast<Eigen::Index>(test.readings.size());
    Eigen::MatrixXd rows(n, 2);
    for (Eigen::Index i = 0; i < n; ++i) {
        const PotentialReading& reading = test.readings[static_cast<std::size_t>(i)];
        rows(i, 0) = 1 / reading.resistance.number();
        rows(i, 1) = -lack(test, reading.distance.number()) / reading.resistance.number();
    }
    const Eigen::VectorXd ones = Eigen::VectorXd::Ones(n);
    const Eigen::Vector2d found = rows.colPivHouseholderQr().solve(ones);
    const double squares = (rows * found - ones).squaredNorm();
    const int free = static_cast<int>(n) - 2;
    const double known = test.reading_error * std::sqrt(f_limit_of_known_noise(1, spike_risk));
    const double scattered = std::sqrt(squares / free * f_limit(1, free, spike_risk));
    const Eigen::Matrix2d spread = (rows.transpose() * rows).inverse();
    FallCurve curve;
    curve.r = found(0);
    curve.c = found(1);
    curve.misfit = std::sqrt(squares / static_cast<double>(n));
    curve.error =
        std::max(known, scattered) * std::sqrt(std::max(0.0, spread(0, 0))) / std::fabs(curve.r);
    return curve;
}

void bracket(FallResult& result, double share) {
    result.low = result.resistance * std::max(0.0, 1 - share);
    result.high = result.resistance * (1 + share);
}

/// One or two readings, or several that make no curve.
FallResult unfitted(const FallTest& test, Plateau plateau) {
    FallResult result;
    result.plateau = plateau;
    result.at_618 = at_golden_place(test);
    const auto nearest = std::min_element(
        test.readings.begin(), test.readings.end(), [&](const auto& a, const auto& b) {
            const auto off = [&](const auto& reading) {
                return std::fabs(reading.distance / test.current_spike - golden);
            };
            return off(a) < off(b);
        });
    result.resistance = result.at_618 ? *result.at_618 : nearest->resistance;
    const double d = test.current_spike.number();
    const double x = result.at_618 ? golden * d : nearest->distance.number();
    double model = 0;
    for (double place : {x - astray * d, x + astray * d}) {
        const double inside = std::min(std::max(place, 0.02 * d), 0.98 * d);
        model = std::max(model, std::fabs(radius(test) * lack(test, inside)));
    }
    double spread = 0;
    if (plateau == Plateau::irregular) {
        for (const PotentialReading& reading : test.readings) {
            spread = std::max(spread, std::fabs(reading.resistance / result.resistance - 1));
        }
    }
    bracket(result, 2 * test.reading_error + model + spread);
    return result;
}

FallResult from_curve(const FallTest& test, const FallCurve& curve) {
    FallResult result;
    result.resistance = ohms(curve.r);
    result.misfit = curve.misfit;
    result.at_618 = at_golden_place(test);
    result.change = change_about_middle(test, curve.c / curve.r);
    result.far_enough = far_enough(test, curve.c / curve.r);
    result.plateau = result.change <= flat_to      ? Plateau::flat
                     : result.change <= sloping_to ? Plateau::sloping
                                                   : Plateau::none;
    const double apart = result.at_618 ? std::fabs(*result.at_618 / result.resistance - 1) : 0;
    bracket(result, 2 * test.reading_error + std::hypot(curve.error, apart) + result.change / 2);
    return result;
}

std::string words_of(const FallTest& test, const FallResult& result) {
    const auto number = [](Ohms r) { return significant(r.number(), 3); };
    std::string text = fmt::format("{} Ω, between {} and {} Ω. ", number(result.resistance),
                                   number(result.low), number(result.high));
    switch (result.plateau) {
        case Plateau::flat:
            return text + "The curve is flat about its middle.";
        case Plateau::sloping:
            return text + fmt::format(
                              "The curve still slopes: with the current spike at {} m the "
                              "error would be smaller.",
                              significant(result.far_enough.number(), 2));
        case Plateau::none:
            return text + fmt::format(
                              "There is no plateau: the current spike is too near, nothing "
                              "may be built on this figure. Set it at {} m or farther.",
                              significant(result.far_enough.number(), 2));
        case Plateau::irregular:
            return text +
                   "The readings follow no curve: look for pipes, spikes without contact or "
                   "a distance misread, and repeat the test in another direction.";
        case Plateau::unproven:
            break;
    }
    return text + fmt::format("Too few readings show no plateau: read at 52, 62 and 72 % of {} m.",
                              significant(test.current_spike.number(), 3));
}

Faults faults_of(const FallTest& test) {
    Faults faults;
    const auto note = [&](const std::string& place, const char* says,
                          const char* code = "out-of-range") {
        faults.push_back({code, place, says, "", {}});
    };
    if (!positive(test.current_spike.number())) {
        note("/current_spike_m", "the current spike needs a distance above 0");
    }
    if (test.readings.empty()) note("/readings", "there is no reading");
    if (test.readings.size() > most_readings) note("/readings", "more than 200 readings");
    const bool some_rod = test.length != metres(0) || test.diameter != metres(0);
    const double slimness = test.length / test.diameter;
    if (some_rod && !(positive(test.diameter.number()) && slimness >= 2 && slimness <= 1e5)) {
        note("/length_m", "a rod needs a length and a diameter, and is longer than twice as thick");
    }
    if (!(test.reading_error > 0) || !(test.reading_error <= 0.5)) {
        note("/reading_error", "readings err by some share above 0 and up to a half");
    }
    for (std::size_t i = 0; i < test.readings.size(); ++i) {
        const std::string place = fmt::format("/readings/{}", i);
        const PotentialReading& reading = test.readings[i];
        if (!positive(reading.resistance.number())) {
            note(place + "/resistance_ohm", "a reading must be above 0");
        }
        if (!positive(reading.distance.number())) {
            note(place + "/distance_m", "the inner spike needs a distance above 0");
        } else if (!(reading.distance < test.current_spike)) {
            note(place + "/distance_m", "the inner spike must stand nearer than the current spike");
        } else if (i > 0 && !(reading.distance > test.readings[i - 1].distance)) {
            note(place + "/distance_m", "readings go outwards: sort them by distance",
                 "out-of-order");
        }
    }
    return faults;
}

FallResult result_of(const FallTest& test) {
    if (test.readings.size() < 3) return unfitted(test, Plateau::unproven);
    const FallCurve curve = fitted(test);
    const bool falls =
        curve.c < 0 && -change_about_middle(test, curve.c / curve.r) > 2 * test.reading_error;
    if (!(curve.r > 0) || falls || curve.misfit > regular_to) {
        return unfitted(test, Plateau::irregular);
    }
    FallCurve rising = curve;
    rising.c = std::max(0.0, curve.c);
    return from_curve(test, rising);
}

}  // namespace

const char* words_of(Plateau plateau) {
    switch (plateau) {
        case Plateau::flat:
            return "flat";
        case Plateau::sloping:
            return "sloping";
        case Plateau::none:
            return "none";
        case Plateau::irregular:
            return "irregular";
        case Plateau::unproven:
            return "unproven";
    }
    return "unproven";
}

double overlap_error(const FallTest& test, Metres distance) {
    return -radius(test) * lack(test, distance.number());
}

Outcome<FallResult> electrode_resistance(const FallTest& test) {
    if (Faults faults = faults_of(test); !faults.empty()) return failed(std::move(faults));
    FallResult result = result_of(test);
    result.says = words_of(test, result);
    return result;
}

}  // namespace toft::soil
