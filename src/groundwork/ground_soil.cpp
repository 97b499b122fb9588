#include "groundwork/ground_parts.h"
#include "study/ground_memo.h"

#include <cmath>

namespace toft::answer {

namespace {

/// The layer at place `i` of a soil, the ground without end being the last.
OhmMetres resistivity_at(const field::Strata& soil, std::size_t i) {
    return i < soil.layers.size() ? soil.layers[i].resistivity : soil.deepest;
}

std::vector<StratumAnswer> strata_of(const study::SoilSetting& soil) {
    const field::Strata& first = soil.worst.front();
    std::vector<StratumAnswer> strata;
    for (std::size_t i = 0; i <= first.layers.size(); ++i) {
        StratumAnswer layer;
        layer.high_ohm_m = resistivity_at(first, i).number();
        layer.low_ohm_m = resistivity_at(soil.best.front(), i).number();
        layer.best_ohm_m = std::sqrt(layer.low_ohm_m * layer.high_ohm_m);
        if (i < first.layers.size()) {
            layer.low_m = layer.best_m = layer.high_m = first.layers[i].thickness.number();
        }
        strata.push_back(layer);
    }
    return strata;
}

/// Open ends are said as infinite: the readings set no bound there.
template <class Q>
double low_of(const soil::Range<Q>& range) {
    return range.open_low ? 0 : range.low.number();
}
template <class Q>
double high_of(const soil::Range<Q>& range) {
    return range.open_high ? INFINITY : range.high.number();
}

std::vector<StratumAnswer> strata_of(const soil::SoilFit& fit) {
    std::vector<StratumAnswer> strata;
    for (std::size_t i = 0; i < fit.resistivities.size(); ++i) {
        StratumAnswer layer;
        layer.low_ohm_m = low_of(fit.resistivities[i]);
        layer.best_ohm_m = resistivity_at(fit.best, i).number();
        layer.high_ohm_m = high_of(fit.resistivities[i]);
        if (i < fit.best.layers.size() && i < fit.thicknesses.size()) {
            layer.low_m = low_of(fit.thicknesses[i]);
            layer.best_m = fit.best.layers[i].thickness.number();
            layer.high_m = high_of(fit.thicknesses[i]);
        }
        strata.push_back(layer);
    }
    return strata;
}

void add_fit(const soil::SoilFit& fit, const std::vector<site::PinReading>& pins,
             SoilAnswer& answer) {
    answer.verdict = soil::words_of(fit.verdict);
    answer.says = fit.says + " " + answer.says;
    answer.strata = strata_of(fit);
    answer.misfit_percent = 100 * fit.misfit;
    for (std::size_t i = 0; i < pins.size() && i < fit.residuals.size(); ++i) {
        const site::PinReading& pin = pins[i];
        const double apparent = soil::apparent_resistivity(study::reading_of(pin)).number();
        answer.readings.push_back(
            {site::word(pin.array),
             (pin.array == site::PinArray::wenner ? pin.spacing : pin.spacing / 2).number(),
             apparent, apparent / (1 + fit.residuals[i]), 100 * fit.residuals[i],
             fit.odd && fit.odd->reading == i});
    }
}

}  // namespace

SoilAnswer soil_answer(const site::Ground& ground, const study::SoilSetting& soil,
                       const study::GroundMemo& memo) {
    SoilAnswer answer;
    answer.known_by = study::soil_word(soil.known);
    answer.strata = strata_of(soil);
    switch (soil.known) {
        case study::SoilKnown::nothing:
            answer.says = "Nothing is known of the soil: every soil in the tables is allowed for.";
            break;
        case study::SoilKnown::kind:
            answer.says =
                "Known by its kind only; soils of one word differ ten times and more: measure.";
            break;
        case study::SoilKnown::resistivity:
        case study::SoilKnown::layers:
        case study::SoilKnown::readings:
        case study::SoilKnown::rods:
            answer.says = soil.whole_year ? "An assumed range, taken for the whole year."
                          : soil.read_dry ? "Found out in its dry season: it will not get worse."
                                          : "Taken as found out in its wet season: it will dry.";
            break;
    }
    if (memo.read && memo.read->fit) add_fit(*memo.read->fit, ground.pins, answer);
    if (memo.read) {
        for (const std::string& line : memo.read->says) {
            if (answer.says.back() != '.') answer.says += ".";
            answer.says += " " + line;
        }
    }
    return answer;
}

}  // namespace toft::answer
