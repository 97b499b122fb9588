#include "terrain/rod_length.h"

#include "base/text.h"
#include "terrain/figures.h"
#include "terrain/ink.h"
#include "terrain/paper.h"
#include "terrain/rod_plot.h"
#include "terrain/sheet.h"
#include "terrain/soil_column.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::terrain {

namespace {

constexpr const char* rod_kind = "Length of the rod";
constexpr std::size_t most_choices = 3;  // of one target, in words

std::string choice_words(const answer::RodChoiceAnswer& choice) {
    std::string words = choice.rods == 1 ? "one rod, " : fmt::format("{} rods, ", choice.rods);
    words += metre_words(choice.length_m) + " long";
    if (choice.rods > 1) words += ", " + metre_words(choice.spacing_m) + " apart";
    words += fmt::format(": {} Ω at worst", figure_words(choice.high_ohm));
    if (choice.price > 0) words += fmt::format(", £{}", figure_words(choice.price));
    return words;
}

std::string year_words(const answer::GroundSideAnswer& side) {
    const answer::YearAnswer& year = side.year;
    std::string words = side.electrode_words.empty() ? "the electrode" : side.electrode_words;
    words += ": " + range_words(year.low_ohm, year.high_ohm, "Ω") + " through the year";
    if (!year.high_when.empty()) words += " (the high end: " + year.high_when + ")";
    return words;
}

std::string sentence(const answer::GroundSideAnswer& side) {
    if (drawable_points(side).empty()) {
        return "What a rod would read here is not known: no length of rod could be worked out.";
    }
    return "What a rod reads depends on how deep it goes and on the time of the year. Here: " +
           year_words(side) + ".";
}

/// The sign that a choice has on the plot, or none.
std::string sign_of(const std::vector<MarkedChoice>& marked, const answer::RodChoiceAnswer& c) {
    for (const MarkedChoice& m : marked) {
        if (m.choice.rods == c.rods && m.choice.length_m == c.length_m &&
            m.choice.spacing_m == c.spacing_m) {
            return m.sign;
        }
    }
    return "";
}

void target_words(const answer::RodTargetAnswer& target, const std::vector<MarkedChoice>& marked,
                  parts::WordColumn& column) {
    column.gap(4);
    column.words(fmt::format("at most {} Ω: {}", figure_words(target.target_ohm), target.why),
                 {.size = 12, .weight = Weight::bold}, 5);
    if (!target.says.empty()) say(column, target.says);
    if (target.choices.empty() && target.says.empty()) {
        say(column, "No rods within the bounds looked at meet it at the worst time of the year.");
    }
    const std::size_t shown = std::min(most_choices, target.choices.size());
    for (std::size_t i = 0; i < shown; ++i) {
        const std::string sign = i == 0 ? sign_of(marked, target.choices[i]) : "";
        Items ring = sign.empty() ? Items{} : disc({sign_wide - disc_radius, 9}, sign);
        const std::string words = choice_words(target.choices[i]);
        if (i == 0) {
            say_signed(column, std::move(ring), words, "the cheapest that meets it");
        } else {
            column.words("or " + words, {.size = 12}, 4, sign_wide + 7);
        }
    }
}

void explain(const answer::GroundAnswer& ground, const answer::GroundSideAnswer& side,
             parts::WordColumn& column) {
    if (side.read_ohm) {
        column.heading("read by fall of potential");
        const double off = side.read_error_ohm.value_or(0);
        say(column, fmt::format("{} Ω{}", figure_words(*side.read_ohm),
                                off > 0 ? ", give or take " + figure_words(off) + " Ω" : ""));
        if (!side.read_says.empty()) say(column, side.read_says);
        say_small(column, "The cross on the plot, where the rod's length is known.");
    }
    const std::vector<MarkedChoice> marked = marked_choices(side);
    if (!side.targets.empty()) column.heading("what is wanted, and what would do");
    for (const answer::RodTargetAnswer& target : side.targets) target_words(target, marked, column);
    soil_words(ground.soil, column);
    column.heading("how to read it");
    say(column,
        "The hatched band is what one rod of that length reads: from the soil as surveyed, at its "
        "best, to dry or frozen soil at its worst (thick line). A target is met where the thick "
        "line is left of it. Dotted: where a layer of the soil ends; the small upright mark is "
        "what the survey leaves open of that depth.");
    say(column, "It is reckoned, not measured: the rod is tested once it is in.");
}

std::optional<double> rod_length(const site::Job& job, const std::string& named) {
    const site::Building* building = site::find_building(job, named);
    if (!building || !building->electrode.length.known) return std::nullopt;
    return building->electrode.length.high.number();
}

}  // namespace

Scene rod_length_picture(const site::Job& job, const answer::GroundAnswer& ground, std::size_t side,
                         double width) {
    if (side >= ground.sides.size()) return no_such_side(job, rod_kind, width);
    const answer::GroundSideAnswer& of = ground.sides[side];
    const RodPlotOf plot{ground.soil, of, rod_length(job, of.building)};
    Content content{rod_kind, building_words(job, of.building), sentence(of), {}, {}, {}};
    if (!drawable_points(of).empty()) {
        content.draw = [&](const Space& room) { return rod_plot(plot, room); };
    }
    content.explain = [&](parts::WordColumn& column) { explain(ground, of, column); };
    return lay_out(job, content, width);
}

}  // namespace toft::terrain
