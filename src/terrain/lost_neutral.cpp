#include "terrain/lost_neutral.h"

#include "parts/words.h"
#include "terrain/body_table.h"
#include "terrain/figures.h"
#include "terrain/ink.h"
#include "terrain/sheet.h"
#include "terrain/volts_plot.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::terrain {

namespace {

constexpr const char* neutral_kind = "Supply that has lost its neutral";

/// What touch-voltage figures belong to. A key, not a limit: the figure itself comes with the
/// answer.
struct MarkWords {
    double volts;
    const char* belongs_to;
};

constexpr MarkWords known_marks[] = {
    {25, "what is kept to where skin is wet, or where children or livestock are"},
    {50, "what an electrode behind an RCD keeps to: RA × IΔn, 411.5.3"},
    {70, "what is kept to where vehicles charge outdoors from such a supply, 722.411.4.1"},
};

std::string sentence(const answer::LostNeutralAnswer& fault) {
    if (!fault.applies) {
        return "This is not reckoned here: the supply as surveyed has no neutral that is also its "
               "earth. Where that is not sure, ask the network operator.";
    }
    if (fault.ways.empty()) {
        return "What metal of the outbuilding would do is not known: no way to earth it was "
               "worked out.";
    }
    const answer::LostNeutralWayAnswer& first = fault.ways.front();
    return fmt::format(
        "If the supply's neutral breaks with up to {} on, metal of the outbuilding stands at {} "
        "against "
        "the ground ({}). No fuse, breaker or RCD is sure to end that.",
        load_words(fault.load_w), range_words(first.low_v, first.high_v, "V"), first.way);
}

std::string current_words(const answer::LostNeutralWayAnswer& way) {
    if (!(way.electrode_high_a > 0)) return "";
    std::string words = "; " + range_words(way.electrode_low_a, way.electrode_high_a, "A") +
                        " through its own electrode";
    if (way.dries) return words + ", which dries the soil: its resistance climbs";
    if (way.warmer_k > 0 && std::isfinite(way.warmer_k)) {
        words +=
            fmt::format(", soil there up to {} K warmer after hours", figure_words(way.warmer_k));
    }
    return words;
}

void ways(const answer::LostNeutralAnswer& fault, parts::WordColumn& column) {
    column.heading("the ways to earth it, with up to " + load_words(fault.load_w) + " on");
    for (std::size_t i = 0; i < fault.ways.size(); ++i) {
        const answer::LostNeutralWayAnswer& way = fault.ways[i];
        std::string words = range_words(way.low_v, way.high_v, "V");
        if (way.stiff_v > 1.1 * way.high_v && std::isfinite(way.stiff_v)) {
            words += fmt::format(", up to {} V were every load to keep its power",
                                 figure_words(way.stiff_v));
        }
        words += current_words(way);
        if (!way.says.empty()) words += ". " + parts::capital(way.says);
        say_signed(column, way_sign(i), way.way, words);
    }
}

void marks(const answer::LostNeutralAnswer& fault, parts::WordColumn& column) {
    if (fault.marks_v.empty()) return;
    column.heading("the level lines");
    for (const double volts : fault.marks_v) {
        const Items sign{Line{{0, 10}, {sign_wide, 10}, dashed(palette::accent, 1.4, {14, 4})}};
        say_signed(column, sign, figure_words(volts) + " V", mark_words(volts));
    }
    column.words("None of them is a limit for this fault: below them is no promise.",
                 {.size = 12, .weight = Weight::bold}, 4);
}

void basis(const answer::LostNeutralAnswer& fault, parts::WordColumn& column) {
    column.heading("what it rests on");
    say(column, fmt::format("The house's earth and all that it joins, {}: {}{}.",
                            fault.phases == 3 ? "three phases" : "one phase",
                            range_words(fault.earth_low_ohm, fault.earth_high_ohm, "Ω"),
                            fault.earth_known_by.empty() ? "" : " (" + fault.earth_known_by + ")"));
    say(column,
        "Each band runs from the low to the high end of what the survey leaves open. More load, "
        "more volts; with nothing on, none, until something is switched on.");
}

}  // namespace

std::string mark_words(double volts) {
    for (const MarkWords& known : known_marks) {
        if (std::fabs(known.volts - volts) < 0.5) return known.belongs_to;
    }
    return "a figure of another duty";
}

Scene lost_neutral_picture(const site::Job& job, const answer::GroundAnswer& ground,
                           std::size_t side, double width) {
    if (side >= ground.sides.size()) return no_such_side(job, neutral_kind, width);
    const answer::GroundSideAnswer& of = ground.sides[side];
    const answer::LostNeutralAnswer& fault = of.lost_neutral;
    Content content{neutral_kind, building_words(job, of.building), sentence(fault), {}, {}, {}};
    if (fault.applies && has_plot(fault)) {
        content.draw = [&](const Space& room) { return volts_plot(fault, room); };
    }
    if (fault.applies) {
        content.explain = [&](parts::WordColumn& column) {
            ways(fault, column);
            marks(fault, column);
            body_table(fault, column);
            basis(fault, column);
        };
    }
    return lay_out(job, content, width);
}

}  // namespace toft::terrain
