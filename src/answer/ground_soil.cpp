#include "answer/ground_parts.h"

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

}  // namespace

SoilAnswer soil_answer(const Question&, const study::SoilSetting& soil) {
    SoilAnswer answer;
    answer.known_by = study::soil_word(soil.known);
    answer.strata = strata_of(soil);
    switch (soil.known) {
        case study::SoilKnown::nothing:
            answer.says = "nothing is known of the soil: every soil in the tables is allowed for";
            break;
        case study::SoilKnown::kind:
            answer.says =
                "known by its kind only; soils of one word differ ten times and more: measure";
            break;
        case study::SoilKnown::resistivity:
        case study::SoilKnown::layers:
        case study::SoilKnown::readings:
            answer.says = soil.whole_year ? "an assumed range, taken for the whole year"
                          : soil.read_dry ? "found out in its dry season: it will not get worse"
                                          : "taken as found out in its wet season: it will dry";
            break;
    }
    return answer;
}

}  // namespace toft::answer
