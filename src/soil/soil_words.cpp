#include "soil/soil_words.h"

#include "base/text.h"

#include <fmt/format.h>

namespace toft::soil {

namespace {

constexpr double coarse_fit = 0.1;  ///< misfit that is worth a warning

std::string short_number(double x) { return significant(x, x < 1 ? 2 : 3); }

template <class Q>
std::string words_of(const Range<Q>& range) {
    const std::string low = short_number(range.low.number());
    const std::string high = short_number(range.high.number());
    if (range.open_low && range.open_high) return "anything";
    if (range.open_low) return "at most " + high;
    if (range.open_high) return "at least " + low;
    return low + " to " + high;
}

std::string percent(double misfit) {
    return misfit < 5e-4 ? "within 0.1" : "to " + significant(100 * misfit, 2);
}

std::string layer_words(const SoilFit& fit) {
    std::string text;
    for (std::size_t i = 0; i < fit.best.layers.size(); ++i) {
        const field::Stratum& layer = fit.best.layers[i];
        text +=
            fmt::format("{} m ({}) of {} Ω·m ({}), then ", short_number(layer.thickness.number()),
                        words_of(fit.thicknesses[i]), short_number(layer.resistivity.number()),
                        words_of(fit.resistivities[i]));
    }
    return text + fmt::format("{} Ω·m ({})", short_number(fit.best.deepest.number()),
                              words_of(fit.resistivities.back()));
}

bool some_end_open(const SoilFit& fit) {
    for (const auto& range : fit.resistivities) {
        if (range.open_low || range.open_high) return true;
    }
    for (const auto& range : fit.thicknesses) {
        if (range.open_low || range.open_high) return true;
    }
    return false;
}

}  // namespace

std::string words_of(const SoilFit& fit, std::size_t readings) {
    if (fit.verdict == Verdict::not_identifiable) {
        return fmt::format(
            "Not identifiable: {} {} cannot tell layers apart. As a guess {} Ω·m, anywhere from "
            "{}. "
            "Take at least four readings, from half a rod's length to three times it.",
            readings, readings == 1 ? "reading" : "readings",
            short_number(fit.best.deepest.number()), words_of(fit.resistivities.front()));
    }
    std::string text = fit.verdict == Verdict::uniform ? "Uniform: " : "";
    if (fit.verdict == Verdict::two_layers) text = "Two layers: ";
    if (fit.verdict == Verdict::three_layers) text = "Three layers: ";
    text += layer_words(fit);
    text += fmt::format(", met {} %. ", percent(fit.misfit));
    text += fmt::format("Nothing is known of the ground deeper than {} m, nor of other seasons.",
                        short_number(fit.reach.number()));
    if (some_end_open(fit)) {
        text += " An open end is not settled by these readings: use the worse one.";
    }
    if (fit.misfit > coarse_fit) {
        text +=
            " The misfit is large: level layers do not explain these readings; look for pipes, "
            "slopes, made ground or a misread spacing.";
    }
    if (fit.odd) {
        text += fmt::format(
            " Reading {} stands apart from the others: without it they are met {} %. Repeat it.",
            fit.odd->reading + 1, percent(fit.odd->misfit_without));
    }
    return text;
}

}  // namespace toft::soil
