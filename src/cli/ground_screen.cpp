#include "base/text.h"
#include "cli/layout.h"
#include "cli/screen.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::cli {

namespace {

using namespace answer;

std::string number(double value, int digits = 3) {
    return std::isfinite(value) ? significant(value, digits) : "without bound";
}

std::string between(double low, double high, const char* unit) {
    if (!std::isfinite(high)) return fmt::format("{} {} or more", number(low), unit);
    if (low <= 0 && high > 0) return fmt::format("up to {} {}", number(high), unit);
    if (number(low) == number(high)) return fmt::format("{} {}", number(low), unit);
    return fmt::format("{} to {} {}", number(low), number(high), unit);
}

/// With a full stop, once.
std::string sentence(std::string text) {
    if (!text.empty() && text.back() != '.') text += '.';
    return text;
}

std::string soil_text(const SoilAnswer& soil) {
    std::string text = "THE SOIL\n";
    text += wrapped("  ", fmt::format("Known by {}. {}", soil.known_by, sentence(soil.says)), 2);
    for (std::size_t i = 0; i < soil.strata.size(); ++i) {
        const StratumAnswer& s = soil.strata[i];
        const bool deepest = !s.best_m;
        const std::string where = soil.strata.size() == 1 ? "all the way down"
                                  : deepest
                                      ? "below"
                                      : fmt::format("{} thick", between(*s.low_m, *s.high_m, "m"));
        text +=
            fmt::format("  {} {}\n", padded(between(s.low_ohm_m, s.high_ohm_m, "Ω·m"), 24), where);
    }
    if (soil.readings.empty()) return text;
    text += fmt::format("  {} {:>9} {:>12} {:>12} {:>8}\n", padded("reading", 13), "spacing",
                        "apparent", "this soil", "off");
    for (const SoilReadingAnswer& r : soil.readings) {
        text += fmt::format("  {} {:>7} m {:>8} Ω·m {:>8} Ω·m {:>6} %{}\n", padded(r.array, 13),
                            number(r.spacing_m), number(r.apparent_ohm_m), number(r.fitted_ohm_m),
                            number(r.off_percent, 2), r.odd ? "  odd: read it again" : "");
    }
    return text;
}

std::string choice_text(const RodChoiceAnswer& c) {
    const std::string rods = c.rods == 1 ? fmt::format("one rod of {} m", number(c.length_m))
                                         : fmt::format("{} rods of {} m, {} m apart", c.rods,
                                                       number(c.length_m), number(c.spacing_m));
    return fmt::format("    {} {:>7} Ω at worst   £{:.0f}\n", padded(rods, 34), number(c.high_ohm),
                       c.price);
}

std::string electrode_text(const GroundSideAnswer& side) {
    std::string text = fmt::format("\nITS OWN ELECTRODE AT {}\n", side.building);
    text +=
        wrapped("  ",
                fmt::format("{}: {} through the year; least: {}, most: {}.", side.electrode_words,
                            between(side.year.low_ohm, side.year.high_ohm, "Ω"), side.year.low_when,
                            side.year.high_when),
                2);
    if (side.read_ohm) {
        text += wrapped(
            "  ",
            fmt::format("By fall of potential {} Ω, give or take {} Ω. {}", number(*side.read_ohm),
                        number(side.read_error_ohm.value_or(0)), sentence(side.read_says)),
            2);
    }
    for (const RodTargetAnswer& target : side.targets) {
        text += wrapped("  ", fmt::format("{} Ω, {}:", number(target.target_ohm), target.why), 2);
        for (const RodChoiceAnswer& c : target.choices) text += choice_text(c);
        if (!target.says.empty()) text += wrapped("    ", target.says, 4);
    }
    return text;
}

std::string separation_text(const SeparationAnswer& s) {
    std::string text = "\nAPART FROM THE HOUSE'S EARTH\n";
    text += wrapped("  ",
                    fmt::format("{} m from the house's earth at least.", number(s.distance_m)), 2);
    if (s.needed_m > 0) {
        text += wrapped("  ",
                        fmt::format("Were the supply's neutral lost, the ground at the electrode "
                                    "could rise by {} V; {} m keep it to the touch voltage for "
                                    "any earth the house may have.",
                                    number(s.lift_v), number(s.needed_m)),
                        2);
    }
    for (const BridgeAnswer& b : s.bridges) {
        text += wrapped("  - ", fmt::format("{} {}", b.what, b.says), 4);
    }
    text += s.island ? "  Nothing is known that joins the two earths.\n"
                     : "  As things stand it is no island.\n";
    return text;
}

std::string way_text(const LostNeutralWayAnswer& way) {
    std::string text =
        wrapped("  ", fmt::format("{}: {}", way.way, between(way.low_v, way.high_v, "V")), 4);
    if (way.stiff_v > 1.1 * way.high_v) {
        text += wrapped(
            "      ",
            fmt::format("up to {} V were every load to keep its power", number(way.stiff_v)), 6);
    }
    if (way.electrode_high_a > 0) {
        text += wrapped("      ",
                        fmt::format("its electrode carries {}; {}",
                                    between(way.electrode_low_a, way.electrode_high_a, "A"),
                                    way.dries ? "for hours that would dry the ground round it"
                                              : fmt::format("for hours that warms the ground round "
                                                            "it by {} K at most",
                                                            number(way.warmer_k))),
                        6);
    }
    for (const BodyAnswer& body : way.body) {
        text += fmt::format("      {} {}\n", padded(body.condition, 34),
                            between(body.low_ma, body.high_ma, "mA"));
    }
    if (!way.says.empty()) text += wrapped("      ", way.says, 6);
    return text;
}

std::string lost_neutral_text(const LostNeutralAnswer& lost) {
    std::string text = "\nIF THE SUPPLY LOSES ITS NEUTRAL\n";
    if (!lost.applies) {
        return text + wrapped("  ", "This supply has no combined neutral and earth that could.", 2);
    }
    text += wrapped(
        "  ",
        fmt::format("Metal of the outbuilding against the ground it stands on, {} kW "
                    "switched on, the house's earth {} ({}). No fuse and no residual "
                    "current device ends it. For judgement, not a limit met.",
                    number(lost.load_w / 1000),
                    between(lost.earth_low_ohm, lost.earth_high_ohm, "Ω"), lost.earth_known_by),
        2);
    for (const LostNeutralWayAnswer& way : lost.ways) text += way_text(way);
    return text;
}

}  // namespace

std::string ground_screen(const GroundAnswer& ground) {
    std::string text = ground.job + ": the ground\n\n" + soil_text(ground.soil);
    for (const GroundSideAnswer& side : ground.sides) {
        text += electrode_text(side) + separation_text(side.separation) +
                lost_neutral_text(side.lost_neutral);
    }
    if (!ground.asked.empty()) text += "\nREAD FROM A RANGE, AT THE WORSE END\n";
    for (const UnknownAnswer& u : ground.asked) {
        const std::string range =
            u.unit == "no or yes" ? u.unit : between(u.low, u.high, u.unit.c_str());
        text += wrapped("  - ", fmt::format("{}: {}", u.says, range), 4);
    }
    text += "\nBEFORE ANYONE ACTS ON THIS\n";
    for (const std::string& caution : ground.cautions) text += wrapped("  ", caution, 2);
    return text;
}

}  // namespace toft::cli
