#include "soil/driven_rod.h"

#include "base/pi.h"
#include "base/text.h"
#include "field/electrode_shape.h"
#include "field/field.h"
#include "soil/measured.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::soil {

namespace {

constexpr double slimmest = 10;  ///< lengths over diameter, at least
constexpr int pieces = 16;

std::string number(double x) { return significant(x, 3); }

field::Strata times(field::Strata soil, double factor) {
    for (field::Stratum& layer : soil.layers) layer.resistivity = factor * layer.resistivity;
    soil.deepest = factor * soil.deepest;
    return soil;
}

struct Judged {
    field::Strata soil;
    double factor = 0;  ///< measured over expected; 0 where the solver refuses
};

std::string words_of(const RodCheck& check, std::size_t soils) {
    if (check.contradicts) {
        return fmt::format(
            "The rod contradicts the readings of the ground: it has {} times what the best soil "
            "gives. All soils are scaled to the rod; find out why before relying on either.",
            significant(check.factor, 2));
    }
    return fmt::format(
        "{} of {} soils agree with the rod; it has {} times what the best one gives.", check.agree,
        soils - check.unjudged, significant(check.factor, 2));
}

}  // namespace

Faults faults_of(const DrivenRod& rod) {
    Faults faults;
    const auto note = [&](const char* place, const char* says) {
        faults.push_back({"out-of-range", place, says, "", {}});
    };
    if (!positive(rod.length.number())) note("/length_m", "the rod needs a length above 0");
    if (!positive(rod.diameter.number())) {
        note("/diameter_m", "the rod needs a diameter above 0");
    } else if (!(rod.length >= slimmest * rod.diameter)) {
        note("/length_m", "the rod is shorter than ten times its diameter: it is no thin rod");
    }
    if (!positive(rod.resistance.number())) {
        note("/resistance_ohm", "the measured resistance must be above 0");
    }
    if (!(rod.error > 0) || !(rod.error < 1))
        note("/error", "the error is a share between 0 and 1");
    return faults;
}

OhmMetres apparent_resistivity(const DrivenRod& rod) {
    return 2 * pi * rod.length * rod.resistance / (ln(8 * (rod.length / rod.diameter)) - 1);
}

Outcome<RodUpdate> narrowed(const Range<OhmMetres>& before, const DrivenRod& rod) {
    if (Faults faults = faults_of(rod); !faults.empty()) return failed(std::move(faults));
    const OhmMetres seen = apparent_resistivity(rod);
    const Range<OhmMetres> own{seen * (1 - rod.error), seen / (1 - rod.error)};
    RodUpdate update;
    update.range = own;
    if (!before.open_low) update.range.low = most(own.low, before.low);
    if (!before.open_high) update.range.high = least(own.high, before.high);
    update.contradicts = update.range.high < update.range.low;
    if (update.contradicts) update.range = own;
    update.says = fmt::format("The rod sees {} Ω·m as if the soil were uniform; {} to {} Ω·m {}.",
                              number(seen.number()), number(update.range.low.number()),
                              number(update.range.high.number()),
                              update.contradicts ? "by the rod alone, for what was thought before "
                                                   "does not agree with it"
                                                 : "agree with all that is known");
    return update;
}

Outcome<Ohms> rod_over(const field::Strata& soil, const DrivenRod& rod) {
    if (soil.layers.size() > 1) {
        return failed({"soil", "", "the field of a rod is solved in at most two layers", "", {}});
    }
    const field::LayeredSoil two = soil.layers.empty()
                                       ? field::uniform_soil(soil.deepest)
                                       : field::LayeredSoil{soil.layers[0].resistivity,
                                                            soil.deepest, soil.layers[0].thickness};
    const field::Spot top{metres(0), metres(0), metres(0)};
    const auto field = field::solve_field(two, {field::rod_wire(top, rod.length, rod.diameter / 2)},
                                          {rod.length, pieces});
    if (!field) return failed(field.error());
    return field->joined();
}

Outcome<RodCheck> held_against(const std::vector<field::Strata>& soils, const DrivenRod& rod,
                               const RodSolver& solver) {
    if (Faults faults = faults_of(rod); !faults.empty()) return failed(std::move(faults));
    RodCheck check;
    std::vector<Judged> judged;
    for (const field::Strata& soil : soils) {
        const auto expected = solver(soil, rod);
        judged.push_back({soil, expected ? rod.resistance / *expected : 0});
        if (!expected) ++check.unjudged;
    }
    if (check.unjudged == soils.size()) {
        return failed({"soil", "", "there is no soil that a rod can be held against", "", {}});
    }
    const auto agrees = [&](const Judged& one) {
        return one.factor >= 1 - rod.error && one.factor <= 1 / (1 - rod.error);
    };
    for (const Judged& one : judged) check.agree += agrees(one) ? 1 : 0;
    check.contradicts = check.agree == 0;
    for (const Judged& one : judged) {
        if (one.factor == 0) continue;
        check.factor = one.factor;
        break;
    }
    for (const Judged& one : judged) {
        if (check.contradicts) {
            check.soils.push_back(times(one.soil, one.factor == 0 ? check.factor : one.factor));
        } else if (one.factor == 0 || agrees(one)) {
            check.soils.push_back(one.soil);
        }
    }
    check.says = words_of(check, soils.size());
    return check;
}

}  // namespace toft::soil
